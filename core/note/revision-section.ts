import { inputChanges, resultChanges, type Change } from '../issue/changes-between.ts';
import { noteLife, type NoteRevision } from '../issue/note-life.ts';
import type { Register, ResultSummary } from '../issue/register.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { Block, Section, Table } from './note.ts';

/** What a note knows of its own place in the register. */
export interface NotePlace {
  /** The revision that this very content was issued as, or null: a draft. */
  readonly revision: NoteRevision | null;
  readonly all: readonly NoteRevision[];
  /** Hash of the register's last entry, '' for an empty one. */
  readonly registerHash: string;
}

/** Finds a content in the register: by its hash and option, whatever its revision is called. */
export function notePlace(register: Register, documentHash: string, option: string | null): NotePlace {
  const all = noteLife(register);
  const own = all.filter(({ issue }) => issue.documentHash === documentHash && issue.option === option);
  const revision = own.at(-1) ?? null;
  return { revision, all, registerHash: register.events.at(-1)?.hash ?? '' };
}

/** Printed large on the first page. Only an issued note says so. */
export function stampOf({ revision }: NotePlace): string {
  if (!revision) return 'NOT ISSUED';
  const words = {
    'issued for check': 'FOR CHECK, NOT ISSUED',
    checked: 'CHECKED, NOT ISSUED',
    issued: 'ISSUED',
    superseded: 'SUPERSEDED',
    withdrawn: 'WITHDRAWN',
  } as const;
  return words[revision.state];
}

/** Revision table, what changed since the revision before, comments with answers, what was accepted by name. */
export function revisionSection(
  place: NotePlace,
  now: { readonly raw: RawDocument; readonly result: ResultSummary; readonly revision: string; readonly date: string },
): Section {
  const { all, revision, registerHash } = place;
  const own = revision ? all.indexOf(revision) : all.length;
  const before = all[own - 1];
  const draft = [now.revision, 'draft', now.date, '', '', ''];
  const blocks: Block[] = [
    {
      kind: 'table',
      caption: 'Revisions',
      columns: [
        { title: 'Revision', width: 0.12 },
        { title: 'State', width: 0.16 },
        { title: 'For check', width: 0.2 },
        { title: 'Checked', width: 0.18 },
        { title: 'Issued', width: 0.18 },
        { title: 'Document hash', width: 0.16 },
      ],
      rows: [...all.map(revisionRow), ...(revision ? [] : [draft])],
      loud: all.flatMap(({ state }, i) => (state === 'withdrawn' || state === 'superseded' ? [i] : [])),
    },
    {
      kind: 'paragraph',
      tone: 'small',
      text: `States are kept in a register that is only added to, each entry with the hash of the one before${registerHash ? `; its last entry here is ${registerHash}` : '; it has no entry yet'}. “Issued” says that the licensed engineer released this revision; it is no seal.`,
    },
  ];
  if (before)
    blocks.push(
      changeTable(
        `Inputs changed since revision ${before.issue.revision}`,
        inputChanges(before.issue.document, now.raw),
      ),
      changeTable(`Results changed since revision ${before.issue.revision}, SI`, resultChanges(before.issue.result, now.result)), // prettier-ignore
    );
  else blocks.push({ kind: 'paragraph', text: 'No revision was issued before this one.' });
  const comments = all.flatMap(({ issue, comments }) => comments.map((c) => ({ ...c, of: issue.revision })));
  if (comments.length > 0)
    blocks.push({
      kind: 'table',
      caption: 'Comments and required changes, with answers',
      columns: [
        { title: 'No.', width: 0.06 },
        { title: 'Revision', width: 0.1 },
        { title: 'By', width: 0.18 },
        { title: 'Comment', width: 0.33 },
        { title: 'Answer', width: 0.33 },
      ],
      rows: comments.map(({ number, of, comment: { by, date, text, required }, answers }) => [
        String(number),
        of,
        `${by.name}, ${by.role}, ${date}`,
        `${required ? 'REQUIRED: ' : ''}${text}`,
        answers.map((a) => `${a.text} (${a.by.name}, ${a.date})`).join(' ') || 'none yet',
      ]),
      loud: comments.flatMap(({ comment, answers }, i) => (comment.required && answers.length === 0 ? [i] : [])),
    });
  for (const { limitState, reason, by, date } of revision?.accepted ?? [])
    blocks.push({
      kind: 'paragraph',
      tone: 'loud',
      text: `“${limitState}” is not judged by this program. ${by.name}, licensed engineer, took it over on ${date}: ${reason}`,
    });
  if (revision?.withdrawn)
    blocks.push({ kind: 'paragraph', tone: 'loud', text: `Withdrawn on ${revision.withdrawn.date} by ${revision.withdrawn.by.name}: ${revision.withdrawn.reason}` }); // prettier-ignore
  return { title: 'Revisions', startsPage: true, blocks };
}

const revisionRow = ({ issue, state, checked, issued }: NoteRevision): string[] => [
  issue.revision,
  state,
  `${issue.by.name}, ${issue.date}`,
  checked ? `${checked.by.name}, ${checked.date}` : '',
  issued ? `${issued.by.name}, ${issued.date}` : '',
  issue.documentHash.slice(0, 16),
];

/** Differences past this many are counted: the whole documents are attached. */
const most = 60;

function changeTable(caption: string, changes: readonly Change[]): Table | Extract<Block, { kind: 'paragraph' }> {
  if (changes.length === 0) return { kind: 'paragraph', text: `${caption}: none.` };
  const rest = changes.length - most;
  return {
    kind: 'table',
    caption,
    columns: [
      { title: 'What', width: 0.36 },
      { title: 'Was', width: 0.32 },
      { title: 'Is', width: 0.32 },
    ],
    rows: [
      ...changes.slice(0, most).map(({ what, was, is }) => [what, was, is]),
      ...(rest > 0 ? [[`and ${rest} more: compare the documents`, '', '']] : []),
    ],
  };
}
