import type { FieldPath } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { FieldFrame } from './FieldFrame.tsx';

/** Yes or no. `standard`: what holds where the document says nothing. */
export function SwitchField({
  path,
  label,
  help,
  standard = false,
}: {
  path: FieldPath;
  label: string;
  help?: string;
  standard?: boolean;
}) {
  const field = useField(path);
  const held = typeof field.raw === 'boolean' ? field.raw : standard;
  return (
    <FieldFrame label={label} help={help} fault={field.fault} differs={field.differs} onReset={field.clear}>
      {(frame) => (
        <input type="checkbox" {...frame} checked={held} onChange={({ target }) => field.set(target.checked)} />
      )}
    </FieldFrame>
  );
}
