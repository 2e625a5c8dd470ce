import type { ReactNode } from 'react';
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
  if (refusal)
    return (
      <p className="fault" role="alert">
        {refusal.what}. {refusal.mend}
      </p>
    );
  return waiting === null ? null : <p className="quiet">{waiting}</p>;
}
