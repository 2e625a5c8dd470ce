// Writes samples/sea-open.csv and samples/sea-closed.csv: twenty-five minutes of an invented float with an open and with a
// closed plate below it, each with the plate's own pressure logger (…-plate.csv) whose clock began at another time and,
// the open one's, runs slow; and samples/sea-deployments.truth.json: how far the plate moved. Seeded: the same files every time.
import { writeFile } from 'node:fs/promises';

const g = 9.81;
const [step, count, plateStep, plateCount] = [0.25, 6000, 0.5, 2960];
const water = { density: 1027, plateDepth: 34, waterDepth: 62 };
const noise = { acceleration: 0.01, stroke: 0.004, pressure: 120, force: 90 };

const deployments = {
  open: { follows: 0.29, late: 0.5, clocks: 0.012, plateBegins: 11.3, plateClockSlow: 300e-6, damper: 8000, seed: 31 },
  closed: { follows: 0.12, late: 0.7, clocks: -0.009, plateBegins: 7.9, plateClockSlow: 0, damper: 9500, seed: 32 },
};

const truth = {};
for (const [name, deployment] of Object.entries(deployments)) truth[name] = await written(name, deployment);
await writeFile(
  new URL('../samples/sea-deployments.truth.json', import.meta.url),
  `${JSON.stringify({ step, plateStep, water, noise, deployments: truth }, null, 2)}\n`,
);

async function written(name, deployment) {
  const { follows, late, clocks, plateBegins, plateClockSlow, damper, seed } = deployment;
  const { uniform, normal } = random(seed);
  // a sea between 5 s and 12 s, largest at 8 s
  const waves = Array.from({ length: 70 }, (_, i) => {
    const T = 5 + (i / 69) * 7 + 0.05 * uniform();
    const w = (2 * Math.PI) / T;
    const reach = reachOf(w);
    return { a: 0.15 * Math.exp(-(((T - 8) / 1.7) ** 2)), w, reach, phase: 2 * Math.PI * uniform() };
  });
  const sum = (of) => waves.reduce((all, wave) => all + of(wave), 0);
  const float = (t) => sum(({ a, w, phase }) => a * Math.cos(w * t + phase));
  const plate = (t) => sum(({ a, w, phase }) => follows * a * Math.cos(w * (t - late) + phase));
  const wave = (t) => sum(({ a, w, phase, reach }) => reach * a * Math.cos(w * t + phase));
  const acceleration = (t) => sum(({ a, w, phase }) => -a * w * w * Math.cos(w * t + phase));
  const stroke = (t) => 0.9 + float(t) - plate(t);
  const rate = (t) => (stroke(t + 1e-3) - stroke(t - 1e-3)) / 2e-3;

  const lines = ['time (s),acceleration (m/s^2),stroke (mm),force (N)'];
  for (let i = 0; i < count; i++) {
    const t = i * step;
    const s = 1000 * (stroke(t - clocks) + noise.stroke * normal());
    const F = 16_500 + damper * rate(t) + noise.force * normal();
    const a = g + acceleration(t) + noise.acceleration * normal();
    // the logger stops for two seconds once
    if (i >= 5800 && i < 5808) continue;
    lines.push(`${t.toFixed(2)},${a.toFixed(3)},${s.toFixed(0)},${F.toFixed(0)}`);
  }
  await writeFile(new URL(`../samples/sea-${name}.csv`, import.meta.url), `${lines.join('\n')}\n`);

  const own = ['time (s),pressure (kPa)'];
  for (let i = 0; i < plateCount; i++) {
    const t = plateBegins + (1 + plateClockSlow) * i * plateStep;
    const p = water.density * g * (water.plateDepth - plate(t) + wave(t)) + noise.pressure * normal();
    own.push(`${(i * plateStep).toFixed(1)},${(p / 1000).toFixed(2)}`);
  }
  await writeFile(new URL(`../samples/sea-${name}-plate.csv`, import.meta.url), `${own.join('\n')}\n`);
  const significant = (of) => 4 * Math.sqrt(sum(({ a }) => (of * a) ** 2 / 2));
  return { ...deployment, floatSignificant: significant(1), plateSignificant: significant(follows) };
}

/** Part of the surface's pressure that reaches the plate; ω² = g k tanh kh by Newton's rule. */
function reachOf(w) {
  const h = water.waterDepth;
  let k = (w * w) / g;
  for (let i = 0; i < 50; i++) {
    const t = Math.tanh(k * h);
    k -= (g * k * t - w * w) / (g * t + g * k * h * (1 - t * t));
  }
  return Math.cosh(k * (h - water.plateDepth)) / Math.cosh(k * h);
}

/** Numbers from a seed: a linear congruence (Numerical Recipes' constants), and through Box and Muller normal ones. */
function random(seed) {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  return { uniform, normal: () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()) };
}
