import { useMemo } from 'react';
import type { Json } from '../../../core/document/edit.ts';
import type { SensitivityRecord } from '../../../core/document/sensitivity-field.ts';
import { spreadInputs } from '../../../core/document/spreads-field.ts';
import { sensitivityBlocks } from '../../../core/note/sensitivity-section.ts';
import { keyIfThere } from '../../../core/options/key-if-there.ts';
import { sensitivityKey } from '../../../core/options/sensitivity/sensitivity-record.ts';
import { BlockList } from '../../parts/Blocks.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TableField } from '../../parts/TableField.tsx';
import { startSensitivity, stopSearch, useSearch } from '../../state/search.ts';
import { useField } from '../../state/use-field.ts';
import { useSession } from '../../state/session-context.ts';
import { useWorkbench } from '../../state/workbench.ts';
import { texts } from '../../texts.ts';

const t = texts.sensitivity;

/** How far inputs may be off, and what they then do to the check that governs: each by itself, and all at once. */
export function SensitivityPart() {
  const session = useSession();
  const spreads = useField(['spreads']);
  const { state, sensitive: found, varying } = useSearch();
  const document = useWorkbench((all) => all.document);
  const kept = useField(['sensitivity', 'record']).raw as SensitivityRecord | undefined;
  const isSound = (document?.faults.length ?? 1) === 0;
  const sensitive = found ?? (isSound ? (kept ?? null) : null);
  const isCurrent = useMemo(
    () =>
      sensitive !== null &&
      document !== null &&
      keyIfThere(sensitivityKey, document.raw, document.option) === sensitive.of,
    [document, sensitive],
  );
  const rows = Array.isArray(spreads.raw) ? (spreads.raw as readonly { readonly input?: unknown }[]) : [];
  const unused = spreadInputs.find((input) => !rows.some((row) => row.input === input)) ?? spreadInputs[0];
  const begin = async () => {
    await session.settled();
    startSensitivity();
  };
  const keep = () =>
    session.edit({ kind: 'setField', option: null, path: ['sensitivity', 'record'], value: sensitive as unknown as Json }); // prettier-ignore
  return (
    <section className="sensitivity">
      <h3>{t.title}</h3>
      <p className="quiet">{t.help}</p>
      <TableField
        path={['spreads']}
        title={t.spreads}
        columns={[
          { key: 'input', title: t.input, choices: spreadInputs },
          { key: 'low', title: t.low, number: true },
          { key: 'high', title: t.high, number: true },
          { key: 'source', title: t.source },
        ]}
        blank={{ input: unused, low: -0.1, high: 0.1, source: t.toBeStated }}
      />
      <div>
        <NumberField path={['sensitivity', 'points']} label={t.points} help={t.pointsHelp} optional />
        <NumberField path={['sensitivity', 'seed']} label={t.seed} help={t.seedHelp} optional />
      </div>
      {varying ? (
        <>
          <progress max={varying.of} value={varying.done} aria-label={t.title} />
          <p className="quiet">{t.far(varying.done, varying.of)}</p>
          <button type="button" onClick={stopSearch}>
            {t.stop}
          </button>
        </>
      ) : (
        <button type="button" disabled={rows.length === 0 || state !== 'idle' || !isSound} onClick={() => void begin()}>
          {t.start}
        </button>
      )}
      {sensitive && (
        <>
          {!isCurrent && <p className="loud">{t.stale}</p>}
          <BlockList blocks={sensitivityBlocks(sensitive)} />
          <div className="acts">
            <button type="button" disabled={!isCurrent} onClick={() => void keep()}>
              {t.keep}
            </button>
            <p className="quiet">{t.keepHelp}</p>
          </div>
        </>
      )}
    </section>
  );
}
