import type { Model } from '../model.ts';
import { keyIfThere } from '../options/key-if-there.ts';
import { aimIds, aimWords, isWaterAim, type AimId } from '../options/search/aims.ts';
import { searchCautions, searchKey } from '../options/search/search-record.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { SearchField, SearchRecord } from '../document/search-field.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Block, Section } from './note.ts';

/** What was searched and within which bounds, what was found, and what turned the others down: as kept with the document. None where nothing was asked. */
export function searchSection(raw: RawDocument, model: Model, print: Print): readonly Section[] {
  const { search } = model.document;
  if (!search) return [];
  const { record } = search;
  const found: readonly Block[] =
    !record
      ? [{ kind: 'paragraph', text: 'No search is kept with the document: nothing is told of what it would find.' }]
      : keyIfThere(searchKey, raw, record.from) === record.of
        ? outcome(record, model, print)
        : [{ kind: 'paragraph', tone: 'loud', text: 'The search that is kept with the document is of another state of it. It is not told here: search again and keep it.' }]; // prettier-ignore
  return [
    {
      title: 'Search for the best options',
      blocks: [
        {
          kind: 'table',
          caption: 'What was varied, wanted and kept, as stated by the user',
          columns: [
            { title: 'What', width: 0.35 },
            { title: 'Values', width: 0.65 },
          ],
          rows: bounds(search),
        },
        ...found,
        { kind: 'list', tone: 'caution', items: searchCautions(model.document) },
      ],
    },
  ];
}

function bounds(asked: SearchField): [string, string][] {
  const typed = (list: readonly { readonly typed: string }[] | undefined) => list?.map((one) => one.typed);
  const zones = {
    all: 'one for all panels',
    designs: 'one for each set of panels alike',
    panels: 'one for each panel',
  };
  const listed: [string, readonly string[] | undefined][] = [
    [
      'Wanted, the first leads',
      asked.aims.map((aim) => `${aimWords[aim].title} (${isWaterAim(aim) ? 'large' : 'small'})`),
    ],
    ['Thickness', typed(asked.thickness)],
    ['Material', asked.material],
    ['Side', asked.side],
    ['Overlap', typed(asked.overlap)],
    ['Fixing', asked.kind],
    ['Bolt', asked.bolt],
    ['Largest pitch', typed(asked.pitch)],
    ['Weld throat', typed(asked.throat)],
    ['Designs', [zones[asked.zones]]],
    ['Panels left out', asked.open ? ['tried too'] : undefined],
    ['Heaviest plate lifted', asked.lift && [asked.lift.typed]],
    ['Heaviest panel by hand', asked.panelByHand && [asked.panelByHand.typed]],
    ['Open part at least', asked.openLeast === undefined ? undefined : [String(asked.openLeast)]],
    ['Open part at most', asked.openMost === undefined ? undefined : [String(asked.openMost)]],
    ['SET ASIDE, not judged by in the search', asked.aside.length > 0 ? asked.aside : undefined],
    ['Checks that cannot be judged', [asked.judged ? 'turned an option down' : 'did not turn an option down']],
  ];
  const rows = listed.flatMap(([what, values]): [string, string][] => (values ? [[what, values.join('; ')]] : []));
  const varies = asked.thickness ?? asked.material ?? asked.side ?? asked.overlap ?? asked.kind ?? asked.bolt ?? asked.pitch ?? asked.throat; // prettier-ignore
  return varies || asked.open
    ? rows
    : [...rows, ['Thickness', 'from stock, from half to twice what the first panel has (not stated by the user)']];
}

function outcome(record: SearchRecord, model: Model, print: Print): Block[] {
  const { options, decided, judged, passing, beaten, solved, stopped, found, from } = record;
  const start = from === null ? 'the document as it stands' : `the option “${from}”`;
  const aims = aimIds.filter((aim) => found[0]?.aims[aim] !== undefined);
  const width = 0.5 / Math.max(1, aims.length);
  return [
    {
      kind: 'paragraph',
      text: `Searched from ${start}: ${options} options, ${decided} decided. ${judged} were judged by checks, ${passing} pass, ${beaten} were put aside because one found is at least as good in all that is wanted and leaves no other check open. ${forcesWords(solved)} ${decided === options ? 'No option outside this list does better in what was wanted and passes.' : 'The search was not ended: others may do better.'}`,
    },
    found.length === 0
      ? { kind: 'paragraph', tone: 'loud', text: 'Nothing passed.' }
      : {
          kind: 'table',
          caption: 'Options that none beats',
          columns: [
            { title: 'Option', width: 0.3 },
            ...aims.map((aim) => ({ title: aimWords[aim].title, width, align: 'right' as const })),
            { title: 'Governed by', width: 0.2 },
          ],
          rows: found.map(({ title, aims: values, governing }) => [
            title,
            ...aims.map((aim) => told(aim, values[aim]!, model, print)),
            governing,
          ]),
        },
    ...found.flatMap(({ title, whyNotThinner, failsAside, unjudged }): Block[] => {
      const words = [
        ...whyNotThinner,
        ...(failsAside.length > 0 ? [`Fails what was set aside: ${failsAside.join('; ')}.`] : []),
        ...(unjudged > 0
          ? [`${unjudged} lines cannot be judged; it has put aside only options that leave the same checks open.`]
          : []),
      ];
      return words.length > 0 ? [{ kind: 'paragraph', text: `${title}. ${words.join(' ')}` }] : [];
    }),
    {
      kind: 'table',
      caption: 'Why the others were turned down: the check that stopped each first',
      columns: [
        { title: 'Stopped by', width: 0.75 },
        { title: 'Options', width: 0.25, align: 'right' },
      ],
      rows: stopped.length > 0 ? stopped.map(({ title, count }) => [title, String(count)]) : [['none', '0']],
    },
  ];
}

const forcesWords = (solved: number | undefined): string =>
  solved === undefined
    ? 'Forces are by hand.'
    : `Forces are by hand and by the whole plate’s solution, and the larger demand governs: ${solved} held by hand and were solved.`;

function told(aim: AimId, value: number, { document }: Model, print: Print): string {
  if (aim === 'holes') return String(value);
  if (aim === 'cost') return `${significant(value, 4)} ${document.rates?.currency ?? ''}`;
  return print.quantity(value, aimWords[aim].unit);
}
