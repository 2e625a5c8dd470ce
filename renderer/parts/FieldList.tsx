import type { FieldPath } from '../../core/document/edit.ts';
import type { Kind } from '../../core/quantity/kinds.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { NumberField } from './NumberField.tsx';
import { QuantityField } from './QuantityField.tsx';
import { SwitchField } from './SwitchField.tsx';
import { TextField } from './TextField.tsx';

/** A field as data: where it stands under its list's path, what it takes, and its words. */
export interface FieldSpec {
  readonly at: FieldPath;
  /** A kind of quantity, a plain number, a text, yes or no, or words to choose from. */
  readonly takes: Kind | 'number' | 'text' | 'switch' | readonly string[];
  readonly label: string;
  readonly help: string;
  /** May be left out; with words, those for leaving it out. */
  readonly optional?: true | string;
}

/** A field without its words. */
type Bare = Omit<FieldSpec, 'label' | 'help'>;

/** Fields with their words: label and help by the place of each, its names joined by dots. */
export const fields = (words: Readonly<Record<string, readonly string[]>>, of: readonly Bare[]): readonly FieldSpec[] =>
  of.map((field) => {
    const [label, help] = words[field.at.join('.')] ?? [];
    if (label === undefined || help === undefined)
      throw new Error(`There are no words for the field ${field.at.join('.')}`);
    return { ...field, label, help };
  });

/** Fields one below the other. */
export function FieldList({ path, of }: { path: FieldPath; of: readonly FieldSpec[] }) {
  return of.map((spec) => <OneField key={spec.at.join('.')} path={[...path, ...spec.at]} {...spec} />);
}

function OneField({ path, takes, label, help, optional }: FieldSpec & { path: FieldPath }) {
  const words = { path, label, help };
  const leave = optional !== undefined;
  if (takes === 'number') return <NumberField {...words} optional={leave} />;
  if (takes === 'text') return <TextField {...words} optional={leave} />;
  if (takes === 'switch') return <SwitchField {...words} />;
  if (typeof takes === 'string') return <QuantityField {...words} kind={takes} optional={leave} />;
  return (
    <ChoiceField
      {...words}
      choices={takes.map((value) => ({ value, title: value }))}
      {...(typeof optional === 'string' ? { none: optional } : {})}
    />
  );
}
