import { refusal } from '../../../core/refusal.ts';

/** Where a role signs: page (from 0) and rectangle in points, x0 y0 x1 y1 from the lower left. */
export interface SignBox {
  readonly page: number;
  readonly rectangle: readonly [number, number, number, number];
}

/** Finds the line “Signature” in the sign-off box of a role, from the last page on backwards. */
export async function signBox(bytes: Uint8Array, role: string): Promise<SignBox> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const task = getDocument({ data: bytes.slice(), isEvalSupported: false, useSystemFonts: false, verbosity: 0 });
  try {
    const pdf = await task.promise;
    for (let n = pdf.numPages; n >= 1; n--) {
      const { items } = await (await pdf.getPage(n)).getTextContent();
      const words = items.flatMap((item) =>
        'str' in item
          ? [{ text: item.str.trim(), x: item.transform[4] as number, y: item.transform[5] as number }]
          : [],
      );
      const head = words.filter(({ text }) => text.toLowerCase() === role).at(-1);
      const line =
        head && words.find(({ text, x, y }) => text === 'Signature' && Math.abs(x - head.x) < 2 && y < head.y);
      if (line) return { page: n - 1, rectangle: [line.x, line.y - 15.5, line.x + 140, line.y - 1.5] };
    }
    throw refusal({ what: `The note has no box in which the ${role} signs`, where: { option: '--role' }, mend: 'Sign a note of this program as author, checker or engineer.' }); // prettier-ignore
  } finally {
    await task.destroy();
  }
}
