import type { FieldPath } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { useTyped } from './use-typed.ts';

/** A plain number. What is no number is stored as it was typed, and the document says what is wrong with it. */
export function NumberField({
  path,
  label,
  help,
  optional = false,
}: {
  path: FieldPath;
  label: string;
  help?: string;
  optional?: boolean;
}) {
  const field = useField(path);
  const held = field.raw === undefined || field.raw === null ? '' : String(field.raw);
  const { control } = useTyped(held, (text) => {
    if (text.trim() === '' && optional) return field.clear();
    const number = Number(text.trim().replace(',', '.'));
    field.set(text.trim() !== '' && Number.isFinite(number) ? number : text);
  });
  return (
    <FieldFrame label={label} help={help} fault={field.fault} differs={field.differs} onReset={field.clear}>
      {(frame) => <input type="text" inputMode="decimal" {...frame} {...control} />}
    </FieldFrame>
  );
}
