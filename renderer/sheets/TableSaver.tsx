import { useState } from 'react';
import type { ListedKind, SolvedSet } from '../../core/engine/solve-service.ts';
import type { SolverTable } from '../../core/plate/results/solver-tables.ts';
import { saveBytes } from '../parts/save-bytes.ts';
import { said } from '../state/said.ts';
import { useSession } from '../state/session-context.ts';
import { motionTablesOf, tablesOf } from '../state/solver.ts';
import { notify } from '../state/workbench.ts';
import { texts } from '../texts.ts';

const t = texts.whole;

/** Tables of a loading, in the order in which they are written. */
const tables = [
  'nodes',
  'tubes',
  'panels',
  'bolts',
  'welds',
  'contacts',
  'supports',
  'bolt-ranges',
  'joint-ends',
] as const;

/** Saves what was solved as CSV: all tables of it in one file, each under its name, or one of them as a file of its own. */
export function TableSaver({
  label,
  name,
  disabled,
  of,
}: {
  readonly label: string;
  readonly name: string;
  readonly disabled: boolean;
  readonly of:
    | { readonly set: SolvedSet['name']; readonly loading: number }
    | { readonly motions: ListedKind }
    | { readonly table: SolverTable };
}) {
  const { host } = useSession();
  const [isBusy, setBusy] = useState(false);
  const [only, setOnly] = useState('');
  const save = async () => {
    setBusy(true);
    try {
      const found = 'table' in of ? [of.table] : 'set' in of ? await tablesOf(of.set, of.loading) : await motionTablesOf(of.motions); // prettier-ignore
      if (found.length === 0) return;
      const one = 'table' in of ? of.table : found.find((table) => table.name === `${only}.csv`);
      // one file, each table under its name: a browser asks once
      const text = one ? one.text : found.map((table) => `${table.name}\r\n${table.text}`).join('\r\n');
      const saved = await saveBytes(host, one?.name ?? name, new TextEncoder().encode(text), 'text/csv');
      if (saved) notify('plain', { what: t.saved(saved), mend: '' });
    } finally {
      setBusy(false);
    }
  };
  return (
    <div className="solver-wishes">
      {'set' in of && (
        <label>
          {t.table}{' '}
          <select value={only} onChange={({ target }) => setOnly(target.value)}>
            <option value="">{t.allTables}</option>
            {tables.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </select>
        </label>
      )}
      <button type="button" disabled={disabled || isBusy} onClick={() => void said(save)}>
        {label}
      </button>
    </div>
  );
}
