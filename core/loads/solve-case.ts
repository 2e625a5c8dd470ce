import { once } from '../once.ts';
import { fieldLoads, type FieldLoads } from './field-loads.ts';
import { addLoaded, forceOf, sumOf, type Loaded } from './loaded.ts';
import type { PointForce } from './moment-bound.ts';
import type { FieldLoad, PlateLoads } from './plate-loads.ts';
import type { Pressures } from './pressures.ts';
import type { Balance, LegPull, LoadCaseName, Situation } from './situation.ts';
import type { SupportSet } from './support-set.ts';
import type { Supports } from './supports.ts';
import { TubeEnvelope } from './tube-envelope.ts';
import type { Motion } from './tube-frame.ts';
import { addLoad, cellResultant } from './tube-lines.ts';

/** A consistent set of loads on the plate: what is solved. */
export interface Loading {
  readonly name: string;
  /** Panel that is not there, by id. */
  readonly lost?: string;
  /** Net pressure on each field. */
  readonly pressures: Pressures;
  /** On the tubes directly: loads times factors. */
  readonly onTubes: readonly (readonly [Loaded, number])[];
}

type Acting = Pick<Loading, 'pressures' | 'onTubes'>;

/** A load case before it is solved. */
export interface CaseInput {
  readonly id: string;
  readonly loadCase: LoadCaseName;
  readonly direction: 'up' | 'down';
  readonly title: string;
  readonly path: string;
  readonly accidental: boolean;
  readonly loadFactor: number;
  /** Total force that names the case, N up, factored. */
  readonly force: number;
  /** Printed lines of what acts; what balances it is added. The first loading (or that of `printed`) is what they sum. */
  readonly terms: readonly { readonly name: string; readonly force: number }[];
  /** Pressure that each field is judged with, Pa up; the plate's inertia is still taken off where it balances and `relieved`. */
  readonly pressures: Float64Array;
  readonly relieved: boolean;
  /** The same with every load factor 1: pressure on each field, and net force on the plate, N up, that its inertia balances. */
  readonly service: { readonly pressures: Float64Array; readonly force: number };
  readonly loadings: readonly Loading[];
  /** Mass that the plate moves with, kg, when it balances itself. */
  readonly movingMass: number;
  readonly support: { readonly set: SupportSet; readonly supports: Supports };
  /** Supports that are there, one list for each variant solved. */
  readonly present: readonly (readonly number[])[];
  readonly missing?: string;
}

/** How slings and legs that are four share, 0027/ND Rev 11, 5.6.12: one diagonal carries this times its share. */
export const skewFactor = 1.25;

const skewWords = `Four slings or legs share with a skew load factor of ${skewFactor} on each diagonal in turn (0027/ND Rev 11, 5.6.12).`;

export interface SolvedCase {
  readonly situation: Situation;
  /** The support goes slack, so that the plate's inertia balances. */
  readonly slack: () => boolean;
  readonly solution: () => Solution;
}

/** The worst of each quantity over all loadings of a case and all variants of its supports. */
interface Solution {
  readonly tubes: Situation['tubes'];
  readonly attachmentForces: Situation['attachmentForces'];
  readonly legs: Situation['legs'];
  /** Of the first loading: what the supports, or inertia, add to its force. */
  readonly balancing: number;
  readonly momentResidual: number;
  /** Largest couple that only the plate's turning balances, over the force that names the case: an arm, m. */
  readonly offCentre: number;
  /** Supports that carry nothing although they are there, by id. */
  readonly idle: readonly string[];
  /** Four slings or legs share unequally. */
  readonly skewed: boolean;
}

/** A case ready to be solved: what it is known for is laid out, and solved, when it is first asked for. `seen` is told each solution. */
export function solveCase(plate: PlateLoads, input: CaseInput, seen?: Seen): SolvedCase {
  const { set } = input.support;
  const laid = once(() => laidOf(plate, input));
  const solution = once(() => solutionOf(plate, input, laid(), seen));
  const situation: Situation = {
    id: input.id,
    loadCase: input.loadCase,
    direction: input.direction,
    title: input.title,
    get path() {
      return solution().skewed ? `${input.path} ${skewWords}` : input.path;
    },
    accidental: input.accidental,
    loadFactor: input.loadFactor,
    force: input.force,
    get pressures() {
      return laid().byBay;
    },
    get servicePressures() {
      return laid().serviceByBay;
    },
    get panelForces() {
      return laid().panelForces;
    },
    get attachmentForces() {
      return solution().attachmentForces;
    },
    get legs() {
      return solution().legs;
    },
    get balance() {
      return balanceOf(input, laid(), solution());
    },
    get tubes() {
      return solution().tubes;
    },
    get loadings() {
      return laid().named;
    },
    supports: set,
    present: input.present,
    ...(input.missing ? { missing: input.missing } : {}),
  };
  return { situation, slack: () => laid().loads.some(({ slack }) => slack), solution };
}

type Seen = (motion: Motion, load: Float64Array) => void;

/** Every loading of a case on the tubes, and what each field is pressed with. */
interface Laid {
  readonly loads: readonly Balanced[];
  /** Largest of any loading, m/s² up. */
  readonly acceleration: number;
  /** In the order of the fields. */
  readonly pressures: Float64Array;
  readonly byBay: Situation['pressures'];
  readonly serviceByBay: Situation['servicePressures'];
  readonly panelForces: Situation['panelForces'];
  readonly named: Situation['loadings'];
}

/** A loading on the tubes, balanced by inertia where the support is slack. */
interface Balanced {
  readonly load: Loaded;
  readonly slack: boolean;
  /** N up, before inertia. */
  readonly force: number;
  /** m/s² up. */
  readonly acceleration: number;
}

function laidOf(plate: PlateLoads, input: CaseInput): Laid {
  const { oneWay } = input.support.set;
  const { lines, frame, fields } = plate;
  const onFields = fieldLoads(plate);
  const loads = input.loadings.map((loading): Balanced => {
    const applied = assembled(plate, onFields, loading);
    const force = forceOf(frame, applied);
    const slack = oneWay && force > 0;
    const a = slack ? force / input.movingMass : 0;
    return { slack, force, acceleration: a, load: slack ? balancedByInertia(plate, onFields, loading, a) : applied };
  });
  const acceleration = loads.reduce((most, { acceleration: a }) => Math.max(most, a), 0);
  const less = (of: Float64Array, a: number): Float64Array =>
    input.relieved ? Float64Array.from(of, (p, i) => p - fields[i]!.mass * a) : of;
  const pressures = less(input.pressures, acceleration);
  const { service } = input;
  const unfactored = less(service.pressures, oneWay && service.force > 0 ? service.force / input.movingMass : 0);
  const byBay = (of: Float64Array) => new Map(fields.map(({ bay }, i) => [bay, of[i]!]));
  return {
    loads,
    acceleration,
    pressures,
    byBay: byBay(pressures),
    serviceByBay: byBay(unfactored),
    panelForces: panelForces(fields, plate, pressures),
    named: input.loadings.map(({ name, pressures: own, onTubes, lost }) => ({
      name,
      pressures: own.net,
      // made when it is asked for: of a panel lost in turn there are as many as panels, of which a solver takes a few
      get onTubes() {
        const load = new Float64Array(4 * lines.from.length);
        for (const [term, scale] of onTubes) addLoad(load, term.load, scale);
        return load;
      },
      lost: lost ?? null,
    })),
  };
}

/** What acts, what balances it, and what is left over. */
function balanceOf(
  { terms: acting, support: { set }, loadCase }: CaseInput,
  { loads, acceleration }: Laid,
  { balancing, momentResidual }: Solution,
): Balance {
  const by: Balance['by'] = loads.some(({ slack }) => slack)
    ? 'own inertia'
    : set.name === 'deck'
      ? 'supports on deck'
      : set.name === 'suspension' && loadCase !== 'lift in air' && loadCase !== 'lifting out'
        ? 'suspension'
        : 'slings';
  const terms = [...acting, ...(loads.length > 0 ? [{ name: balanceNames[by], force: balancing }] : [])];
  const largest = terms.reduce((most, { force }) => Math.max(most, Math.abs(force)), 0);
  const residual = largest > 0 ? Math.abs(terms.reduce((s, { force }) => s + force, 0)) / largest : 0;
  return { by, terms, residual, momentResidual, acceleration };
}

/** Solves every loading of a case with every variant of its supports and keeps the worst of each quantity. */
function solutionOf(plate: PlateLoads, input: CaseInput, { loads, pressures }: Laid, seen?: Seen): Solution {
  const { set, supports } = input.support;
  const { lines, frame } = plate;
  const envelope = new TubeEnvelope(frame);
  const worst = new Float64Array(set.items.length);
  const idle = new Set<string>();
  let [skewed, momentResidual, offCentre] = [false, 0, 0];
  let balancing: number | null = null;
  const size = Math.max(...lines.ends.map(([from, to]) => to - from));

  for (const { load, force, slack } of loads)
    for (const present of slack ? [[]] : input.present)
      for (const held of supports.hold(load, { present, oneWay: set.oneWay, skew: set.slings ? skewFactor : 1 })) {
        skewed ||= held.skewForce !== 0;
        envelope.add(held.motion, held.load, held.plane);
        seen?.(held.motion, held.load);
        const acting = set.items.map(({ place }, i): PointForce => ({
          x: place.x,
          y: place.y,
          force: held.forces[i]!,
        }));
        envelope.raise('momentBound', plate.momentBound.of(held.load, acting));
        envelope.raise('axial', thrusts(held.forces, set, lines.tubes.length));
        held.forces.forEach((V, i) => {
          if (Math.abs(V) > Math.abs(worst[i]!)) worst[i] = V;
        });
        held.slack.forEach((i) => idle.add(set.items[i]!.id));
        offCentre = Math.max(offCentre, input.force === 0 ? 0 : Math.hypot(...held.couple) / Math.abs(input.force));
        momentResidual = Math.max(momentResidual, leftOver(plate, held.load, acting, size));
        balancing ??= slack ? forceOf(frame, load) - force : held.forces.reduce((total, V) => total + V, 0);
      }
  for (const id of [...idle]) if (worst[set.items.findIndex((item) => item.id === id)] !== 0) idle.delete(id);
  envelope.raise('wallLine', wallLines(plate, pressures));
  return {
    tubes: envelope.forces(),
    attachmentForces: new Map(set.items.map(({ id }, i) => [id, worst[i]!])),
    legs: set.name === 'deck' ? new Map() : new Map(set.items.map(({ id, lean }, i) => [id, legPull(worst[i]!, lean)])),
    balancing: balancing ?? 0,
    momentResidual,
    offCentre,
    idle: [...idle],
    skewed,
  };
}

const balanceNames: Readonly<Record<Balance['by'], string>> = {
  suspension: 'Suspension',
  'weight in water': 'Weight in water',
  'own inertia': 'Inertia of the plate and of the water in its tubes',
  'supports on deck': 'Supports on deck',
  slings: 'Slings',
};

/** All of a loading on the tubes. */
function assembled({ rising }: PlateLoads, onFields: FieldLoads, { pressures, onTubes }: Acting): Loaded {
  const sum = sumOf(rising, onTubes);
  onFields.add(sum, pressures);
  return sum;
}

/** The loading less the inertia of panels (by pressure) and of all the rest (along the tubes): a force in all of zero. */
function balancedByInertia(plate: PlateLoads, onFields: FieldLoads, loading: Loading, a: number): Loaded {
  const pressures = loading.pressures.with(onFields.masses, -a);
  const sum = assembled(plate, onFields, { pressures, onTubes: loading.onTubes });
  addLoaded(sum, plate.rising, -forceOf(plate.frame, sum));
  return sum;
}

function panelForces(
  fields: readonly FieldLoad[],
  { shares }: PlateLoads,
  pressures: Float64Array,
): Map<string, number> {
  const sums = new Map<string, number>();
  const byBay = new Map(fields.map(({ bay }, i) => [bay, pressures[i]!]));
  for (const { panel, area, bay } of [...fields, ...shares.doubled])
    sums.set(panel.id, (sums.get(panel.id) ?? 0) + byBay.get(bay)! * area);
  return sums;
}

/** Pull along a leg that carries V up and leans by its parts in plan for 1 N up. */
function legPull(V: number, [x, y]: readonly [number, number]): LegPull {
  return { tension: V * Math.hypot(1, x, y), x: V * x, y: V * y, angle: Math.atan(Math.hypot(x, y)) };
}

/** Axial force of each tube: all that legs push into it one way, over its full length. */
function thrusts(forces: Float64Array, { items }: SupportSet, tubes: number): Float64Array {
  const pushes = [new Float64Array(tubes), new Float64Array(tubes)] as const;
  items.forEach(({ lean, thrust }, i) => {
    for (const k of [0, 1] as const) {
      const push = forces[i]! * lean[k];
      pushes[push < 0 ? 1 : 0][thrust[k]]! += Math.abs(push);
    }
  });
  return pushes[0].map((push, i) => Math.max(push, pushes[1][i]!));
}

/** Largest line load of a panel's edge on each tube's wall, N/m. */
function wallLines({ fields, lines }: PlateLoads, pressures: Float64Array): Float64Array {
  const most = new Float64Array(lines.tubes.length);
  fields.forEach(({ wall }, i) => {
    for (const [tube, line] of wall) most[tube] = Math.max(most[tube]!, Math.abs(pressures[i]!) * line);
  });
  return most;
}

/** Force and moments left over of a load and the supports' forces, over the largest of the forces (and the plate's size). */
function leftOver({ lines }: PlateLoads, load: Float64Array, acting: readonly PointForce[], size: number): number {
  const sum = new Float64Array(3);
  let [before, largest] = [0, 0];
  for (let e = 0; e < lines.from.length; e++) {
    before = sum[0]!;
    cellResultant(lines, load, e, sum);
    largest += Math.abs(sum[0]! - before);
  }
  for (const { x, y, force } of acting) {
    sum[0]! += force;
    sum[1]! += force * x;
    sum[2]! += force * y;
  }
  return largest > 0 ? Math.max(Math.abs(sum[0]!), Math.hypot(sum[1]!, sum[2]!) / size) / largest : 0;
}
