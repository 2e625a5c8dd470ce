import { FieldGroup } from '../parts/FieldGroup.tsx';
import { SectionView } from '../parts/Blocks.tsx';
import { chooseTextFile } from '../parts/choose-text-file.ts';
import { saveBytes } from '../parts/save-bytes.ts';
import { said } from '../state/said.ts';
import { useSession } from '../state/session-context.ts';
import { useRegister, type ShownRegister } from '../state/use-register.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { NextStep } from './issue/NextStep.tsx';
import { SignNote } from './issue/SignNote.tsx';
import { VerifyNote } from './issue/VerifyNote.tsx';
import './issue/issue.css';

const t = texts.issue;

/** The life of the note: where it stands, its next step, its register as a file, and its signature. */
export function IssueSheet() {
  const register = useRegister();
  return (
    <>
      {register === null ? (
        <p className="loud">{t.notKept}</p>
      ) : (
        <>
          <Standing register={register} />
          <NextStep register={register} />
          <RegisterFile register={register} />
        </>
      )}
      <SignNote />
      <VerifyNote />
    </>
  );
}

function Standing({ register: { view } }: { register: ShownRegister }) {
  if (!view) return <p className="quiet">{t.waiting}</p>;
  const { stamp, section, last } = view;
  return (
    <section className="issue-standing">
      <h2>{t.stands}</h2>
      <p className={stamp === 'ISSUED' ? 'stamp' : 'stamp loud'}>{stamp}</p>
      {last?.isBehind && <p className="loud">{t.behind(last.revision)}</p>}
      {last && <Open title={t.fails} names={last.fails} />}
      {last && <Open title={t.unjudged} names={last.unjudged} />}
      <SectionView section={section} />
    </section>
  );
}

function Open({ title, names }: { title: string; names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <>
      <p className="loud">{title}</p>
      <ul>
        {names.map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ul>
    </>
  );
}

function RegisterFile({ register: { text, keep } }: { register: ShownRegister }) {
  const { host } = useSession();
  const name = useWorkbench(({ line }) => line?.name ?? 'plate');
  const save = async (): Promise<void> => {
    await saveBytes(host, `${name}.register.json`, new TextEncoder().encode(text!), 'application/json');
  };
  const take = async (): Promise<void> => {
    const file = await chooseTextFile('.json');
    if (file) await keep(file.text);
  };
  return (
    <FieldGroup title={t.registerFile}>
      <p className="quiet small">{t.registerHelp}</p>
      <div className="acts">
        <button type="button" disabled={text === null} onClick={() => void said(save)}>
          {t.saveRegister}
        </button>
        <button type="button" onClick={() => void said(take)}>
          {t.takeRegister}
        </button>
      </div>
    </FieldGroup>
  );
}
