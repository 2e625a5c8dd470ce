import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

const length = () => quantity('length');

/** What a bolted fixing may say about how its bolts hold and how they are tightened. Each is optional: a check that needs
 *  one that is not given says so. */
export const fixingDetails = {
  /** Characteristic resistances of one one-sided fixing, by its maker's approval. */
  oneSided: z.strictObject({ tension: quantity('force'), shear: quantity('force'), source: text }).optional(),
  /** Procedure by which studs are welded and tested. */
  stud: z.strictObject({ procedure: text }).optional(),
  /** Square pad inside the tube's wall, tapped, welded to it all round. */
  pad: z.strictObject({ material: text, thickness: length(), width: length(), throat: length() }).optional(),
  /** Friction of panel and clamp on the tube. */
  clamp: z.strictObject({ friction: z.strictObject({ value: z.number().positive().max(1), source: text }) }).optional(),
  /** Torque, and the range of k in T = k d F for these threads, this lubrication and this wrench. */
  tightening: withRule(
    z.strictObject({
      torque: quantity('moment'),
      k: z.strictObject({ low: z.number().min(0.05).max(0.5), high: z.number().min(0.05).max(0.5), source: text }),
      /** Part of the preload that coatings under head, nut and between the faces lose as they creep. */
      /** Part of the preload that a panel of plastic or laminate keeps under the washer over the duration of its load. */
      kept: z.strictObject({ value: z.number().min(0).max(1), source: text }).optional(),
      coatingLoss: z.strictObject({ value: z.number().min(0).max(1), source: text }).optional(),
    }),
    ['k.low', 'k.high'],
    ({ k }): Fault[] =>
      k.low <= k.high
        ? []
        : [
            {
              path: ['k', 'low'],
              what: `The smallest k, ${k.low}, is above the largest, ${k.high}`,
              mend: 'Give the range from its smaller to its larger end.',
            },
          ],
  ).optional(),
  /** Square washer over a slot that the standard washer does not cover. */
  plateWasher: z.strictObject({ width: length(), thickness: length() }).optional(),
  /** Crush sleeve between the walls of the tube, round a through-bolt; left out: bore as the hole, wall a quarter of the bolt. */
  sleeve: withRule(
    z.strictObject({ bore: length(), outer: length() }),
    ['bore', 'outer'],
    ({ bore, outer }): Fault[] =>
      bore.si < outer.si
        ? []
        : [
            {
              path: ['outer'],
              what: `The sleeve is ${outer.typed} outside and ${bore.typed} inside: it has no wall`,
              mend: 'Give an outside larger than the bore.',
            },
          ],
  ).optional(),
  /** What keeps the nut from turning. */
  locking: text.optional(),
};
