import type { Json } from '../../core/document/edit.ts';

export type Row = Readonly<Record<string, Json>>;

/** The value at a column of a row; a column "fails.value" stands one part deeper. */
export function cellOf(row: Row, key: string): Json | undefined {
  const [head = '', ...rest] = key.split('.');
  const value = row[head];
  if (rest.length === 0) return value;
  return isPart(value) ? cellOf(value, rest.join('.')) : undefined;
}

/** The row with a column set. A part whose columns are all empty is taken out: nobody states it then. */
export function withCell(row: Row, key: string, value: Json): Row {
  const [head = '', ...rest] = key.split('.');
  if (rest.length === 0) return { ...row, [head]: value };
  const part = withCell(isPart(row[head]) ? row[head] : {}, rest.join('.'), value);
  const { [head]: _gone, ...others } = row;
  return Object.values(part).every((one) => one === '') ? others : { ...row, [head]: part };
}

const isPart = (value: Json | undefined): value is { [key: string]: Json } =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
