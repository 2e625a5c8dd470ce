import * as mathjs from 'mathjs';
import { fft, ifft, lusolve, multiply, transpose, type Complex } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { filtered, highPass, integrateTwice } from '../../core/motion/filtered.ts';
import type { HeaveSystem } from '../../core/motion/heave-system.ts';
import { powerSpectrum } from '../../core/motion/power-spectrum.ts';
import { harmonicHistory } from '../../core/motion/sea-history.ts';
import { steppedResponse } from '../../core/motion/stepped-response.ts';
import { leastSquares } from '../../core/tank/least-squares.ts';
import { normal } from '../tank/normal.ts';

/** The library's types leave it out. */
const { solveODE } = mathjs as unknown as { readonly solveODE: (slope: (t: number, y: [number, number, number, number]) => number[], span: readonly number[], start: readonly number[], how: object) => { readonly y: number[][] } }; // prettier-ignore
const random = normal(17);

describe('against the general library mathjs, whose methods are its own', () => {
  it('least squares: its LU of the normal equations', () => {
    const X = [1, 2, 3].map((k) => Float64Array.from({ length: 200 }, (_, i) => Math.sin(0.1 * k * i) + 0.1 * k));
    const y = Float64Array.from({ length: 200 }, () => random());
    const rows = transpose(X.map((column) => [...column]));
    const expected = lusolve(multiply(transpose(rows), rows), multiply(transpose(rows), [...y])) as number[][];
    leastSquares(X, y).theta.forEach((one, j) => expect(one).toBeCloseTo(expected[j]![0]!, 11));
  });

  it('integration twice with the high pass: its fft of the record and its mirror image', () => {
    const [n, dt] = [512, 0.25];
    const x = Float64Array.from({ length: n }, (_, i) => Math.sin((2 * Math.PI * i * dt) / 8) + 0.2 * random() + 3);
    const mean = x.reduce((a, b) => a + b, 0) / n;
    const both = [...x, ...[...x].reverse()].map((one) => one - mean);
    const gain = integrateTwice(highPass(20));
    const X = fft(both) as unknown as Complex[];
    const kept = X.map((one, k) => {
      const omega = (2 * Math.PI * Math.min(k, 2 * n - k)) / (2 * n * dt);
      return multiply(one, omega === 0 ? 0 : gain(omega)) as Complex;
    });
    const expected = ifft(kept as never) as unknown as Complex[];
    filtered(x, dt, gain).forEach((one, i) => expect(one).toBeCloseTo(expected[i]!.re, 10));
  });

  it('a spectrum of one piece: its fft under a Hann window', () => {
    const [n, dt] = [256, 0.2];
    const x = Float64Array.from({ length: n }, () => random());
    const mean = x.reduce((a, b) => a + b, 0) / n;
    const window = Array.from({ length: n }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / n));
    const power = window.reduce((sum, w) => sum + w * w, 0);
    const X = fft(window.map((w, i) => w * (x[i]! - mean))) as unknown as Complex[];
    const { S } = powerSpectrum(x, dt, n * dt);
    for (const k of [1, 7, 64, 127])
      expect(S[k - 1]! / ((2 * dt * (X[k]!.re ** 2 + X[k]!.im ** 2)) / power)).toBeCloseTo(1, 10);
  });

  it('time steps of float and plate with quadratic drag: its Runge-Kutta of orders four and five with steps of its own', () => {
    const system: HeaveSystem = {
      float: { mass: 40_000, damping: 12_000, stiffness: 120_000 },
      plate: { mass: 25_000, damping: 0, drag: 30_000, carried: 20_000, weight: 1e9 },
      link: { stiffness: 20_000, damping: 5000, pushes: true },
    };
    const omega = (2 * Math.PI) / 7;
    const drive = harmonicHistory(omega, { float: [60_000, 0], plate: [0, 0], water: [0, 0.2] });
    const [dt, steps] = [0.02, 1500];
    const own = steppedResponse(system, drive, { dt, steps });
    const acting = { F1: 0, F2: 0, w: 0, wDot: 0 };
    const slope = (t: number, [z1, v1, z2, v2]: [number, number, number, number]): number[] => {
      drive(t, acting);
      const T = 20_000 * (z1 - z2) + 5000 * (v1 - v2);
      const u = v2 - acting.w;
      return [v1, (acting.F1 - T - 12_000 * v1 - 120_000 * z1) / 40_000, v2, (20_000 * acting.wDot + T - 30_000 * u * Math.abs(u)) / 25_000]; // prettier-ignore
    };
    const told = solveODE(slope, [0, dt * steps], [0, 0, 0, 0], { method: 'RK45', tol: 1e-10, maxStep: 0.05 });
    const last = told.y.at(-1)!;
    expect(Math.abs(own.float[steps]! - last[0]!)).toBeLessThan(1e-6);
    expect(Math.abs(own.plate[steps]! - last[2]!)).toBeLessThan(1e-6);
  });
});
