import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compareDeployments } from '../../core/motion/compare-deployments.ts';
import { lagBetween } from '../../core/motion/lag-between.ts';
import { powerSpectrum } from '../../core/motion/power-spectrum.ts';
import { seaChannels } from '../../core/motion/sea-channels.ts';
import { seaMotion } from '../../core/motion/sea-record.ts';
import type { PlateWay, SeaSetup } from '../../core/motion/sea-setup.ts';
import { seaWindows } from '../../core/motion/sea-windows.ts';
import { readTable } from '../../core/record/read-table.ts';
import { normal } from '../tank/normal.ts';

// The invented deployments of build/make-deployment-records.mjs, whose truth stands beside them.
const truth = (JSON.parse(readFileSync('samples/sea-deployments.truth.json', 'utf8')) as { deployments: Record<Name, { plateBegins: number; plateClockSlow: number; plateSignificant: number; floatSignificant: number; follows: number }> }).deployments; // prettier-ignore
type Name = 'open' | 'closed';
const setup: SeaSetup = {
  ...{ highPass: 25, axes: 'vertical', accelerationNoise: 0.01, plateNoise: null, strokeNoise: 0.004, forceNoise: 90 },
  ...{ pressureNoise: 120, scaleError: 0.005, clock: 0.02, stiffness: null, arm: 0, lineLength: null, density: 1027 },
  ...{ plateDepth: 34, waterDepth: 62, waveError: 0.05, by: null, limit: 0.5 },
};
const file = (name: string) => ({ table: readTable(readFileSync(`samples/${name}.csv`, 'utf8')), reading: {} });
const recorded = (name: Name, late: number | null = null) =>
  seaChannels(file(`sea-${name}`), file(`sea-${name}-plate`), { late, lateAtEnd: null }, setup);
const motionOf = (name: Name, by: PlateWay | null = null) => seaMotion(recorded(name).channels, { ...setup, by });

describe.each(['open', 'closed'] as const)('the sample deployment “%s”', (name) => {
  it('has the clock of the plate’s logger found from the motion alone', () => {
    const { alignment } = recorded(name);
    expect(alignment!.how).toBe('plate laid on float less stroke');
    // a fifth of the float’s step, in a record of 1500 s
    expect(Math.abs(alignment!.late - truth[name].plateBegins)).toBeLessThan(0.1);
    // how fast it runs away, too, where nine stretches are enough to tell
    const { rate, rateHow, byMotion } = alignment!;
    expect(rateHow).toBe(truth[name].plateClockSlow === 0 ? 'none' : 'found');
    expect(Math.abs(byMotion!.rate - truth[name].plateClockSlow)).toBeLessThan(3 * byMotion!.standardError);
    expect(Math.abs(rate - truth[name].plateClockSlow)).toBeLessThan(100e-6);
  });

  it('holds the motion that it was made from in the band of each way, and takes the surer', () => {
    const bands = (['difference', 'pressure'] as const).map((by) => motionOf(name, by));
    for (const { significant } of bands) {
      // a record of 20 minutes of a sea has its own significant height, some percent off that of the sea
      expect(significant.low).toBeLessThan(1.03 * truth[name].plateSignificant);
      expect(significant.high).toBeGreaterThan(0.97 * truth[name].plateSignificant);
    }
    const width = ({ significant: { low, high } }: (typeof bands)[number]) => high - low;
    const surer = width(bands[0]!) < width(bands[1]!) ? 'difference' : 'pressure';
    expect(motionOf(name).by).toBe(surer);
    expect(bands[0]!.ways.map(({ by }) => by)).toEqual(['difference', 'pressure']);
  });
});

it('at like seas the closed plate moves less, by the ratio that the records were made with', () => {
  const [open, closed] = (['open', 'closed'] as const).map((name) => seaWindows(motionOf(name, 'difference')));
  const like = compareDeployments(closed!, open!);
  expect(like.length).toBeGreaterThan(0);
  for (const { a, b, larger } of like) {
    // clocks 9 ms and −12 ms off and noise leave a tenth of the smaller motion open, as its band says
    expect(Math.abs(a.ratio / b.ratio / (truth.closed.follows / truth.open.follows) - 1)).toBeLessThan(0.15);
    expect(larger).toBeLessThan(0.001);
  }
  expect(compareDeployments(closed!, closed!).every(({ larger }) => larger === 0.5)).toBe(true);
});

describe('spectrum by overlapping pieces', () => {
  const random = normal(5);
  const x = Float64Array.from({ length: 40_000 }, (_, i) => 0.7 * Math.sin((2 * Math.PI * i * 0.2) / 8) + 0.3 * random()); // prettier-ignore

  it('sums to the variance (Parseval)', () => {
    const { frequency, S } = powerSpectrum(x, 0.2, 256);
    const area = S.reduce((sum, one) => sum + one, 0) * frequency[0]!;
    expect(area / (0.7 ** 2 / 2 + 0.09)).toBeCloseTo(1, 2);
  });

  it('of white noise is 2 σ² Δt at every frequency (closed form)', () => {
    const white = Float64Array.from({ length: 100_000 }, () => random());
    const { S } = powerSpectrum(white, 0.2, 100);
    const middle = S.slice(20, -20);
    expect(middle.reduce((sum, one) => sum + one, 0) / middle.length / 0.4).toBeCloseTo(1, 1);
  });
});

it('the lag of a record against itself, later by part of a step, is found to a hundredth of a step', () => {
  const wave = (t: number) => [5.3, 6.9, 8.1, 10.7].reduce((sum, T, i) => sum + Math.sin((2 * Math.PI * t) / T + i), 0);
  const [x, y] = [0, 3.37].map((late) => Float64Array.from({ length: 4000 }, (_, i) => wave(0.2 * i - late))) as [Float64Array, Float64Array]; // prettier-ignore
  const { late, alike } = lagBetween(x, y, 0.2, 60);
  expect(Math.abs(late - 3.37)).toBeLessThan(0.01);
  expect(alike).toBeGreaterThan(0.98);
});

describe('sensors on float, line and plate', () => {
  const n = 6000;
  const dt = 0.2;
  const at = (of: (t: number) => number) => Float64Array.from({ length: n }, (_, i) => of(i * dt));
  const w = (2 * Math.PI) / 8;
  const float = (t: number) => 1.1 * Math.cos(w * t) + 0.6 * Math.cos(1.3 * w * t + 1);
  const bent = (t: number) => -(w ** 2) * (1.1 * Math.cos(w * t) + 1.69 * 0.6 * Math.cos(1.3 * w * t + 1));
  const plate = (t: number) => 0.2 * Math.cos(w * t - 0.4);
  const exact: SeaSetup = { ...setup, accelerationNoise: 0, strokeNoise: 0, pressureNoise: 0, forceNoise: 0, scaleError: 0, clock: 0, waveError: 0, limit: null }; // prettier-ignore

  it('an accelerometer that turns with the float is brought to the vertical (closed form: rotation by the pitch)', () => {
    const pitch = (t: number) => 0.25 * Math.sin(w * t);
    const surge = (t: number) => 0.8 * Math.sin(w * t);
    const up = (t: number) => 9.80665 + bent(t);
    // body axes: x_b = (cos, sin), z_b = (−sin, cos) in (ahead, up)
    const acceleration = at((t) => -Math.sin(pitch(t)) * surge(t) + Math.cos(pitch(t)) * up(t));
    const ahead = at((t) => Math.cos(pitch(t)) * surge(t) + Math.sin(pitch(t)) * up(t));
    const channels = { dt, acceleration, ahead, pitch: at(pitch), stroke: at((t) => float(t) - plate(t)) };
    expect(seaMotion(channels, { ...exact, axes: 'body' }).significant.value / (4 * 0.2 / Math.SQRT2)).toBeCloseTo(1, 2); // prettier-ignore
    expect(seaMotion(channels, exact).significant.value).toBeGreaterThan((1.05 * 4 * 0.2) / Math.SQRT2);
  });

  it('a line that hangs askew reaches less far down: (L + s) cos θ', () => {
    const angle = (t: number) => 0.06 + 0.05 * Math.sin(0.9 * w * t);
    const L = 30;
    const below = (t: number) => float(t) - plate(t);
    // s so that (L + s) cos θ − L cos θ̄ … gives the drop; only its changes count
    const stroke = at((t) => (L + below(t)) / Math.cos(angle(t)) - L);
    const channels = { dt, acceleration: at(bent), stroke, lineAngle: at(angle) };
    const right = seaMotion(channels, { ...exact, lineLength: L + stroke.reduce((a, b) => a + b, 0) / n });
    expect(right.significant.value / ((4 * 0.2) / Math.SQRT2)).toBeCloseTo(1, 2);
    const askew = seaMotion({ dt, acceleration: channels.acceleration, stroke }, exact);
    expect(askew.significant.value).toBeGreaterThan(1.05 * right.significant.value);
  });

  it('an accelerometer on the plate stands for the difference, and one whose scale is wrong is found out', () => {
    const channels = { dt, acceleration: at(bent), stroke: at((t) => float(t) - plate(t)), plateAcceleration: at((t) => -(w ** 2) * plate(t)) }; // prettier-ignore
    const both = seaMotion(channels, { ...exact, by: 'accelerometer', plateNoise: 0 });
    expect(both.significant.value / ((4 * 0.2) / Math.SQRT2)).toBeCloseTo(1, 2);
    expect(both.findings.map(({ id }) => id)).not.toContain('ways-disagree');
    const wrong = seaMotion({ ...channels, plateAcceleration: channels.plateAcceleration.map((a) => 1.4 * a) }, { ...exact, plateNoise: 0.001 }); // prettier-ignore
    expect(wrong.findings.map(({ id }) => id)).toContain('ways-disagree');
  });
});
