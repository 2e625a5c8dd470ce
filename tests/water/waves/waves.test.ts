import { heightAndPeak } from '../../../core/document/spectrum-rows.ts';
import { describe, expect, it } from 'vitest';
import { waveMotion, waveNumber } from '../../../core/water/waves/dispersion.ts';
import { extremes, readScatter, scatterMean } from '../../../core/water/waves/extremes.ts';
import { longTermHeight } from '../../../core/water/waves/long-term.ts';
import { seaSpectrum } from '../../../core/water/waves/sea-spectrum.ts';
import {
  jonswap,
  moment,
  peakOverZeroCrossing,
  piersonMoskowitz,
  readSpectrum,
} from '../../../core/water/waves/spectrum.ts';

const g = 9.80665;
const { PI } = Math;
const off = (found: number, published: number): number => Math.abs(found / published - 1);

describe('linear waves', () => {
  it.each([
    [5, 10, 36.5831, 7.3166, 4.4691],
    [8, 20, 88.77, 11.0962, 7.4063],
    [8, 50, 99.5282, 12.441, 6.3629],
    [10, 10, 92.3558, 9.2356, 8.068],
    [10, 50, 151.2526, 15.1253, 8.5493],
    [10, Infinity, 156.0777, 15.6078, 7.8039],
  ])('of %d s in %d m are %d m long (roots of ω² = g k tanh kd found apart from this program)', (T, d, L, c, cg) => {
    const wave = waveMotion(1, (2 * PI) / T, d, 0, g);
    expect(off(wave.length, L)).toBeLessThan(2e-6); // half a unit of the last digit
    expect(off(wave.celerity, c)).toBeLessThan(1.2e-5);
    expect(off(wave.groupCelerity, cg)).toBeLessThan(1.2e-5);
    expect(wave.rise).toBe(1);
  });

  it('at g 9.81 and 10 s in deep water: 156.13 m, 15.613 m/s, 7.8066 m/s (a class society’s page of worked output)', () => {
    const { length, celerity, groupCelerity } = waveMotion(1, (2 * PI) / 10, Infinity, 0, 9.81);
    expect(length).toBeCloseTo(156.13, 2);
    expect(celerity).toBeCloseTo(15.613, 3);
    expect(Math.abs(groupCelerity - 7.8066)).toBeLessThan(1e-4);
  });

  it('move the water at depth: H 2 m, 8 s, 50 m, at −30 m (linear theory worked apart)', () => {
    const m = waveMotion(1, (2 * PI) / 8, 50, -30, g);
    expect(m.rise).toBeCloseTo(0.13869, 5);
    expect(m.w).toBeCloseTo(0.10893, 5);
    expect(m.u).toBeCloseTo(0.12788, 5);
    expect(m.wDot).toBeCloseTo(0.08555, 5);
    expect(waveMotion(0.75, (2 * PI) / 6, 50, -30, g).rise).toBeCloseTo(0.02589, 5);
    // e^kz with the wave number of 50 m: 8.5 % above
    expect(Math.exp(-30 * m.k)).toBeCloseTo(0.15049, 5);
  });

  it('keep to the dispersion relation from ripples to tides, and refuse a place below the bed', () => {
    for (let T = 0.5; T < 1e5; T *= 3) {
      const omega = (2 * PI) / T;
      const k = waveNumber(omega, 50, g);
      expect(off(g * k * Math.tanh(50 * k), omega ** 2)).toBeLessThan(1e-12);
    }
    expect(() => waveMotion(1, 1, 20, -20, g)).toThrow(/height above the bed must be positive/);
  });
});

describe('spectra', () => {
  it('Pierson–Moskowitz of Hs 12 m and Tz 10 s: 25.84 m² s at 0.5 rad/s, m0 9 m² (a class society’s page of worked output)', () => {
    const Tp = 10 * peakOverZeroCrossing;
    expect(Tp).toBeCloseTo(14.077, 3);
    const S = piersonMoskowitz(12, Tp);
    expect(S(0.5)).toBeCloseTo(25.84, 2);
    expect(2 * PI * S(2 * PI * 0.079577)).toBeCloseTo(162.36, 2);
    expect(moment(S, 0, (2 * PI) / Tp)).toBeCloseTo(9, 5);
  });

  it.each([
    [1, 1, 0.7105],
    [2, 0.80281, 0.7466],
    [3.3, 0.65576, 0.7775],
    [5, 0.53809, 0.8054],
    [7, 0.4494, 0.8286],
  ])(
    'JONSWAP with γ %d has A_γ %d and Tz/Tp %d (quadrature apart; 1 − 0.287 ln γ of DNV-RP-C205 is within 2 % of it)',
    (gamma, A, zero) => {
      const Tp = 8;
      const peak = (2 * PI) / Tp;
      const S = jonswap(2, Tp, gamma);
      expect(off(S(peak) / (piersonMoskowitz(2, Tp)(peak) * gamma), A)).toBeLessThan(2e-5);
      const [m0, m2] = [moment(S, 0, peak), moment(S, 2, peak)];
      expect(m0).toBeCloseTo(0.25, 6);
      expect(off((2 * PI * Math.sqrt(m0 / m2)) / Tp, zero)).toBeLessThan(1e-3);
      expect(off(A, 1 - 0.287 * Math.log(gamma))).toBeLessThan(0.02);
    },
  );

  it('reads a spectrum in Hz or rad/s, and refuses a line that is none', () => {
    const inHertz = readSpectrum('f (Hz), S (m^2/Hz)\n0.1, 2\n0.2, 4\n0.3, 0\n');
    expect(inHertz).toEqual({ frequency: 'Hz', rows: [[0.1, 2], [0.2, 4], [0.3, 0]] }); // prettier-ignore
    // 0.1 (2 + 4) / 2 + 0.1 (4 + 0) / 2
    expect(heightAndPeak(inHertz).Hs).toBeCloseTo(4 * Math.sqrt(0.5), 12);
    expect(heightAndPeak(inHertz).Tp).toBe(5);
    const as = (spectrum: ReturnType<typeof readSpectrum>) =>
      seaSpectrum({ significantHeight: { si: 1, typed: '' }, peakPeriod: { si: 1, typed: '' }, peakedness: 1, source: 'x', spectrum: { ...spectrum, rows: spectrum.rows.map(([f, S]): [number, number] => [f, S]), source: 'x' } }); // prettier-ignore
    expect(as(inHertz)(2 * PI * 0.15)).toBeCloseTo(3 / (2 * PI), 12);
    expect(as(inHertz)(2 * PI * 0.31)).toBe(0);
    expect(as(readSpectrum('0.5 1\n1 2\n1.5 1'))(0.75)).toBe(1.5);
    expect(() => readSpectrum('1 2\n2 x\n3 4')).toThrow(/Line 2 of the spectrum.*“2 x”/);
    expect(() => readSpectrum('1 2\n1 3\n3 4')).toThrow(/Row 2 of the spectrum/);
  });
});

describe('storms and scatter tables', () => {
  it('extremes of 1000 Rayleigh cycles: 3.717 σ most probable, 3.872 mean (Longuet-Higgins), 4.290 with 10 %', () => {
    const { mostProbable, mean, tenPercent } = extremes(1, 10, 10_000);
    expect(mostProbable).toBeCloseTo(Math.sqrt(2 * Math.log(1000)), 12);
    expect(mostProbable).toBeCloseTo(3.717, 3);
    expect(mean).toBeCloseTo(3.872, 3);
    // Exceeded by one of 1000 independent amplitudes with probability 10 %: checked by the definition.
    expect(1 - (1 - Math.exp(-(tenPercent ** 2) / 2)) ** 1000).toBeCloseTo(0.1, 3);
    expect(() => extremes(1, 10, 50)).toThrow(/5\.0 cycles/);
  });

  it('the height exceeded once in the long run: of one state σ √(8 ln N) (Longuet-Higgins), of two as direct counting gives it', () => {
    const N = (50 * 365.25 * 86_400 * 0.4) / 6;
    expect(longTermHeight([{ sigma: 0.5, period: 6, part: 0.4 }], 50) / (0.5 * Math.sqrt(8 * Math.log(N)))).toBeCloseTo(1, 12); // prettier-ignore
    const states = [{ sigma: 0.4, period: 5, part: 0.7 }, { sigma: 1.1, period: 8, part: 0.01 }]; // prettier-ignore
    const h = longTermHeight(states, 20);
    const waves = states.map(({ period, part }) => (20 * 365.25 * 86_400 * part) / period);
    expect(waves[0]! * Math.exp(-((h / 0.4) ** 2) / 8) + waves[1]! * Math.exp(-((h / 1.1) ** 2) / 8)).toBeCloseTo(1, 9);
    // The rare storm makes it, not the usual sea.
    expect(h).toBeGreaterThan(1.5 * longTermHeight([states[0]!], 20));
  });

  it('reads a scatter table and weighs by counts', () => {
    const { cells, period } = readScatter('Hs/Tz;5;7\n1;30;10\n3;;60\n');
    expect(period).toBe('zero-crossing');
    expect(readScatter('Hs (ft)\\Tp;5\n10;2\n')).toEqual({ cells: [{ Hs: 3.048, T: 5, count: 2 }], period: 'peak' });
    expect(cells).toEqual([
      { Hs: 1, T: 5, count: 30 },
      { Hs: 1, T: 7, count: 10 },
      { Hs: 3, T: 7, count: 60 },
    ]);
    expect(scatterMean(cells, ({ Hs }) => Hs)).toBeCloseTo(2.2, 12);
    expect(() => readScatter('a;5;7\n1;2\n')).toThrow(/Row 2 of the scatter table has 2 cells/);
    expect(() => readScatter('a;5;7\n0;2;3\n')).toThrow(/Row 2 of the scatter table has “0”/);
  });
});
