import type { Check } from '../../checks/check.ts';
import type { Safety } from '../../source.ts';
import type { Printed } from './printed.ts';

/**
 * Where the number comes from. `printed`: it stands in the source. `by hand`: worked with pencil and paper from the
 * formula of the source. `second method`: from another theory or another way of solving, as the source says.
 */
export type Origin = 'printed' | 'by hand' | 'second method';

/** A value that a check must give again; it was never taken from this program. */
export interface PublishedValue extends Printed {
  readonly check: Check;
  /** By default with partial factors. */
  readonly safety?: Safety;
  readonly about: string;
  readonly origin: Origin;
  readonly source: string;
  /** The clause was not read in the document itself. */
  readonly memory?: true;
  /** Inputs, or steps taken as given, SI: all that the symbol needs. */
  readonly given: Readonly<Record<string, number>>;
  readonly symbol: string;
}

/** The source in words: a hand calculation and a memory are told apart from what was read. */
export const sourceInWords = ({ origin, source, memory }: PublishedValue): string =>
  `${origin === 'by hand' ? `worked by hand from ${source}` : source}${memory ? ', from memory' : ''}`;
