/**
 * Rows as CSV for a shop's own programs (RFC 4180): fields parted by commas, lines ended by CR LF, the header first.
 * A text that a spreadsheet would take for a formula (it begins with = + - @, a tab or a return) is led by an apostrophe.
 */
export const writtenTable = (header: readonly string[], rows: Iterable<readonly (string | number)[]>): string =>
  [header, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');

function field(value: string | number): string {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`A list to be written holds ${value}`);
    return String(value);
  }
  const text = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
