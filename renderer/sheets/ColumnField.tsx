import type { FieldPath } from '../../core/document/edit.ts';
import type { RecordHead } from '../../core/engine/record-messages.ts';
import { FieldFrame } from '../parts/FieldFrame.tsx';
import { useField } from '../state/use-field.ts';
import { texts } from '../texts.ts';

const t = texts.tank;

/** A column of the file, by its place; left out, it is found by its name. */
export function ColumnField({
  path,
  label,
  columns,
}: {
  path: FieldPath;
  label: string;
  columns: RecordHead['columns'];
}) {
  const field = useField(path);
  const held = field.raw === undefined ? '' : String(field.raw);
  const known = held === '' || columns.some((_, i) => String(i + 1) === held);
  return (
    <FieldFrame label={label} fault={field.fault}>
      {(frame) => (
        <select
          {...frame}
          value={held}
          onChange={({ target }) => (target.value === '' ? field.clear() : field.set(Number(target.value)))}
        >
          <option value="">{t.byName}</option>
          {!known && <option value={held}>{held}</option>}
          {columns.map(({ name, unit }, i) => (
            <option key={i} value={String(i + 1)}>
              {t.column(i + 1, name, unit)}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
