import { attachmentPoints } from '../geometry/attachment-points.ts';
import { Refusal } from '../refusal.ts';
import { oncePerModel } from '../once-per-model.ts';
import { bridle, type Bridle, type Vector3 } from './bridle.ts';

/** The legs of a lift on the plate. Tensions as parts of the load on the hook. */
export interface Legs {
  readonly ids: readonly string[];
  readonly eyes: readonly Vector3[];
  readonly lengths: readonly number[];
  readonly whole: Bridle;
  /** Largest part of the hook load in a leg, skew included. */
  readonly largest: number;
  readonly skew: number;
  readonly skewSource: string;
  /** What each leg's loss does: the largest part then, its leg, and how far the plate hangs from level, or why it cannot hang. */
  readonly lost: readonly {
    readonly id: string;
    readonly largest: number;
    readonly tilt: number;
    readonly reason: string;
  }[];
}

/** Factor on the tension of four legs of one length: each diagonal in turn takes more. Source: 0027/ND Rev 11, 5.6.12. */
export const usualSkew = { value: 1.25, source: '0027/ND Rev 11, 5.6.12: four matched slings' } as const;

/** Legs from the pad eyes, or from the suspension's eyes where there are none; or what is missing for them. */
export const legsOf = oncePerModel((model): Legs | { readonly missing: string } => {
  const { document, geometry, mass } = model;
  const sling = document.recovery?.lift?.sling;
  if (!sling) return { missing: 'the lift, with its slings' };
  const points = attachmentPoints(document, geometry);
  const pads = points.filter(({ kind }) => kind === 'pad eye');
  const used = pads.length > 0 ? pads : points;
  const apex = pads.length > 0 ? document.grid.padEyes?.apex.si : document.grid.suspension.apex?.si;
  if (used.length > 4) return { missing: `a bridle of four legs at most: ${used.length} eyes are there` };
  const eyes = used.map(({ x, y, z }): Vector3 => [x, y, z]);
  if (!sling.lengths?.length && apex === undefined)
    return { missing: 'the length of the slings: give recovery.lift.sling.lengths, or pad eyes with an apex' };
  const n = eyes.length;
  const over = [0, 1, 2].map((k) => eyes.reduce((sum, eye) => sum + eye[k]!, 0) / n) as unknown as Vector3;
  const lengths = sling.lengths?.length
    ? sling.lengths.map(({ si }) => si)
    : eyes.map((eye) => Math.hypot(eye[0] - over[0], eye[1] - over[1], over[2] + apex! - eye[2]));
  if (lengths.length !== n) return { missing: `a length for each of ${n} legs: ${lengths.length} are given` };
  const centre = mass.centre as Vector3;
  try {
    const whole = bridle(eyes, lengths, centre);
    const { value: skew, source } = n === 4 ? (sling.skew ?? usualSkew) : { value: 1, source: 'statics alone decides' };
    return {
      ids: used.map(({ id }) => id),
      eyes,
      lengths,
      whole,
      skew,
      skewSource: source,
      largest: skew * Math.max(...whole.tensions),
      lost: n < 2 ? [] : used.map(({ id }, i) => lostLeg(id, eyes.filter((_, k) => k !== i), lengths.filter((_, k) => k !== i), centre)), // prettier-ignore
    };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { missing: `${error.what}. ${error.mend}` };
  }
});

/** The legs that are left take the plate over: three by statics; where one of them would have to push, the plate swings onto the other two. */
function lostLeg(
  id: string,
  eyes: readonly Vector3[],
  lengths: readonly number[],
  centre: Vector3,
): Legs['lost'][number] {
  try {
    const left = bridle(eyes, lengths, centre);
    const carrying = left.tensions.flatMap((T, i) => (T > 1e-6 ? [i] : []));
    const settled = carrying.length === eyes.length ? left : bridle(carrying.map((i) => eyes[i]!), carrying.map((i) => lengths[i]!), centre); // prettier-ignore
    return { id, largest: Math.max(...settled.tensions), tilt: settled.tilt, reason: '' };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { id, largest: Infinity, tilt: Math.PI, reason: error.what };
  }
}
