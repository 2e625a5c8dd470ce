import { useEffect, useState } from 'react';
import type { UserRowKind } from '../../../core/document/user-rows.ts';
import type { EngineCalls } from '../../../core/engine/messages.ts';
import { FieldFrame } from '../../parts/FieldFrame.tsx';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { said } from '../../state/said.ts';
import { useSession } from '../../state/session-context.ts';
import { useWorkbench } from '../../state/workbench.ts';
import { texts } from '../../texts.ts';
import { addOwnRow, rowKinds } from './own-rows.ts';
import './catalogue.css';

const t = texts.catalogue;

/** The rows that come with the program, found by words of their names; each can be the beginning of a row of one's own. */
export function LookUp() {
  const { engine } = useSession();
  const [kind, setKind] = useState<UserRowKind>('section');
  const [find, setFind] = useState('');
  const [found, setFound] = useState<EngineCalls['catalogueRows']['gives'] | null>(null);
  const units = useWorkbench(({ document }) => document?.laid['units']);
  useEffect(() => {
    let current = true;
    void said(async () => {
      const rows = await engine.ask('catalogueRows', { kind, find });
      if (current) setFound(rows);
    });
    return () => {
      current = false;
    };
  }, [engine, kind, find, units]);
  return (
    <FieldGroup title={t.lookUp}>
      <FieldFrame label={t.kind[0]} help={t.kind[1]}>
        {(frame) => (
          <select {...frame} value={kind} onChange={({ target }) => setKind(target.value as UserRowKind)}>
            {rowKinds.map((one) => (
              <option key={one} value={one}>
                {t.kinds[one]}
              </option>
            ))}
          </select>
        )}
      </FieldFrame>
      <FieldFrame label={t.find[0]} help={t.find[1]}>
        {(frame) => (
          <input
            type="search"
            className="name"
            spellCheck={false}
            {...frame}
            value={find}
            onChange={({ target }) => setFind(target.value)}
          />
        )}
      </FieldFrame>
      {found && (
        <>
          <p className="quiet small" aria-live="polite">
            {found.found === 0 ? t.none : t.rows(found.rows.length, found.found)}
          </p>
          <ul className="catalogue-rows">
            {found.rows.map((row) => (
              <li key={row.id}>
                <strong>{row.id}</strong>
                <span>{row.title}</span>
                <span className="small">{row.values}</span>
                <span className="quiet small">{row.source}</span>
                <Like kind={kind} id={row.id} />
              </li>
            ))}
          </ul>
        </>
      )}
    </FieldGroup>
  );
}

function Like({ kind, id }: { kind: UserRowKind; id: string }) {
  const session = useSession();
  const make = () =>
    void said(async () => {
      const { row } = await session.engine.ask('rowLike', { kind, id });
      await addOwnRow(session, kind, row);
    });
  return (
    <button type="button" className="link small" aria-label={t.likeOf(id)} onClick={make}>
      {t.like}
    </button>
  );
}
