import { useEffect } from 'react';
import type { UserRowKind } from '../../../core/document/user-rows.ts';
import { valueOf } from '../../../core/host/answer.ts';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { said } from '../../state/said.ts';
import { useSession } from '../../state/session-context.ts';
import { useWorkbench } from '../../state/workbench.ts';
import { texts } from '../../texts.ts';
import { useKept, type KeptRow } from './kept-rows.ts';
import { addOwnRow, idOf, ownRowsOf, type OwnRow } from './own-rows.ts';

const t = texts.catalogue;

/** Rows kept on this machine: taken into this plate, or forgotten. */
export function KeptRows() {
  const { host } = useSession();
  const { rows, refresh } = useKept();
  useEffect(() => void said(() => refresh(host)), [host, refresh]);
  return (
    <FieldGroup title={t.kept}>
      {rows.length === 0 && <p className="quiet">{t.noKept}</p>}
      {rows.length > 0 && (
        <ul className="catalogue-rows">
          {rows.map((row) => (
            <Kept key={row.name} {...row} />
          ))}
        </ul>
      )}
    </FieldGroup>
  );
}

function Kept({ name, kept }: KeptRow) {
  const { host } = useSession();
  const refresh = useKept((state) => state.refresh);
  const drop = () =>
    void said(async () => {
      valueOf(await host.dropCatalogueAddition({ name }));
      await refresh(host);
    });
  const title = kept ? t.row(t.kinds[kept.kind], idOf(kept.row)) : name;
  return (
    <li>
      <strong>{title}</strong>
      {kept ? (
        <span className="quiet small">{String(kept.row['title'] ?? '')}</span>
      ) : (
        <span className="loud small">{`${t.unreadable(name)}. ${t.unreadableMend}`}</span>
      )}
      <span className="acts">
        {kept && <Take {...kept} />}
        <button type="button" className="link small" aria-label={t.dropOf(title)} onClick={drop}>
          {t.drop}
        </button>
      </span>
    </li>
  );
}

function Take({ kind, row }: { kind: UserRowKind; row: OwnRow }) {
  const session = useSession();
  const own = useWorkbench(({ document }) => document?.laid);
  const rows = ownRowsOf(own, kind);
  if (rows.some((one) => idOf(one) === idOf(row))) return <span className="quiet small">{t.isHere}</span>;
  return (
    <button
      type="button"
      className="small"
      aria-label={t.takeOf(t.row(t.kinds[kind], idOf(row)))}
      onClick={() => void addOwnRow(session, kind, row)}
    >
      {t.take}
    </button>
  );
}
