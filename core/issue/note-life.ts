import { refusal } from '../refusal.ts';
import { withEvent, type IssueEvent, type Register, type Role } from './register.ts';

export type NoteState = 'issued for check' | 'checked' | 'issued' | 'superseded' | 'withdrawn';
type Of<K extends IssueEvent['kind']> = Extract<IssueEvent, { kind: K }>;

export interface Comment {
  readonly number: number;
  readonly comment: Of<'comment'>;
  readonly answers: readonly Of<'answer'>[];
}

/** One revision with all that was said of it. */
export interface NoteRevision {
  readonly issue: Of<'issued for check'>;
  readonly state: NoteState;
  readonly checked: Of<'checked'> | null;
  readonly issued: Of<'issued'> | null;
  readonly withdrawn: Of<'withdrawn'> | null;
  readonly accepted: readonly Of<'accepted'>[];
  readonly comments: readonly Comment[];
}

/** The revisions that a register tells of, in order. */
export function noteLife({ events }: Register): readonly NoteRevision[] {
  const revisions: NoteRevision[] = [];
  let count = 0;
  const change = (make: (last: NoteRevision) => Partial<NoteRevision>): void => {
    const last = revisions.pop()!;
    revisions.push({ ...last, ...make(last) });
  };
  for (const { event } of events)
    switch (event.kind) {
      case 'issued for check':
        revisions.push({ issue: event, state: event.kind, checked: null, issued: null, withdrawn: null, accepted: [], comments: [] }); // prettier-ignore
        break;
      case 'comment':
        count += 1;
        change(({ comments }) => ({ comments: [...comments, { number: count, comment: event, answers: [] }] }));
        break;
      case 'answer':
        // An answer may come with a later revision: it stands beside its comment.
        revisions.forEach((revision, r) => {
          revisions[r] = {
            ...revision,
            comments: revision.comments.map((c) => (c.number === event.to ? { ...c, answers: [...c.answers, event] } : c)), // prettier-ignore
          };
        });
        break;
      case 'checked':
        change(() => ({ checked: event, state: 'checked' }));
        break;
      case 'accepted':
        change(({ accepted }) => ({ accepted: [...accepted, event] }));
        break;
      case 'issued':
        revisions.forEach((revision, r) => {
          if (revision.state !== 'withdrawn') revisions[r] = { ...revision, state: 'superseded' };
        });
        change(() => ({ issued: event, state: 'issued' }));
        break;
      case 'withdrawn':
        change(() => ({ withdrawn: event, state: 'withdrawn' }));
        break;
    }
  return revisions;
}

/** The register with the event added, if it may happen now. Refuses otherwise, saying what is missing. */
export function recorded(register: Register, event: IssueEvent): Register {
  const refused = whyNot(noteLife(register), event);
  if (refused) throw refusal(refused);
  return withEvent(register, event);
}

type Why = { readonly what: string; readonly mend: string } | null;

function whyNot(revisions: readonly NoteRevision[], event: IssueEvent): Why {
  const last = revisions.at(-1);
  const actor = actors[event.kind];
  if (!actor.includes(event.by.role))
    return {
      what: `The ${event.by.role} cannot do this: “${event.kind}” is for the ${actor.join(' or the ')}`,
      mend: 'Have it done in that role.',
    };
  if (event.kind === 'issued for check') return whyNotNew(revisions, event);
  if (!last) return { what: 'Nothing was issued for check yet', mend: 'Issue a revision for check first.' };
  const named = `Revision ${last.issue.revision}`;
  if (event.date < last.issue.date)
    return { what: `${event.date} is before ${named} was issued for check, ${last.issue.date}`, mend: 'Correct the date.' }; // prettier-ignore
  if (event.kind === 'answer')
    return revisions.some(({ comments }) => comments.some(({ number }) => number === event.to))
      ? null
      : { what: `There is no comment ${event.to}`, mend: 'Answer one of those listed.' };
  if (last.state === 'withdrawn') return { what: `${named} was withdrawn`, mend: 'Issue a new revision for check.' };
  const wants: Partial<Record<IssueEvent['kind'], NoteState>> = { checked: 'issued for check', accepted: 'checked', issued: 'checked' }; // prettier-ignore
  const wanted = wants[event.kind];
  if (wanted && last.state !== wanted)
    return { what: `${named} is “${last.state}”; “${event.kind}” follows “${wanted}”`, mend: 'Take the steps in their order, or issue a new revision for check.' }; // prettier-ignore
  switch (event.kind) {
    case 'checked':
      return whyNotChecked(revisions, last, event);
    case 'accepted':
      return last.issue.result.limitStates.some((s) => s.name === event.limitState && s.verdict === 'not judged')
        ? null
        : { what: `“${event.limitState}” is no limit state of ${named} that is not judged`, mend: `Name one of: ${unjudged(last).join('; ') || 'none is open'}.` }; // prettier-ignore
    case 'issued':
      return whyNotIssued(last, named);
    default:
      return null;
  }
}

const actors: Readonly<Record<IssueEvent['kind'], readonly Role[]>> = {
  'issued for check': ['author'],
  comment: ['checker', 'licensed engineer'],
  answer: ['author'],
  checked: ['checker'],
  accepted: ['licensed engineer'],
  issued: ['licensed engineer'],
  withdrawn: ['author', 'licensed engineer'],
};

/** What somebody in a role may do, in the order of a note's life. */
export const stepsOf = (role: Role): readonly IssueEvent['kind'][] =>
  (Object.keys(actors) as IssueEvent['kind'][]).filter((kind) => actors[kind].includes(role));

function whyNotNew(
  revisions: readonly NoteRevision[],
  { revision, documentHash, option }: Of<'issued for check'>,
): Why {
  const held = revisions.find(({ issue }) => issue.revision === revision);
  if (!held) return null;
  const same = held.issue.documentHash === documentHash && held.issue.option === option;
  return same
    ? { what: `Revision ${revision} was issued for check already, ${held.issue.date}`, mend: 'Take the next step with it.' }
    : { what: `Revision ${revision} was issued with another content, ${held.issue.date}`, mend: 'Nothing is edited in a revision that was issued: give the document a new revision, then issue that.' }; // prettier-ignore
}

function whyNotChecked(revisions: readonly NoteRevision[], last: NoteRevision, { by }: Of<'checked'>): Why {
  if (by.name === last.issue.by.name)
    return { what: `${by.name} is the author of this revision`, mend: 'Have someone else check it (independent check: common practice, no source).' }; // prettier-ignore
  const open = openComments(revisions);
  return open.length === 0
    ? null
    : { what: `Required changes are not answered: ${open.map(({ number }) => `comment ${number}`).join(', ')}`, mend: 'Answer each; a change of the plate asks for a new revision.' }; // prettier-ignore
}

/** Required changes of any revision that nobody answered. */
export const openComments = (revisions: readonly NoteRevision[]): readonly Comment[] =>
  revisions.flatMap(({ comments }) =>
    comments.filter(({ comment, answers }) => comment.required && answers.length === 0),
  );

/** Limit states of a revision that are neither judged nor accepted by name. */
export const unjudged = ({ issue, accepted }: NoteRevision): readonly string[] =>
  issue.result.limitStates
    .filter(({ name, verdict }) => verdict === 'not judged' && !accepted.some((a) => a.limitState === name))
    .map(({ name }) => name);

function whyNotIssued(last: NoteRevision, named: string): Why {
  const fails = last.issue.result.limitStates.filter(({ verdict }) => verdict === 'fails').map(({ name }) => name);
  if (fails.length > 0)
    return { what: `${named} cannot be issued: ${fails.join('; ')} fails`, mend: 'Change the plate and issue a new revision for check. A fail is not accepted by name.' }; // prettier-ignore
  const required = openComments([last]);
  if (required.length > 0)
    return { what: `${named} cannot be issued: comment ${required[0]!.number} asks for a change and has no answer`, mend: 'Answer it first.' }; // prettier-ignore
  const open = unjudged(last);
  return open.length === 0
    ? null
    : { what: `${named} cannot be issued: not judged are ${open.join('; ')}`, mend: 'The licensed engineer accepts each by its name and with a reason, or the document is completed so that it can be judged.' }; // prettier-ignore
}
