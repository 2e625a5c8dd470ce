import { useState } from 'react';
import { valueOf } from '../../../core/host/answer.ts';
import { roles, type Role } from '../../../core/issue/register.ts';
import { FieldFrame } from '../../parts/FieldFrame.tsx';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { chooseFileBytes } from '../../parts/choose-file-bytes.ts';
import { saveBytes } from '../../parts/save-bytes.ts';
import { said } from '../../state/said.ts';
import { useSession } from '../../state/session-context.ts';
import { currentNote } from '../../state/use-note-job.ts';
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
  const [note, setNote] = useState<ChosenBytes | null>(null);
  const [identity, setIdentity] = useState<ChosenBytes | null>(null);
  const [password, setPassword] = useState('');
  const [role, setRole] = useState<Role>('licensed engineer');
  const [reason, setReason] = useState('');
  const [making, setMaking] = useState(false);
  const [done, setDone] = useState('');
  const choose = async (accept: string, take: (file: ChosenBytes) => void): Promise<void> => {
    const file = await chooseFileBytes(accept);
    if (file) take(file);
  };
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
    const signed = valueOf(
      await host.signNote({
        bytes,
        certificate: identity!.bytes,
        password,
        role,
        at: new Date().toISOString(),
        reason: reason.trim() || null,
      }),
    );
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
      <FieldFrame label={t.note}>
        {(control) => (
          <span className="chosen-file">
            <button {...control} type="button" onClick={() => void said(() => choose('.pdf', setNote))}>
              {note?.name ?? t.choose}
            </button>
            <button type="button" disabled={making} onClick={() => void said(takeThis)}>
              {making ? t.making : t.thisNote}
            </button>
          </span>
        )}
      </FieldFrame>
      <FieldFrame label={t.identity}>
        {(control) => (
          <button {...control} type="button" onClick={() => void said(() => choose('.p12,.pfx', setIdentity))}>
            {identity?.name ?? t.choose}
          </button>
        )}
      </FieldFrame>
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
      <div className="acts">
        <button type="button" className="primary" disabled={!note || !identity} onClick={() => void said(sign)}>
          {t.signIt}
        </button>
        {done && <span role="status">{done}</span>}
      </div>
    </FieldGroup>
  );
}
