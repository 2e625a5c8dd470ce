import type { FieldPath } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { useTyped } from './use-typed.ts';

/** A text of the document; `long` for several lines. An emptied optional field is taken out. */
export function TextField({
  path,
  label,
  help,
  optional = false,
  long = false,
}: {
  path: FieldPath;
  label: string;
  help?: string;
  optional?: boolean;
  long?: boolean;
}) {
  const field = useField(path);
  const held = typeof field.raw === 'string' ? field.raw : field.raw == null ? '' : JSON.stringify(field.raw);
  const { control } = useTyped(held, (text) => (text === '' && optional ? field.clear() : field.set(text)));
  const { onKeyDown, ...several } = control;
  return (
    <FieldFrame label={label} help={help} fault={field.fault} differs={field.differs} onReset={field.clear}>
      {(frame) =>
        long ? (
          <textarea {...frame} {...several} />
        ) : (
          <input type="text" className="long" {...frame} {...several} onKeyDown={onKeyDown} />
        )
      }
    </FieldFrame>
  );
}
