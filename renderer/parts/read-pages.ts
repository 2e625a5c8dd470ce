import type { PageViewport } from 'pdfjs-dist';
import type { TextContent } from 'pdfjs-dist/types/src/display/api.js';
import { texts } from '../texts.ts';
import type { FromPages, PageSize, ToPages } from './page-messages.ts';

/** How far from the screen a page is drawn before it comes into sight, as CSS has it. */
const ahead = '400px 0px';

/**
 * Puts the pages of a PDF into a frame: a sheet of its own size for each, its text as the reader lays it (all pages, so
 * that the browser finds it), and its picture as fine as the screen is while it is near the screen. Reading and drawing
 * are done in a thread of their own. `stop` ends it, wherever it is.
 */
export function readPages(
  bytes: Uint8Array,
  frame: HTMLElement,
  tellCount: (pages: number) => void,
): { readonly done: Promise<void>; readonly stop: () => void } {
  const reader = new Worker(new URL('pages-worker.js', document.baseURI), { type: 'module' });
  const say = (message: ToPages, transfer: Transferable[] = []): void => reader.postMessage(message, transfer);
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
  const done = new Promise<void>((resolve, reject) => {
    let count = 0;
    const hear = async (message: FromPages): Promise<void> => {
      if (message.kind === 'failed') throw new Error(message.why);
      if (message.kind === 'count') {
        count = message.pages;
        frame.replaceChildren();
        tellCount(count);
        say({ kind: 'read', page: 1 });
      } else if (message.kind === 'drawn') {
        const { element } = [...sheets.values()][message.page - 1]!;
        element.toggleAttribute('data-drawn', message.width > 0);
      } else {
        const sheet = sheetOf(message.page, message.size, texts.note.page(message.page, count), say);
        sheets.set(sheet.element, sheet);
        frame.append(sheet.element);
        // Both tell the first time once the sheet is laid out: asking for its width here would lay it out at once.
        seen.observe(sheet.element);
        sized.observe(sheet.element);
        await lay(sheet, message);
        if (message.page === count) resolve();
        else say({ kind: 'read', page: message.page + 1 });
      }
    };
    reader.onmessage = ({ data }: MessageEvent<FromPages>) => void hear(data).catch(reject);
    reader.onerror = ({ message }) => reject(new Error(message));
  });
  // The reader takes the bytes for itself: ours stay.
  say({ kind: 'open', bytes });
  return {
    done,
    stop: () => {
      seen.disconnect();
      sized.disconnect();
      reader.terminate();
    },
  };
}

/** Lays the text of a page over its sheet. */
async function lay({ element, text }: Sheet, message: Extract<FromPages, { kind: 'page' }>): Promise<void> {
  const { TextLayer } = await import('pdfjs-dist');
  const viewport = { scale: 1, rotation: 0, rawDims: message.size } as unknown as PageViewport;
  await new TextLayer({ textContentSource: inPieces(message.text), container: text, viewport }).render();
  // Measuring each piece makes the browser settle all that is new in the document: it is put in when it is whole.
  element.append(text);
}

/** So many pieces of text are laid at a time: a full page at once holds the window. */
const atOnce = 60;

/** The text of a page bit by bit, the window free in between. */
function inPieces({ items, ...rest }: TextContent): ReadableStream {
  let from = 0;
  return new ReadableStream({
    pull: async (stream) => {
      await new Promise((goOn) => setTimeout(goOn));
      stream.enqueue({ ...rest, items: items.slice(from, from + atOnce) });
      from += atOnce;
      if (from >= items.length) stream.close();
    },
  });
}

interface Sheet {
  readonly element: HTMLElement;
  readonly text: HTMLElement;
  /** Draws the page, or puts its picture away: one as fine as a good screen takes 20 MB. */
  readonly show: (isNear: boolean) => void;
  /** Follows the width that the sheet has now. */
  readonly fit: () => void;
}

function sheetOf(
  page: number,
  { pageWidth, pageHeight }: PageSize,
  label: string,
  say: (message: ToPages, transfer?: Transferable[]) => void,
): Sheet {
  const element = document.createElement('div');
  const canvas = document.createElement('canvas');
  const text = document.createElement('div');
  element.className = 'pdf-page';
  element.style.aspectRatio = `${pageWidth} / ${pageHeight}`;
  text.className = 'pdf-text';
  canvas.width = canvas.height = 0;
  canvas.setAttribute('role', 'img');
  canvas.setAttribute('aria-label', label);
  element.append(canvas);
  const handed = canvas.transferControlToOffscreen();
  say({ kind: 'sheet', page, canvas: handed }, [handed]);
  let isNear = false;
  let drawn = 0;
  const draw = (): void => {
    const width = isNear ? Math.round(element.clientWidth * devicePixelRatio) : 0;
    if (width === drawn) return;
    drawn = width;
    say({ kind: 'draw', page, width });
  };
  return {
    element,
    text,
    show: (near) => {
      isNear = near;
      draw();
    },
    fit: () => {
      element.style.setProperty('--total-scale-factor', String(element.clientWidth / pageWidth));
      draw();
    },
  };
}
