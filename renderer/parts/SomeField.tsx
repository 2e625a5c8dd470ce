import type { FieldPath } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import type { Choice } from './ChoiceField.tsx';
import { FieldFrame } from './FieldFrame.tsx';

/** Any of a few words, each with a box; with none the list is taken out of the document. */
export function SomeField({
  path,
  label,
  help,
  choices,
}: {
  path: FieldPath;
  label: string;
  help?: string;
  choices: readonly Choice[];
}) {
  const field = useField(path);
  const held = Array.isArray(field.raw) ? (field.raw as readonly string[]) : [];
  const pick = (value: string, on: boolean) => {
    const list = on ? [...held, value] : held.filter((one) => one !== value);
    if (list.length === 0) field.clear();
    else field.set(list);
  };
  return (
    <FieldFrame label={label} help={help} fault={field.fault} differs={field.differs} onReset={field.clear}>
      {({ id, 'aria-describedby': describedBy }) => (
        <span role="group" aria-label={label} aria-describedby={describedBy} className="some-of">
          {choices.map(({ value, title }, n) => (
            <label key={value}>
              <input
                id={n === 0 ? id : undefined}
                type="checkbox"
                checked={held.includes(value)}
                onChange={({ target }) => pick(value, target.checked)}
              />
              {title}
            </label>
          ))}
        </span>
      )}
    </FieldFrame>
  );
}
