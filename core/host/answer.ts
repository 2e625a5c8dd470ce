import { Refusal, type RefusalText } from '../refusal.ts';

/** What a call of the host gives: a value, or why not. A call never rejects: an exception would lose its fields on the way. */
export type Answer<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: RefusalText };

export const granted = <T>(value: T): Answer<T> => ({ ok: true, value });
export const refused = (refusal: RefusalText): Answer<never> => ({ ok: false, refusal });

/** Gives the value of an answer, or throws its refusal. */
export function valueOf<T>(answer: Answer<T>): T {
  if (answer.ok) return answer.value;
  throw new Refusal([answer.refusal]);
}
