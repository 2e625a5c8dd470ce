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
  const round = [chordAt(model, id), braceAt(model, id)].filter(({ section }) => section.shape === 'round').length;
  if (round === 1) return 'no joint formula is held for a round tube on a rectangular one, or the other way round';
  return widthRatio(model, id) > 1 + 1e-9 ? 'the cross tube is wider than the face that it meets' : undefined;
}

/** Width of the cross tube over that of the face it meets, at the end of life. */
const widthRatio = (model: Model, id: string): number =>
  sectionAtEnd(model, braceAt(model, id).id).height / sectionAtEnd(model, chordAt(model, id).id).height;

/** Which formulas hold at a crossing: of rectangular tubes up to 0.85 of the face or beyond, or of round tubes. */
export type JointKind = 'face' | 'side wall' | 'round';

/** True where this kind of formula holds, or why not. */
export function jointOf(kind: JointKind, model: Model, id: string): true | string {
  const without = withoutFormula(model, id);
  if (without) return without;
  const round = chordAt(model, id).section.shape === 'round';
  const own: JointKind = round ? 'round' : widthRatio(model, id) > 0.85 ? 'side wall' : 'face';
  return own === kind || otherwise[own];
}

const otherwise: Readonly<Record<JointKind, string>> = {
  face: 'the cross tube is no wider than 0.85 of the face: the face yields first',
  'side wall': 'the cross tube is wider than 0.85 of the face: the side walls of the main tube decide',
  round: 'the tubes are round',
};

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

/** Wall, strength and plastic modulus of the cross tube, by symbol. */
export const braceInputs = {
  t_1: size('wall of the cross tube, end of life', (model, id) => sectionAtEnd(model, braceAt(model, id).id).wall),
  f_y1: {
    unit: 'MPa',
    meaning: 'yield strength of the cross tube',
    from: 'catalogue: materials',
    read: (model: Model, id: string): Reading => yieldOfTube(model, braceAt(model, id).id),
  },
  W_1: {
    unit: 'cm^3',
    meaning: 'plastic modulus of the cross tube, end of life',
    from: 'catalogue: sections; document: corrosion',
    read: (model: Model, id: string): Reading => sectionAtEnd(model, braceAt(model, id).id).plasticY,
  },
} as const satisfies Readonly<Record<string, Input>>;

export const yieldOfChord = (model: Model, id: string): Reading => yieldOfTube(model, chordAt(model, id).id);
