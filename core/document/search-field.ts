import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

const lengths = z.array(quantity('length')).min(1).max(60).optional();
const names = z.array(text).min(1).max(60).optional();
const part = z.number().min(0).max(1).optional();
const count = z.number().int().nonnegative();

/** What a search found and why the others were turned down, kept so that the note can tell it without searching again. SI. */
const record = z.strictObject({
  /** Key of what was searched: of another state of the document the note says so instead of telling it. */
  of: text,
  from: text.nullable(),
  options: count,
  decided: count,
  judged: count,
  passing: count,
  beaten: count,
  /** Solved as a whole plate; left out where the search judged by forces by hand alone. */
  solved: count.optional(),
  stopped: z.array(z.strictObject({ title: text, count })).max(200),
  found: z
    .array(
      z.strictObject({
        title: z.string().max(2000),
        aims: z.record(text, z.number()),
        governing: z.string().max(400),
        unjudged: count,
        failsAside: z.array(text).max(200),
        whyNotThinner: z.array(z.string().max(2000)).max(200),
      }),
    )
    .max(500),
});

/** What the search for the best options may vary, what it aims at and what it has to keep. A list that is left out stays as the panels have it. */
export const searchField = withRule(
  z.strictObject({
    /** What is wanted: mass, weight, cost, holes and utilisation small, what is gained in the water large; the first leads. */
    aims: z
      .array(z.enum(['mass', 'weight', 'cost', 'holes', 'use', 'addedMass', 'drag']))
      .min(1)
      .max(7)
      .default(['mass', 'use']),
    thickness: lengths,
    material: names,
    side: z
      .array(z.enum(['topside', 'underside']))
      .min(1)
      .max(2)
      .optional(),
    overlap: lengths,
    kind: z
      .array(z.enum(['bolted', 'welded']))
      .min(1)
      .max(2)
      .optional(),
    bolt: names,
    pitch: lengths,
    throat: lengths,
    /** One design for all panels, for each set that has the same design now, or for each panel. */
    zones: z.enum(['all', 'designs', 'panels']).default('all'),
    /** Panels may also be left out. */
    open: z.boolean().default(false),
    /** Heaviest plate that may be lifted, heaviest panel by hand, open part of the outline. */
    lift: quantity('mass').optional(),
    panelByHand: quantity('mass').optional(),
    openLeast: part,
    openMost: part,
    /** Limit states or checks set aside: what is found may fail them, and is told so. */
    aside: z.array(text).max(60).default([]),
    /** Nor may any check be left that cannot be judged. */
    judged: z.boolean().default(false),
    record: record.optional(),
  }),
  ['aims', 'openLeast', 'openMost'],
  ({ aims, openLeast, openMost }): Fault[] => [
    ...(new Set(aims).size < aims.length
      ? [{ path: ['aims'], what: 'An aim is named twice', mend: 'Name each aim once.' }]
      : []),
    ...(openLeast !== undefined && openMost !== undefined && openLeast > openMost
      ? [
          {
            path: ['openLeast'],
            what: `At least ${openLeast} and at most ${openMost} open leaves nothing`,
            mend: 'Make the least no larger than the most.',
          },
        ]
      : []),
  ],
);

export type SearchField = z.infer<typeof searchField>;
export type SearchRecord = z.infer<typeof record>;
