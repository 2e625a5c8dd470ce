import type { OptionView } from '../../core/engine/comparison-view.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { CopyButton } from './CopyButton.tsx';
import { tableItem } from './table-item.ts';
import './comparison.css';

/** What each option gains in the water, a column for each; those still being worked out say so. */
export function WaterGainsTable({ options }: { options: readonly OptionView[] }) {
  const gains = useWorkbench((state) => state.waterGains);
  const shown = useWorkbench((state) => state.document?.option ?? null);
  const t = texts.options.water;
  const columns = options.map(({ id }) => gains.get(id));
  const first = columns.find((column) => column && 'rows' in column);
  if (!first || !('rows' in first)) {
    const why = columns.find((column) => column && 'why' in column);
    return <p className="quiet">{why && 'why' in why ? why.why : t.workingOut}</p>;
  }
  const cell = (n: number, row: number): { text: string; beside: string } => {
    const column = columns[n];
    if (!column) return { text: '', beside: t.workingOut };
    return 'rows' in column ? column.rows[row]! : { text: '–', beside: row === 0 ? column.why : '' };
  };
  const copy = () =>
    tableItem([
      ['', ...options.map(({ title }) => title)],
      ...first.rows.flatMap(({ title }, row) => [
        [title, ...options.map((_option, n) => cell(n, row).text)],
        ['', ...options.map((_option, n) => cell(n, row).beside)],
      ]),
    ]);
  return (
    <div className="comparison">
      <div className="table-frame" tabIndex={0} role="region" aria-label={t.title}>
        <table>
          <thead>
            <tr>
              <td />
              {options.map(({ id, title }, n) => (
                <th key={id ?? ''} scope="col" className={id === shown ? 'number current' : 'number'}>
                  <span className="no">{n + 1}</span>
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {first.rows.map(({ title }, row) => (
              <tr key={title}>
                <th scope="row">{title}</th>
                {options.map(({ id }, n) => {
                  const { text, beside } = cell(n, row);
                  return (
                    <td key={id ?? ''} className="number">
                      {text}
                      {beside && <span className="quiet small change">{beside}</span>}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <CopyButton label={texts.table.copy} what={copy} />
      <p className="quiet small">{t.caution}</p>
    </div>
  );
}
