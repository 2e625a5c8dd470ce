import { describe, expect, it } from 'vitest';
import { stressRecord } from '../../core/fatigue/stress-record.ts';

describe('a stress record', () => {
  it('is one column in MPa, with a header or none, to the last bit in Pa', () => {
    expect([...stressRecord('1.1\n-2\n3.3e1\n')]).toEqual([1_100_000, -2_000_000, 33_000_000]);
    expect([...stressRecord('\uFEFFstress [MPa]\r\n0.1\r\n.3\r\n\r\n')]).toEqual([100_000, 300_000]);
  });

  it.each([
    ['1\n2\nx\n3', 3, 'is no number: “x”'],
    ['stress\n1\nNaN\n2', 3, 'is no number: “NaN”'],
    ['NaN\n1\n2', 1, 'is no number: “NaN”'],
    ['1\n\n2', 2, 'is empty'],
    ['1,2\n3,4', 1, 'has more than one column'],
    ['time,stress\n0,1\n1,2', 1, 'has more than one column'],
    ['1\n1e400\n', 2, 'is no number'],
    ['1\n0x10\n', 2, 'is no number'],
  ])('refuses %j and names row %i', (text, row, words) => {
    expect(() => stressRecord(text)).toThrow(`Row ${row} of the record ${words}`);
  });

  it('refuses a record of one value or none', () => {
    expect(() => stressRecord('5\n')).toThrow(/one value, and a cycle needs two/);
    expect(() => stressRecord('')).toThrow(/no value/);
  });
});
