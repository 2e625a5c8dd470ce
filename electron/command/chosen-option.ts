import { refusal } from '../../core/refusal.ts';
import type { PlateDocument } from '../../core/document/schema.ts';

/** The option named on the command line: by default the document's chosen one; "base" is the document as it stands. */
export function chosenOption(document: PlateDocument, name: string | undefined): string | null {
  if (name === undefined) return document.chosen;
  if (name === 'base') return null;
  if (document.options.some(({ id }) => id === name)) return name;
  throw refusal({
    what: `There is no option “${name}”`,
    where: { option: '--option' },
    mend: `Name one of: ${['base', ...document.options.map(({ id }) => id)].join(', ')}.`,
  });
}
