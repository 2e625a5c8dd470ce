import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filtered, highPass, integrateTwice, noiseThrough } from '../../core/motion/filtered.ts';
import { seaChannels } from '../../core/motion/sea-channels.ts';
import { seaMotion } from '../../core/motion/sea-record.ts';
import type { SeaChannels, SeaSetup } from '../../core/motion/sea-setup.ts';
import { readTable } from '../../core/record/read-table.ts';
import { normal } from '../tank/normal.ts';

const dt = 0.2;
const n = 6000;
const setup: SeaSetup = {
  ...{ highPass: 25, axes: 'vertical', accelerationNoise: 0, plateNoise: 0, strokeNoise: 0, forceNoise: 0 },
  ...{ pressureNoise: 0, scaleError: 0, clock: 0, stiffness: null, arm: 0, lineLength: null, density: 1025 },
  ...{ plateDepth: null, waterDepth: null, waveError: 0, by: null, limit: null },
};
const waves = [[0.7, 6.2, 0.3], [0.5, 7.9, 1.1], [0.4, 9.4, 4.2]] as const; // prettier-ignore
const sum = (of: (a: number, w: number, phase: number) => number): number =>
  waves.reduce((all, [a, T, phase]) => all + of(a, (2 * Math.PI) / T, phase), 0);
const times = Float64Array.from({ length: n }, (_, i) => i * dt);
/** The plate follows a sixth of the float, a little late; the stroke is the rest. */
const float = times.map((t) => sum((a, w, p) => a * Math.cos(w * t + p)));
const plate = times.map((t) => sum((a, w, p) => (a / 6) * Math.cos(w * t + p - 0.5)));
const acceleration = times.map((t) => 9.81 + sum((a, w, p) => -a * w * w * Math.cos(w * t + p)));
const channels: SeaChannels & { readonly stroke: Float64Array } = {
  dt,
  acceleration,
  stroke: float.map((z, i) => 2 + z - plate[i]!),
};
const deviation = (x: Float64Array): number => {
  const mean = x.reduce((a, b) => a + b, 0) / x.length;
  return Math.sqrt(x.reduce((all, value) => all + (value - mean) ** 2, 0) / x.length);
};
const ends = Math.ceil(25 / dt);
const truth = 4 * deviation(plate.slice(ends, n - ends));

describe('integration twice with a high pass', () => {
  it('gives the displacement of a sine, away from the ends (closed form: a / ω²)', () => {
    const w = (2 * Math.PI) / 8;
    const z = filtered(Float64Array.from(times, (t) => -w * w * Math.cos(w * t)), dt, integrateTwice(highPass(25))); // prettier-ignore
    for (let i = 2 * ends; i < n - 2 * ends; i++) expect(Math.abs(z[i]! - Math.cos(w * times[i]!))).toBeLessThan(0.02);
  });

  it('keeps as much noise as Parseval’s sum says', () => {
    const random = normal(3);
    const gain = integrateTwice(highPass(25));
    const z = filtered(
      Float64Array.from({ length: 60_000 }, () => random()),
      dt,
      gain,
    );
    expect(deviation(z) / noiseThrough(gain, dt)).toBeCloseTo(1, 1);
  });
});

describe('motion of the plate from float and stroke', () => {
  it('comes back from records without noise', () => {
    const { significant, largest, meanPeriod } = seaMotion(channels, setup);
    expect(significant.value / truth).toBeCloseTo(1, 1);
    expect(largest).toBeGreaterThan(0.9 * truth);
    expect(meanPeriod).toBeGreaterThan(6);
    expect(meanPeriod).toBeLessThan(9.5);
  });

  it('lies in its band in 19 of 20 noisy records and more, clocks and scale within their bounds', () => {
    let held = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const random = normal(seed);
      const late = 0.05 * (seed % 2 === 0 ? 1 : -1);
      const stroke = times.map((t, i) => 1.01 * (sum((a, w, p) => a * Math.cos(w * t - w * late + p)) - plate[i]!) + 0.01 * random()); // prettier-ignore
      const noisy = { dt, acceleration: acceleration.map((a) => a + 0.05 * random()), stroke };
      const { low, high } = seaMotion(noisy, { ...setup, accelerationNoise: 0.05, strokeNoise: 0.01, clock: 0.05, scaleError: 0.01 }).significant; // prettier-ignore
      held += Number(low <= truth && truth <= high);
    }
    expect(held).toBeGreaterThanOrEqual(19);
  });

  it('takes the stretch of the line and the pitch at the attachment off', () => {
    const force = times.map((t) => 20_000 + 4000 * Math.cos((2 * Math.PI * t) / 7));
    const pitch = times.map((t) => 0.05 * Math.sin((2 * Math.PI * t) / 7));
    const stroke = channels.stroke.map((s, i) => s - (force[i]! - 20_000) / 50_000 + 1.5 * Math.sin(pitch[i]!));
    const right = seaMotion({ ...channels, stroke, force, pitch }, { ...setup, stiffness: 50_000, arm: 1.5 });
    expect(right.significant.value / truth).toBeCloseTo(1, 1);
    expect(seaMotion({ ...channels, stroke }, setup).significant.value).toBeGreaterThan(1.2 * truth);
  });

  it('gives the power of a damper, b times the mean square of its speed (closed form)', () => {
    const rate = times.map((t) => sum((a, w, p) => -a * w * Math.sin(w * t + p)));
    const result = seaMotion({ dt, acceleration, stroke: float, force: rate.map((v) => 30_000 + 5000 * v) }, setup);
    const mean = waves.reduce((all, [a, T]) => all + (a * 2 * Math.PI / T) ** 2 / 2, 0); // prettier-ignore
    expect(result.power! / (5000 * mean)).toBeCloseTo(1, 1);
  });

  it('says when the sensors leave more open than there is motion, and how long the plate was still', () => {
    const still = seaMotion({ ...channels, stroke: float }, { ...setup, clock: 0.1, limit: 0.1 });
    expect(still.findings.map(({ id }) => id)).toContain('motion-drowned');
    expect(still.within).toBeGreaterThan(0.9);
    expect(() => seaMotion({ dt, acceleration: acceleration.slice(0, 500), stroke: float.slice(0, 500) }, setup)).toThrow(/under twelve periods/); // prettier-ignore
  });
});

describe('the sample record (build/make-sea-record.mjs)', () => {
  const truth = JSON.parse(readFileSync('samples/sea-record.truth.json', 'utf8')) as { plateSignificant: number; floatSignificant: number }; // prettier-ignore
  const { recordings, channels, to } = seaChannels({ table: readTable(readFileSync('samples/sea-record.csv', 'utf8')), reading: {} }); // prettier-ignore

  it('is read with its dropped row listed, and holds the motion that it was made from in its band', () => {
    expect(recordings[0]!.bad).toEqual([{ line: 1236, why: 'acceleration is empty' }]);
    expect(to).toBeCloseTo(599.8, 6);
    const found = seaMotion(channels, { ...setup, accelerationNoise: 0.02, strokeNoise: 0.005, clock: 0.02 });
    expect(found.significant.low).toBeLessThan(truth.plateSignificant);
    expect(found.significant.high).toBeGreaterThan(truth.plateSignificant);
    // ten minutes of a sea scatter by some percent
    expect(found.floatSignificant / truth.floatSignificant).toBeCloseTo(1, 1);
  });
});
