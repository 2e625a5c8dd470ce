import * as z from 'zod';
import { spreadInputs } from './spreads-field.ts';
import { text } from './text-field.ts';

const input = z.enum(spreadInputs);
const use = z.number();
const reading = z.strictObject({ check: text, title: text, place: text, use });
const part = z.number().min(0).max(1);

/** What the spreads do, kept so that the note can tell it without judging hundreds of states again. Utilisations are plain numbers. */
const record = z.strictObject({
  /** Key of what was varied: of another state of the document the note says so instead of telling it. */
  of: text,
  from: text.nullable(),
  governing: reading,
  moved: z
    .array(
      z.strictObject({
        input,
        low: z.number(),
        high: z.number(),
        source: text,
        atLow: use.nullable(),
        atHigh: use.nullable(),
        otherAtLow: reading.nullable(),
        otherAtHigh: reading.nullable(),
      }),
    )
    .max(spreadInputs.length),
  /** All inputs at once: the highest utilisation of the checks that govern as it stands or at any end. */
  together: z.strictObject({
    points: z.number().int().positive(),
    seed: z.number().int().nonnegative(),
    /** Titles of the checks that were watched. */
    watched: z.array(text).max(60),
    shares: z.array(z.strictObject({ input, first: z.number(), total: z.number() })).max(spreadInputs.length),
    mean: use,
    /** Utilisation that 0, 5, … 100 % of the states stay at or below. */
    quantiles: z.array(use).length(21),
    /** Part of the states whose utilisation is above one. */
    partOverOne: part,
  }),
});

/** How the spreads are sampled together, and what was found. */
export const sensitivityField = z.strictObject({
  points: z.number().int().min(8).max(4096).default(64),
  seed: z.number().int().min(0).max(4_294_967_295).default(1),
  record: record.optional(),
});

export type SensitivityRecord = z.infer<typeof record>;
