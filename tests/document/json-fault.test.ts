import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '../../core/document/json-fault.ts';
import { middleText } from './middle.ts';

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('the JSON scan', () => {
  it('finds a fault exactly where the language’s own JSON.parse finds one, on cut and mutated documents', () => {
    const piece = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ':',
      ',',
      '"',
      '\\',
      '1',
      '-',
      '.',
      'e',
      '0',
      'true',
      'nul',
      ' ',
      '\n',
      '\u0001',
      'é',
      '"a":',
      '\\u12',
      '/',
    );
    const at = fc.nat({ max: middleText.length });
    let faults = 0;
    fc.assert(
      fc.property(
        at,
        fc.nat({ max: 3 }),
        fc.array(piece, { maxLength: 3 }),
        fc.boolean(),
        (from, drop, pieces, cut) => {
          const text = middleText.slice(0, from) + pieces.join('') + (cut ? '' : middleText.slice(from + drop));
          const fault = jsonFault(text, 40);
          if (fault) faults++;
          // A name given twice is JSON all the same.
          expect(fault === null || /given twice/.test(fault.what), text).toBe(parses(text));
        },
      ),
      { seed: 20260104, numRuns: 1500 },
    );
    expect(faults).toBeGreaterThan(500);
  });

  it('accepts every JSON value without repeated names', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), (text) => {
        const fault = jsonFault(JSON.stringify(JSON.parse(text)), 40);
        expect(fault).toBeNull();
      }),
      { seed: 20260105, numRuns: 1000 },
    );
  });

  it.each([
    '',
    ' ',
    '"',
    '"\\',
    '"\\u',
    '-',
    '1.',
    '1e',
    '1e+',
    't',
    'nul',
    '[',
    '[1',
    '[1,',
    '{',
    '{"a',
    '{"a"',
    '{"a":',
    '{"a":1',
    '{"a":1,',
    '{"a":"b\\',
  ])('“%s” is cut off', (text) => {
    expect(jsonFault(text, 40)?.what).toMatch(/cut off/);
  });

  it('every beginning of a document is cut off', () => {
    for (let end = 0; end < middleText.trimEnd().length; end += 7)
      expect(jsonFault(middleText.slice(0, end), 40)?.what, String(end)).toMatch(/cut off/);
  });

  it('a long text and a deep one take no depth', () => {
    expect(jsonFault(JSON.stringify('x\\"'.repeat(1_000_000)), 40)).toBeNull();
    expect(jsonFault('"' + 'x'.repeat(5_000_000), 40)?.what).toMatch(/cut off/);
  });

  it('the same name in two objects is no repetition', () =>
    expect(jsonFault('{"a":{"b":1},"c":{"b":1},"b":[{"a":1},{"a":1}]}', 40)).toBeNull());
  it('a name in other letters of JSON is the same name', () =>
    expect(jsonFault('{"a":1,"\\u0061":2}', 40)?.what).toMatch(/“a” is given twice/));
});
