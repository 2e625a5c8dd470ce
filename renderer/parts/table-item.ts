/** A table for the clipboard: tab-separated for a spreadsheet, and as a real table for a text processor. */
export function tableItem(lines: readonly (readonly string[])[]): ClipboardItem {
  const plain = lines.map((line) => line.map((cell) => cell.replaceAll(/\s+/g, ' ')).join('\t')).join('\n');
  const cells = (line: readonly string[], tag: string) =>
    line.map((cell) => `<${tag}>${escaped(cell)}</${tag}>`).join('');
  const [head = [], ...body] = lines;
  const html = `<table><tr>${cells(head, 'th')}</tr>${body.map((line) => `<tr>${cells(line, 'td')}</tr>`).join('')}</table>`;
  return new ClipboardItem({
    'text/plain': new Blob([plain], { type: 'text/plain' }),
    'text/html': new Blob([html], { type: 'text/html' }),
  });
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
