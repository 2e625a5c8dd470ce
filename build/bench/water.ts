import { spawnSync } from 'node:child_process';
import { doubletKernel } from '../../core/water/lattice/doublet-kernel.ts';
import { lattice } from '../../core/water/lattice/lattice.ts';
import type { Plan } from '../../core/water/lattice/plan.ts';
import { plateLattice, plateProblem } from '../../core/water/lattice/plate-lattice.ts';
import { solvePair } from '../../core/water/lattice/solve-pair.ts';
import { heaveByAmplitude } from '../../core/water/moving-plate.ts';
import { median } from './interleaved.ts';
import type { Measure } from './measure.ts';

/** Part `water`: the doublet lattice of a grid of crossing bars, its own set-up included, against OpenBLAS's dense Cholesky of
 *  4,000 unknowns on one thread (numpy); in turns. One solve serves two problems: the grid and its solid outline. */
export async function bench(): Promise<readonly Measure[]> {
  const measures: Measure[] = [];
  const times: Record<'solve' | 'small' | 'dense' | 'curve', number[]> = { solve: [], small: [], dense: [], curve: [] };
  let dense = true;
  for (let round = -1; round < rounds; round++) {
    const solve = timed(() => solved(200));
    const small = timed(() => solved(100));
    const curve = timed(() => heaveByAmplitude(grid, plateLattice(grid, 200), 1025, amplitudes));
    const theirs: number | null = dense ? openBlas() : null;
    dense = theirs !== null;
    if (round < 0) continue;
    times.solve.push(solve);
    times.small.push(small);
    times.curve.push(curve);
    if (theirs !== null) times.dense.push(theirs);
  }
  const [solve, small, curve] = [median(times.solve), median(times.small), median(times.curve)];
  const measure = (name: string, ratio: number, goal: number, milliseconds: number): void => {
    measures.push({ name, ratio, goal, met: ratio <= goal, milliseconds });
  };
  if (dense)
    measure('200 x 200 cells, two problems to 1e-8, over OpenBLAS’s dense Cholesky of 4,000', solve / median(times.dense), 0.5, solve); // prettier-ignore
  else console.error('numpy is not here, so there is no OpenBLAS to measure against: apt-get install python3-numpy');
  measure(`${amplitudes.length} amplitudes with gap loss on 200 x 200 cells over one solve`, curve / solve, 4, curve);
  measure('growth from 100 x 100 to 200 x 200 cells: exponent over cells', Math.log(solve / small) / Math.log(4), 1.2, solve); // prettier-ignore
  return measures;
}

const rounds = 5;
const amplitudes = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5];

/** Five and five bars, as wide as the gaps. */
const grid: Plan = {
  rectangles: [0, 2, 4, 6, 8].flatMap((k) => [
    { x0: k / 9, x1: (k + 1) / 9, y0: 0, y1: 1 },
    { x0: 0, x1: 1, y0: k / 9, y1: (k + 1) / 9 },
  ]),
  holes: [],
  thickness: 0,
};

function solved(n: number): void {
  const { frame } = plateLattice(grid, 16);
  const h = 1 / (n + 0.5);
  const at = { ...frame, nx: n, ny: n, h, x: h / 4, y: h / 4 };
  const { D, grip } = plateProblem(grid, at);
  const [first] = solvePair(lattice(n, n, h, doubletKernel(h)), [
    { D, v: grip },
    { D: new Float64Array(n * n), v: new Float64Array(n * n).fill(1) },
  ]);
  if (first.residual > 1e-7) throw new Error('the lattice was not solved');
}

function timed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/** Milliseconds of one dense factorisation, or null where there is no numpy. */
function openBlas(): number | null {
  const script =
    'import numpy,time;n=4000;A=numpy.random.default_rng(1).random((n,n));A=A+A.T+2*n*numpy.eye(n);t=time.perf_counter();numpy.linalg.cholesky(A);print(1e3*(time.perf_counter()-t))';
  const run = spawnSync('python3', ['-c', script], { encoding: 'utf8', env: { ...process.env, OPENBLAS_NUM_THREADS: '1' } }); // prettier-ignore
  const time = Number(run.stdout);
  return run.status === 0 && time > 0 ? time : null;
}
