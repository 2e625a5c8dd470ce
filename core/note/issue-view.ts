import type { Appraisal } from '../appraise.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { Section } from './note.ts';
import { notePlace, revisionSection, stampOf } from './revision-section.ts';
import { noteLife, unjudged, type NoteState } from '../issue/note-life.ts';
import type { Register } from '../issue/register.ts';
import { resultSummary } from '../issue/result-summary.ts';

/** Where the note of an option stands, for whoever takes its next step. */
export interface IssueView {
  /** As the note prints it on its first page. */
  readonly stamp: string;
  /** Revisions, what changed since the last, comments with answers, what was accepted by name: as in the note. */
  readonly section: Section;
  /** The newest revision; null before anything was issued for check. */
  readonly last: {
    readonly revision: string;
    readonly state: NoteState;
    /** The plate has moved on since: another document or another option is shown. */
    readonly isBehind: boolean;
    readonly fails: readonly string[];
    /** Limit states that are neither judged nor accepted by name. */
    readonly unjudged: readonly string[];
  } | null;
  /** Every comment: an author may answer any of them. */
  readonly comments: readonly { readonly number: number; readonly text: string; readonly isOpen: boolean }[];
}

export function issueView(register: Register, raw: RawDocument, appraisal: Appraisal): IssueView {
  const { project } = appraisal.model.document;
  const place = notePlace(register, appraisal.documentHash, appraisal.optionId);
  const life = noteLife(register);
  const last = life.at(-1);
  return {
    stamp: stampOf(place),
    section: revisionSection(place, { raw, result: resultSummary(appraisal), revision: project.revision, date: project.date }),
    last: last
      ? {
          revision: last.issue.revision,
          state: last.state,
          isBehind: place.revision?.issue !== last.issue,
          fails: last.issue.result.limitStates.filter(({ verdict }) => verdict === 'fails').map(({ name }) => name),
          unjudged: unjudged(last),
        }
      : null,
    comments: life.flatMap(({ comments }) =>
      comments.map(({ number, comment, answers }) => ({ number, text: comment.text, isOpen: comment.required && answers.length === 0 })),
    ),
  };
} // prettier-ignore
