import { kinds, type Kind } from '../../core/quantity/kinds.ts';
import { readQuantity } from '../../core/quantity/read-quantity.ts';
import { Refusal, refusal } from '../../core/refusal.ts';

/** SI value of a quantity that stands after an option; what is wrong with it is told with the option's name. */
export function quantityOption(option: string, text: string, kind: Kind): number {
  try {
    return readQuantity(text, kind).si;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw refusal({ what: error.what, where: { option }, mend: error.mend });
  }
}

/** The same, and it must be more than zero. */
export function positiveOption(option: string, text: string, kind: Kind): number {
  const si = quantityOption(option, text, kind);
  if (si > 0) return si;
  throw refusal({
    what: `“${text}” must be more than zero`,
    where: { option },
    mend: `Write ${kinds[kind].word} above zero: ${kinds[kind].example}.`,
  });
}
