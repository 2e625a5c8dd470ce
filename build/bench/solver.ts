import { builtCholmod, startCholmod, type CholmodRound, type Ordering } from '../cholmod/cholmod.ts';
import { lowerTriangle } from '../cholmod/lower-triangle.ts';
import { arenaRoom } from '../../core/solve/sparse/arena-room.ts';
import type { MakeKernels } from '../../core/solve/sparse/front-kernels.ts';
import { frontKernels } from '../../core/solve/sparse/wasm-kernels.ts';
import { factorise } from '../../core/solve/sparse/factorise.ts';
import { elimination } from '../../core/solve/sparse/elimination.ts';
import type { StiffnessSystem } from '../../core/solve/sparse/stiffness-system.ts';
import { holding, shellPlate } from '../../tests/solve/sparse/systems.ts';
import { median } from './interleaved.ts';
import type { Measure } from './measure.ts';

/** Part `solver`: plates of real shell elements, clamped along their edges, against CHOLMOD on one thread. Both solve the same
 *  matrix for a right-hand side of ones in turns, each from the start: ours from the elements, CHOLMOD from the assembled
 *  matrix without its noughts, by whichever of its orderings takes less in all. */
export async function bench(): Promise<readonly Measure[]> {
  if (!builtCholmod()) {
    console.error(
      'CHOLMOD is not here, so there is nothing to measure against: apt-get install gcc libsuitesparse-dev',
    );
    return [];
  }
  const measures: Measure[] = [];
  let before: OurRound | undefined;
  for (const { side, rounds, goal } of plates) {
    const { ours, theirs } = await inTurns(`plate-${side}`, clampedPlate(side), rounds);
    const name = `${ours.unknowns} unknowns`;
    print(name, rounds, ours, theirs);
    const total = ours.analyse + ours.factor + ours.solve;
    measures.push(
      measure(
        `plate of ${name}: analyse, factor and solve over CHOLMOD`,
        total / (theirs.analyse + theirs.factor + theirs.solve),
        goal,
        total,
      ),
      measure(
        `plate of ${name}: factor alone over CHOLMOD’s second factor on one pattern`,
        ours.factor / theirs.refactor,
        null,
        ours.factor,
      ),
      measure(
        `plate of ${name}: solve again, residual proved, over CHOLMOD without`,
        ours.again / theirs.again,
        1,
        ours.again,
      ),
      measure(`plate of ${name}: memory over that of the factor`, ours.bytes / ours.factorBytes, 1.5),
      measure(`plate of ${name}: scaled residual over 1e-14`, ours.residual / 1e-14, 1),
    );
    if (before)
      measures.push(
        measure(
          `factor of ${name} over that of ${before.unknowns} unknowns`,
          ours.factor / before.factor,
          9,
          ours.factor,
        ),
      );
    before = ours;
  }
  return measures;
}

/** Elements a side, rounds, and the goal of analyse, factor and solve together. */
const plates = [
  { side: 41, rounds: 9, goal: 0.45 },
  { side: 82, rounds: 7, goal: 0.65 },
  { side: 164, rounds: 7, goal: 1 },
] as const;

const clampedPlate = (side: number): StiffnessSystem =>
  holding(shellPlate(side, side, 0.01), (_x, _y, _z, node) => {
    const [i, j] = [node % (side + 1), Math.floor(node / (side + 1))];
    return i === 0 || j === 0 || i === side || j === side;
  });

const measure = (name: string, ratio: number, goal: number | null, milliseconds?: number): Measure => ({
  name,
  ratio,
  goal,
  met: goal === null ? null : ratio <= goal,
  milliseconds,
});

interface OurRound {
  readonly unknowns: number;
  readonly analyse: number;
  readonly factor: number;
  readonly solve: number;
  readonly again: number;
  readonly residual: number;
  readonly flops: number;
  readonly bytes: number;
  readonly factorBytes: number;
}

/** Rounds before the first that counts, so that the small plate too meets code that is compiled. */
const warmUp = 5;

/** Medians of so many rounds after those that warm up; CHOLMOD's better ordering is found before. */
async function inTurns(
  name: string,
  system: StiffnessSystem,
  rounds: number,
): Promise<{ ours: OurRound; theirs: CholmodRound & { readonly ordering: Ordering } }> {
  const K = lowerTriangle(system);
  const f = Float64Array.from(system.held, (held) => 1 - held);
  const ones = new Float64Array(K.freedoms.length).fill(1);
  const both = (['amd', 'metis'] as const).map((ordering) => startCholmod(`${name}-${ordering}`, K, ones, ordering));
  const first: number[] = [];
  for (const one of both) {
    await one.round();
    const { analyse, factor, solve } = await one.round();
    first.push(analyse + factor + solve);
  }
  const better = first[0]! <= first[1]! ? 0 : 1;
  both[1 - better]!.end();
  const [ours, theirs]: [OurRound[], CholmodRound[]] = [[], []];
  // One arena for all rounds, as a session has for one plate after another; CHOLMOD's memory comes from a heap that stays.
  const room = arenaRoom(frontKernels);
  for (let round = -warmUp; round < rounds; round++) {
    const one = ourRound(system, f, room);
    const other = await both[better]!.round();
    if (round >= 0) {
      ours.push(one);
      theirs.push(other);
    }
  }
  both[better]!.end();
  return { ours: middle(ours), theirs: { ...middle(theirs), ordering: better === 0 ? 'amd' : 'metis' } };
}

/** The median of each number. */
function middle<Round extends object>(rounds: readonly Round[]): Round {
  const names = Object.keys(rounds[0]!) as (keyof Round)[];
  return Object.fromEntries(names.map((name) => [name, median(rounds.map((round) => round[name] as number))])) as Round;
}

function ourRound(system: StiffnessSystem, f: Float64Array, kernels: MakeKernels): OurRound {
  const t0 = performance.now();
  const order = elimination(system);
  const t1 = performance.now();
  const made = factorise(system, { elimination: order, kernels });
  const t2 = performance.now();
  const u = made.solve(f);
  const t3 = performance.now();
  made.solve(f);
  const t4 = performance.now();
  return {
    unknowns: order.size,
    analyse: t1 - t0,
    factor: t2 - t1,
    solve: t3 - t2,
    again: t4 - t3,
    residual: made.residual(u, f),
    flops: made.flops,
    bytes: made.bytes,
    factorBytes: made.factorBytes,
  };
}

function print(
  name: string,
  rounds: number,
  ours: OurRound,
  theirs: CholmodRound & { readonly ordering: Ordering },
): void {
  const ms = (value: number): string => `${value.toFixed(1)} ms`;
  console.error(
    [
      `${name}, medians of ${rounds}:`,
      `  ours     analyse ${ms(ours.analyse)}, factor ${ms(ours.factor)} (${(ours.flops / ours.factor / 1e6).toFixed(1)} Gflop/s), solve ${ms(ours.solve)}, again ${ms(ours.again)}, residual ${ours.residual.toExponential(1)}, factor ${(ours.factorBytes / 1e6).toFixed(0)} MB of ${(ours.bytes / 1e6).toFixed(0)} MB`,
      `  CHOLMOD  analyse ${ms(theirs.analyse)} (${theirs.ordering}), factor ${ms(theirs.factor)}, again ${ms(theirs.refactor)}, solve ${ms(theirs.solve)}, again ${ms(theirs.again)}, residual ${theirs.residual.toExponential(1)}, factor ${((8 * theirs.entries) / 1e6).toFixed(0)} MB`,
    ].join('\n'),
  );
}
