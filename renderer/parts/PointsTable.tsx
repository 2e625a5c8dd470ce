import { valueAt, type FieldPath, type Json } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { TableField, type TableColumn } from './TableField.tsx';

/** Named points in plan: attachments, pad eyes, supports on deck. */
export function PointsTable({ path, title, prefix }: { path: FieldPath; title: string; prefix: string }) {
  const units = useWorkbench((state) => valueAt(state.document?.raw, ['units']));
  const field = useField(path);
  const list = Array.isArray(field.raw) ? (field.raw as readonly Json[]) : [];
  const zero = units === 'inch' ? '0 in' : '0 mm';
  return (
    <TableField
      path={path}
      title={title}
      columns={columns}
      blank={{ id: `${prefix}${list.length + 1}`, x: zero, y: zero }}
    />
  );
}

const columns: readonly TableColumn[] = [
  { key: 'id', title: texts.columns.name },
  { key: 'x', title: 'x' },
  { key: 'y', title: 'y' },
];
