import type { PanelDesign } from '../../document/schema.ts';
import type { AimId } from './aims.ts';

/** A fixing to try, by a name for print: what differs from the zone's own design's fixing, as a merge patch (RFC 7396), or a whole fixing. */
export interface FixingChoice {
  readonly name: string;
  readonly fixing: Readonly<Record<string, unknown>>;
}

/**
 * Bays that get the same design: all of them for one design everywhere, one each for a design per bay. What is not to be
 * varied is left out and stays as the zone's design (`like`) has it. Quantities as typed, so that an option that is
 * found reads as if it had been written by hand.
 */
export interface Zone {
  readonly name: string;
  /** Panels by their key in the document: "A1", "A1:B2". */
  readonly panels: readonly string[];
  /** Name of the design that the others differ from. */
  readonly like: string;
  readonly thickness?: readonly string[];
  readonly material?: readonly string[];
  readonly side?: readonly PanelDesign['side'][];
  /** Onto main and cross tubes alike. */
  readonly overlap?: readonly string[];
  readonly fixing?: readonly FixingChoice[];
  /** Its bays may also be left open. */
  readonly open?: true;
}

/** What a found option has to keep besides passing every check. SI. */
export interface Limits {
  /** Mass in air that the crane lifts, kg. */
  readonly lift?: number;
  /** Heaviest panel by hand, kg. */
  readonly panelByHand?: number;
  /** Open part of the outline. */
  readonly openLeast?: number;
  readonly openMost?: number;
}

export interface SearchSpace {
  /** The option that the search starts from; null is the document as it stands. */
  readonly from: string | null;
  readonly zones: readonly Zone[];
  /** The first leads: options are tried in its order, and bound and gap are told of it. */
  readonly aims: readonly [AimId, ...AimId[]];
  readonly limits: Limits;
  /** Checks, or whole limit states, set aside by the user: what is found may fail them, and is told so. */
  readonly aside: readonly string[];
  /** True where an option with a check that cannot be judged is not wanted either. */
  readonly judged: boolean;
}
