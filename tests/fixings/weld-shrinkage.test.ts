import { expect, it } from 'vitest';
import { wavesOfShrinkage } from '../../core/fixings/waves-of-shrinkage.ts';
import { weldShrinkage } from '../../core/fixings/weld-shrinkage.ts';
import { distortionOf } from '../../core/options/distortion-of.ts';
import { demoModel } from '../checks/model-of.ts';
import { welded } from '../checks/welded.ts';

const inch = 0.0254;
const leg = (size: number) => (size * inch) / Math.SQRT2;
const sizes = { throat: leg(0.25), thickness: 0.25 * inch, length: 40 * inch, area: 4 * inch ** 2, inertia: 20 * inch ** 4, offset: 2 * inch }; // prettier-ignore

it('Blodgett, Design of Welded Structures, 7.7 (from memory), by hand in inches: a leg of 1/4 in on 1/4 in, 40 in long', () => {
  const { transverse, longitudinal, angle, bow } = weldShrinkage(sizes);
  // A_w = 1/32 in²: across 0.1 / 32 / 0.25; along 0.025 / 32 / 4 · 40; bow 0.005 / 32 · 2 · 1600 / 20
  expect(transverse / inch).toBeCloseTo(0.0125, 9);
  expect(longitudinal / inch).toBeCloseTo(0.0078125, 9);
  expect(bow / inch).toBeCloseTo(0.025, 9);
  // 0.02 · 0.25^1.3 / 0.25², 0.25^1.3 = e^(−1.80218) = 0.164938
  expect(angle).toBeCloseTo(0.05278, 5);
});

it('a flange of 10 in with 3/8 in fillets on 1/2 in rises by 0.22 in by the same rule (by hand)', () => {
  const { angle } = weldShrinkage({ ...sizes, throat: leg(3 / 8), thickness: 0.5 * inch });
  expect(10 * angle).toBeCloseTo((10 * 0.02 * Math.exp(1.3 * Math.log(0.375))) / 0.25, 9);
  expect(10 * angle).toBeCloseTo(0.2235, 3);
});

it('refuses a panel without thickness, by name', () => {
  expect(() => weldShrinkage({ ...sizes, thickness: 0 })).toThrow(/thickness/);
});

it('waves only beyond the strain at which a hinged plate buckles: k = 4 one way, 2 both ways (Timoshenko & Gere, 9.2, 9.3)', () => {
  const plate = { b: 1, t: 0.006, nu: 0.3 };
  // 4 · 0.9038 (t/b)² = 1.3015e-4
  const critical = 4 * 0.9037967 * 0.006 ** 2;
  expect(wavesOfShrinkage({ ...plate, strain: critical * 0.999, ways: 1 })).toBe(0);
  expect(wavesOfShrinkage({ ...plate, strain: critical * 1.001, ways: 1 })).toBeGreaterThan(0);
  expect(wavesOfShrinkage({ ...plate, strain: critical / 2 / 1.001, ways: 2 })).toBe(0);
  // The wave's own length: w sin(πx/b) shortens by π²w²/4b per half-wave.
  const w = wavesOfShrinkage({ ...plate, strain: critical + 1e-4, ways: 1 });
  expect((Math.PI * w) ** 2 / 4).toBeCloseTo(1e-4, 8);
});

it('takes the worst side of the panels that are welded, and none of bolted ones', () => {
  expect(distortionOf(demoModel())).toBeNull();
  const [thin, thick] = ['5 mm', '10 mm'].map((thickness) => distortionOf(demoModel(welded({}, { thickness }))));
  expect(thin!.angle / thick!.angle).toBeCloseTo(4, 9);
  expect(thin!.narrower / thick!.narrower).toBeCloseTo(2, 9);
  expect(thin!.bow).toBe(thick!.bow);
});
