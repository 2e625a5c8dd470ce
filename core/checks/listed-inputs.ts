import type { BoltRow } from '../fixings/rows-left.ts';
import { coefficientLeft, groupsLeft, hungGroup, pushOfGroupLeft, pushOfPlate, pushOfPlateLeft, sagOfPlate, stressOfPlate, type HungGroup, type ListedGroup } from '../fixings/listed-group.ts'; // prettier-ignore
import type { ListedField } from '../geometry/geometry.ts';
import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { boltAt, holds } from './bolt-inputs.ts';
import { missing, type Input, type Missing, type Reading } from './check.ts';
import { fieldAt, isPulled, panelAt } from './field-inputs.ts';

const listedAt = (model: Model, bay: string): ListedField => fieldAt(model, bay).listed!;

/** The field's listed bolts on its plate, from the plate's low corner, or what has none. Made once a field. */
function groupAt(model: Model, bay: string): ListedGroup | Missing {
  const field = fieldAt(model, bay);
  const { plate, points, rows } = field.listed!;
  const none = sidesWithout(model, bay);
  if (none !== null) return none;
  const known = groups.get(field.listed!);
  if (known) return known;
  const { x0, y0, x1, y1 } = plate;
  const group = { a: x1 - x0, b: y1 - y0, points: points.map(([x, y]) => [x - x0, y - y0] as const), rows };
  groups.set(field.listed!, group);
  return group;
}
const groups = new WeakMap<ListedField, ListedGroup>();

const sideOf: Readonly<Record<BoltRow, 'main' | 'cross'>> = {
  yLow: 'main',
  yHigh: 'main',
  xLow: 'cross',
  xHigh: 'cross',
};

/** A side that the panel relies on and that no listed bolt stands on. */
function sidesWithout(model: Model, bay: string): Missing | null {
  const { rows } = listedAt(model, bay);
  const empty = (Object.keys(rows) as BoltRow[]).filter(
    (row) => rows[row].length === 0 && holds(panelAt(model, bay), sideOf[row]),
  );
  return empty.length === 0
    ? null
    : missing(
        `a bolt along each side that holds the panel over ${bay}: the list has none on the ${empty.map((row) => rowWords[row]).join(' and on the ')}`,
      );
}
const rowWords: Readonly<Record<BoltRow, string>> = {
  yLow: 'main tube of lower y',
  yHigh: 'main tube of higher y',
  xLow: 'cross tube of lower x',
  xHigh: 'cross tube of higher x',
};

/** A value of the group of a field; where the bolts have nothing to do in this situation, zero. */
const ofGroup =
  (
    value: (group: ListedGroup, model: Model, bay: string) => Reading,
    works: (model: Model, bay: string, situation: Situation) => boolean = () => true,
  ): Input['read'] =>
  (model, bay, situation) => {
    if (!works(model, bay, situation)) return 0;
    const group = groupAt(model, bay);
    return 'missing' in group ? group : value(group, model, bay);
  };

const isLost = (model: Model, bay: string, situation: Situation): boolean =>
  situation.loadCase === 'lost bolt row' && isPulled(model, bay, situation);

const plateOf = (model: Model, bay: string) => {
  const panel = panelAt(model, bay);
  return { t: panel.thicknessEnd, E: panel.material.youngModulus, nu: panel.material.poisson };
};
/** Washer spread through the plate, as the checks of the plate have it. */
const spread = (model: Model, bay: string): number =>
  boltAt(model, bay).washerOuter / 2 + panelAt(model, bay).thicknessEnd;

/** A step of the rows along an axis: `far` for what hangs on a bolt, `near` for what is left between two. A side that
 *  holds nothing has its ends alone, as for bolts in lines. */
const step =
  (axis: 'x' | 'y', which: 'far' | 'near'): Input['read'] =>
  (model, bay) => {
    const field = fieldAt(model, bay);
    if (!holds(panelAt(model, bay), axis === 'x' ? 'main' : 'cross'))
      return axis === 'x' ? field.pulled.a : field.pulled.b;
    const none = sidesWithout(model, bay);
    if (none !== null) return none;
    const { farX, farY, nearX, nearY } = field.listed!;
    const value = which === 'far' ? (axis === 'x' ? farX : farY) : axis === 'x' ? nearX : nearY;
    if (value > 0) return value;
    return missing(
      which === 'far'
        ? `a step between bolts of the rows along ${axis}: all stand at one place`
        : `a row of bolts along ${axis}, one behind the other: the list has bolts abreast, or one alone, and its block cannot be told`,
    );
  };

const hung = (of: (group: HungGroup) => number) => ofGroup((group) => of(hungGroup(group)));

const from = 'geometry: listed bolts';
const plates = `${from}, plate bending between them`;

/** What bolts on listed places give in place of a ring of even pitches, by symbol. */
export const listedInputs = {
  s_x: { unit: 'mm', meaning: 'widest step of the rows along x (beyond a row’s last bolt: twice what is left)', from, read: step('x', 'far') },
  s_y: { unit: 'mm', meaning: 'widest step of the rows along y, the same', from, read: step('y', 'far') },
  s_nx: { unit: 'mm', meaning: 'narrowest step of the rows along x', from, read: step('x', 'near') },
  s_ny: { unit: 'mm', meaning: 'narrowest step of the rows along y', from, read: step('y', 'near') },
  n_mx: { unit: '1', meaning: 'bolts in a row along x, the longer of the two', from, read: ofGroup(({ rows }) => Math.max(rows.yLow.length, rows.yHigh.length)) },
  n_my: { unit: '1', meaning: 'bolts in a row along y, the longer of the two', from, read: ofGroup(({ rows }) => Math.max(rows.xLow.length, rows.xHigh.length)) },
  n_b: { unit: '1', meaning: 'bolts of the field', from, read: ofGroup(({ points }) => points.length) },
  n_m: { unit: '1', meaning: 'bolts that are left of the field with the shortest of its rows lost', from, read: ofGroup((group) => Math.max(...groupsLeft(group).map(({ length }) => length))) },
  a_p: { unit: 'mm', meaning: 'plate from edge to edge, along x', from, read: ofGroup(({ a }) => a) },
  b_p: { unit: 'mm', meaning: 'plate from edge to edge, along y', from, read: ofGroup(({ b }) => b) },
  A_1: {
    unit: 'mm^2',
    meaning: 'plate that hangs on the worst bolt (0 where it is pressed on)',
    from: plates,
    read: ofGroup((group, model, bay) => pushOfPlate(group, plateOf(model, bay)), isPulled),
  },
  A_g: {
    unit: 'mm^2',
    meaning: 'the same with a row lost, plate rigid on the bolts that are left (0 where none is lost)',
    from: `${from}, elastic group`,
    read: ofGroup(pushOfGroupLeft, isLost),
  },
  A_r: {
    unit: 'mm^2',
    meaning: 'the same with a row lost, plate bending between the bolts that are left (0 where none is lost)',
    from: plates,
    read: ofGroup((group, model, bay) => pushOfPlateLeft(group, plateOf(model, bay)), isLost),
  },
  S_1: {
    unit: 'mm^2',
    meaning: 'largest stress of the plate on its bolts, outside r_b round each, times t² over the pressure',
    from: plates,
    read: ofGroup((group, model, bay) => stressOfPlate(group, plateOf(model, bay), spread(model, bay))),
  },
  S_r: {
    unit: 'mm^2',
    meaning: 'the same with a row lost, on the bolts that are left (0 where none is lost)',
    from: plates,
    read: ofGroup((group, model, bay) => stressOfPlate(group, plateOf(model, bay), spread(model, bay), true), isLost),
  },
  W_1: {
    unit: 'mm^4',
    meaning: 'largest deflection of the plate on its bolts, times D over the pressure',
    from: plates,
    read: ofGroup((group, model, bay) => sagOfPlate(group, plateOf(model, bay), spread(model, bay))),
  },
  n_l: { unit: '1', meaning: 'bolts that are left with the worst row lost', from, read: hung(({ n }) => n) },
  I_p: { unit: 'mm^2', meaning: 'Σ r² of those bolts about their centroid', from, read: hung(({ polar }) => polar) },
  e_W: { unit: 'mm', meaning: 'lever of the weight at the field’s middle about that centroid', from, read: hung(({ lever }) => lever) },
  y_W: { unit: 'mm', meaning: 'worst bolt from the centroid, square to the weight’s line', from, read: hung(({ across }) => across) },
  x_W: { unit: 'mm', meaning: 'worst bolt from the centroid, along the weight’s line', from, read: hung(({ along }) => along) },
  C: {
    unit: '1',
    meaning: 'number of bolts that those left are worth, by their instantaneous centre, worst row and direction',
    from: `${from}, instantaneous centre`,
    read: ofGroup(coefficientLeft),
  },
} as const satisfies Readonly<Record<string, Input>>; // prettier-ignore
