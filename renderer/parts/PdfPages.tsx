import { useEffect, useRef, useState } from 'react';
import { texts } from '../texts.ts';

/** The pages of a PDF as they will be printed, each with its text for listening and copying. */
export function PdfPages({ bytes }: { bytes: Uint8Array }) {
  const frame = useRef<HTMLDivElement>(null);
  const [count, setCount] = useState(0);
  useEffect(() => {
    let current = true;
    void (async () => {
      const pdf = await import('pdfjs-dist');
      pdf.GlobalWorkerOptions.workerSrc = new URL('pdf-worker.mjs', document.baseURI).href;
      // The reader takes the bytes for itself: ours stay.
      const task = pdf.getDocument({ data: bytes.slice(), isEvalSupported: false, useSystemFonts: false });
      const document_ = await task.promise;
      if (!current || !frame.current) return void task.destroy();
      frame.current.replaceChildren();
      setCount(document_.numPages);
      for (let n = 1; n <= document_.numPages && current; n++) {
        const page = await document_.getPage(n);
        const viewport = page.getViewport({ scale: 2 });
        const canvas = document.createElement('canvas');
        canvas.width = viewport.width;
        canvas.height = viewport.height;
        canvas.setAttribute('role', 'img');
        canvas.setAttribute('aria-label', texts.note.page(n, document_.numPages));
        frame.current?.append(canvas);
        await page.render({ canvas, viewport }).promise;
      }
    })();
    return () => {
      current = false;
    };
  }, [bytes]);
  return (
    <section aria-label={texts.note.pages(count)}>
      <p className="quiet small">{texts.note.pages(count)}</p>
      <div className="pdf-pages" ref={frame} />
    </section>
  );
}
