// Writes samples/sea-record.csv: ten minutes of an invented float with a plate below it, and samples/sea-record.truth.json:
// how far the plate moved. Seeded: the same files every time. Noise on both sensors, clocks 15 ms apart, a dropped row.
import { writeFile } from 'node:fs/promises';

const step = 0.2;
const count = 3000;
const follows = 0.14;
const late = 0.4;
const clocks = 0.015;
const noise = { acceleration: 0.02, stroke: 0.005 };

let state = 21;
const uniform = () => {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return (state + 0.5) / 4294967296;
};
const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());

// a choppy day: components between 4 s and 11 s, largest at 6.5 s
const waves = Array.from({ length: 60 }, (_, i) => {
  const T = 4 + (i / 59) * 7 + 0.05 * uniform();
  return { a: 0.16 * Math.exp(-(((T - 6.5) / 1.6) ** 2)), w: (2 * Math.PI) / T, phase: 2 * Math.PI * uniform() };
});
const sum = (of) => waves.reduce((all, wave) => all + of(wave), 0);
const float = (t) => sum(({ a, w, phase }) => a * Math.cos(w * t + phase));
const plate = (t) => sum(({ a, w, phase }) => follows * a * Math.cos(w * (t - late) + phase));
const acceleration = (t) => sum(({ a, w, phase }) => -a * w * w * Math.cos(w * t + phase));
const rate = (t) => (float(t + 1e-3) - plate(t + 1e-3) - float(t - 1e-3) + plate(t - 1e-3)) / 2e-3;

const lines = ['time (s),acceleration (m/s^2),stroke (mm),force (N)'];
for (let i = 0; i < count; i++) {
  const t = i * step;
  const stroke = 900 + 1000 * (float(t - clocks) - plate(t - clocks) + noise.stroke * normal());
  const force = 16_500 + 9000 * rate(t) + 80 * normal();
  const a = 9.81 + acceleration(t) + noise.acceleration * normal();
  lines.push(
    i === 1234 ? `${t.toFixed(1)},,,` : `${t.toFixed(1)},${a.toFixed(4)},${stroke.toFixed(1)},${force.toFixed(0)}`,
  );
}
const significant = (of) => 4 * Math.sqrt(sum(({ a }) => (of * a) ** 2 / 2));
await writeFile(new URL('../samples/sea-record.csv', import.meta.url), `${lines.join('\n')}\n`);
await writeFile(
  new URL('../samples/sea-record.truth.json', import.meta.url),
  `${JSON.stringify({ step, count, noise, clocks, damper: 9000, floatSignificant: significant(1), plateSignificant: significant(follows) }, null, 2)}\n`,
);
