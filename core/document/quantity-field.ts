import * as z from 'zod';
import { kinds, type Kind, type Quantity } from '../quantity/kinds.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { Refusal } from '../refusal.ts';
import { shown } from './shown.ts';

// The page's content policy forbids code made from text; zod probes for it otherwise. Said here because every schema
// of the document is built of quantities, and zod asks when an object's schema is made.
z.config({ jitless: true });

type Sign = 'positive' | 'not negative' | 'any';

/** A quantity: a typed string, or `{ si, typed }` whose two values must agree. */
export function quantity(kind: Kind, sign: Sign = 'positive') {
  const { word, example, unit } = kinds[kind];
  return z.unknown().transform((given, context): Quantity => {
    const stop = (message: string, mend: string) => {
      context.addIssue({ code: 'custom', message, params: { mend } });
      return z.NEVER;
    };
    try {
      const pair = typeof given === 'string' ? { typed: given } : typedPair.safeParse(given).data;
      if (!pair) {
        const what = typeof given === 'number' ? 'has no unit' : 'is no quantity';
        return stop(
          given === undefined ? 'This field is missing' : `${shown(given)} ${what}, the field needs ${word}`,
          `Write ${word} in quotation marks with its unit: ${example}.`,
        );
      }
      const read = readQuantity(pair.typed, kind);
      if (
        pair.si !== undefined &&
        !(typeof pair.si === 'number' && Math.abs(pair.si - read.si) <= 1e-9 * Math.abs(read.si))
      )
        return stop(
          `si ${shown(pair.si)} ${unit} and typed “${pair.typed}” (${read.si} ${unit}) disagree`,
          'Keep one of the two, or make them agree.',
        );
      if (sign === 'positive' && !(read.si > 0))
        return stop(
          kind === 'temperature' ? `“${read.typed}” is below absolute zero` : `“${read.typed}” must be more than zero`,
          `Write ${word} above ${kind === 'temperature' ? 'it' : 'zero'}.`,
        );
      if (sign === 'not negative' && !(read.si >= 0))
        return stop(`“${read.typed}” must not be negative`, `Write ${word} of zero or more.`);
      return read;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return stop(error.what, error.mend);
    }
  });
}

const typedPair = z.strictObject({ typed: z.string(), si: z.unknown().optional() });
