import type { SituationForces, SolvedLeg, SolvedPanel } from '../loads/solved-forces.ts';
import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { eyeAt } from './eye-inputs.ts';
import { crossingAt } from './crossing-inputs.ts';
import { missing, type BySolution, type Input, type Reading } from './check.ts';
import { panelAt } from './field-inputs.ts';

/** An input that the whole plate's solution gives in the situation judged; `undefined` or `null` from `value` is missing. */
export const fromSolution = (
  unit: string,
  meaning: string,
  value: (forces: SituationForces, model: Model, place: string) => Reading | null | undefined,
): Input => ({
  unit,
  meaning,
  from: 'whole plate: contact settled',
  read: (model, place, situation) => {
    const { solved } = model;
    if (solved === null) return missing('the forces of the whole plate: the document takes its forces by hand');
    if ('missing' in solved) return missing(solved.missing);
    const forces = solved.situations[situation.id];
    if (!forces) return missing('the whole plate’s solution of this case');
    return value(forces, model, place) ?? missing(`${meaning} in the whole plate’s solution`);
  },
});

/** Of the panel over a bay: its worst place, whichever bay of it that is in. */
export const ofPanel = (
  unit: string,
  meaning: string,
  value: (panel: SolvedPanel, model: Model, bay: string, forces: SituationForces) => Reading | null | undefined,
): Input =>
  fromSolution(unit, meaning, (forces, model, bay) => {
    const { id } = panelAt(model, bay);
    const free = forces.free[id];
    if (free !== undefined) return missing(free);
    const panel = forces.panels[id];
    return panel && value(panel, model, bay, forces);
  });

/** Cases that the whole plate is not solved for, where the document does not ask for them; or undefined. */
export const partLost = ({ document }: Model, { loadCase }: Situation): string | undefined =>
  (loadCase === 'lost bolt row' || loadCase === 'lost panel') && !document.forces?.losses
    ? 'with a bolt row or a panel lost, forces are by hand alone, as the document asks'
    : undefined;

export const thicknessAsMade: Input = {
  unit: 'mm',
  meaning: 'thickness as made, which the plate is solved with',
  from: 'document: designs',
  read: (model, bay) => panelAt(model, bay).thickness,
};

export const bucklingFactor: Input = fromSolution(
  '1',
  'lowest factor by which the loading may grow before a part buckles, as made; at most 100',
  ({ buckling }) => buckling?.factor ?? missing('a buckling factor: it did not settle in the whole plate’s solution'),
);

export const membraneStress: Input = ofPanel(
  'MPa',
  'largest von Mises stress in the plane of the panel as made, clear of bolts and notches',
  ({ membrane }) => (membrane === 0 ? missing('a stress in the plane of the panel: there is none') : membrane),
);

/** Forces inside a tube, by the symbols of its checks. */
export const solvedTubeForces = {
  M: fromSolution('kN*m', 'largest bending moment; what bends in plan added by its stress', ({ tubes }, _, id) => tubes[id]?.M),
  V: fromSolution('kN', 'largest shear force, taken at the same section; what shears in plan added by its area', ({ tubes }, _, id) => tubes[id]?.V),
  T: fromSolution('kN*m', 'largest torque, taken at the same section', ({ tubes }, _, id) => tubes[id]?.T),
  N: fromSolution('kN', 'largest axial force, taken as compression', ({ tubes }, _, id) => tubes[id]?.N),
} as const satisfies Readonly<Record<string, Input>>; // prettier-ignore

/** Worst bolts of the panel, by the symbols of its checks. */
export const solvedBoltForces = {
  F_t: ofPanel('kN', 'largest pull in a bolt of the panel, prying on rigid walls included', ({ pull }) => pull?.force),
  F_v: ofPanel('kN', 'largest shear in a bolt of the panel, whether or not in the same bolt', ({ shear }) => shear?.force),
} as const satisfies Readonly<Record<string, Input>>; // prettier-ignore

/** The weld of the panel where force and opening moment bring most on the throat, along and across it: parts of one point. */
const solvedWeld = {
  f_1z: ofPanel(
    'N/mm',
    'force per length off the tube (onto it: negative), where force and moment bring most on the throat',
    ({ weld }) => weld?.pull,
  ),
  f_1h: ofPanel('N/mm', 'force per length across the weld, there, towards the panel', ({ weld }) => weld?.across),
  f_1l: ofPanel('N/mm', 'force per length along the weld, there', ({ weld }) => weld?.along),
  m_1: ofPanel('N', 'moment about the weld per length, there, taken to open its root', ({ weld }) => weld?.opening),
} as const satisfies Readonly<Record<string, Input>>;

/** The weld of a panel as the whole plate loads it: with a force along it, which a field taken by itself has not. */
export const solvedWeldForces: BySolution = {
  inputs: solvedWeld,
  steps: [
    { symbol: 'f_z', expression: 'k_r * f_1z', unit: 'N/mm', meaning: 'pull per length off the tube' },
    { symbol: 'f_h', expression: 'k_r * f_1h', unit: 'N/mm', meaning: 'pull per length across the weld, towards the panel' },
    { symbol: 'm_r', expression: 'abs(f_z) * e_r + k_r * m_1', unit: 'N', meaning: 'moment about the weld that opens its root' },
    {
      symbol: 'sigma_s',
      expression: 'abs(f_z + f_h) / (sqrt(2) * a_w) + 6 * m_r / a_w^2',
      unit: 'MPa',
      meaning: 'stress square to the throat, at the face where both add up',
    },
    {
      symbol: 'sigma_v',
      expression: 'sqrt(sigma_s^2 + 3 * (tau_s^2 + (k_r * f_1l / a_w)^2))',
      unit: 'MPa',
      meaning: 'equivalent stress, with the shear along the weld',
    },
    {
      symbol: 'f_r',
      expression: 'sqrt(f_z^2 + f_h^2 + (k_r * f_1l)^2)',
      unit: 'N/mm',
      meaning: 'resultant force per length',
    },
  ],
}; // prettier-ignore

/** Deflection of the panel from the tubes that carry it, from the thickness as made to that at the end of life, and from the
 *  factored pressure to that of service: both exact for a thin plate of small deflection. */
export const solvedDip: BySolution = {
  inputs: {
    w_1: ofPanel('mm', 'largest deflection of the panel from the tubes that carry it, as made, load factor included', ({ dip }) => dip),
    t_n: thicknessAsMade,
    s_o: {
      unit: 'mm',
      meaning: 'shorter side of the bay’s opening',
      from: 'geometry',
      read: ({ bays }, bay) => {
        const { x0, x1, y0, y1 } = bays.get(bay)!.opening;
        return Math.min(x1 - x0, y1 - y0);
      },
    },
    p_F: {
      unit: 'kPa',
      meaning: 'pressure on the panel field, load factor included',
      from: 'loads: share',
      read: (_, bay, situation) => {
        const pressure = Math.abs(situation.pressures.get(bay) ?? 0);
        return pressure > 0 ? pressure : missing('a deflection in service: nothing presses on the field in this case');
      },
    },
  },
  steps: [
    {
      symbol: 'w_Ed',
      expression: 'w_1 * p_ser / p_F * (t_n / t)^3',
      unit: 'mm',
      meaning: 'largest deflection in service at the end of life, small deflections',
    },
  ],
  second: {
    title: 'the square of the bay’s shorter side, all its edges held: no panel over the bay is stiffer',
    source: [{ document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells', edition: '2nd', clause: 'art. 44, Table 35', memory: true }],
    steps: [
      { symbol: 'D', expression: 'E * t^3 / (12 * (1 - nu^2))', unit: 'N*m', meaning: 'bending stiffness of the panel per width' },
      { symbol: 'w_low', expression: '0.98 * 0.00126 * p_ser * s_o^4 / D', unit: 'mm', meaning: 'its deflection, 2 % off for the digits' },
    ],
    of: 'w_Ed',
    low: 'w_low',
  },
}; // prettier-ignore

const at = (unit: string, meaning: string, value: (crossing: SituationForces['crossings'][string]) => number): Input =>
  fromSolution(unit, meaning, ({ crossings }, model, id) => {
    const crossing = crossings[crossingAt(model, id).id];
    return crossing && value(crossing);
  });

/** Forces of both tubes where their axes cross, by the symbols of the crossing's checks. */
export const solvedCrossingForces = {
  M_1: at('kN*m', 'largest moment of the cross tube at the crossing', ({ M_1 }) => M_1),
  V_1: at('kN', 'largest shear force of the cross tube at the crossing', ({ V_1 }) => V_1),
  N_1: at('kN', 'largest axial force of the cross tube at the crossing', ({ N_1 }) => N_1),
  M_0: at('kN*m', 'largest moment of the main tube at the crossing', ({ M_0 }) => M_0),
  N_0: at('kN', 'largest axial force of the main tube at the crossing', ({ N_0 }) => N_0),
} as const satisfies Readonly<Record<string, Input>>;

const pull = (meaning: string, value: (leg: SolvedLeg, onMain: boolean) => number): Input =>
  fromSolution('kN', meaning, ({ legs }, model, id) => {
    const leg = legs[id];
    const { tube } = eyeAt(model, id);
    return leg && tube ? value(leg, tube.set === 'main') : null;
  });

/** Pull at an eye, by the symbols of its checks. */
export const solvedLegs = {
  F: pull('pull along the leg or line', ({ along }) => along),
  F_z: pull('part of the pull square to the tube', ({ upright }) => upright),
  F_l: pull("part of the pull along the tube, in the eye's plane", ({ x, y }, onMain) => (onMain ? x : y)),
  F_q: pull("part of the pull across the tube, across the eye's plane", ({ x, y }, onMain) => (onMain ? y : x)),
} as const satisfies Readonly<Record<string, Input>>;
