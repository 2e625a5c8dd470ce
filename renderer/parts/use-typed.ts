import { useEffect, useState } from 'react';

/**
 * A text that is typed before it becomes an edit: kept while typing, handed over on Enter or on leaving the field,
 * taken back on Escape. What the document holds replaces it when that changes.
 */
export function useTyped(held: string, commit: (typed: string) => void) {
  const [typed, setTyped] = useState(held);
  useEffect(() => setTyped(held), [held]);
  const hand = () => {
    if (typed !== held) commit(typed);
  };
  return {
    typed,
    control: {
      value: typed,
      onChange: (event: { target: { value: string } }) => setTyped(event.target.value),
      onBlur: hand,
      onKeyDown: (event: { key: string }) => {
        if (event.key === 'Enter') hand();
        if (event.key === 'Escape') setTyped(held);
      },
    },
  };
}
