import type { FieldPath } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { FieldFrame } from './FieldFrame.tsx';

export interface Choice {
  readonly value: string;
  readonly title: string;
}

/** One of a few values. A value that is not among them stays shown, with its fault. `none`: the words for leaving it out. */
export function ChoiceField({
  path,
  label,
  help,
  choices,
  none,
}: {
  path: FieldPath;
  label: string;
  help?: string;
  choices: readonly Choice[];
  none?: string;
}) {
  const field = useField(path);
  const held = field.raw === undefined || field.raw === null ? '' : String(field.raw);
  const known = choices.some(({ value }) => value === held) || (held === '' && none !== undefined);
  return (
    <FieldFrame label={label} help={help} fault={field.fault} differs={field.differs} onReset={field.clear}>
      {(frame) => (
        <select
          {...frame}
          value={held}
          onChange={({ target }) => (target.value === '' ? field.clear() : field.set(target.value))}
        >
          {none !== undefined && <option value="">{none}</option>}
          {!known && <option value={held}>{held}</option>}
          {choices.map(({ value, title }) => (
            <option key={value} value={value}>
              {title}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
