import { appraise } from '../appraise.ts';
import { readDocument, type RawDocument } from '../document/read-document.ts';
import { hydrodynamicsSection } from '../note/hydrodynamics-section.ts';
import type { Section } from '../note/note.ts';
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
      try {
        const { model } = appraise(raw, readDocument(raw), option);
        tell({ kind: 'section', edit, section: hydrodynamicsSection(model, printIn(model.document.units)) });
      } catch (error) {
        if (error instanceof Refusal) tell({ kind: 'refused', edit, refusals: error.all });
        else tell({ kind: 'broken', edit, why: error instanceof Error ? (error.stack ?? error.message) : String(error) }); // prettier-ignore
      }
    });
  };
}
