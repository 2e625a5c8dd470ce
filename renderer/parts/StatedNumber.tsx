import type { FieldPath } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { NumberField } from './NumberField.tsx';
import { TextField } from './TextField.tsx';
import { texts } from '../texts.ts';

const t = texts.stated;

/** A number that nobody has until somebody answers for it: value and source, stated and taken out together. */
export function StatedNumber({
  path,
  label,
  help,
  first,
}: {
  path: FieldPath;
  label: string;
  help: string;
  /** What stands there as it is stated, to be typed over. */
  first: number;
}) {
  const field = useField(path);
  if (field.raw === undefined)
    return (
      <p>
        <button type="button" className="plain small" onClick={() => field.set({ value: first, source: t.source })}>
          {t.add(label)}
        </button>
      </p>
    );
  return (
    <>
      <NumberField path={[...path, 'value']} label={label} help={help} />
      <TextField path={[...path, 'source']} label={t.sourceOf(label)} help={t.sourceHelp} />
      <p>
        <button type="button" className="link small" onClick={field.clear}>
          {t.remove(label)}
        </button>
      </p>
    </>
  );
}
