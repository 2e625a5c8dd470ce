import type { FieldPath } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { useTyped } from './use-typed.ts';

/** A list of texts with semicolons between, for a comma may stand inside a number. Emptied it is taken out. */
export function ListField({ path, label, help }: { path: FieldPath; label: string; help?: string }) {
  const field = useField(path);
  const items = Array.isArray(field.raw) ? (field.raw as readonly unknown[]) : [];
  const held = items.map((one) => (typeof one === 'string' ? one : JSON.stringify(one))).join('; ');
  const { control } = useTyped(held, (text) => {
    const list = text.split(';').flatMap((one) => (one.trim() === '' ? [] : [one.trim()]));
    if (list.length === 0) field.clear();
    else field.set(list);
  });
  return (
    <FieldFrame label={label} help={help} fault={field.fault} differs={field.differs} onReset={field.clear}>
      {(frame) => <input type="text" className="long" spellCheck={false} {...frame} {...control} />}
    </FieldFrame>
  );
}
