/** A formula for the clipboard: in one line of text, and as MathML for a text processor that takes it. */
export const formulaItem = (plain: string, math: Element): ClipboardItem =>
  new ClipboardItem({
    'text/plain': new Blob([plain], { type: 'text/plain' }),
    'text/html': new Blob([math.outerHTML], { type: 'text/html' }),
  });
