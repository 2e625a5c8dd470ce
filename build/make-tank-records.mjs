// Writes samples/tank-*.csv: what a test of an invented plate would have recorded, and samples/tank.truth.json: what it was
// made from. Seeded: the same files every time. The plate is driven at its travel; the force follows from the truth.
import { writeFile } from 'node:fs/promises';

const g = 9.80665;
const plate = { mass: 1460, volume: 0.186, area: 8.4, density: 1024 };
const step = 0.1;

const steadyRuns = [
  { amplitude: 0.35, period: 7, cycles: 9 },
  { amplitude: 0.5, period: 8, cycles: 9 },
  { amplitude: 0.65, period: 10, cycles: 8 },
];

const records = {
  closed: {
    addedMass: 17_500,
    dragCoefficient: 6.8,
    runs: steadyRuns,
    noise: { travel: 0.0015, force: 60 },
    seed: 11,
  },
  open: {
    addedMass: 4_600,
    dragCoefficient: 7.4,
    runs: steadyRuns,
    noise: { travel: 0.0015, force: 60 },
    seed: 12,
  },
  flawed: {
    addedMass: 17_500,
    dragCoefficient: 6.8,
    runs: [
      { amplitude: 0.35, period: 7, cycles: 9 },
      { amplitude: 0.95, period: 7, cycles: 8 },
      { amplitude: 0.6, period: 10, cycles: 8 },
    ],
    noise: { travel: 0.0015, force: 60 },
    /** The force is read this long after the travel, s. */
    delay: 0.04,
    /** The travel's zero wanders, m/s. */
    drift: 0.0002,
    /** The travel stands still from … to …, s. */
    stuck: [30, 34],
    seed: 13,
  },
  /** A model at 1:4 of the plate of samples/middle.stillplate.json, driven faster and less far. */
  model: {
    plate: { mass: 30.67, volume: 0.0043, area: 0.954, density: 999, waterInside: 0.0074, scale: 4 },
    addedMass: 440,
    dragCoefficient: 5.2,
    runs: [
      { amplitude: 0.08, period: 3.5, cycles: 9 },
      { amplitude: 0.12, period: 4, cycles: 9 },
      { amplitude: 0.16, period: 5, cycles: 8 },
    ],
    noise: { travel: 0.0004, force: 1.5 },
    seed: 14,
  },
};

for (const [name, truth] of Object.entries(records))
  await writeFile(new URL(`../samples/tank-${name}.csv`, import.meta.url), recordOf(truth));
await writeFile(
  new URL('../samples/tank.truth.json', import.meta.url),
  `${JSON.stringify({ plate, step, records }, null, 2)}\n`,
);

function recordOf({
  plate: own = plate,
  addedMass,
  dragCoefficient,
  runs,
  noise,
  delay = 0,
  drift = 0,
  stuck = [0, 0],
  seed,
}) {
  const random = normal(seed);
  const rest = (own.mass - own.density * own.volume) * g;
  const motion = motionOf(runs);
  const force = (t) => {
    const { v, a } = motion(t);
    const pull =
      rest +
      (own.mass + own.density * (own.waterInside ?? 0) + addedMass) * a +
      0.5 * own.density * own.area * dragCoefficient * v * Math.abs(v);
    // a line pulls or hangs slack
    return Math.max(0, pull);
  };
  const lines = ['time (s),travel (m),force (N)'];
  let last = '0';
  for (let i = 0; i * step < motion.end; i++) {
    const t = i * step;
    const measured = (motion(t).z + drift * t + noise.travel * random()).toFixed(4);
    if (t < stuck[0] || t > stuck[1]) last = measured;
    lines.push(`${t.toFixed(1)},${last},${(force(Math.max(0, t - delay)) + noise.force * random()).toFixed(1)}`);
  }
  return `${lines.join('\n')}\n`;
}

/** Runs one after the other, each from rest and back to rest over a cycle at either end. */
function motionOf(runs) {
  const pieces = [];
  let from = 5;
  for (const { amplitude, period, cycles } of runs) {
    const until = from + (cycles + 2) * period;
    pieces.push({ from, until, amplitude, period });
    from = until + 10;
  }
  const motion = (t) => {
    const piece = pieces.find((one) => t >= one.from && t <= one.until);
    if (!piece) return { z: 0, v: 0, a: 0 };
    const { from: start, until, amplitude, period } = piece;
    const w = (2 * Math.PI) / period;
    const at = t - start;
    const [e, de, dde] = ramp(Math.min(at, until - t), period);
    const sign = at < (until - start) / 2 ? 1 : -1;
    const [s, c] = [Math.sin(w * at), Math.cos(w * at)];
    return {
      z: amplitude * e * s,
      v: amplitude * (e * w * c + sign * de * s),
      a: amplitude * (-e * w * w * s + 2 * sign * de * w * c + dde * s),
    };
  };
  motion.end = from;
  return motion;
}

/** Rise from 0 to 1 over one period, with its first two derivatives, smooth at both ends: 10x³ − 15x⁴ + 6x⁵. */
function ramp(t, period) {
  const x = Math.min(1, t / period);
  return [
    x ** 3 * (10 - 15 * x + 6 * x * x),
    (30 * x * x * (1 - x) ** 2) / period,
    (60 * x * (1 - x) * (1 - 2 * x)) / period ** 2,
  ];
}

/** Normal numbers from a seed: a linear congruence (Numerical Recipes' constants) through Box and Muller. */
function normal(seed) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
