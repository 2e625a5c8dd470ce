import { useEffect, useRef, useState } from 'react';

/**
 * A text that is typed before it becomes an edit: kept while typing, handed over on Enter, on leaving the field and when
 * the field goes away (a sheet left by a key), taken back on Escape. Handed over once, however often it is asked for
 * before the document has it. What the document holds replaces it when that changes.
 */
export function useTyped(held: string, commit: (typed: string) => void) {
  const [typed, setTyped] = useState(held);
  const handed = useRef<string | null>(null);
  useEffect(() => {
    handed.current = null;
    setTyped(held);
  }, [held]);
  const hand = () => {
    if (typed === held || typed === handed.current) return;
    handed.current = typed;
    commit(typed);
  };
  const last = useRef(hand);
  useEffect(() => {
    last.current = hand;
  });
  useEffect(() => () => last.current(), []);
  return {
    typed,
    control: {
      value: typed,
      onChange: (event: { target: { value: string } }) => {
        handed.current = null;
        setTyped(event.target.value);
      },
      onBlur: hand,
      onKeyDown: (event: { key: string }) => {
        if (event.key === 'Enter') hand();
        if (event.key === 'Escape') setTyped(held);
      },
    },
  };
}
