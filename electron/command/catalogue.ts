import { resolve } from 'node:path';
import { catalogueWith, type RowKind } from '../../core/catalogue/catalogue.ts';
import type { Row } from '../../core/catalogue/rows.ts';
import { userRows } from '../../core/document/user-rows.ts';
import { refusal } from '../../core/refusal.ts';
import { sourceText } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'catalogue [--kind KIND] [--find TEXT] [--document FILE] [--json]';
const kinds: Readonly<Record<string, RowKind>> = {
  materials: 'material', sections: 'section', bolts: 'bolt', classes: 'boltClass', welds: 'weldMetal', plates: 'stockPlate', substances: 'substance',
}; // prettier-ignore

export const catalogueVerb: Verb = {
  usage,
  purpose: 'lists materials, sections, bolts and the rest, each row with its source',
  help: `  --kind KIND       one of ${Object.keys(kinds).join(', ')}\n  --find TEXT       rows whose id or title has this text\n  --document FILE   the rows of this document too, each marked as its own\n  --json            all values in SI\n\nExample: stillplate catalogue --kind sections --find 100x100`,
  run: async (args, on) => {
    const { values } = optionsOf(
      args,
      { kind: { type: 'string' }, find: { type: 'string' }, document: { type: 'string' }, json: { type: 'boolean' } },
      usage,
      0,
    );
    if (values.kind !== undefined && !Object.hasOwn(kinds, values.kind))
      throw refusal({
        what: `“${values.kind}” is no kind of row`,
        where: { option: '--kind' },
        mend: `Use one of: ${Object.keys(kinds).join(', ')}.`,
      });
    const own =
      values.document === undefined ? {} : userRows((await openDocument(resolve(on.folder, values.document))).document);
    const catalogue = catalogueWith(own);
    const ownRows = new Set<Row>(Object.values(own).flat() as Row[]);
    const wanted = values.find?.toLowerCase() ?? '';
    const found = Object.entries(kinds)
      .filter(([name]) => values.kind === undefined || values.kind === name)
      .map(
        ([name, kind]) =>
          [
            name,
            catalogue.list(kind).filter((row: Row) => `${row.id} ${row.title}`.toLowerCase().includes(wanted)),
          ] as const,
      );
    if (values.json) on.out(JSON.stringify(Object.fromEntries(found), null, 2));
    else if (found.every(([, rows]) => rows.length === 0))
      on.out(`No row has “${values.find ?? ''}” in its id or title.`);
    else
      for (const [name, rows] of found) {
        if (rows.length === 0) continue;
        on.out(`${name}:`);
        for (const row of rows)
          on.out(
            `  ${row.id.padEnd(26)} ${row.title.padEnd(52)} ${ownRows.has(row) ? 'the document’s own: ' : ''}${row.source ? sourceText(row.source) : 'no source'}`,
          );
      }
    return exit.passes;
  },
};
