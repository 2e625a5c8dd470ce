import type { PDFPageProxy } from 'pdfjs-dist';
import { texts } from '../texts.ts';

/** How far from the screen a page is drawn before it comes into sight, as CSS has it. */
const ahead = '400px 0px';

/**
 * Puts the pages of a PDF into a frame: a sheet of its own size for each, its text as the reader lays it (all pages, so
 * that the browser finds it), and its picture as fine as the screen is while it is near the screen. `stop` ends the
 * reader, wherever it is.
 */
export function readPages(
  bytes: Uint8Array,
  frame: HTMLElement,
  tellCount: (pages: number) => void,
): { readonly done: Promise<void>; readonly stop: () => void } {
  let isStopped = false;
  const endings: (() => void)[] = [];
  const stop = (): void => {
    isStopped = true;
    for (const end of endings.splice(0)) end();
  };
  const read = async (): Promise<void> => {
    const pdf = await import('pdfjs-dist');
    if (isStopped) return;
    pdf.GlobalWorkerOptions.workerSrc = new URL('pdf-worker.mjs', document.baseURI).href;
    // The reader takes the bytes for itself: ours stay.
    const task = pdf.getDocument({ data: bytes.slice(), isEvalSupported: false, useSystemFonts: false });
    endings.push(() => void task.destroy());
    const { numPages, getPage } = await task.promise.then((read) => ({ numPages: read.numPages, getPage: read.getPage.bind(read) })); // prettier-ignore
    if (isStopped) return;
    frame.replaceChildren();
    tellCount(numPages);
    const sheets = new Map<Element, Sheet>();
    const seen = new IntersectionObserver(
      (entries) => {
        for (const { target, isIntersecting } of entries) sheets.get(target)?.show(isIntersecting);
      },
      { rootMargin: ahead },
    );
    const sized = new ResizeObserver((entries) => {
      for (const { target } of entries) sheets.get(target)?.fit();
    });
    endings.push(() => {
      seen.disconnect();
      sized.disconnect();
      for (const sheet of sheets.values()) sheet.show(false);
    });
    for (let n = 1; n <= numPages; n++) {
      const page = await getPage(n);
      if (isStopped) return;
      const sheet = sheetOf(page, texts.note.page(n, numPages));
      sheets.set(sheet.element, sheet);
      frame.append(sheet.element);
      sheet.fit();
      seen.observe(sheet.element);
      sized.observe(sheet.element);
      const text = new pdf.TextLayer({
        textContentSource: page.streamTextContent(),
        container: sheet.text,
        viewport: page.getViewport({ scale: 1 }),
      });
      await text.render();
    }
  };
  return {
    // What a reader that was ended still had to say is no fault.
    done: read().catch((error: unknown) => {
      if (!isStopped) throw error;
    }),
    stop,
  };
}

interface Sheet {
  readonly element: HTMLElement;
  readonly text: HTMLElement;
  /** Draws the page, or puts its picture away: one as fine as a good screen takes 20 MB. */
  readonly show: (isNear: boolean) => void;
  /** Follows the width that the sheet has now. */
  readonly fit: () => void;
}

function sheetOf(page: PDFPageProxy, label: string): Sheet {
  const { width, height } = page.getViewport({ scale: 1 });
  const element = document.createElement('div');
  const canvas = document.createElement('canvas');
  const text = document.createElement('div');
  element.className = 'pdf-page';
  element.style.aspectRatio = `${width} / ${height}`;
  text.className = 'pdf-text';
  canvas.width = canvas.height = 0;
  canvas.setAttribute('role', 'img');
  canvas.setAttribute('aria-label', label);
  element.append(canvas, text);
  let isNear = false;
  let drawing: ReturnType<PDFPageProxy['render']> | null = null;
  const draw = (): void => {
    drawing?.cancel();
    drawing = null;
    if (!isNear || element.clientWidth === 0) {
      canvas.width = canvas.height = 0;
      return;
    }
    const viewport = page.getViewport({ scale: (element.clientWidth * devicePixelRatio) / width });
    canvas.width = Math.round(viewport.width);
    canvas.height = Math.round(viewport.height);
    drawing = page.render({ canvas, viewport });
    // A drawing that was called off has been followed by another, or by none.
    drawing.promise.catch((error: unknown) => {
      if (!(error instanceof Error && error.name === 'RenderingCancelledException')) throw error;
    });
  };
  let drawnAt = 0;
  return {
    element,
    text,
    show: (near) => {
      if (near === isNear) return;
      isNear = near;
      drawnAt = element.clientWidth;
      draw();
    },
    fit: () => {
      element.style.setProperty('--total-scale-factor', String(element.clientWidth / width));
      if (!isNear || element.clientWidth === drawnAt) return;
      drawnAt = element.clientWidth;
      draw();
    },
  };
}
