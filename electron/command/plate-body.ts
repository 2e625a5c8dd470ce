import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { plateBodyOf, type PlateBody } from '../../core/hydrodynamics/plate-body.ts';
import { refusal } from '../../core/refusal.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { positiveOption } from './quantity-option.ts';
import type { Terminal } from './terminal.ts';

/** Options of a command that asks for one. */
export const plateBodyOptions = {
  mass: { type: 'string' },
  volume: { type: 'string' },
  area: { type: 'string' },
  density: { type: 'string' },
  document: { type: 'string' },
  option: { type: 'string' },
} as const;

type Given = Readonly<Partial<Record<keyof typeof plateBodyOptions, string>>>;

/** The plate of a document (--document, --option), or the figures that stand on the line. Refuses a missing one by name. */
export async function plateBody(given: Given, usage: string, on: Terminal): Promise<PlateBody> {
  if (given.document === undefined) return statedBody(given, usage);
  const { raw, document } = await openDocument(resolve(on.folder, given.document));
  return plateBodyOf(appraise(raw, document, chosenOption(document, given.option)).model);
}

function statedBody(given: Given, usage: string): PlateBody {
  const needed = (name: 'mass' | 'volume' | 'area' | 'density'): number => {
    const text = given[name];
    if (text !== undefined) return positiveOption(`--${name}`, text, name);
    throw refusal({
      what: `--${name} is missing`,
      where: { option: `--${name}` },
      mend: `Give it, or a document with --document. Usage: stillplate ${usage}`,
    });
  };
  return {
    mass: needed('mass'),
    volume: needed('volume'),
    area: needed('area'),
    density: needed('density'),
    waterInside: 0,
    depth: null,
    tested: null,
  };
}
