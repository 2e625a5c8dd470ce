/** Rows as CSV: fields parted by commas, lines ended by CR LF, the header first; a field with a comma, a quote or a line
 *  break stands in quotes, with quotes doubled. Numbers keep all their digits. Source: RFC 4180, section 2. */
export const csvTable = (header: readonly string[], rows: Iterable<readonly (string | number)[]>): string =>
  [header, ...rows].map((row) => `${row.map(csvField).join(',')}\r\n`).join('');

function csvField(value: string | number): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`A result to be written is ${value}`);
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
