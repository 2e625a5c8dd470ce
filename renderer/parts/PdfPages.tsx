import { useEffect, useRef, useState } from 'react';
import { notify } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { readPages } from './read-pages.ts';
import './pdf-pages.css';

/** The pages of a PDF as they will be printed, with their text to be selected, found and listened to. */
export function PdfPages({ bytes }: { bytes: Uint8Array }) {
  const frame = useRef<HTMLDivElement>(null);
  const [count, setCount] = useState(0);
  useEffect(() => {
    if (!frame.current) return;
    const reading = readPages(bytes, frame.current, setCount);
    reading.done.catch((error: unknown) => {
      console.error(error);
      notify('loud', texts.note.notShown);
    });
    return reading.stop;
  }, [bytes]);
  return (
    <section aria-label={texts.note.pages(count)}>
      <p className="quiet small">{texts.note.pages(count)}</p>
      <div className="pdf-pages" ref={frame} />
    </section>
  );
}
