import * as z from 'zod';
import { text } from './text-field.ts';

const rate = z.number().nonnegative().finite().optional();

/**
 * The user's own rates, in the user's own currency; there is no default for any of them, because a rate that nobody
 * gave would decide for somebody. Money for each unit named; minutes are of one person's work.
 */
export const ratesField = z.strictObject({
  currency: text,
  /** Where the rates are from: a quotation, the yard's own books. */
  source: text,
  /** Workshop and deck labour, for an hour of one person. */
  labourPerHour: rate,
  /** Plate, for a kg of panel as built. */
  platePerKg: rate,
  /** Cutting, for a metre of cut edge. */
  cutPerMetre: rate,
  /** Drilling: a hole through panel or tube. */
  perHole: rate,
  /** Bolt with its nut, washers, sleeve or stud. */
  perBolt: rate,
  /** Welding, for a metre of weld. */
  weldPerMetre: rate,
  /** Coating again after welding or drilling, for a metre of weld and for a hole. */
  recoatPerMetre: rate,
  recoatPerHole: rate,
  /** Minutes of one person on deck. */
  minutesToFitBolt: rate,
  minutesToRemoveBolt: rate,
  minutesToWeldMetre: rate,
  minutesToCutMetre: rate,
  minutesToPlacePanel: rate,
  /** People who work on deck at once, and the vessel for an hour while panels are off. */
  peopleOnDeck: z.number().positive().finite().optional(),
  vesselPerHour: rate,
  /** How often in its life a panel is taken off and put back. */
  removals: rate,
});
