import { csvParseRows } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { median } from '../../core/record/median.ts';
import { numberOf } from '../../core/record/number-text.ts';
import { rowsOf } from '../../core/record/rows-of.ts';
import { normal } from '../tank/normal.ts';

describe('rows and numbers of a large record', () => {
  it('are those of the library d3-dsv, whichever way the text is taken apart', () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const text = ['time,a', '0.1,2', '', '  ', '# said', ',5', '0.3,', '0.4,7'].join(end);
      const rows = rowsOf(text, ',');
      const kept = csvParseRows(text).flatMap((row, i) => ((row.length > 1 || row[0]!.trim() !== '') && !row[0]!.startsWith('#') ? [{ row: [...row], line: i + 1 }] : [])); // prettier-ignore
      expect(rows.first(99)).toEqual(kept.map(({ row }) => row));
      expect(kept.map((_, r) => rows.line(r))).toEqual(kept.map(({ line }) => line));
    }
  });

  it('are to the last bit what the language reads', () => {
    const random = normal(7);
    for (let i = 0; i < 20_000; i++) {
      const text = (random() * 10 ** (i % 12)).toFixed(i % 9);
      expect(Object.is(numberOf(text, '.'), Number(text))).toBe(true);
      expect(Object.is(numberOf(text.replace('.', ','), ','), Number(text))).toBe(true);
    }
    for (const none of ['', '-', '.', '0x10', '1.2.3', '1,5', 'Infinity', '1_0']) expect(numberOf(none, '.')).toBeUndefined(); // prettier-ignore
  });

  it('have the median that sorting gives, of two middle ones the smaller', () => {
    const random = normal(3);
    for (const n of [1, 2, 3, 10, 1001, 5000]) {
      const values = Float64Array.from({ length: n }, () => Math.round(10 * random() + 40) / 10);
      const sorted = values.slice().sort();
      expect(median(values)).toBe(sorted[(n - 1) >> 1]);
    }
  });
});
