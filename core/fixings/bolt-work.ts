import type { BoltedFixing } from '../document/schema.ts';

/** What fitting bolts takes, for each, s; and parts and holes for each. */
export interface BoltWork {
  /** Holes drilled in the panel and in tube walls. */
  readonly holes: number;
  /** Drilling and deburring, fitting and tightening, taking out again. */
  readonly drill: number;
  readonly fit: number;
  readonly remove: number;
  /** Loose pieces in a hand on deck: bolt, nut, washers. */
  readonly loose: number;
}

const minute = 60;

/** Work of one bolt by its kind. Times are common practice in a shop and on deck, no source: a start for the user's own. */
export const boltWork: Readonly<Record<BoltedFixing['into'], BoltWork>> = {
  'through-bolt with sleeve': { holes: 3, drill: 9 * minute, fit: 4 * minute, remove: 3 * minute, loose: 4 },
  'one-sided': { holes: 2, drill: 4 * minute, fit: 2 * minute, remove: 4 * minute, loose: 1 },
  'welded stud': { holes: 1, drill: 3 * minute, fit: 2 * minute, remove: 1.5 * minute, loose: 2 },
  'tapped pad': { holes: 2, drill: 12 * minute, fit: 1.5 * minute, remove: 1.5 * minute, loose: 2 },
  clamp: { holes: 1, drill: 2 * minute, fit: 6 * minute, remove: 4 * minute, loose: 6 },
};
