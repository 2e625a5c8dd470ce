import type { ComparisonView, OptionView } from '../../core/engine/comparison-view.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { CopyButton } from './CopyButton.tsx';
import { tableItem } from './table-item.ts';
import './comparison.css';
import { utilisationText } from '../../core/quantity/utilisation-text.ts';

/** Every quantity and every check of each option, a column for each; can be copied to a spreadsheet. */
export function ComparisonTable({ comparison }: { comparison: ComparisonView }) {
  const { options, quantities, checks } = comparison;
  const shown = useWorkbench((state) => state.document?.option ?? null);
  const rows = quantities.map(({ id, title }) => ({
    title,
    cells: options.map(({ numbers }) => {
      const quantity = numbers?.quantities[id];
      return quantity ? { text: quantity.text, change: quantity.change } : { text: '–', change: '' };
    }),
  }));
  const counts = (['fails', 'unjudged', 'findings'] as const).map((name) => ({
    title: texts.options.counts[name],
    cells: options.map(({ numbers }) => ({
      text: numbers ? String(numbers[name]) : '–',
      change: '',
      tone: name !== 'findings' && numbers && numbers[name] > 0 ? name : '',
    })),
  }));
  const uses = checks.map(({ id, title }) => ({
    title,
    cells: options.map(({ numbers }) => {
      const row = numbers?.checks[id];
      if (!row) return { text: '–', change: '', tone: '' };
      const use = row.utilisation === null ? '' : utilisationText(row.utilisation);
      const loud = row.verdict === 'fails' ? 'fails' : row.verdict === 'cannot be judged' ? 'unjudged' : '';
      return {
        text: loud ? `${use} ${texts.verdict[row.verdict as keyof typeof texts.verdict]}`.trim() : use,
        change: '',
        tone: loud,
      };
    }),
  }));
  const copy = () =>
    tableItem([
      ['', ...options.map(({ title }) => title)],
      ...[...rows, ...counts, ...uses].map(({ title, cells }) => [title, ...cells.map(({ text }) => text)]),
    ]);
  return (
    <div className="comparison">
      <div className="table-frame" tabIndex={0} role="region" aria-label={texts.sheets.options}>
        <table>
          <thead>
            <tr>
              <td />
              {options.map((option, n) => (
                <th key={option.id ?? ''} scope="col" className={option.id === shown ? 'number current' : 'number'}>
                  <span className="no">{n + 1}</span>
                  {option.title}
                  <Fault option={option} />
                </th>
              ))}
            </tr>
          </thead>
          <Body rows={rows} />
          <Body rows={counts} />
          <Body rows={uses} />
        </table>
      </div>
      <CopyButton label={texts.table.copy} what={copy} />
    </div>
  );
}

interface Line {
  readonly title: string;
  readonly cells: readonly { readonly text: string; readonly change: string; readonly tone?: string | null }[];
}

function Body({ rows }: { rows: readonly Line[] }) {
  return (
    <tbody>
      {rows.map(({ title, cells }) => (
        <tr key={title}>
          <th scope="row">{title}</th>
          {cells.map(({ text, change, tone }, n) => (
            <td key={n} className={`number ${tone ?? ''}`}>
              {text}
              {change && <span className="quiet small change">{change}</span>}
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  );
}

const Fault = ({ option }: { option: OptionView }) =>
  option.faults.length > 0 ? <span className="loud small change">{option.faults[0]!.what}</span> : null;
