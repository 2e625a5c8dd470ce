import { useState } from 'react';
import type { IssueStep } from '../../../core/issue/issue-step.ts';
import { stepsOf } from '../../../core/issue/note-life.ts';
import { roles, type Role } from '../../../core/issue/register.ts';
import { Refusal, type RefusalText } from '../../../core/refusal.ts';
import { FieldFrame } from '../../parts/FieldFrame.tsx';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { Refused } from '../../parts/Refused.tsx';
import { localDate } from '../../parts/local-date.ts';
import type { ShownRegister } from '../../state/use-register.ts';
import { useSession } from '../../state/session-context.ts';
import { useWorkbench } from '../../state/workbench.ts';
import { texts } from '../../texts.ts';
import { OneOf } from './OneOf.tsx';

const t = texts.issue;

type Kind = IssueStep['kind'];

/** Takes a note one step on, in a role and by a name. What may not be done now is refused with the reason. */
export function NextStep({ register: { text: register, view, keep } }: { register: ShownRegister }) {
  const { engine } = useSession();
  const option = useWorkbench((state) => state.document?.option ?? null);
  const [role, setRole] = useState<Role>('author');
  const [wanted, setWanted] = useState<Kind>('issued for check');
  const [name, setName] = useState('');
  const [date, setDate] = useState(localDate);
  const [words, setWords] = useState('');
  const [required, setRequired] = useState(true);
  const [to, setTo] = useState('');
  const [state, setState] = useState('');
  const [fault, setFault] = useState<RefusalText | null>(null);
  const [taken, setTaken] = useState(false);

  const kinds = stepsOf(role);
  const kind = kinds.includes(wanted) ? wanted : kinds[0]!;
  const comments = view?.comments ?? [];
  const open = view?.last?.unjudged ?? [];
  const comment = to || String(comments.find(({ isOpen }) => isOpen)?.number ?? comments[0]?.number ?? '');
  const limitState = state || (open[0] ?? '');

  const step = (): IssueStep => {
    const common = { date, by: { role, name } };
    switch (kind) {
      case 'comment':
        return { kind, ...common, text: words, required };
      case 'answer':
        return { kind, ...common, to: Number(comment), text: words };
      case 'accepted':
        return { kind, ...common, limitState, reason: words };
      case 'withdrawn':
        return { kind, ...common, reason: words };
      default:
        return { kind, ...common };
    }
  };
  const take = async (): Promise<void> => {
    setFault(null);
    setTaken(false);
    try {
      await keep((await engine.ask('issueStep', { option, register, step: step() })).register);
      setTaken(true);
      setWords('');
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      setFault(error);
    }
  };

  return (
    <FieldGroup title={t.step}>
      <p className="quiet small">{t.stepHelp}</p>
      <OneOf label={t.role} value={role} onChange={setRole} choices={roles} words={t.roles} />
      <FieldFrame label={t.name}>
        {(control) => <input {...control} value={name} onChange={(event) => setName(event.target.value)} />}
      </FieldFrame>
      <FieldFrame label={t.date}>
        {(control) => <input {...control} type="date" value={date} onChange={(event) => setDate(event.target.value)} />}
      </FieldFrame>
      <OneOf
        label={t.what}
        value={kind}
        onChange={setWanted}
        choices={kinds}
        words={t.steps}
        help={t.stepNotes[kind]}
      />
      {kind === 'answer' && (
        <OneOf
          label={t.to}
          value={comment}
          onChange={setTo}
          choices={comments.map(({ number }) => String(number))}
          words={Object.fromEntries(comments.map((each) => [String(each.number), `${each.number}: ${each.text}`]))}
          help={comments.length === 0 ? t.noComments : ''}
        />
      )}
      {kind === 'accepted' && (
        <OneOf
          label={t.limitState}
          value={limitState}
          onChange={setState}
          choices={open}
          words={Object.fromEntries(open.map((each) => [each, each]))}
          help={open.length === 0 ? t.noneOpen : ''}
        />
      )}
      {(kind === 'comment' || kind === 'answer' || kind === 'accepted' || kind === 'withdrawn') && (
        <FieldFrame label={kind === 'comment' || kind === 'answer' ? t.text : t.reason}>
          {(control) => (
            <textarea {...control} className="words" value={words} onChange={(event) => setWords(event.target.value)} />
          )}
        </FieldFrame>
      )}
      {kind === 'comment' && (
        <label className="tick">
          <input type="checkbox" checked={required} onChange={(event) => setRequired(event.target.checked)} />
          {t.required}
        </label>
      )}
      <div className="acts">
        <button type="button" className="primary" onClick={() => void take()}>
          {t.take}
        </button>
        {taken && <span role="status">{t.taken}</span>}
      </div>
      {fault && <Refused refusal={fault} />}
    </FieldGroup>
  );
}
