import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { documentHash } from '../../core/document/document-hash.ts';
import { middle } from './middle.ts';

const sha256 = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');

/** The double of 16 hex digits, most significant first. */
const double = (hex: string): number => Buffer.from(hex, 'hex').readDoubleBE();

describe('the hash is SHA-256 of the canonical JSON of RFC 8785', () => {
  it('numbers, texts and literals as in 3.2.2 to 3.2.4', () => {
    const given =
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}';
    const canonical =
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}';
    expect(documentHash(JSON.parse(given))).toBe(sha256(canonical));
  });

  it('names in the order of their UTF-16 units, as in 3.2.3', () => {
    const given = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      1: 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      ö: 'Latin Small Letter O With Diaeresis',
    };
    const canonical =
      '{"\\r":"Carriage Return","1":"One","\u0080":"Control","ö":"Latin Small Letter O With Diaeresis","€":"Euro Sign","😀":"Emoji: Grinning Face","\ufb33":"Hebrew Letter Dalet With Dagesh"}';
    expect(documentHash(given)).toBe(sha256(canonical));
  });

  // Appendix B: IEEE 754 double and its JSON text. These and the cases of 3.2 are written down from memory.
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('RFC 8785, appendix B: %s is %s', (hex, text) =>
    expect(documentHash({ x: double(hex) })).toBe(sha256(`{"x":${text}}`)),
  );

  it.each([NaN, Infinity])('%d has no JSON and no hash', (value) => expect(() => documentHash({ x: value })).toThrow());
});

describe('what the hash is of', () => {
  const hash = documentHash(middle());

  it('64 hex digits, the same in any order of fields', () => {
    expect(hash).toMatch(/^[\da-f]{64}$/);
    const turned = (value: unknown): unknown =>
      typeof value !== 'object' || value === null || Array.isArray(value)
        ? value
        : Object.fromEntries(
            Object.entries(value)
              .reverse()
              .map(([key, inner]) => [key, turned(inner)]),
          );
    expect(documentHash(turned(middle()) as Record<string, unknown>)).toBe(hash);
  });

  it('another for any changed value, however small', () => {
    const changed = [
      middle((d) => void (d.project.revision = 'C')),
      middle((d) => void (d.designs['underside'].thickness = '6.0 mm')),
      middle((d) => void (d.mass.weld = 0.020000000000000004)),
      middle((d) => void d.options.reverse()),
      middle((d) => void (d.project.site += ' ')),
    ].map(documentHash);
    expect(new Set([hash, ...changed]).size).toBe(6);
  });

  it('view state is left out, and only at the top', () => {
    expect(documentHash(middle((d) => void (d.view = { camera: 'plan' })))).toBe(hash);
    expect(documentHash(middle((d) => void (d.project.view = 'plan')))).not.toBe(hash);
  });
});
