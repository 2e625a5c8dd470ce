import type { Model } from '../model.ts';
import type { Situation } from '../loads/situation.ts';
import type { Safety, Source } from '../source.ts';

export type LimitState = 'strength' | 'fatigue' | 'serviceability' | 'stability' | 'handling' | 'durability';

/** A value that cannot be had, and what would have to be known. Makes a check "cannot be judged". */
export interface Missing {
  readonly missing: string;
}

export type Reading = number | Missing;
export const missing = (what: string): Missing => ({ missing: what });

/** A named quantity that a check takes in. */
export interface Input {
  /** Unit for print, in mathjs words; `1` for a pure number. `read` gives SI. */
  readonly unit: string;
  readonly meaning: string;
  /** Where the number comes from: "document: panels", "catalogue: fasteners", "loads: share", "geometry". */
  readonly from: string;
  readonly read: (model: Model, place: string, situation: Situation) => Reading;
  /** Set on a factor that only one kind of design basis has. */
  readonly only?: Safety;
}

/** One printed line of a check, which is also the line that is computed. */
export type Step =
  | { readonly symbol: string; readonly expression: string; readonly unit: string; readonly meaning: string }
  /** A step that is no expression (a series, a group sum): a registered kernel of these symbols. */
  | {
      readonly symbol: string;
      readonly kernel: string;
      readonly arguments: readonly string[];
      readonly unit: string;
      readonly meaning: string;
    };

/**
 * An independent bound or simpler method for a symbol that decides. Outside [low, high] is a finding. Its steps may use
 * the inputs that every design basis has, and the check's demand or capacity.
 */
export interface SecondOpinion {
  readonly title: string;
  readonly source: readonly Source[];
  readonly steps: readonly Step[];
  /** The symbol judged, and the symbols of its bounds. */
  readonly of: string;
  readonly low?: string;
  readonly high?: string;
}

/**
 * What the whole plate's solution gives in place of a check's own values. `inputs`: symbols of inputs or steps that it
 * replaces, and others that `steps` need; `steps` take the place of those with the same symbol. All else stays: the same
 * formulas judge both.
 */
export interface BySolution {
  readonly inputs: Readonly<Record<string, Input>>;
  readonly steps?: readonly Step[];
  /** In place of the check's own, where that bounds what a panel by itself does. The hand's value stands beside it anyway. */
  readonly second?: SecondOpinion;
}

/** A design check as data: what is printed is what is computed. */
export interface Check {
  readonly id: string;
  readonly title: string;
  readonly limitState: LimitState;
  readonly source: readonly Source[];
  /** Places where the check can be made: ids of panel fields, tubes, crossings or attachments. */
  readonly places: (model: Model) => readonly string[];
  /** True, or the reason why the check does not apply at this place. */
  readonly applies: (model: Model, place: string, situation: Situation) => true | string;
  /** Made once for each place, because no load enters; by default once for each situation (load case and direction). */
  readonly once?: true;
  /** A rule on distances, sizes or hardness: kept or broken, but no measure of strength. */
  readonly detailing?: true;
  /** A rule that fails whatever the numbers are: gives the reason, or undefined when the rule is kept. */
  readonly rule?: (model: Model, place: string, situation: Situation) => string | undefined;
  readonly inputs: Readonly<Record<string, Input>>;
  readonly steps: Readonly<Partial<Record<Safety, readonly Step[]>>>;
  readonly demand: string;
  readonly capacity: string;
  /** Judged with the whole plate's forces as well, where the document asks for them. */
  readonly solved?: BySolution;
  /** Conditions under which the formula holds; the first that is false makes the check "cannot be judged". */
  readonly range?: readonly { readonly holds: string; readonly otherwise: string }[];
  readonly second: SecondOpinion;
  readonly cautions: readonly string[];
}

export type Verdict = 'passes' | 'fails' | 'not applicable' | 'cannot be judged';
