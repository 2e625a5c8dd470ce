import type { ReactNode } from 'react';
import { Refused } from '../parts/Refused.tsx';
import type { Awaited } from '../state/use-record.ts';

/** What was asked, that it is awaited, or why it cannot be had. */
export function Answer<T>({
  answer: { value, refusal },
  waiting,
  children,
}: {
  answer: Awaited<T>;
  waiting: string | null;
  children: (value: T) => ReactNode;
}) {
  if (value !== null) return children(value);
  if (refusal) return <Refused refusal={refusal} />;
  return waiting === null ? null : <p className="quiet">{waiting}</p>;
}
