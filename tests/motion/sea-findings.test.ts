import { describe, expect, it } from 'vitest';
import { seaMotion } from '../../core/motion/sea-record.ts';
import type { SeaChannels, SeaSetup } from '../../core/motion/sea-setup.ts';

const [n, dt] = [6000, 0.2];
const setup: SeaSetup = {
  ...{ highPass: 25, axes: 'vertical', accelerationNoise: 0.001, plateNoise: null, strokeNoise: 0.001, forceNoise: 1 },
  ...{ pressureNoise: 1, scaleError: 0, clock: 0.001, stiffness: null, arm: 0, lineLength: null, density: 1025 },
  ...{ plateDepth: 30, waterDepth: null, waveError: 0, by: 'difference', limit: null },
};
const at = (of: (t: number) => number) => Float64Array.from({ length: n }, (_, i) => of(i * dt));
const w = (2 * Math.PI) / 8;
const sound: SeaChannels = {
  dt,
  acceleration: at((t) => -(w ** 2) * Math.cos(w * t)),
  stroke: at((t) => 0.7 * Math.cos(w * t)),
};
const idsOf = (channels: Partial<SeaChannels>, change: Partial<SeaSetup> = {}): string[] =>
  seaMotion({ ...sound, ...channels }, { ...setup, ...change }).findings.map(({ id }) => id);
const some = at((t) => 0.05 * Math.sin(w * t));

describe('what spoils a sea record is told, one fault one name', () => {
  it('a sound record has none', () => expect(idsOf({})).toEqual([]));

  const rows: readonly (readonly [string, Partial<SeaChannels>, Partial<SeaSetup>])[] = [
    ['noise-from-record', {}, { accelerationNoise: null }],
    ['clock-not-stated', {}, { clock: 0 }],
    ['pitch-not-recorded', {}, { axes: 'body' }],
    ['ahead-not-recorded', { pitch: some }, { axes: 'body' }],
    ['arm-without-pitch', {}, { arm: 1 }],
    ['angle-without-length', { lineAngle: some }, {}],
    ['pressure-without-depth', { pressure: some }, { plateDepth: null }],
    ['stretch-without-force', {}, { stiffness: 1e5 }],
    ['line-slack', { force: at((t) => Math.max(0, 5000 + 6000 * Math.sin(w * t))) }, {}],
    ['slow-motion-left-out', { stroke: at((t) => 0.7 * Math.cos(w * t) + 0.6 * Math.sin(0.05 * t)) }, {}],
    ['motion-drowned', {}, { accelerationNoise: 0.5 }],
    ['ways-disagree', { plateAcceleration: at((t) => -(w ** 2) * 0.5 * Math.cos(w * t)) }, { plateNoise: 0.001 }],
  ];
  it.each(rows)('%s, and nothing else', (id, channels, change) => expect(idsOf(channels, change)).toEqual([id]));
});
