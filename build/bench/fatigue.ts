import { rainflow } from '../../core/fatigue/rainflow.ts';
import { seeded } from '../../tests/geometry/seeded.ts';
import { interleaved } from './interleaved.ts';
import type { Measure } from './measure.ts';

/** Rainflow over one pass that sums the same array, and how its time grows with the array. */
export function bench(): readonly Measure[] {
  const sea = stressOfTheSea(2 ** 21);
  const half = sea.slice(0, 2 ** 20);
  const noise = whiteNoise(2 ** 20);
  const kept = new Float64Array(1);
  const counted = (series: Float64Array) => () =>
    rainflow(series, (range, _mean, count) => (kept[0]! += count * range));
  const times = interleaved(
    {
      sum: () => (kept[0]! += sumOf(sea)),
      rainflow: counted(sea),
      half: counted(half),
      sumOfHalf: () => (kept[0]! += sumOf(half)),
      noise: counted(noise),
      sumOfNoise: () => (kept[0]! += sumOf(noise)),
    },
    15,
  );
  if (!Number.isFinite(kept[0])) throw new Error('the cycles have no finite sum');
  const [ratio, growth] = [times.rainflow / times.sum, times.rainflow / times.sum / (times.half / times.sumOfHalf)];
  return [
    {
      name: `rainflow of ${sea.length} values of stress in a sea (30 in a wave), over summing them`,
      ratio,
      goal: 4,
      met: ratio <= 4,
      milliseconds: times.rainflow,
    },
    {
      name: 'the same ratio for twice as many values, over that for half of them',
      ratio: growth,
      goal: 1.2,
      met: growth <= 1.2,
    },
    {
      name: 'rainflow of white noise (two values of three turn), over summing it',
      ratio: times.noise / times.sumOfNoise,
      goal: null,
      met: null,
      milliseconds: times.noise,
    },
  ];
}

function sumOf(series: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < series.length; i++) sum += series[i]!;
  return sum;
}

/** Forty waves of random phase around a peak period of 30 samples. */
function stressOfTheSea(length: number): Float64Array {
  const random = seeded(4);
  const waves = Array.from({ length: 40 }, (_, i) => ({
    speed: ((2 * Math.PI) / 30) * (0.7 + 0.6 * (i / 40)),
    phase: 2 * Math.PI * random(),
    size: Math.exp(-(((i - 18) / 8) ** 2)),
  }));
  return Float64Array.from({ length }, (_, t) =>
    waves.reduce((sum, { speed, phase, size }) => sum + size * Math.sin(speed * t + phase), 0),
  );
}

function whiteNoise(length: number): Float64Array {
  const random = seeded(5);
  return Float64Array.from({ length }, () => random() - 0.5);
}
