import { identify } from '../../core/tank/identify.ts';
import type { TankSetup } from '../../core/tank/tank-setup.ts';
import { normal } from '../../tests/tank/normal.ts';

/** How often the 95 % intervals of a seeded test hold the truth that it was made from. */
export interface CoverageCell {
  readonly name: string;
  /** Delay cells carry a bound and hold more: they stand beside the pool. */
  readonly pooled: boolean;
  readonly runs: number;
  readonly addedMass: number;
  readonly dragCoefficient: number;
}

const [m, V, S, rho, A, C_d] = [20_000, 2.5, 100, 1025, 466_114, 8];
const setup: TankSetup = {
  ...{ mass: m, volume: V, area: S, density: rho, width: 10, rigMass: 0, waterInside: 0 },
  ...{ stiffness: null, delayBound: null, harmonics: 3, also: new Set() },
};
const noises = [
  { name: 'travel 5 mm', z: 0.005, F: 0, r: 0 },
  { name: 'force 3 kN', z: 0, F: 3000, r: 0 },
  { name: 'travel 2 mm, force 3 kN correlated 0.8 a reading', z: 0.002, F: 3000, r: 0.8 },
  { name: 'travel 5 mm, force 1.5 kN', z: 0.005, F: 1500, r: 0 },
];

/** Noise, delay and sampling over a grid, `runs` seeded records in each cell: a plate of 466 t added mass, C_d 8, 0.5 m at 6 s. */
export function coverage(runs: number): readonly CoverageCell[] {
  const cells: CoverageCell[] = [];
  for (const noise of noises)
    for (const step of [0.1, 0.25])
      for (const bound of [0, 0.01]) {
        const held = { addedMass: 0, dragCoefficient: 0 };
        for (let seed = 1; seed <= runs; seed++) {
          // the true delay lies anywhere within its bound
          const delay = bound * (2 * ((seed * 0.618) % 1) - 1);
          const result = identify(...record(noise, step, delay, seed), { ...setup, delayBound: bound === 0 ? null : bound }); // prettier-ignore
          for (const [name, truth] of [
            ['addedMass', A],
            ['dragCoefficient', C_d],
          ] as const)
            // prettier-ignore
            held[name] += Number(result[name].low <= truth && truth <= result[name].high);
        }
        cells.push({ name: `${noise.name}; every ${step} s; delay within ${1000 * bound} ms`, pooled: bound === 0, runs, ...held }); // prettier-ignore
      }
  return cells;
}

/** Cells and pool in lines, with the pool's part and whether each cell lies within the binomial 99.9 % band. */
export function coverageText(cells: readonly CoverageCell[]): string[] {
  const pool = cells.filter(({ pooled }) => pooled);
  const trials = pool.reduce((sum, { runs }) => sum + 2 * runs, 0);
  const held = pool.reduce((sum, { addedMass, dragCoefficient }) => sum + addedMass + dragCoefficient, 0);
  const low = (runs: number): number => 0.95 - 3.29 * Math.sqrt((0.95 * 0.05) / runs);
  const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
  return [
    `95 % intervals of seeded tank tests hold the truth in ${percent(held / trials)} of ${trials} (goal 94 to 96 %, without delay).`,
    ...cells.map(({ name, runs, addedMass, dragCoefficient }) => {
      const outside = Math.min(addedMass, dragCoefficient) / runs < low(runs) ? '; UNDER the 99.9 % band' : '';
      return `    ${name}: added mass ${percent(addedMass / runs)}, drag ${percent(dragCoefficient / runs)} of ${runs}${outside}`;
    }),
  ];
}

function record({ z: sz, F: sF, r }: (typeof noises)[number], step: number, delay: number, seed: number) {
  const random = normal(seed);
  const n = Math.round(60 / step);
  const [a, w] = [0.5, (2 * Math.PI) / 6];
  const rest = (m - rho * V) * 9.80665;
  const force = (t: number): number => {
    const v = a * w * Math.cos(w * t);
    return -(m + A) * a * w * w * Math.sin(w * t) + 0.5 * rho * S * C_d * v * Math.abs(v) + rest;
  };
  let e = random();
  const [t, z, F] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  for (let i = 0; i < n; i++) {
    e = r * e + Math.sqrt(1 - r * r) * random();
    t[i] = i * step;
    z[i] = a * Math.sin(w * t[i]!) + sz * random();
    F[i] = force(t[i]! - delay) + sF * e;
  }
  return [t, z, F] as const;
}
