import type { Side } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { hungInputs, hungWeight } from './bolt-group-in-plane.ts';
import { missing, type Check, type Input, type Missing, type Reading, type Step } from './check.ts';
import { valuesAt } from './evaluate-check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';
import { weldFlare } from './weld-flare.ts';
import { throatLoss, weldRule, weldStrengthInputs, welded } from './weld-inputs.ts';

/** Bays at which a panel's weld as a group is judged: the first of each panel. */
const panelPlaces = (model: Model): readonly string[] =>
  fieldPlaces(model).filter((bay) => panelAt(model, bay).bays[0] === bay);

const runsOn = (model: Model, bay: string, side: Side) => panelAt(model, bay).weldRuns.filter((run) => run.side === side); // prettier-ignore

/** Of a pair of sides that are welded alike, or nothing where neither is. */
function ofPair(low: Side, high: Side, value: (lengths: readonly number[]) => number): Input['read'] {
  return (model, bay): Reading => {
    const [one, other] = [low, high].map((side) => runsOn(model, bay, side).map(({ length }) => length));
    return one!.length === other!.length
      ? value(one!)
      : missing('welds on both of a pair of sides: this panel is welded on one of them alone');
  };
}

const extent = (low: Side, high: Side): Input['read'] =>
  (model, bay) => {
    const [first, last] = [runsOn(model, bay, low)[0], runsOn(model, bay, low).at(-1)];
    return runsOn(model, bay, low).length === runsOn(model, bay, high).length
      ? first && last ? Math.hypot(last.to[0] - first.from[0], last.to[1] - first.from[1]) : 0
      : missing('welds on both of a pair of sides: this panel is welded on one of them alone');
  }; // prettier-ignore

const size = (along: 'x' | 'y'): Input['read'] =>
  (model, bay) => {
    const { x0, x1, y0, y1 } = panelAt(model, bay).outline;
    return along === 'x' ? x1 - x0 : y1 - y0;
  }; // prettier-ignore

const length = (meaning: string, read: Input['read']): Input => ({ unit: 'mm', meaning, from: 'geometry', read });
const count = (meaning: string, read: Input['read']): Input => ({ unit: '1', meaning, from: 'geometry', read });
const x = ['mainLow', 'mainHigh'] as const;
const y = ['crossLow', 'crossHigh'] as const;

/** The weld round a panel as a group, by symbol: kernels take them in the order of `weldedSides`. */
const groupInputs = {
  a_p: length('panel from edge to edge, along x', size('x')),
  b_p: length('panel from edge to edge, along y', size('y')),
  l_x: length('from the first weld to the last of a side along x', extent(...x)),
  l_y: length('from the first weld to the last of a side along y', extent(...y)),
  n_x: count(
    'runs on each side along x; 1: continuous, 0: not welded',
    ofPair(...x, (runs) => runs.length),
  ),
  n_y: count(
    'runs on each side along y',
    ofPair(...y, (runs) => runs.length),
  ),
  r_x: length(
    'one of those runs',
    ofPair(...x, (runs) => runs[0] ?? 0),
  ),
  r_y: length(
    'one of those runs',
    ofPair(...y, (runs) => runs[0] ?? 0),
  ),
} as const satisfies Readonly<Record<string, Input>>;

export const weldedSides = ['a_p', 'b_p', 'l_x', 'l_y', 'n_x', 'n_y', 'r_x', 'r_y'] as const;

/** What the weight of the whole panel follows from. */
const panelWeightInputs = {
  ...hungInputs,
  A_f: {
    unit: 'm^2',
    meaning: 'area of the panel',
    from: 'geometry',
    read: (model, bay) => panelAt(model, bay).area,
  },
} as const satisfies Readonly<Record<string, Input>>;

/** The weld round a panel while it is handled, one side lost: what its checks have in common. */
export const weldGroupCheck = {
  limitState: 'handling',
  places: panelPlaces,
  applies: welded,
  once: true,
  rule: weldRule,
} as const satisfies Partial<Check>;

/** Throat at the end of life; where an edge ends on a tube's corner, what the check of that corner leaves of it. */
const throatOfGroup: Input = {
  ...weldStrengthInputs.a_w,
  read: (model, bay, situation) => {
    if (weldFlare.applies(model, bay, situation) !== true) return weldStrengthInputs.a_w.read(model, bay);
    const corner = valuesAt(weldFlare, model, bay, situation);
    if ('missing' in corner) return corner as Missing;
    if (corner.outOfRange) return missing(corner.outOfRange);
    const left = corner.all.a_e! - throatLoss(model);
    return left > 0 ? left : missing('a throat: gap and corrosion take all of it within the life');
  },
};

/** Group, weight and strength; what a check adds stands before the factors. */
export const weldGroupInputs = (own: Check['inputs'] = {}): Check['inputs'] => ({
  ...groupInputs,
  ...panelWeightInputs,
  ...weldStrengthInputs,
  a_w: throatOfGroup,
  ...own,
  gamma_M2: basisFactor('gamma_M2', 'partial factor on welds', 'partial factors'),
  Omega_J: basisFactor('Omega_J', 'safety factor on welds and rupture', 'allowable stress'),
  Omega_v: basisFactor('Omega_v', 'safety factor on yielding in shear', 'allowable stress'),
});

export const panelWeight: Step = { ...hungWeight, meaning: 'weight of the panel in air, factored' };

/** Allowable force per length of a panel's weld, its direction left aside: f_Rd. */
export const allowableLineForce: Step = {
  symbol: 'f_Rd',
  expression: 'min(0.6 * F_EXX * a_w / Omega_J, 0.6 * f_u * t_b / Omega_J, 0.6 * f_yb * t_b / Omega_v)',
  unit: 'N/mm',
  meaning: 'allowable force per length: filler, tearing and yielding of the thinner part',
};

export const handlingCautions = [
  'A side is counted as lost while it is not yet welded, or cracked through: tack and prop the panel until two sides are whole.',
  'Nobody stands under a panel that hangs. Lift by the pad eyes, not by a panel.',
] as const;
