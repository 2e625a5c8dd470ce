import { expect, it } from 'vitest';
import { crossingFlare } from '../../core/checks/crossing-flare.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';

it('a corner of 3/4 in gives a throat of 0.234 in, 5/16 R (AWS and AISC 360, Table J2.2, worked in a handbook of structural steel: HSS of 3/8 in, R = 2t)', () => {
  for (const safety of ['partial factors', 'allowable stress'] as const) {
    const { a_flare, a_low, a_high } = valuesGiven(crossingFlare, safety, { k_f: 5 / 16, R: 0.75 });
    expect(a_flare).toBeCloseTo(0.234, 3);
    expect([a_low, a_high]).toEqual([0.1875, 0.75]);
  }
});

it.each([
  ['stick or self-shielded wire', 0.3125],
  ['gas-shielded wire', 0.625],
  ['submerged arc', 0.3125],
])('AISC 360, Table J2.2, flare bevel, %s: %f R (from memory)', (process, k_f) => {
  const model = demoModel({ grid: { arrangement: 'stacked', flareWeld: { process } } });
  expect(reads(crossingFlare, 'k_f', model, 'A/1')).toBe(k_f);
});

it('holds the stated throat against it at every stacked crossing, and stands back for fillets and proved throats', () => {
  const stacked = { arrangement: 'stacked', jointThroat: '4 mm' };
  // 150×150×8: outer radius 12 mm, 3.75 mm.
  const [row] = checkRows(crossingFlare, demoModel({ grid: stacked })).rows;
  expect(row).toMatchObject({ verdict: 'cannot be judged', reason: expect.stringMatching(/trial weld/) });
  const less = demoModel({ grid: { ...stacked, jointThroat: '3 mm' } });
  expect(checkRows(crossingFlare, less).rows[0]!.utilisation).toBeCloseTo(3 / 3.75, 9);
  const gas = demoModel({ grid: { ...stacked, flareWeld: { process: 'gas-shielded wire' } } });
  expect(checkRows(crossingFlare, gas).rows[0]).toMatchObject({ verdict: 'passes' });
  const proof = { process: 'gas-shielded wire', proof: 'section 12, trial weld 3' };
  const proved = demoModel({ grid: { ...stacked, flareWeld: proof } });
  expect(crossingFlare.applies(proved, 'A/1', situationOf(proved))).toMatch(/proved: section 12/);
  expect(crossingFlare.applies(proved, 'A/1', situationOf(proved))).toMatch(/proved/);
});

it('tubes let in: as high as the main tube they land on its corners, within the flat their welds are fillets', () => {
  const at = (section: string, main = 'SHS 150x150x8 hot') =>
    demoModel({ grid: { jointThroat: '3 mm', mainTubes: { section: main }, crossTubes: { section } } });
  const applies = (model: ReturnType<typeof at>) => crossingFlare.applies(model, 'A/1', situationOf(model));
  expect(applies(at('SHS 120x120x6.3 hot'))).toMatch(/on the flat/); // 150 − 2 · 12 = 126 mm
  expect(applies(at('SHS 120x120x6.3 hot', 'SHS 120x120x5 hot'))).toBe(true);
  expect(applies(at('SHS 100x100x5 hot', 'SHS 120x120x8 hot'))).toMatch(/nearly flat/); // 2 mm round the corner of 12 mm
  const wide = at('RHS 150x100x6.3 hot', 'SHS 150x150x8 cold');
  expect(applies(wide)).toBe(true);
  expect(reads(crossingFlare, 'R', wide, 'A/1')).toBeCloseTo(0.02, 12); // of the main tube: 2.5 · 8 mm
  expect(applies(at('CHS 114.3x5 hot'))).toMatch(/round tube/);
});
