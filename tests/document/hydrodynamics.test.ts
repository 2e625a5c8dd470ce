import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { laidRaw } from '../../core/document/edit.ts';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';

const raw = () => JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument;
const withWater = (hydrodynamics: unknown) => readDocument({ ...raw(), hydrodynamics } as RawDocument);

describe('what the document says of the water', () => {
  it('may be left out, whole or in part', () => {
    expect(withWater(undefined).hydrodynamics).toBeUndefined();
    expect(withWater({}).hydrodynamics).toEqual({});
  });

  it('takes a sea without a peakedness as fully grown', () => {
    const { sea } = withWater({
      sea: { significantHeight: '6 ft', peakPeriod: '7 s', source: 'chart' },
    }).hydrodynamics!;
    expect(sea!.peakedness).toBe(1);
    expect(sea!.significantHeight.si).toBeCloseTo(1.8288, 10);
  });

  it('refuses a bed above the plate, and names both depths', () => {
    expect(() => withWater({ bed: '20 m' })).toThrow(/20 m lies above the plate at 22 m/);
  });

  it.each([
    [{ motion: { amplitude: '0 m', period: '6 s', source: 'x' } }, /more than zero/],
    [{ motion: { amplitude: '0.3 m', period: '6 m', source: 'x' } }, /6 m/],
    [{ sea: { significantHeight: '2 m', peakPeriod: '7 s', peakedness: 0.5, source: 'x' } }, /peakedness/],
    [{ growth: { years: -1, source: 'x' } }, /growth/],
  ])('refuses %j', (given, why) => {
    expect(() => withWater(given)).toThrow(why);
  });

  it('may differ in an option', () => {
    const document = { ...raw(), chosen: null, options: [{ id: 'deep', title: 'Deep', base: null, changes: { hydrodynamics: { bed: '60 m' } } }] }; // prettier-ignore
    expect(readDocument(laidRaw(document as RawDocument, 'deep')).hydrodynamics!.bed!.si).toBe(60);
  });
});
