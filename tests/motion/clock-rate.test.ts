import { describe, expect, it } from 'vitest';
import { testsField } from '../../core/document/tests-field.ts';
import { clockRate } from '../../core/motion/clock-rate.ts';
import { reducedDeployment } from '../../core/motion/reduced-deployment.ts';
import { readTable } from '../../core/record/read-table.ts';
import { normal } from '../tank/normal.ts';

// Two hours of a sea between 5 s and 12 s, from known truth, read four times a second.
const [dt, seconds] = [0.25, 7200];
const n = seconds / dt;
const waves = Array.from({ length: 60 }, (_, i) => {
  const T = 5 + (i / 59) * 7 + 0.02 * Math.sin(9 * i);
  return { a: 0.15 * Math.exp(-(((T - 8) / 1.7) ** 2)), w: (2 * Math.PI) / T, phase: 7 * i * i };
});
const sum = (of: (wave: (typeof waves)[number]) => number) => waves.reduce((all, wave) => all + of(wave), 0);
const float = (t: number) => sum(({ a, w, phase }) => a * Math.cos(w * t + phase));
const bent = (t: number) => sum(({ a, w, phase }) => -a * w * w * Math.cos(w * t + phase));
/** The plate follows a tenth of the float, 0.6 s late. */
const plate = (t: number) => 0.1 * float(t - 0.6);
const size = Math.sqrt(sum(({ a }) => (a * a) / 2));

describe('a second clock that runs away', () => {
  const random = normal(41);
  const x = Float64Array.from({ length: n }, (_, i) => float(i * dt) + 0.05 * size * random());
  const late = 17.3;

  it.each([0, 20e-6, -80e-6, 400e-6])('by %s is found from the motion within three of its own errors, some millionths', (rate) => {
    for (const noise of [0.02, 0.5]) {
      const y = Float64Array.from({ length: n }, (_, i) => float(late + (1 + rate) * i * dt) + noise * size * random());
      const found = clockRate(x, y, dt, late + (rate * seconds) / 2)!;
      expect(Math.abs(found.rate - rate)).toBeLessThan(3 * found.standardError);
      expect(found.standardError).toBeLessThan(4e-6);
      expect(Math.abs(found.late - late)).toBeLessThan(0.02);
    }
  }); // prettier-ignore

  it('is not told by two records of two things', () => {
    const y = Float64Array.from({ length: n }, () => random());
    expect(clockRate(x, y, dt, late)).toBeNull();
  });
});

describe('a deployment whose stroke has a logger of its own, 60 millionths fast', () => {
  const [rate, late] = [-60e-6, 42.7];
  const random = normal(42);
  const rows = (head: string, count: number, of: (t: number) => number) =>
    readTable([head, ...Array.from({ length: count }, (_, i) => `${(i * dt).toFixed(2)},${of(i * dt).toFixed(4)}`)].join('\n')); // prettier-ignore
  const own = rows('time (s),acceleration (m/s^2)', n, (t) => 9.81 + bent(t) + 0.01 * random());
  const strokeAt = (t: number) => float(t) - plate(t) + 0.004 * random();
  const other = rows('time (s),stroke (m)', n - 400, (t) => strokeAt(late + (1 + rate) * t));
  const record = { name: 'own.csv', hash: '0'.repeat(64), bytes: 1 };
  const reduced = (second: object, clock = '60 ms') =>
    reducedDeployment(own, other, testsField.parse({ sea: [{ id: 'a', title: 'a', record, second: { record, ...second }, setup: { highPass: '25 s', accelerationNoise: '0.01 m/s^2', strokeNoise: '4 mm', clock } }] }).sea[0]!); // prettier-ignore
  const truth = 4 * 0.1 * size;

  it('has both clocks brought together, and the plate’s motion lies in its band; with the rate left in, it does not', () => {
    const atEnd = late + rate * other.rows.length * dt;
    // laid on the float alone, the stroke errs by the plate’s own lag, 0.1 · 0.6 s, which the stated bound has to carry
    for (const [second, clock] of [
      [{}, '80 ms'],
      [{ late: `${late} s` }, '15 ms'],
      [{ late: `${late} s`, lateAtEnd: `${atEnd} s` }, '15 ms'],
    ] as const) {
      const { recording, result, findings, steps } = reduced(second, clock);
      expect(Math.abs(recording.alignment!.rate - rate)).toBeLessThan(4e-6);
      expect(result.significant.low).toBeLessThan(truth);
      expect(result.significant.high).toBeGreaterThan(truth);
      expect(findings.filter(({ place }) => place === 'clock')).toEqual([]);
      expect(steps.join(' ')).toMatch(/runs fast by (5[89]|6[012]) millionths against the first’s, 0\.2\d s an hour/);
    }
    const left = reduced({ late: `${late} s`, lateAtEnd: `${late} s` }, '15 ms');
    expect(left.result.significant.low).toBeGreaterThan(truth);
  });

  it('says so where the stated offset contradicts the motion', () => {
    const { findings } = reduced({ late: '41.9 s' });
    expect(findings.map(({ id }) => id)).toContain('clocks-disagree');
  });

  it('refuses how late it is at its end without how late at its beginning', () => {
    expect(() => reduced({ lateAtEnd: '1 s' })).toThrow(/State both/);
  });
});
