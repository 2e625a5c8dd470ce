import { yieldOf } from '../catalogue/strength-at-thickness.ts';
import type { Bolt, BoltClass } from '../catalogue/rows.ts';
import type { Eye } from '../document/schema.ts';
import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { missing, type Input, type Reading, type Step } from './check.ts';
import { eyeAt, eyeForceInputs, eyeInputs, eyePulled, strengthOfEye } from './eye-inputs.ts';
import { eyeWeld } from './eye-weld.ts';

type FootPlate = NonNullable<Eye['footPlate']>;

/** True where the eye stands on a bolted foot plate and is pulled, or why a check of it does not apply. */
export const onFootPlate = (model: Model, id: string, situation: Situation): true | string =>
  eyeAt(model, id).eye.footPlate
    ? eyePulled(model, id, situation)
    : 'the eye is welded to its tube: there is no bolted plate with a stem';

/** The foot plate; only asked where `onFootPlate` is true. */
export const footOf = (model: Model, id: string): FootPlate => eyeAt(model, id).eye.footPlate!;

const size = (meaning: string, value: (foot: FootPlate) => number): Input => ({
  unit: 'mm',
  meaning,
  from: 'document: eye',
  read: (model, id) => value(footOf(model, id)),
});

const ofBolt = (
  unit: string,
  meaning: string,
  value: (bolt: Bolt, boltClass: BoltClass) => Reading,
  only?: Input['only'],
): Input => ({
  unit,
  meaning,
  from: 'catalogue: fasteners',
  read: (model, id) => {
    const foot = footOf(model, id);
    return value(model.catalogue.bolt(foot.bolt), model.catalogue.boltClass(foot.class));
  },
  ...(only ? { only } : {}),
});

/** Nominal stress by name in AISC 360, Table J3.2, or as a part of f_ub for threaded parts of another carbon steel. */
const nominal = (row: BoltClass, of: 'tension' | 'shearThreads', part: number): Reading =>
  row.nominal?.[of] ??
  (row.family === 'carbon steel' ? part * row.ultimate : missing(`a nominal stress of ${row.title}: AISC 360 does not list it`)); // prettier-ignore

const lossOf = (model: Model): number => model.document.protection.lossPerFace.tubeOutside.si;

/** Sizes and strengths of a bolted foot plate, by symbol. */
export const footPlateInputs = {
  ...{ F_z: eyeForceInputs.F_z, F_l: eyeForceInputs.F_l, F_q: eyeForceInputs.F_q },
  ...{ t_e: eyeInputs.t_e, h_e: eyeInputs.h_e, a_w: eyeWeld.inputs.a_w! },
  t_f: {
    unit: 'mm',
    meaning: 'thickness of the foot plate at the end of life, one face open',
    from: 'document: eye, corrosion',
    read: (model, id) => {
      const left = footOf(model, id).thickness.si - lossOf(model);
      return left > 0 ? left : missing('a foot plate: nothing of it is left at the end of life');
    },
  },
  f_yf: {
    unit: 'MPa',
    meaning: 'yield strength of the foot plate',
    from: 'catalogue: materials',
    read: (model, id) => strengthOfEye(model, id, yieldOf, footOf(model, id).thickness.si),
  },
  w_f: size('bolt to bolt across the eye', ({ gauge }) => gauge.si),
  e: size('bolt to the long edge of the foot plate', ({ edge }) => edge.si),
  e_1: size('last pair of bolts to the end of the foot plate', ({ end }) => end.si),
  p_f: size('pair to pair along the eye', ({ pitch }) => pitch.si),
  n_p: { ...size('pairs of bolts', ({ pairs }) => pairs), unit: '1' },
} as const satisfies Readonly<Record<string, Input>>;

/** Bolts of a foot plate, by symbol. */
export const footBoltInputs = {
  A_s: ofBolt('mm^2', 'tensile stress area', (bolt) => bolt.tensileArea, 'partial factors'),
  A_b: ofBolt('mm^2', 'area of the shank', (bolt) => bolt.shankArea, 'allowable stress'),
  f_ub: ofBolt('MPa', 'ultimate strength of the bolt', (_, row) => row.ultimate, 'partial factors'),
  F_nt: ofBolt('MPa', 'nominal tensile stress of the bolt', (_, row) => nominal(row, 'tension', 0.75), 'allowable stress'),
} as const satisfies Readonly<Record<string, Input>>; // prettier-ignore

export const footShearInputs = {
  alpha_v: ofBolt('1', 'shear factor of the bolt class, threads in the shear plane', (_, row) => row.alphaV ?? missing(`the shear factor alpha_v of ${row.title}: EN 1993-1-8 does not list it`), 'partial factors'),
  F_nv: ofBolt('MPa', 'nominal shear stress of the bolt, threads in the shear plane', (_, row) => nominal(row, 'shearThreads', 0.45), 'allowable stress'),
} as const satisfies Readonly<Record<string, Input>>; // prettier-ignore

/** Pull off the tube with the moments as pulls; `at`: what the symbols of its forces end in, at one end of a cycle. */
export const footPull = (at = ''): string =>
  `F_z${at} + 6 * F_l${at} * h_e / (p_f * (n_p + 1)) + 2 * F_q${at} * h_e / w_f`;

/** What of the pull N each bolt takes, with all the prying of a flange bent both ways. */
export const footPrying = (N: string): string => `${N} / (2 * n_p) * (1 + m / (2 * n))`;

/** The levers of a foot plate's flange: m and n. */
export const footLevers: readonly Step[] = [
  {
    symbol: 'm',
    expression: 'w_f / 2 - t_e / 2 - 0.8 * sqrt(2) * a_w',
    unit: 'mm',
    meaning: 'bolt to the stem, 0.8 of the leg of its weld inside',
  },
  { symbol: 'n', expression: 'min(e, 1.25 * m)', unit: 'mm', meaning: 'bolt to where the edge of the flange leans' },
];

/** Pull of the whole foot plate with its moments, N, and the levers of its flange. */
export const footPullSteps: readonly Step[] = [
  {
    symbol: 'N',
    expression: footPull(),
    unit: 'kN',
    meaning:
      'pull off the tube, the moments as pulls: the end pair of an elastic row, and one side of the pairs (safe)',
  },
  ...footLevers,
];

/** Tension resistance of one of its bolts, F_t_Rd, for each kind of basis. */
export const footBoltResistance = {
  'partial factors': {
    symbol: 'F_t_Rd',
    expression: '0.9 * f_ub * A_s / gamma_M2',
    unit: 'kN',
    meaning: 'tension resistance of a bolt',
  },
  'allowable stress': {
    symbol: 'F_t_Rd',
    expression: 'F_nt * A_b / Omega_J',
    unit: 'kN',
    meaning: 'allowable tension of a bolt',
  },
} as const satisfies Record<string, Step>;

/** Tension in a bolt with the lever of its flange: B. */
export const footBoltPull: Step = {
  symbol: 'B',
  expression: footPrying('N'),
  unit: 'kN',
  meaning: 'tension of a bolt with all the prying of a flange bent both ways',
};

export const stemRange = [
  { holds: 'm > 0 * w_f', otherwise: 'the bolts stand in the weld of the eye: give them a larger gauge' },
] as const;

export const footCautions = [
  'An equivalent T-stub stands for a flange with a stem and its bolts; a panel lapped on its tube has no stem, and its edge moment is judged with its bolts.',
  'Bolts through both walls with crush sleeves. Of fatigue their threads alone are judged, not the wall under them nor the foot plate: a foot that is pulled at every wave is better welded.',
] as const;
