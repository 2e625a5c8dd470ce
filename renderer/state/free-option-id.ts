import { rawOptions } from './raw-options.ts';

/** `id`, or the first of `id-2`, `id-3`, … that no option of the document has. */
export function freeOptionId(id: string): string {
  const options = rawOptions();
  const isTaken = (name: string) => options.some((option) => option.id === name);
  if (!isTaken(id)) return id;
  const stem = id.replace(/-\d+$/, '');
  let n = 2;
  while (isTaken(`${stem}-${n}`)) n++;
  return `${stem}-${n}`;
}
