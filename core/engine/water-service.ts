import { readDocument, type RawDocument } from '../document/read-document.ts';
import { closingSection } from '../note/closing-section.ts';
import { hydrodynamicsSection } from '../note/hydrodynamics-section.ts';
import type { Section } from '../note/note.ts';
import { modelOfOption } from '../options/model-of-option.ts';
import { printIn } from '../print-in.ts';
import { Refusal, type RefusalText } from '../refusal.ts';

/** What the page asks: the water about a state of the document, numbered, under an option. */
export interface ToWater {
  readonly edit: number;
  readonly raw: RawDocument;
  readonly option: string | null;
}

export type FromWater =
  | { readonly kind: 'section'; readonly edit: number; readonly section: Section }
  /** Comes later: one bay closed after the other. Null where no motion is stated. */
  | { readonly kind: 'closing'; readonly edit: number; readonly section: Section | null }
  | { readonly kind: 'refused'; readonly edit: number; readonly refusals: readonly RefusalText[] }
  | { readonly kind: 'broken'; readonly edit: number; readonly why: string };

export interface WaterPort {
  readonly tell: (news: FromWater) => void;
  readonly later: (goOn: () => void) => void;
}

/** Reckons added mass and drag apart from the engine. What has been overtaken by a newer state is not begun. */
export function createWaterService({ tell, later }: WaterPort): (message: ToWater) => void {
  let newest: ToWater | null = null;
  return (message) => {
    newest = message;
    later(() => {
      if (newest !== message) return;
      const { edit, raw, option } = message;
      attempt(edit, () => {
        const model = modelOfOption(raw, readDocument(raw), option);
        const print = printIn(model.document.units);
        tell({ kind: 'section', edit, section: hydrodynamicsSection(model, print) });
        later(() => {
          if (newest === message)
            attempt(edit, () => tell({ kind: 'closing', edit, section: closingSection(model, print) }));
        });
      });
    });
  };

  function attempt(edit: number, act: () => void): void {
    try {
      act();
    } catch (error) {
      if (error instanceof Refusal) tell({ kind: 'refused', edit, refusals: error.all });
      else tell({ kind: 'broken', edit, why: error instanceof Error ? (error.stack ?? error.message) : String(error) });
    }
  }
}
