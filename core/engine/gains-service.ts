import { readDocument, type RawDocument } from '../document/read-document.ts';
import type { PlateDocument } from '../document/schema.ts';
import { modelOfOption } from '../options/model-of-option.ts';
import { waterGainRows, type GainRow } from '../options/water-gain-rows.ts';
import { waterGains } from '../options/water-gains.ts';
import { printIn } from '../print-in.ts';
import { Refusal } from '../refusal.ts';

/** What the page asks: what each option of a state of the document gains in the water. */
export interface ToGains {
  readonly edit: number;
  readonly raw: RawDocument;
}

/** One option after the other, as soon as it is known. */
export type FromGains = { readonly edit: number; readonly option: string | null } & OptionGains;

/** Rows of the comparison, or why there are none. */
export type OptionGains = { readonly rows: readonly GainRow[] } | { readonly why: string };

export interface GainsPort {
  readonly tell: (news: FromGains) => void;
  readonly later: (goOn: () => void) => void;
}

/** Reckons an option a slice, so that a newer state is heard between two; what it overtakes is not gone on with. */
export function createGainsService({ tell, later }: GainsPort): (message: ToGains) => void {
  let newest: ToGains | null = null;
  return (message) => {
    newest = message;
    const { raw, edit } = message;
    let document: PlateDocument;
    let waiting: (string | null)[];
    const next = (): void => {
      if (newest !== message) return;
      const option = waiting.shift();
      if (option === undefined) return;
      tell({ edit, option, ...gainsOf(raw, document, option) });
      later(next);
    };
    later(() => {
      if (newest !== message) return;
      try {
        document = readDocument(raw);
      } catch (error) {
        // A document that cannot be read is told at its fields by the engine.
        if (error instanceof Refusal) return;
        throw error;
      }
      waiting = [null, ...document.options.map(({ id }) => id)];
      next();
    });
  };
}

function gainsOf(raw: RawDocument, document: PlateDocument, option: string | null): OptionGains {
  try {
    const model = modelOfOption(raw, document, option);
    if (!model.document.hydrodynamics) return { why: 'Motion and sea are not stated on the sheet Hydrodynamics.' };
    return { rows: waterGainRows(waterGains(model), printIn(model.document.units), model.document.rates?.currency ?? null) }; // prettier-ignore
  } catch (error) {
    if (error instanceof Refusal) return { why: error.all[0]!.what };
    return { why: error instanceof Error ? error.message : String(error) };
  }
}
