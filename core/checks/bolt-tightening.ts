import type { Model } from '../model.ts';
import { bolted, boltClassAt, fixingAt } from './bolt-inputs.ts';
import { missing, type Input, type Missing, type Step } from './check.ts';

type Tightening = NonNullable<ReturnType<typeof fixingAt>['tightening']>;

/** True where the document says how the bolts are tightened, or why the check does not apply. */
export function tightened(model: Model, bay: string): true | string {
  const applies = bolted(model, bay);
  if (applies !== true) return applies;
  return fixingAt(model, bay).tightening ? true : 'the document states no tightening torque';
}

/** Why a preload cannot be counted on. Stainless threads gall, and their preload creeps. */
export function unproved(model: Model, bay: string): Missing | undefined {
  const row = boltClassAt(model, bay);
  return row.family === 'stainless steel'
    ? missing(`procedure tests of preload with ${row.title}: no rule holds without them`)
    : undefined;
}

const of = (unit: string, meaning: string, value: (tightening: Tightening) => number): Input => ({
  unit,
  meaning,
  from: 'document: fixing',
  read: (model, bay) => {
    const { tightening } = fixingAt(model, bay);
    if (!tightening) return missing('the torque, and the range of k, of these bolts ("tightening" of the fixing)');
    return unproved(model, bay) ?? value(tightening);
  },
});

/** How the bolts are tightened, by symbol. */
export const tighteningInputs = {
  T_t: of('N*m', 'tightening torque', ({ torque }) => torque.si),
  k_low: of('1', 'smallest k in T = k d F', ({ k }) => k.low),
  k_high: of('1', 'largest k in T = k d F', ({ k }) => k.high),
  c_c: of('1', 'part of the preload that coatings lose as they creep', ({ coatingLoss }) => coatingLoss?.value ?? 0),
} as const satisfies Readonly<Record<string, Input>>;

/** The least preload after tightening and creep of coatings, F_lo; needs T_t, k_high, d, c_c. */
export const leastPreload: Step = {
  symbol: 'F_lo',
  expression: '(1 - c_c) * T_t / (k_high * d)',
  unit: 'kN',
  meaning: 'least preload: the roughest thread, and coatings that have crept',
};

export const tighteningCautions = [
  'k is of the threads, lubricant and wrench as used: prove it on the bolts themselves. Anti-seize lowers k and raises the preload of the same torque.',
  'Locking keeps a nut from turning; it does not bring back a preload that is lost, nor stop slip.',
] as const;
