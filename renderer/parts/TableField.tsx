import { Fragment, useId, type ClipboardEvent } from 'react';
import type { FieldPath, Json } from '../../core/document/edit.ts';
import type { RefusalText } from '../../core/refusal.ts';
import { faultAt, useField } from '../state/use-field.ts';
import { none } from '../state/none.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { CopyButton } from './CopyButton.tsx';
import { cellOf, withCell, type Row } from './row-cells.ts';
import { tableItem } from './table-item.ts';
import { useTyped } from './use-typed.ts';
import './table-field.css';

export interface TableColumn {
  /** A name of the row, or one in a part of it: "fails.value". */
  readonly key: string;
  readonly title: string;
  /** Words to choose from; any text otherwise. */
  readonly choices?: readonly string[];
  /** A plain number; what is none stays as it was typed. */
  readonly number?: true;
}

/**
 * A list of the document as a table: cells are typed as anywhere, rows come and go, and a block of cells can be pasted
 * from a spreadsheet or copied to one (tab-separated).
 */
export function TableField({
  path,
  title,
  columns,
  blank,
  numbered = false,
}: {
  path: FieldPath;
  title: string;
  columns: readonly TableColumn[];
  /** What a new row begins with. */
  blank: Row;
  /** Each row shows its number, where something is named by it. */
  numbered?: boolean;
}) {
  const field = useField(path);
  const base = useId();
  const faults = useWorkbench((state) => state.document?.faults ?? none);
  const rows = Array.isArray(field.raw) ? (field.raw as readonly Row[]) : [];
  // what is wrong in a row is said below that row
  const own = rows.some((_, i) => faultAt(faults, [...path, i].join('.')) === field.fault) ? null : field.fault;
  const paste = (event: ClipboardEvent, row: number, column: number) => {
    const block = event.clipboardData
      .getData('text/plain')
      .replace(/\r?\n$/, '')
      .split(/\r?\n/)
      .map((line) => line.split('\t'));
    if (block.length === 1 && block[0]!.length === 1) return;
    event.preventDefault();
    const after = [...rows];
    block.forEach((line, i) => {
      after[row + i] = line.reduce(
        (to, cell, j) => {
          const under = columns[column + j];
          return under ? withCell(to, under.key, under.number ? numberOr(cell.trim()) : cell.trim()) : to;
        },
        after[row + i] ?? blank,
      );
    });
    field.set(after);
  };
  const copy = () =>
    tableItem([
      columns.map((column) => column.title),
      ...rows.map((row) => columns.map(({ key }) => textOf(cellOf(row, key)))),
    ]);
  return (
    <div className={columns.length > 4 ? 'table-field many' : 'table-field'}>
      {rows.length > 0 && (
        <table aria-label={title}>
          <thead>
            <tr>
              {numbered && (
                <td>
                  <span className="unseen">{texts.table.number}</span>
                </td>
              )}
              {columns.map((column) => (
                <th key={column.key} scope="col">
                  {column.title}
                </th>
              ))}
              <th scope="col">
                <span className="unseen">{texts.grid.remove}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, i) => (
              <Fragment key={i}>
                <tr>
                  {numbered && (
                    <th scope="row" className="number quiet">
                      {i + 1}
                    </th>
                  )}
                  {columns.map((column, j) => (
                    <td key={column.key} onPaste={(event) => paste(event, i, j)}>
                      <Cell
                        label={`${title}, ${i + 1}, ${column.title}`}
                        column={column}
                        value={textOf(cellOf(row, column.key))}
                        fault={faultAt(faults, [...path, i, column.key].join('.'))}
                        describedBy={`${base}-${i}`}
                        onCommit={(value) =>
                          field.set(
                            rows.map((other, n) =>
                              n === i ? withCell(other, column.key, column.number ? numberOr(value) : value) : other,
                            ),
                          )
                        }
                      />
                    </td>
                  ))}
                  <td>
                    <button
                      type="button"
                      className="link small remove"
                      onClick={() => field.set(rows.filter((_, n) => n !== i))}
                    >
                      <span>{texts.grid.remove}</span>
                    </button>
                  </td>
                </tr>
                <RowFaults
                  id={`${base}-${i}`}
                  path={[...path, i]}
                  columns={columns}
                  faults={faults}
                  span={columns.length + (numbered ? 2 : 1)}
                />
              </Fragment>
            ))}
          </tbody>
        </table>
      )}
      {own && <p className="fault">{`${own.what}. ${own.mend}`}</p>}
      <div className="table-acts">
        <button type="button" onClick={() => field.set([...rows, blank])}>
          {texts.table.add}
        </button>
        {rows.length > 0 && <CopyButton label={texts.table.copy} what={copy} />}
      </div>
    </div>
  );
}

/** What is wrong in a row, in words below it, each with its column. */
function RowFaults({
  id,
  path,
  columns,
  faults,
  span,
}: {
  id: string;
  path: FieldPath;
  columns: readonly TableColumn[];
  faults: readonly RefusalText[];
  span: number;
}) {
  const wrong = columns.flatMap(({ key, title }) => {
    const fault = faultAt(faults, [...path, key].join('.'));
    return fault ? [{ key, title, fault }] : [];
  });
  if (wrong.length === 0) return null;
  return (
    <tr className="row-faults">
      <td colSpan={span} id={id}>
        {wrong.map(({ key, title, fault }) => (
          <p key={key} className="fault">
            <b>{title}:</b> {fault.what}. {fault.mend}
          </p>
        ))}
      </td>
    </tr>
  );
}

function Cell({
  label,
  column,
  value,
  fault,
  describedBy,
  onCommit,
}: {
  label: string;
  column: TableColumn;
  value: string;
  fault: RefusalText | null;
  /** Where the fault is said. */
  describedBy: string;
  onCommit: (value: string) => void;
}) {
  const { control } = useTyped(value, onCommit);
  const wrong = fault ? ({ 'aria-invalid': true, 'aria-describedby': describedBy } as const) : {};
  if (column.choices)
    return (
      <select aria-label={label} value={value} onChange={({ target }) => onCommit(target.value)} {...wrong}>
        {!column.choices.includes(value) && <option value={value}>{value}</option>}
        {column.choices.map((choice) => (
          <option key={choice} value={choice}>
            {choice}
          </option>
        ))}
      </select>
    );
  return <input type="text" aria-label={label} spellCheck={false} {...control} {...wrong} />;
}

function textOf(value: Json | undefined): string {
  if (value === undefined || value === null) return '';
  if (typeof value === 'object' && 'typed' in value) return String(value.typed);
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}

function numberOr(typed: string): Json {
  const number = Number(typed.replace(',', '.'));
  return typed.trim() !== '' && Number.isFinite(number) ? number : typed;
}
