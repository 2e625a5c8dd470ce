import type { LoadCaseName } from '../loads/situation.ts';
import type { Source } from '../source.ts';
import type { LimitState, Verdict } from './check.ts';

/** Whose forces a demand is made of: formulas of plates and the grid of tubes, or the whole plate's solution. */
export type ForcesBy = 'hand' | 'solver';

/** What a check gives with the forces of one of the two. SI. */
export type Side = Pick<CheckRow, 'demand' | 'capacity' | 'utilisation' | 'verdict' | 'reason'>;

/** Both sides of a row, where the document asks for both. The row's own values are those of the side that governs. */
export interface BothSides {
  readonly hand: Side;
  readonly solver: Side;
  readonly governs: ForcesBy;
  /** Why the engineer lets the smaller stand; empty where the larger governs. */
  readonly smaller: string;
}

/** One check at one place in one situation, judged. SI. */
export interface CheckRow {
  readonly id: string;
  readonly title: string;
  readonly limitState: LimitState;
  readonly place: string;
  /** Null for a check in which no load enters. */
  readonly situation: string | null;
  readonly loadCase: LoadCaseName | null;
  readonly direction: 'up' | 'down' | null;
  readonly accidental: boolean;
  /** A rule on distances, sizes or hardness. */
  readonly detailing: boolean;
  readonly demand: number | null;
  readonly capacity: number | null;
  /** SI unit of demand and capacity in mathjs words, as printed by the check. */
  readonly unit: string;
  readonly utilisation: number | null;
  readonly verdict: Verdict;
  /** Passes, with a utilisation of 0.8 or more. */
  readonly near: boolean;
  /** Why it fails by rule, does not apply or cannot be judged; empty otherwise. */
  readonly reason: string;
  readonly sources: readonly Source[];
  /** Null where one side judges alone. */
  readonly both: BothSides | null;
}

/** A rule on distances, sizes or hardness that is kept measures no strength: it governs nothing, however near its limit. */
export const isKeptRule = ({ detailing, verdict }: Pick<CheckRow, 'detailing' | 'verdict'>): boolean =>
  detailing && verdict === 'passes';

export const nearFrom = 0.8;

const rank = { 'cannot be judged': 2, fails: 3, passes: 1, 'not applicable': 0 } as const;

/** Utilisations closer than this are equal: mirrored bays differ in the last bits, and the first of them stands for all. */
export const sameUse = 1e-9;

/** Order by what matters: a fail outranks an unjudged row, that a pass; then the higher utilisation. Negative when `a` comes first. */
export function graver(a: CheckRow, b: CheckRow): number {
  const byVerdict = rank[b.verdict] - rank[a.verdict];
  if (byVerdict !== 0 || a.utilisation === b.utilisation) return byVerdict;
  if (a.utilisation === null) return -1;
  if (b.utilisation === null) return 1;
  const difference = b.utilisation - a.utilisation;
  return Math.abs(difference) <= sameUse * Math.max(a.utilisation, b.utilisation) ? 0 : difference;
}
