import { documentHash } from '../document/document-hash.ts';
import type { Note, Section } from '../note/note.ts';
import { programVersion } from '../result.ts';
import { handbook, type Chapter, type Entry } from './handbook.ts';
import { handbookWords as w } from './texts/words.ts';

/** The handbook to print, as the note's writer takes it. `date`: ISO, of the printing. */
export function handbookNote(paper: Note['paper'], date: string): Note {
  const chapters = handbook();
  return {
    title: w.title,
    stamp: w.stamp,
    paper,
    titleBlock: [
      [w.subjectLabel, w.subject],
      [w.date, date],
    ],
    documentHash: documentHash({ chapters: chapters.map(({ title, lead, entries }) => [title, lead, entries.map(({ words }) => words)]) }), // prettier-ignore
    programVersion,
    date,
    language: 'en-GB',
    sections: [contents(chapters), ...chapters.map(chapterSection)],
    attachments: [],
  };
}

/** What the first page says of the chapters, and that keys stand in the window. */
const contents = (chapters: readonly Chapter[]): Section => ({
  title: w.contents,
  numbered: false,
  blocks: [{ kind: 'list', items: [...chapters.map(({ title, lead }) => `${title}. ${lead}`), w.keys] }],
});

function chapterSection({ id, title, lead, entries }: Chapter): Section {
  return {
    title,
    startsPage: true,
    blocks: [{ kind: 'paragraph', text: lead }, ...(id === 'glossary' ? [words(entries)] : [])],
    ...(id === 'glossary' ? {} : { sections: bySubject(entries) }),
  };
}

/** Entries as they come, or under the heading of their group. */
function bySubject(entries: readonly Entry[]): readonly Section[] {
  const groups = [...new Set(entries.map(({ group }) => group))];
  const of = (group: string) => entries.filter((entry) => entry.group === group).map(({ section }) => section);
  return groups.flatMap((group) => (group === '' ? of(group) : [{ title: group, blocks: [], sections: of(group) }]));
}

const words = (entries: readonly Entry[]): Section['blocks'][number] => ({
  kind: 'table',
  caption: w.glossary.title,
  columns: [
    { title: w.term, width: 0.25 },
    { title: w.meaning, width: 0.75 },
  ],
  rows: entries.map(({ title, section }) => [
    title,
    section.blocks.flatMap((block) => (block.kind === 'paragraph' ? [block.text] : [])).join(' '),
  ]),
});
