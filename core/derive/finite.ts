import { refusal } from '../refusal.ts';

/** The value itself; refuses an infinite value or NaN, by the text of what gave it. Called by the generated functions. */
export function finite(value: number, text: string): number {
  if (Number.isFinite(value)) return value;
  throw refusal({
    what: `${text} is ${value}, no finite number`,
    where: { expression: text },
    mend: 'Check the values it is made of',
  });
}
