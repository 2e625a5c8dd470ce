import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { documentHash } from '../../core/document/document-hash.ts';
import { eventOfStep } from '../../core/issue/issue-step.ts';
import { noteLife, openComments, recorded } from '../../core/issue/note-life.ts';
import { roles, type IssueEvent, type Register, type Role } from '../../core/issue/register.ts';
import { refusal } from '../../core/refusal.ts';
import { openDocument, type OpenedDocument } from '../host/open-document.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { chosenOption } from './chosen-option.ts';
import { noted } from '../host/note/noted.ts';
import { openRegister, registerBeside } from './open-register.ts';
import { optionsOf } from './options-of.ts';
import { solvedFor } from '../host/solved-for.ts';
import { exit, type Terminal } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage =
  'issue FILE [--step STEP --role ROLE --by NAME] [--date D] [--text T] [--state L] [--to N] [--option ID] [--solver] [--register FILE] [--out PDF]';
const text = { type: 'string' } as const;
const options = { step: text, role: text, by: text, date: text, text, state: text, to: text, option: text, register: text, out: text, solver: { type: 'boolean' } } as const; // prettier-ignore

export const issueVerb: Verb = {
  usage,
  purpose: 'takes a note from draft to issued: for check, comments, checked, accepted by name, issued, withdrawn',
  help: [
    '  without --step    says where the note stands, and changes nothing',
    '  --step for-check  the author hands this revision over; the register keeps it whole, nothing is edited in it any more',
    '  --step comment    by checker or licensed engineer, with --text; --step require asks for a change',
    '  --step answer     by the author, to comment number --to, with --text',
    '  --step checked    by a checker who is not the author, once required changes are answered',
    '  --step accept     the licensed engineer takes over a limit state that is not judged: --state, with the reason as --text',
    '  --step issue      by the licensed engineer: nothing fails, everything is judged or accepted by name',
    '  --step withdraw   with the reason as --text',
    '  --role ROLE       author, checker or engineer           --by NAME     who does it',
    '  --date D          2026-03-31; today by default          --option ID   the chosen one by default; base: as it stands',
    '  --solver          with the forces of the whole plate solved as well, though the document does not ask for them',
    '  --register FILE   plate.register.json beside plate.stillplate by default; each entry holds the hash of the one before',
    '  --out PDF         the note as it stands after the step, or without a step',
    '',
    'A name typed here proves nothing: “stillplate sign” signs the PDF with a certificate.',
    '',
    'Example: stillplate issue samples/middle.stillplate.json',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, options, usage, 1);
    const path = resolve(on.folder, file);
    const opened = await openDocument(path);
    const option = chosenOption(opened.document, values.option);
    const place = resolve(on.folder, values.register ?? registerBeside(path));
    const before = await openRegister(place);
    let register = before;
    if (values.step !== undefined) {
      register = recorded(before, await eventOf(values.step));
      await writeFileWhole(place, `${JSON.stringify(register)}\n`);
    }
    if (values.out !== undefined) {
      const { pdf } = await noted(opened, { option, solver: values.solver ?? false, register }, on);
      await writeFileWhole(resolve(on.folder, values.out), pdf);
      on.out(`Wrote ${values.out}.`);
    }
    tell(opened, register, on);
    return exit.passes;

    async function eventOf(step: string): Promise<IssueEvent> {
      const common = { date: dateOf(values.date), by: { role: roleOf(values.role), name: needed('by', values.by) } };
      switch (step) {
        case 'for-check': {
          const { raw, document: read } = opened;
          const solved = solvedFor(raw, read, option, values.solver ?? false, on);
          return eventOfStep({ kind: 'issued for check', ...common }, raw, () => appraise(raw, read, option, solved));
        }
        case 'comment':
        case 'require':
          return { kind: 'comment', ...common, text: needed('text', values.text), required: step === 'require' };
        case 'answer':
          return { kind: 'answer', ...common, text: needed('text', values.text), to: Number(needed('to', values.to)) };
        case 'checked':
          return { kind: 'checked', ...common };
        case 'accept':
          return { kind: 'accepted', ...common, limitState: needed('state', values.state), reason: needed('text', values.text) }; // prettier-ignore
        case 'issue':
          return { kind: 'issued', ...common };
        case 'withdraw':
          return { kind: 'withdrawn', ...common, reason: needed('text', values.text) };
        default:
          throw refusal({ what: `There is no step “${step}”`, where: { option: '--step' }, mend: 'Use one of: for-check, comment, require, answer, checked, accept, issue, withdraw.' }); // prettier-ignore
      }
    }
  },
};

function needed(name: string, value: string | undefined): string {
  if (value !== undefined && value.trim() !== '') return value.trim();
  throw refusal({ what: `--${name} is missing`, where: { option: `--${name}` }, mend: `Usage: stillplate ${usage}` });
}

function roleOf(typed: string | undefined): Role {
  const role = typed === 'engineer' ? 'licensed engineer' : typed;
  const found = roles.find((name) => name === role);
  if (found) return found;
  throw refusal({ what: typed === undefined ? '--role is missing' : `“${typed}” is no role`, where: { option: '--role' }, mend: 'Use author, checker or engineer.' }); // prettier-ignore
}

function dateOf(typed: string | undefined): string {
  const date = typed ?? new Date().toISOString().slice(0, 10);
  const read = new Date(`${date}T00:00:00Z`);
  if (/^\d{4}-\d\d-\d\d$/.test(date) && !Number.isNaN(read.getTime()) && read.toISOString().startsWith(date))
    return date;
  throw refusal({ what: `“${date}” is no date`, where: { option: '--date' }, mend: 'Write it as 2026-03-31.' });
}

/** Where every revision stands, what is open, and whether the document has moved on since. */
function tell({ document, raw }: OpenedDocument, register: Register, on: Terminal): void {
  const life = noteLife(register);
  on.out(`${document.project.name}, revision ${document.project.revision}`);
  if (life.length === 0) on.out('  draft: nothing was issued for check yet');
  for (const { issue, state, checked, issued, accepted } of life) {
    const steps = [
      `for check ${issue.date} by ${issue.by.name}`,
      ...(checked ? [`checked ${checked.date} by ${checked.by.name}`] : []),
      ...accepted.map(({ limitState }) => `accepted unjudged: ${limitState}`),
      ...(issued ? [`issued ${issued.date} by ${issued.by.name}`] : []),
    ];
    on.out(`  ${issue.revision}: ${state}; ${steps.join('; ')}; document ${issue.documentHash.slice(0, 16)}`);
  }
  for (const { number, comment } of openComments(life))
    on.out(`  comment ${number} asks for a change: ${comment.text}`);
  const last = life.at(-1)?.issue;
  if (last && documentHash(raw) !== last.documentHash)
    on.out(`  The document differs from revision ${last.revision} as it was handed over: a note of it is a draft.`);
}
