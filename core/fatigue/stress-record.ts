import { refusal } from '../refusal.ts';

/**
 * Stress of a record, Pa: one number in MPa on each row; a first row that is no number is the header. Empty rows at the
 * end are left out. Refuses a row that is no number or has two columns, by its number in the file, and a record of
 * fewer than two values.
 */
export function stressRecord(text: string): Float64Array {
  const rows = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  while (rows.length > 0 && rows.at(-1)!.trim() === '') rows.pop();
  const values = new Float64Array(rows.length);
  let count = 0;
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i]!.trim();
    const value = inPascal(row);
    if (!Number.isFinite(value)) {
      if (i === 0 && /\p{L}/u.test(row) && !/^[-+]?(nan|inf)/i.test(row) && !/[,;\t]/.test(row)) continue;
      throw refusal({
        what: `Row ${i + 1} of the record ${wordsOf(row)}`,
        where: { row: i + 1 },
        mend: 'Write one stress in MPa on each row, such as 12.5; a header may stand on the first row',
      });
    }
    values[count++] = value;
  }
  if (count < 2)
    throw refusal({
      what: `The record has ${count === 0 ? 'no value' : 'one value'}, and a cycle needs two`,
      where: { row: rows.length },
      mend: 'Give the stress over time, one value in MPa on each row',
    });
  return values.subarray(0, count);
}

const decimal = /^([-+]?(?:\d+\.?\d*|\.\d+))(?:e([-+]?\d+))?$/i;

/** The decimal text moved by six places, so that 1.1 MPa is 1100000 Pa to the last bit and equal ranges stay equal. */
function inPascal(row: string): number {
  const [, digits, power = '0'] = decimal.exec(row) ?? [];
  return digits === undefined ? NaN : Number(`${digits}e${Number(power) + 6}`);
}

function wordsOf(row: string): string {
  if (row === '') return 'is empty';
  return /[,;\t]/.test(row) ? `has more than one column: “${row.slice(0, 60)}”` : `is no number: “${row.slice(0, 60)}”`;
}
