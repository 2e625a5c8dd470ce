import { checks } from '../checks/index.ts';
import type { Block, Section } from '../note/note.ts';
import { glossary } from './texts/glossary.ts';
import { hour, type HourStep } from './texts/hour.ts';
import { handbookWords as w } from './texts/words.ts';
import { limits } from './limits.ts';
import { subjectOf, theoryOf } from './theory-of.ts';

export type ChapterId = 'hour' | 'theory' | 'limits' | 'glossary';

/** One thing that can be looked up: read by itself in the window, a section of the printed handbook. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  /** Under which heading of its chapter it stands, where the chapter has several. */
  readonly group: string;
  readonly section: Section;
  /** The sheet on which it is done. */
  readonly sheet?: HourStep['sheet'];
  /** All its words in small letters, for finding it. */
  readonly words: string;
}

export interface Chapter {
  readonly id: ChapterId;
  readonly title: string;
  readonly lead: string;
  readonly entries: readonly Entry[];
}

/** The handbook but for its list of keys, which the window has: theory as the checks' own data say it. */
export function handbook(): readonly Chapter[] {
  return [
    { id: 'hour', ...w.hour, entries: hour.map(hourEntry) },
    { id: 'theory', ...w.theory, entries: checks.map((check) => entry(check.id, theoryOf(check), subjectOf(check))) },
    { id: 'limits', ...w.limits, entries: limits().map((section, n) => entry(String(n + 1), section)) },
    {
      id: 'glossary',
      ...w.glossary,
      entries: [...glossary]
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([term, text]) => entry(term, { title: term, blocks: [{ kind: 'paragraph', text }] })),
    },
  ];
}

const entry = (id: string, section: Section, group = ''): Entry => ({
  id,
  title: section.title,
  group,
  section,
  words: wordsOf(section).join(' ').toLowerCase(),
});

function hourEntry({ sheet, title, minutes, act, look, decide }: HourStep, n: number): Entry {
  const section: Section = {
    title: `${n + 1}. ${title} (${minutes} min)`,
    numbered: false,
    blocks: [
      { kind: 'list', items: act },
      { kind: 'paragraph', text: `${w.look} ${look}` },
      ...(decide === undefined ? [] : [{ kind: 'paragraph', text: `${w.decide} ${decide}` } as const]),
    ],
  };
  return { ...entry(`step-${n + 1}`, section), ...(sheet ? { sheet } : {}) };
}

/** Every text of a section, formulas in one line each. */
function wordsOf({ title, blocks, sections = [] }: Section): readonly string[] {
  return [title, ...blocks.flatMap(wordsOfBlock), ...sections.flatMap(wordsOf)];
}

function wordsOfBlock(block: Block): readonly string[] {
  switch (block.kind) {
    case 'paragraph':
      return [block.text];
    case 'list':
      return block.items;
    case 'table':
      return [block.caption, ...block.rows.flat().filter((cell) => typeof cell === 'string')];
    case 'equation':
      return [block.meaning, block.plain];
    case 'figure':
      return [block.caption];
    case 'signOff':
      return [];
  }
}
