import { getDocument, PDFWorker, type PDFDocumentProxy, type PDFPageProxy, type RenderTask } from 'pdfjs-dist';
import type { FromPages, PageSize, ToPages } from '../parts/page-messages.ts';

// A PDF is read and drawn in a thread of its own: a page takes longer to draw than the window may stand still.
const scope = self as unknown as {
  postMessage(message: FromPages): void;
  onmessage: ((event: MessageEvent<ToPages>) => void) | null;
  readonly fonts: FontFaceSet;
};

/** Canvases that the reader draws parts of a page on: no document makes them here. */
class CanvasFactory {
  create(width: number, height: number) {
    const canvas = new OffscreenCanvas(width, height);
    return { canvas, context: canvas.getContext('2d', { willReadFrequently: true }) };
  }
  reset(of: { canvas: OffscreenCanvas }, width: number, height: number) {
    of.canvas.width = width;
    of.canvas.height = height;
  }
  destroy(of: { canvas: OffscreenCanvas }) {
    of.canvas.width = of.canvas.height = 0;
  }
}

/** No page of a note has an SVG filter, which only a document could hold. */
class FilterFactory {
  addFilter = (): string => 'none';
  addHCMFilter = (): string => 'none';
  addAlphaFilter = (): string => 'none';
  addLuminosityFilter = (): string => 'none';
  addHighlightHCMFilter = (): string => 'none';
  destroy = (): void => {};
}

interface Sheet {
  readonly page: PDFPageProxy;
  canvas: OffscreenCanvas | null;
  drawing: RenderTask | null;
}
const sheets = new Map<number, Sheet>();
let pdf: PDFDocumentProxy;

async function open(bytes: Uint8Array): Promise<void> {
  const port = new Worker(new URL('pdf-worker.mjs', location.href), { type: 'module' });
  pdf = await getDocument({
    data: bytes,
    worker: new PDFWorker({ port: port as unknown as null }),
    ownerDocument: { fonts: scope.fonts } as unknown as HTMLDocument,
    CanvasFactory,
    FilterFactory,
    useSystemFonts: false,
    useWorkerFetch: false,
  }).promise;
  scope.postMessage({ kind: 'count', pages: pdf.numPages });
}

async function read(n: number): Promise<void> {
  const page = await pdf.getPage(n);
  sheets.set(n, { page, canvas: null, drawing: null });
  const size = page.getViewport({ scale: 1 }).rawDims as PageSize;
  scope.postMessage({ kind: 'page', page: n, size, text: await page.getTextContent() });
}

/** Draws a page as wide as it is wanted now; what was being drawn of it is called off. */
async function draw(n: number, width: number): Promise<void> {
  const sheet = sheets.get(n);
  if (!sheet?.canvas) return;
  sheet.drawing?.cancel();
  const viewport = sheet.page.getViewport({ scale: width / sheet.page.getViewport({ scale: 1 }).width });
  sheet.canvas.width = Math.round(viewport.width);
  sheet.canvas.height = Math.round(viewport.height);
  if (width === 0) return scope.postMessage({ kind: 'drawn', page: n, width });
  const mine = sheet.page.render({ canvas: sheet.canvas as unknown as HTMLCanvasElement, viewport });
  sheet.drawing = mine;
  await mine.promise;
  if (sheet.drawing === mine) scope.postMessage({ kind: 'drawn', page: n, width });
}

function hear(message: ToPages): Promise<void> | void {
  if (message.kind === 'open') return open(message.bytes);
  if (message.kind === 'read') return read(message.page);
  if (message.kind === 'draw') return draw(message.page, message.width);
  const sheet = sheets.get(message.page);
  if (sheet) sheet.canvas = message.canvas;
}

scope.onmessage = ({ data }) => {
  void Promise.resolve(hear(data)).catch((error: unknown) => {
    // A drawing that was called off has been followed by another, or by none.
    if (error instanceof Error && error.name === 'RenderingCancelledException') return;
    scope.postMessage({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
  });
};
