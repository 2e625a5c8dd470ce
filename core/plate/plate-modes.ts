import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { refusal } from '../refusal.ts';
import { factoriser, type ReadyPlate } from './solve-plate.ts';
import type { MakeKernels } from '../solve/sparse/front-kernels.ts';
import { addedWater, type AddedWater } from './added-water.ts';
import { plateMassesIn } from './plate-masses.ts';
import {
  massProduct,
  structureModes,
  type Mode,
  type ModeMasses,
  type ModeSet,
} from '../solve/structure/modes-of-structure.ts';
import { modeSupport, type ModeSupport } from '../solve/structure/modes-support.ts';
import { plateSupports } from './plate-supports.ts';
import type { Structure } from '../solve/structure/structure.ts';

export interface PlateModesSettings {
  /** `free`: nothing holds the plate. `hung`: the suspension of service holds it, each line or leg along itself. */
  readonly holding: 'free' | 'hung';
  readonly count: number;
  /** Points of contact that count as closed; otherwise those that the panels' own weight presses. */
  readonly closed?: Uint8Array;
  readonly kernels?: MakeKernels;
}

export interface PlateMode extends Mode {
  /** Part of the kinetic energy that is in panels (water with them), and the panel or tube with the most. */
  readonly inPanels: number;
  readonly most: { readonly id: string; readonly part: number };
}

export interface PlateModeSet extends ModeSet {
  readonly modes: readonly PlateMode[];
}

export interface PlateModes {
  readonly holding: PlateModesSettings['holding'];
  /** Without water on it or in it, and with both. */
  readonly air: PlateModeSet;
  readonly water: PlateModeSet;
  readonly added: AddedWater;
  readonly findings: readonly Finding[];
  readonly cautions: readonly string[];
}

/**
 * Natural modes of the plate in air and in water, free or hung. Contact is part of what is stiff only where it is closed:
 * a mode is linear and cannot lift off, so which points are closed is chosen beforehand, by the panels' own weight in water
 * unless told. One factor serves both media. Yields the solves done so far.
 */
export function* plateModes(
  plate: ReadyPlate,
  { holding, count, closed = closedByWeight(plate), kernels }: PlateModesSettings,
): Generator<number, PlateModes> {
  const { model, structure, elements } = plate;
  const supports = holding === 'hung' ? { supports: suspension(plate) } : {};
  const support = modeSupport(structure, elements, factoriser(kernels), { ...supports, closed });
  const added = addedWater(model, structure);
  const air = yield* modesWith(support, { everyWay: plateMassesIn(model, structure, 'air') }, count);
  const water = yield* modesWith(
    support,
    { everyWay: plateMassesIn(model, structure, 'water'), water: added.inertia },
    count,
  );
  return {
    holding,
    air,
    water,
    added,
    findings: [
      ...nearWaves(water.modes, model.document.loads.service.wavePeriod.si, holding),
      ...unsettled({ air, water }, holding),
    ],
    cautions: [
      ...added.cautions,
      'Contact is taken as closed where the panels’ own weight in water presses it, and as carrying both ways there: where a panel would chatter, its frequency is lower.',
      ...(holding === 'hung'
        ? [
            'Lines and legs are taken as unyielding along themselves and taut throughout; the plate’s swing, its heave on the lines’ own stretch and the float’s motion are not among these modes.',
          ]
        : []),
    ],
  };
}

/** Points of panels that their own weight in water presses on their tubes. */
export function closedByWeight({ model, structure }: ReadyPlate): Uint8Array {
  const { geometry, loads } = model;
  const panels = new Map(geometry.panels.map((panel) => [panel.id, panel]));
  const heavy = new Map(loads.plate.fields.map(({ panel, weight }) => [panel.id, weight.water > 0]));
  return Uint8Array.from(structure.contacts, ({ panel }) => {
    const { id } = structure.panels[panel]!;
    const down = panels.get(id)!.pressedBy === 'down';
    return down === (heavy.get(id) ?? true) ? 1 : 0;
  });
}

function suspension({ model, structure }: ReadyPlate) {
  const service = model.loads.situations.find(({ loadCase, supports }) => loadCase === 'service' && supports !== null);
  if (!service)
    throw refusal({
      what: 'The plate has no suspension to hang on in its service case',
      mend: 'State the suspension, or ask for the modes of the free plate',
    });
  const parts = plateSupports(structure, service.supports!);
  return service.present[0]!.map((i) => parts[i]!);
}

function* modesWith(support: ModeSupport, masses: ModeMasses, count: number): Generator<number, PlateModeSet> {
  const set = yield* structureModes(support, masses, count);
  const part = partOfNode(support.structure);
  const modes = set.modes.map((mode): PlateMode => {
    const energy = new Map<string, number>();
    let [all, inPanels] = [0, 0];
    const { shape } = mode;
    const force = massProduct(masses, shape.length)(shape);
    part.forEach(({ id, panel }, node) => {
      let share = 0;
      for (let i = 6 * node; i < 6 * node + 6; i++) share += shape[i]! * force[i]!;
      energy.set(id, (energy.get(id) ?? 0) + share);
      all += share;
      if (panel) inPanels += share;
    });
    const [id, most] = [...energy].reduce((best, entry) => (entry[1] > best[1] ? entry : best));
    return { ...mode, inPanels: inPanels / all, most: { id, part: most / all } };
  });
  return { ...set, modes };
}

/** What a node belongs to: a panel, or the first of the tubes that meet there. */
function partOfNode({ coordinates, panels, tubes }: Structure): { readonly id: string; readonly panel: boolean }[] {
  const parts = new Array<{ id: string; panel: boolean }>(coordinates.length / 3);
  for (const { id, nodes } of panels) for (const n of nodes) if (n >= 0) parts[n] = { id, panel: true };
  for (const { id, nodes } of tubes) for (const n of nodes) parts[n] ??= { id, panel: false };
  return parts;
}

/** A frequency closer than this to the waves’ or to twice or three times theirs, either way, is a finding: common practice,
 *  no source. */
export const keepClear = 1.4;
const harmonics = [1, 2, 3] as const;

export function nearWaves(
  modes: readonly Pick<Mode, 'frequency'>[],
  wavePeriod: number,
  holding: PlateModesSettings['holding'],
): Finding[] {
  return modes.flatMap(({ frequency }, k): Finding[] => {
    const near = harmonics.find((n) => Math.max(frequency * wavePeriod, n) < keepClear * Math.min(frequency * wavePeriod, n));
    if (near === undefined) return [];
    const waves = near === 1 ? 'the waves’ own' : `${near} times the waves’`;
    return [
      {
        id: 'mode-near-waves',
        place: `mode ${k + 1}, ${holding}`,
        text: `The plate’s mode ${k + 1} in water, ${significant(frequency, 3)} Hz, lies within ${keepClear} times of ${waves} frequency, ${significant(near / wavePeriod, 3)} Hz (common practice, no source).`,
        mend: 'Stiffen the plate or change its mass, or have its response to the waves worked out.',
      },
    ];
  }); // prettier-ignore
}

function unsettled(sets: Readonly<Record<'air' | 'water', ModeSet>>, holding: string): Finding[] {
  return Object.entries(sets).flatMap(([medium, { converged, modes }]): Finding[] =>
    converged
      ? []
      : [
          {
            id: 'modes-not-converged',
            place: `modes in ${medium}, ${holding}`,
            text: `The modes in ${medium} did not settle: the largest residual is ${significant(Math.max(...modes.map(({ residual }) => residual)), 2)}.`,
            mend: 'Ask for fewer modes, or take a coarser mesh.',
          },
        ],
  );
}
