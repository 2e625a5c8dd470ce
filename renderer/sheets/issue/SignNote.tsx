import { useState, type ReactNode } from 'react';
import { roles, type Role } from '../../../core/issue/register.ts';
import type { RefusalText } from '../../../core/refusal.ts';
import { FieldFrame } from '../../parts/FieldFrame.tsx';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { Refused } from '../../parts/Refused.tsx';
import { chooseFileBytes } from '../../parts/choose-file-bytes.ts';
import { saveBytes } from '../../parts/save-bytes.ts';
import { said } from '../../state/said.ts';
import { useSession } from '../../state/session-context.ts';
import { currentNote, useNoteJob } from '../../state/use-note-job.ts';
import { texts } from '../../texts.ts';
import { OneOf } from './OneOf.tsx';

const t = texts.issue;

interface ChosenBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Signs a PDF with an identity that the person brings; the signed one is saved where they say. */
export function SignNote() {
  const session = useSession();
  const { host } = session;
  const job = useNoteJob();
  const [note, setNote] = useState<ChosenBytes | null>(null);
  const [identity, setIdentity] = useState<ChosenBytes | null>(null);
  const [password, setPassword] = useState('');
  const [role, setRole] = useState<Role>('licensed engineer');
  const [reason, setReason] = useState('');
  const [timeStampAt, setTimeStampAt] = useState('');
  const [seal, setSeal] = useState<ChosenBytes | null>(null);
  const [making, setMaking] = useState(false);
  const [done, setDone] = useState('');
  const [fault, setFault] = useState<RefusalText | null>(null);
  const takeThis = async (): Promise<void> => {
    setMaking(true);
    try {
      const bytes = await currentNote(session);
      if (bytes) setNote({ name: 'note.pdf', bytes });
    } finally {
      setMaking(false);
    }
  };
  const sign = async (): Promise<void> => {
    setDone('');
    const { bytes } = note!;
    const answer = await host.signNote({
      bytes,
      certificate: identity!.bytes,
      password,
      role,
      at: new Date().toISOString(),
      reason: reason.trim() || null,
      timeStampAt: timeStampAt.trim() || null,
      seal: seal?.bytes ?? null,
    });
    setFault(answer.ok ? null : answer.refusal);
    if (!answer.ok) return;
    const signed = answer.value;
    setPassword('');
    const name = await saveBytes(
      host,
      note!.name.replace(/\.pdf$/i, '') + '-signed.pdf',
      signed.bytes,
      'application/pdf',
    );
    if (name) setDone(t.signedBy(signed.signer, name));
  };
  return (
    <FieldGroup title={t.sign}>
      <p className="quiet small">{t.signHelp}</p>
      <FileField label={t.note} accept=".pdf" file={note} onChoose={setNote}>
        <button type="button" disabled={making} onClick={() => void said(takeThis)}>
          {making ? t.making : t.thisNote}
        </button>
        {making && <span className="quiet small">{job.doing}</span>}
      </FileField>
      <FileField label={t.identity} accept=".p12,.pfx" file={identity} onChoose={setIdentity} />
      <FieldFrame label={t.password}>
        {(control) => (
          <input
            {...control}
            type="password"
            autoComplete="off"
            value={password}
            onChange={(event) => setPassword(event.target.value)}
          />
        )}
      </FieldFrame>
      <OneOf label={t.role} value={role} onChange={setRole} choices={roles} words={t.roles} />
      <FieldFrame label={t.signedFor}>
        {(control) => <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />}
      </FieldFrame>
      <FieldFrame label={t.timeStamp} help={t.timeStampHelp}>
        {(control) => (
          <input {...control} value={timeStampAt} onChange={(event) => setTimeStampAt(event.target.value)} />
        )}
      </FieldFrame>
      <FileField label={t.seal} help={t.sealHelp} accept=".png,.jpg,.jpeg" file={seal} onChoose={setSeal}>
        {seal && (
          <button type="button" onClick={() => setSeal(null)}>
            {t.noSeal}
          </button>
        )}
      </FileField>
      <div className="acts">
        <button type="button" className="primary" disabled={!note || !identity} onClick={() => void said(sign)}>
          {t.signIt}
        </button>
        {done && <span role="status">{done}</span>}
      </div>
      {fault && <Refused refusal={fault} />}
    </FieldGroup>
  );
}

/** Chooses a file whose bytes stay in the page; its button is named by the label and by the file. */
function FileField({
  label,
  help,
  accept,
  file,
  onChoose,
  children,
}: {
  label: string;
  help?: string;
  accept: string;
  file: ChosenBytes | null;
  onChoose: (file: ChosenBytes) => void;
  children?: ReactNode;
}) {
  const shown = file?.name ?? t.choose;
  const choose = async (): Promise<void> => {
    const chosen = await chooseFileBytes(accept);
    if (chosen) onChoose(chosen);
  };
  return (
    <FieldFrame label={label} help={help}>
      {(control) => (
        <span className="chosen-file">
          <button {...control} type="button" aria-label={`${label}: ${shown}`} onClick={() => void said(choose)}>
            {shown}
          </button>
          {children}
        </span>
      )}
    </FieldFrame>
  );
}
