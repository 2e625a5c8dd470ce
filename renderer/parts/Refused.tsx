import type { RefusalText } from '../../core/refusal.ts';

/** What was refused and how to mend it, said where it was asked for. */
export function Refused({ refusal: { what, mend } }: { refusal: RefusalText }) {
  return (
    <p className="fault" role="alert">
      {what}. {mend}
    </p>
  );
}
