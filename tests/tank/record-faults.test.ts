import { describe, expect, it } from 'vitest';
import { identify } from '../../core/tank/identify.ts';
import type { Also, TankSetup } from '../../core/tank/tank-setup.ts';
import { normal } from './normal.ts';

const [rho, S, m, A, C_d] = [1025, 8, 1500, 16_000, 7];
const plate: TankSetup = {
  ...{ mass: m, volume: 0.19, area: S, density: rho, width: 3 },
  ...{ rigMass: 0, waterInside: 0, stiffness: null, delayBound: 0, harmonics: 3, also: new Set<Also>() },
};
const rest = (m - rho * 0.19) * 9.80665;

/** Ten gentle cycles from the law that is to be found again, then spoiled in one way. */
function spoiled(spoil: (at: { t: number[]; z: number[]; F: number[] }) => void, a = 0.3, T = 9) {
  const random = normal(7);
  const w = (2 * Math.PI) / T;
  const t = Array.from({ length: 10 * T * 10 + 5 }, (_, i) => 0.1 * i);
  const z = t.map((at) => a * Math.sin(w * at) + 2e-4 * random());
  const F = t.map((at) => -(m + A) * a * w * w * Math.sin(w * at) + 0.5 * rho * S * C_d * a * a * w * w * Math.cos(w * at) * Math.abs(Math.cos(w * at)) + rest + 20 * random()); // prettier-ignore
  spoil({ t, z, F });
  const result = identify(Float64Array.from(t), Float64Array.from(z), Float64Array.from(F), plate);
  return { result, ids: result.findings.map(({ id }) => id) };
}

describe('what spoils a record is told, one fault one name', () => {
  it('a sound record has none', () => expect(spoiled(() => undefined).ids).toEqual([]));

  it.each([
    ['travel-at-its-end', ({ z }) => z.forEach((one, i) => (z[i] = Math.min(0.27, one)))],
    ['channel-clipped', ({ F }) => F.forEach((one, i) => (F[i] = Math.min(rest + 1800, one)))],
    ['channel-stuck', ({ z }) => z.fill(z[300]!, 300, 330)],
    ['channel-stuck', ({ F }) => F.fill(F[300]!, 300, 330)],
    ['line-slack', ({ F }) => F.fill(0, 400, 408)],
    ['force-pushes', ({ F }) => F.forEach((one, i) => (F[i] = one - 1.2 * rest))],
    ['zero-off', ({ F }) => F.forEach((one, i) => (F[i] = one + 0.1 * rest))],
    ['outliers', ({ F }) => (F[222]! += 9000)],
    ['fit-poor', ({ F, t }) => t.forEach((at, i) => (F[i]! += 900 * Math.sin(5.1 * at)))],
    ['residual-correlated', ({ F, t }) => t.forEach((at, i) => (F[i]! += 200 * Math.sin(2.6 * at)))],
  ] as const satisfies readonly (readonly [string, Parameters<typeof spoiled>[0]])[])('%s', (id, spoil) => {
    expect(spoiled(spoil).ids).toContain(id);
  }); // prettier-ignore

  it('readings at an end stop and of a stuck or slack channel are kept out: both numbers stay within 3 % of the truth', () => {
    for (const spoil of [
      ({ z }) => z.fill(z[300]!, 300, 330),
      ({ F }) => F.fill(F[300]!, 300, 330),
      ({ F }) => F.fill(0, 400, 408),
      ({ F }) => F.forEach((one, i) => (F[i] = Math.min(rest + 1800, one))),
    ] as readonly Parameters<typeof spoiled>[0][]) {
      const { addedMass, dragCoefficient } = spoiled(spoil).result;
      expect(Math.abs(addedMass.value / A - 1)).toBeLessThan(0.03);
      expect(Math.abs(dragCoefficient.value / C_d - 1)).toBeLessThan(0.03);
    }
  });

  it('a drift of the travel’s zero is taken off with the fit: 1 mm/s is told, and neither number moves', () => {
    const sound = spoiled(() => undefined).result;
    const { result } = spoiled(({ z, t }) => t.forEach((at, i) => (z[i]! += 0.001 * at)), 0.3);
    expect(result.drift).toBeCloseTo(0.001, 5);
    expect(result.addedMass.value / sound.addedMass.value).toBeCloseTo(1, 3);
    expect(result.dragCoefficient.value / sound.dragCoefficient.value).toBeCloseTo(1, 3);
  });
});
