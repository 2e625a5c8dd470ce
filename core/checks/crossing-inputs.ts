import type { Crossing, Tube } from '../geometry/geometry.ts';
import type { Situation, TubeForces } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import type { Input, Reading } from './check.ts';
import { sectionAtEnd, tubeAt, tubeForces, yieldOfTube } from './tube-inputs.ts';

/** Places of checks on a crossing: main tube's id, slash, cross tube's id. */
export const crossingPlaces = (model: Model): readonly string[] => model.geometry.crossings.map(({ id }) => id);

export const crossingAt = (model: Model, id: string): Crossing =>
  model.geometry.crossings.find((crossing) => crossing.id === id) as Crossing;

/** The through tube of a flush crossing, and the one that ends on its side. */
export const chordAt = (model: Model, id: string): Tube => tubeAt(model, crossingAt(model, id).main);
export const braceAt = (model: Model, id: string): Tube => tubeAt(model, crossingAt(model, id).cross);

/** What keeps the formulas of T-joints from being used at a crossing, or undefined where they hold. */
export function withoutFormula(model: Model, id: string): string | undefined {
  if (model.geometry.arrangement === 'stacked')
    return 'a through tube welded along its flanks has no published joint formula';
  if (chordAt(model, id).section.shape === 'round' || braceAt(model, id).section.shape === 'round')
    return 'no joint formula is held yet for round tubes';
  const wide =
    sectionAtEnd(model, braceAt(model, id).id).height > 0.85 * sectionAtEnd(model, chordAt(model, id).id).height;
  return wide ? 'no formula is held yet for a cross tube wider than 0.85 of the face that it meets' : undefined;
}

export const isFlush = (model: Model): true | string =>
  model.geometry.arrangement === 'flush' || 'the cross tubes lie on the main tubes';

const ofBrace = (unit: string, meaning: string, value: (forces: TubeForces) => number): Input => ({
  unit,
  meaning,
  from: 'loads: grid of tubes',
  read: (model: Model, id: string, situation: Situation): Reading =>
    tubeForces(situation, crossingAt(model, id).cross, value),
});

/** Forces at the end of the cross tube: the largest along it, taken at the crossing. */
export const braceForceInputs = {
  M_1: ofBrace('kN*m', 'largest moment of the cross tube, taken at the crossing', ({ moment }) => Math.abs(moment)),
  V_1: ofBrace('kN', 'largest shear force of the cross tube, taken at the crossing', ({ shear }) => Math.abs(shear)),
  N_1: ofBrace('kN', 'largest axial force of the cross tube, taken at the crossing', ({ axial }) => Math.abs(axial)),
} as const satisfies Readonly<Record<string, Input>>;

const size = (meaning: string, value: (model: Model, id: string) => number): Input => ({
  unit: 'mm',
  meaning,
  from: 'catalogue: sections; document: corrosion',
  read: value,
});

/** Sizes of the joint, the chord's side wall as the face: b_0 runs across the chord's axis. */
export const crossingSizeInputs = {
  b_0: size(
    'height of the main tube: the face that is met',
    (model, id) => sectionAtEnd(model, chordAt(model, id).id).height,
  ),
  h_0: size(
    'width of the main tube: its depth behind the face',
    (model, id) => sectionAtEnd(model, chordAt(model, id).id).width,
  ),
  t_0: size('wall of the main tube, end of life', (model, id) => sectionAtEnd(model, chordAt(model, id).id).wall),
  b_1: size(
    'height of the cross tube, across the main tube',
    (model, id) => sectionAtEnd(model, braceAt(model, id).id).height,
  ),
  h_1: size(
    'width of the cross tube, along the main tube',
    (model, id) => sectionAtEnd(model, braceAt(model, id).id).width,
  ),
} as const satisfies Readonly<Record<string, Input>>;

export const yieldOfChord = (model: Model, id: string): Reading => yieldOfTube(model, chordAt(model, id).id);
