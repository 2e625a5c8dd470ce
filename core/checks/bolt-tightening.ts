import type { Model } from '../model.ts';
import { bolted, boltClassAt, fixingAt } from './bolt-inputs.ts';
import { panelAt } from './field-inputs.ts';
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

/** Why a preload cannot be counted on where the panel itself creeps under the washer, and nothing says what is kept. */
export function creeps(model: Model, bay: string): Missing | undefined {
  const { family, title } = panelAt(model, bay).material;
  if ((family !== 'thermoplastic' && family !== 'laminate') || fixingAt(model, bay).tightening?.kept) return undefined;
  return missing(
    `the preload that is left on ${title}, which creeps under a washer ("kept" of the tightening, from a test over the load's duration), or a sleeve through the panel`,
  );
}

const lost = of(
  '1',
  'part of the preload that is lost as coatings creep, and a panel of plastic or laminate under the washer',
  ({ coatingLoss, kept }) => {
    const coating = coatingLoss?.value ?? 0;
    return coating + (1 - coating) * (1 - (kept?.value ?? 1));
  },
);

/** How the bolts are tightened, by symbol. */
export const tighteningInputs = {
  T_t: of('N*m', 'tightening torque', ({ torque }) => torque.si),
  k_low: of('1', 'smallest k in T = k d F', ({ k }) => k.low),
  k_high: of('1', 'largest k in T = k d F', ({ k }) => k.high),
  c_c: { ...lost, read: (model, bay, situation) => creeps(model, bay) ?? lost.read(model, bay, situation) },
} as const satisfies Readonly<Record<string, Input>>;

/** The least preload after tightening and creep of coatings, F_lo; needs T_t, k_high, d, c_c. */
export const leastPreload: Step = {
  symbol: 'F_lo',
  expression: '(1 - c_c) * T_t / (k_high * d)',
  unit: 'kN',
  meaning: 'least preload: the roughest thread, and what has crept',
};

export const tighteningCautions = [
  'k is of the threads, lubricant and wrench as used: prove it on the bolts themselves. Anti-seize lowers k and raises the preload of the same torque.',
  'Locking keeps a nut from turning; it does not bring back a preload that is lost, nor stop slip.',
  'Plastic and laminate creep under a washer for as long as they are pressed, faster when warm: retighten, and check the preload after the first weeks.',
] as const;
