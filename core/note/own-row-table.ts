import { fieldWords } from '../document/field-words.ts';
import type { Model } from '../model.ts';
import { sourceText } from '../result.ts';
import type { Table } from './note.ts';

/** Rows that the document adds to the catalogue, as they were typed, so that a reader sees whose numbers were used. No table without such rows. */
export function ownRowTable({ document }: Model): Table[] {
  const rows = Object.entries(document.catalogue).flatMap(([kind, list]) =>
    list.map(({ id, title, source, ...values }) => [
      fieldWords(kind),
      title === id ? id : `${id}: ${title}`,
      valueText(values),
      source ? sourceText(source) : 'no source',
    ]),
  );
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: 'Rows that the document adds to the catalogue',
      columns: [
        { title: 'Kind', width: 0.12 },
        { title: 'Row', width: 0.2 },
        { title: 'Values', width: 0.46 },
        { title: 'Source', width: 0.22 },
      ],
      rows,
      loud: rows.flatMap(([, , , source], i) => (source === 'no source' ? [i] : [])),
    },
  ];
}

/** Values of a row in words: "modulus 210 GPa, beside a weld (yield 115 MPa, ultimate 270 MPa)". */
export function valueText(value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value);
  if ('typed' in value) return String(value.typed);
  if (Array.isArray(value)) return value.map((one) => `(${valueText(one)})`).join(' ');
  return Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .map(([key, inner]) => {
      const group = typeof inner === 'object' && inner !== null && !('typed' in inner) && !Array.isArray(inner);
      return `${fieldWords(key)} ${group ? `(${valueText(inner)})` : valueText(inner)}`;
    })
    .join(', ');
}
