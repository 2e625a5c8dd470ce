import { useEffect, useState } from 'react';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { asChoices } from '../parts/choices.ts';
import { fieldTexts } from '../parts/field-texts.ts';
import { PdfPages } from '../parts/PdfPages.tsx';
import { saveBytes } from '../parts/save-bytes.ts';
import { TextField } from '../parts/TextField.tsx';
import { printBytes } from '../state/print-bytes.ts';
import { said } from '../state/said.ts';
import { useNoteJob } from '../state/use-note-job.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './note.css';

/** The check note: what its title block says, and its pages as they will be printed. */
export function NoteSheet() {
  const { host } = useSession();
  const job = useNoteJob();
  const hash = useWorkbench((state) => state.document?.hash ?? '');
  const name = useNoteName();
  const [saved, setSaved] = useState<string | null>(null);
  const [canShow, setCanShow] = useState(false);
  useEffect(() => {
    void host.about({}).then((answer) => setCanShow(answer.ok && answer.value.hasDialogs));
  }, [host]);
  const t = texts.note;
  const save = async () => {
    if (job.bytes) setSaved(await saveBytes(host, name, job.bytes, 'application/pdf'));
  };
  const stale = job.bytes !== null && job.hash !== hash;
  return (
    <>
      <section className="note-acts">
        <button type="button" className="primary" disabled={job.state === 'running'} onClick={job.start}>
          {job.bytes ? t.again : t.make}
        </button>
        {job.state === 'running' && (
          <>
            <progress max={job.of} value={job.done} aria-label={t.progress} />
            <span className="quiet small">{job.doing}</span>
            <button type="button" onClick={job.cancel}>
              {t.cancel}
            </button>
          </>
        )}
        {job.bytes && (
          <>
            <button type="button" onClick={() => void save()}>
              {t.save}
            </button>
            <button type="button" onClick={() => void said(() => printBytes(host, job.bytes!))}>
              {t.print}
            </button>
            {saved && canShow && (
              <button type="button" onClick={() => void host.showInFolder({ name: saved })}>
                {t.showInFolder}
              </button>
            )}
          </>
        )}
        {saved && <span role="status">{t.savedAs(saved)}</span>}
        {job.why && (
          <p className="loud" role="alert">
            {job.why}
          </p>
        )}
        {stale && <p className="loud">{t.stale}</p>}
      </section>
      <p className="quiet small">{t.caution}</p>
      <details className="title-block" open={job.bytes === null}>
        <summary>{texts.groups.project}</summary>
        <TitleBlock />
      </details>
      {job.bytes && <PdfPages bytes={job.bytes} />}
    </>
  );
}

function TitleBlock() {
  return (
    <div>
      <TextField path={['project', 'name']} {...fieldTexts('name')} />
      <TextField path={['project', 'number']} {...fieldTexts('number')} optional />
      <TextField path={['project', 'client']} {...fieldTexts('client')} optional />
      <TextField path={['project', 'vessel']} {...fieldTexts('vessel')} optional />
      <TextField path={['project', 'site']} {...fieldTexts('site')} optional />
      <TextField path={['project', 'subject']} {...fieldTexts('subject')} optional long />
      <TextField path={['project', 'revision']} {...fieldTexts('revision')} />
      <TextField path={['project', 'date']} {...fieldTexts('date')} />
      <ChoiceField path={['units']} {...fieldTexts('units')} choices={asChoices(['metric', 'inch'])} />
      <ChoiceField path={['paper']} {...fieldTexts('paper')} choices={asChoices(['A4', 'letter'])} />
    </div>
  );
}

/** File name of the note: project, option, revision. */
function useNoteName(): string {
  const project = useWorkbench(
    (state) => state.document?.raw['project'] as { name?: unknown; revision?: unknown } | undefined,
  );
  const option = useWorkbench((state) => state.document?.option);
  const plain = (text: unknown) =>
    String(text ?? '')
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '');
  return (
    [plain(project?.name), plain(option ?? ''), plain(project?.revision)].filter(Boolean).join('-').toLowerCase() +
    '.pdf'
  );
}
