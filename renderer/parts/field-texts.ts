import { texts, type FieldName } from '../texts.ts';

/** Label and help of a field, for its control. */
export function fieldTexts(name: FieldName): { readonly label: string; readonly help: string } {
  const [label, help] = texts.fields[name];
  return { label, help };
}
