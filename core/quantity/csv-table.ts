/**
 * Rows as CSV: fields parted by commas, lines ended by CR LF, the header first; a field with a comma, a quote or a line
 * break stands in quotes, with quotes doubled (RFC 4180, section 2). Numbers keep all their digits. A text that a
 * spreadsheet would take for a formula (it begins with = + - @, a tab or a return) is led by an apostrophe.
 */
export const csvTable = (header: readonly string[], rows: Iterable<readonly (string | number)[]>): string =>
  [header, ...rows].map((row) => `${row.map(csvField).join(',')}\r\n`).join('');

function csvField(value: string | number): string {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`A result to be written is ${value}`);
    return String(value);
  }
  const text = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
