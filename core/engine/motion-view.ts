import { significant } from '../quantity/format-quantity.ts';
import type { Finding } from '../finding.ts';
import type { FreeMotion } from '../plate/free-motion.ts';
import type { PanelBuckling } from '../plate/buckling-of-panels.ts';
import type { PlateModes, PlateModeSet } from '../plate/plate-modes.ts';
import type { ReadyPlate, SolvedLoading } from '../plate/solve-plate.ts';
import type { PlateShape } from '../scene/plate-shape.ts';
import { shapeOf } from './shape-of.ts';

/** A motion that the picture plays: a mode or a way of buckling. Its size is free: the largest shift of its shape is 1 m. */
export interface MotionView {
  /** “Mode 2 in air: 14.3 Hz”, “Buckles at 3.2 times service, down”. */
  readonly title: string;
  /** Hz of a mode; times the loading of a buckling shape; 0 of a free motion: it takes no force. */
  readonly value: number;
  /** Where it moves or gives way most, and what else is to be known, sentences. */
  readonly said: string;
  readonly shape: PlateShape;
}

/** Motions of one kind, in groups: modes in air and with added mass, buckling under each loading, or what nothing holds. */
export interface MotionSet {
  readonly kind: 'modes' | 'buckling' | 'free';
  readonly groups: readonly {
    readonly title: string;
    readonly converged: boolean;
    /** Why there is none, where there is none. */
    readonly none: string;
    readonly motions: readonly MotionView[];
  }[];
  /** Of modes: where the water's part is from. */
  readonly water?: string;
  readonly findings: readonly string[];
  readonly cautions: readonly string[];
}

export function modesView(
  plate: ReadyPlate,
  { holding, air, water, added, findings, cautions }: PlateModes,
): MotionSet {
  const held = holding === 'hung' ? 'hung' : 'free, nothing holds it';
  const group = (medium: string, { modes, converged }: PlateModeSet): MotionSet['groups'][number] => ({
    title: `${medium}, ${held}`,
    converged,
    none: 'No mode was found.',
    motions: modes.map(({ frequency, shape, inPanels, most }, k) => ({
      title: `Mode ${k + 1}, ${medium}: ${significant(frequency, 3)} Hz`,
      value: frequency,
      said: `Most of it is in ${most.id} (${percent(most.part)} of the kinetic energy); panels have ${percent(inPanels)} of it.`,
      shape: shapeOf(plate, shape),
    })),
  });
  return {
    kind: 'modes',
    groups: [group('in air', air), group('with added mass', water)],
    water: added.said,
    findings: findings.map(inWords),
    cautions,
  };
}

export function bucklingView(
  plate: ReadyPlate,
  found: readonly (PanelBuckling & { readonly solved: SolvedLoading })[],
): MotionSet {
  return {
    kind: 'buckling',
    groups: found.map(({ solved: { situation, loading }, modes, within, converged }) => ({
      title: `${situation.title}, ${loading}`,
      converged,
      none: `Nothing buckles up to ${within} times this loading.`,
      motions: modes.map(({ factor, most, shape }, k) => ({
        title: `Buckling shape ${k + 1}: at ${significant(factor, 3)} times ${situation.title}, ${loading}`,
        value: factor,
        said: `It gives way in ${most.kind} ${most.id} (${percent(most.part)} of the loading’s work). Elastic, from a flat start: a factor is no resistance.`,
        shape: shapeOf(plate, shape),
      })),
    })),
    findings: found.flatMap(({ findings }) => findings.map(inWords)),
    cautions: [...new Set(found.flatMap(({ cautions }) => cautions))],
  };
}

/** What stopped the solver, as the motion that it is. */
export const freeMotionView = ({ plate, motion, what }: FreeMotion): MotionSet => ({
  kind: 'free',
  groups: [
    {
      title: 'with no force at all',
      converged: true,
      none: '',
      motions: [
        { title: what, value: 0, said: 'It takes no force: nothing bends on the way.', shape: shapeOf(plate, motion) },
      ],
    },
  ],
  findings: [],
  cautions: [],
});

const inWords = ({ text, mend }: Finding): string => (mend ? `${text} ${mend}` : text);
const percent = (part: number): string => `${significant(100 * part, 2)} %`;
