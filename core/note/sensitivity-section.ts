import type { RawDocument } from '../document/read-document.ts';
import type { SensitivityRecord } from '../document/sensitivity-field.ts';
import type { Model } from '../model.ts';
import { keyIfThere } from '../options/key-if-there.ts';
import { inputWords } from '../options/sensitivity/input-words.ts';
import { sensitivityKey } from '../options/sensitivity/sensitivity-record.ts';
import { linePlot } from './line-plot.ts';
import type { Block, Section } from './note.ts';
import { otherwiseGoverns, partWords, sharesWords, spreadWords, togetherWords, useWords } from './sensitivity-words.ts';
import { spreadBars } from './spread-bars.ts';

/** What the stated spreads do to what governs, as kept with the document. None where no spread is stated. `option`: the note's. */
export function sensitivitySection(raw: RawDocument, { document }: Model, option: string | null): readonly Section[] {
  const { spreads, sensitivity } = document;
  if (!spreads || spreads.length === 0) return [];
  const record = sensitivity?.record;
  const blocks: readonly Block[] =
    !record ? [{ kind: 'paragraph', text: 'Spreads are stated, but what they do is not kept with the document: nothing is told of it.' }]
    : keyIfThere(sensitivityKey, raw, record.from) === record.of ? [...(record.from === option ? [] : [otherOption(record)]), ...sensitivityBlocks(record)]
    : [{ kind: 'paragraph', tone: 'loud', text: 'What is kept of the spreads is of another state of the document. It is not told here: judge them again and keep it.' }]; // prettier-ignore
  return [{ title: 'What moves the governing check most', blocks }];
}

const otherOption = ({ from }: SensitivityRecord): Block => ({
  kind: 'paragraph',
  tone: 'loud',
  text: `What follows is of ${from === null ? 'the document as it stands' : `the option “${from}”`}, not of the option of this note.`,
});

/** The same in note and window. */
export function sensitivityBlocks(record: SensitivityRecord): readonly Block[] {
  const { governing, moved, together } = record;
  const { shares, quantiles } = together;
  const [least, middle, most] = [0, 10, 20].map((n) => useWords(quantiles[n]!));
  const others = otherwiseGoverns(moved);
  return [
    { kind: 'paragraph', text: `Governs as the document stands: ${governing.title} at ${governing.place}, ${useWords(governing.use)}.`, keep: true },
    spreadBars(record),
    {
      kind: 'table',
      caption: 'Spreads as stated by the user, and what each does by itself',
      columns: [
        { title: 'Input', width: 0.32 },
        { title: 'Spread', width: 0.16 },
        { title: 'At low', width: 0.1, align: 'right' },
        { title: 'At high', width: 0.1, align: 'right' },
        { title: 'Stated by', width: 0.32 },
      ],
      rows: moved.map(({ input, low, high, atLow, atHigh, source }) => [inputWords[input], spreadWords(low, high), useWords(atLow), useWords(atHigh), source]),
    },
    ...(others.length > 0 ? [{ kind: 'list', items: others } as const] : []),
    {
      kind: 'paragraph',
      text: togetherWords(together),
      keep: true,
    },
    linePlot({
      caption: 'Part of the states whose utilisation is at or below a value, all inputs at once; the upright line stands at 1',
      alt: `From ${least} to ${most}, half of the states at or below ${middle}`,
      axes: ['utilisation', 'part of the states, %'],
      curves: [
        { x: quantiles, y: quantiles.map((_, n) => 5 * n), pen: 'accent' },
        ...(quantiles[0]! <= 1 && quantiles[20]! >= 1 ? [{ x: [1, 1], y: [0, 100], pen: 'outline' as const }] : []),
      ],
      shape: 0.35,
    }),
    {
      kind: 'table',
      caption: `Parts of the variance. ${sharesWords(together)}`,
      columns: [
        { title: 'Input', width: 0.5 },
        { title: 'By itself', width: 0.25, align: 'right' },
        { title: 'With all it does together with others', width: 0.25, align: 'right' },
      ],
      rows: [...shares]
        .sort((a, b) => b.total - a.total)
        .map(({ input, first, total }) => [inputWords[input], partWords(first), partWords(total)]),
    },
    {
      kind: 'list',
      tone: 'caution',
      items: [
        'No verdict is changed by what stands here. Forces are by hand; a spread is the user’s own statement, and so is that every value within it is equally likely.',
        'The part of states above 1 is no probability of failure.',
      ],
    },
  ]; // prettier-ignore
}
