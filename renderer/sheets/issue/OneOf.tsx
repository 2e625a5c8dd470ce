import { FieldFrame } from '../../parts/FieldFrame.tsx';

/** A field that chooses one of a few words; it belongs to no document. */
export function OneOf<Value extends string>({
  label,
  value,
  onChange,
  choices,
  words,
  help,
}: {
  label: string;
  value: Value;
  onChange: (value: Value) => void;
  choices: readonly Value[];
  words: Readonly<Record<Value, string>>;
  help?: string;
}) {
  return (
    <FieldFrame label={label} help={help || undefined}>
      {(control) => (
        <select
          {...control}
          value={value}
          disabled={choices.length === 0}
          onChange={(event) => onChange(event.target.value as Value)}
        >
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {words[choice]}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
