import { expect, it } from 'vitest';
import { tubeDeflection } from '../../core/checks/tube-deflection.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';

const given = { w_F: 0.0135, w_o: 0, gamma_F: 1.35, L: 4, n_L: 200, M: 1.35e4, I: 1000e-8, E: 210e9 };
const at = (change: Record<string, number> = {}, safety: 'partial factors' | 'allowable stress' = 'partial factors') =>
  valuesGiven(tubeDeflection, safety, { ...given, ...change });

it('judges the deflection without its load factor against a 200th of the length (common practice, no source)', () => {
  for (const safety of ['partial factors', 'allowable stress'] as const) {
    expect(at({}, safety).w).toBeCloseTo(0.01, 12);
    expect(at({}, safety).w_lim).toBeCloseTo(0.02, 12);
  }
});

it('bounds it by a cantilever under an end moment, M L²/(2 E I) (beam tables), on top of the tubes that cross it', () => {
  expect(at().w_high! * 1e3).toBeCloseTo(((1e4 * 16) / (2 * 210e9 * 1e-5)) * 1e3, 9);
  expect(at({ w_o: 0.027 }).w_high! - at().w_high!).toBeCloseTo(0.02, 12);
});

it('reads the deflections of the tube and of those across it, and is not asked after an accident', () => {
  const model = demoModel();
  const situation = situationOf(model, 'service-down');
  const largest = Math.max(...['1', '2', '3', '4'].map((id) => Math.abs(situation.tubes.get(id)!.deflection)));
  expect(reads(tubeDeflection, 'w_F', model, 'A', situation)).toBe(Math.abs(situation.tubes.get('A')!.deflection));
  expect(reads(tubeDeflection, 'w_o', model, 'A', situation)).toBe(largest);
  expect(reads(tubeDeflection, 'gamma_F', model, 'A', situation)).toBe(1.35);
  expect(reads(tubeDeflection, 'L', model, 'A', situation)).toBeCloseTo(3.45, 9);
  expect(tubeDeflection.applies(model, 'A', situation)).toBe(true);
  expect(tubeDeflection.applies(model, 'A', situationOf(model, 'lost-leg-down'))).toMatch(/accident/);
});

it('reads the limit, the moment and the stiffness: I 1490 cm⁴ of SHS 150×150×8 (EN 10210-2, from memory: 1491)', () => {
  const kept = demoModel({ protection: { lossPerFace: { tubeOutside: '0 mm', tubeInside: '0 mm' } } });
  expect(reads(tubeDeflection, 'I', kept, 'A') * 1e8).toBeCloseTo(1491, 0);
  expect(reads(tubeDeflection, 'n_L', kept, 'A')).toBe(200);
  for (const symbol of ['M', 'E'])
    expect(tubeDeflection.inputs[symbol]!.read, symbol).toBe(tubeBending.inputs[symbol]!.read);
});
