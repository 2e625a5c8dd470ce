import { modelOf, planOf } from '../appraise.ts';
import { documentOfOption } from '../document/option.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { PlateDocument } from '../document/schema.ts';
import { builtAs } from '../durability/as-built.ts';
import type { Model } from '../model.ts';

/** A document under an option with what is derived from it, and no check judged: much quicker where only the plate is asked for. */
export const modelOfOption = (raw: RawDocument, document: PlateDocument, option: string | null): Model =>
  modelOf(builtAs(documentOfOption(raw, document, option, planOf).document, option));
