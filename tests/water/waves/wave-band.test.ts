import { expect, it } from 'vitest';
import { waveBand } from '../../../core/water/waves/wave-band.ts';
import { piersonMoskowitz } from '../../../core/water/waves/spectrum.ts';

it('nine tenths of a Pierson–Moskowitz sea lie where its own integral says: m0 up to ω is m0 exp(−1.25 (ω/ωp)⁻⁴), worked by hand', () => {
  const Tp = 8;
  const { shortest, longest } = waveBand(piersonMoskowitz(2, Tp), (2 * Math.PI) / Tp);
  const at = (part: number) => Tp * (-Math.log(part) / 1.25) ** 0.25;
  expect(Math.abs(longest / at(0.05) - 1)).toBeLessThan(0.005);
  expect(Math.abs(shortest / at(0.95) - 1)).toBeLessThan(0.005);
});
