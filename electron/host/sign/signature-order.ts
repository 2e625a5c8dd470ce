import { roles } from '../../../core/issue/register.ts';

/** What the order of signatures is judged by: whose box each is in (null if unknown), and the time it claims. */
export interface Signed {
  readonly role: string | null;
  readonly time: Date | null;
}

/**
 * What is wrong with the last of `signed`, which stand in the order in which they were added: the author signs before
 * the checker, the checker before the licensed engineer, each once, and no clock runs backwards. Roles may be left out.
 * A signature of unknown role is judged by its time alone.
 */
export function orderFaults(signed: readonly Signed[]): string[] {
  const last = signed.at(-1);
  if (!last) return [];
  const before = signed.slice(0, -1);
  const rank = (role: string | null): number => roles.findIndex((name) => name === role);
  const role = rank(last.role);
  const over = role < 0 ? undefined : before.find((one) => rank(one.role) > role);
  const earlier = before.filter(({ time }) => time !== null).at(-1);
  return [
    ...(over ? [`the ${last.role} signed after the ${over.role}: the order is ${roles.join(', ')}`] : []),
    ...(role >= 0 && before.some((one) => one.role === last.role) ? [`the ${last.role} had signed before`] : []),
    ...(last.time && earlier?.time && last.time < earlier.time ? [`it claims ${last.time.toISOString()}, before the signature under it (${earlier.time.toISOString()})`] : []), // prettier-ignore
  ];
}
