import type { Cycle } from './cycles.ts';
import type { FittedRun } from './fitted-run.ts';
import { forceColumns } from './force-columns.ts';
import { fourierAveraging, type FourierAverages } from './fourier-averaging.ts';
import type { HarmonicMotion } from './harmonic-motion.ts';
import { leastSquares } from './least-squares.ts';
import type { TankSetup } from './tank-setup.ts';

/** A run of the rig at one setting, and what it says by itself. */
export interface RunResult {
  readonly from: number;
  readonly to: number;
  readonly cycles: number;
  readonly period: number;
  readonly amplitude: number;
  /** 2π amplitude / width. */
  readonly keuleganCarpenter: number;
  /** width² / (ν period), ν of water at 15 °C. */
  readonly frequencyParameter: number;
  /** Added mass (kg) and drag coefficient by Fourier averaging of this run. */
  readonly fourier: FourierAverages;
  /** The same by least squares of this run. */
  readonly fit: FourierAverages;
}

/** One cycle by itself: least squares over its readings. */
export interface CycleResult extends FourierAverages {
  /** First reading of the cycle in the record. */
  readonly from: number;
  readonly amplitude: number;
  readonly period: number;
}

/** Viscosity of fresh water at 15 °C, m²/s: ITTC 7.5-02-01-03 (from memory). Only the frequency parameter takes it. */
const viscosity = 1.139e-6;
/** A cycle with fewer readings than this says nothing by itself. */
const fewestInCycle = 8;

const plain = ['inertia', 'drag', 'zero'] as const;
const none = new Float64Array(3);

/** What a run says by itself. `notAdded`: mass that is not the water's, kg. */
export function runResult({ run, motion, at, t, F }: FittedRun, setup: TankSetup, notAdded: number): RunResult {
  const { width, density: rho, area: S } = setup;
  const own = leastSquares(forceColumns(plain, motion, at, none, setup), F).theta;
  const { omega, amplitude } = motion;
  // phase counts from the travel's own first harmonic: z = a sin θ, so that v goes with cos θ
  const sine = Float64Array.from(at, (i) => motion.sensitivity.z[2]![i]!);
  const cosine = Float64Array.from(at, (i) => motion.sensitivity.z[3]![i]!);
  const [zc, zs] = firstHarmonic(motion);
  const inPhase = sine.map((c, i) => (zc * c + zs * cosine[i]!) / amplitude);
  const ahead = sine.map((c, i) => (zs * c - zc * cosine[i]!) / amplitude);
  const [F_s, F_c] = leastSquares([inPhase, ahead, new Float64Array(at.length).fill(1)], F).theta;
  const fourier = fourierAveraging(F_c!, F_s!, amplitude, omega, rho, S);
  const period = (2 * Math.PI) / omega;
  return {
    from: t[0]!,
    to: t.at(-1)!,
    cycles: run.cycles.length,
    period,
    amplitude,
    keuleganCarpenter: (2 * Math.PI * amplitude) / width,
    frequencyParameter: width ** 2 / (viscosity * period),
    fourier: { ...fourier, inertia: fourier.inertia - notAdded },
    fit: { inertia: own[0]! - notAdded, dragCoefficient: own[1]! },
  };
}

/** Coefficients of cos and sin of the first harmonic in the fitted travel, by projection of it on them. */
function firstHarmonic({ z, sensitivity }: HarmonicMotion): readonly [number, number] {
  const theta = leastSquares(sensitivity.z.slice(2, -1), z).theta;
  return [theta[0]!, theta[1]!];
}

/** What each of its cycles says; a cycle with too few good readings says nothing. */
export function cycleResults(
  { run, motion, at, F, places }: FittedRun,
  setup: TankSetup,
  notAdded: number,
): CycleResult[] {
  const columns = forceColumns(plain, motion, at, none, setup);
  let to = 0;
  return run.cycles.flatMap((cycle: Cycle) => {
    // cycles follow each other, and so do the places of their readings
    const from = to;
    while (to < places.length && places[to]! < cycle.to) to++;
    if (to - from < fewestInCycle) return [];
    const { theta } = leastSquares(
      columns.map((column) => column.subarray(from, to)),
      F.subarray(from, to),
    );
    return [
      {
        from: cycle.from,
        amplitude: cycle.amplitude,
        period: cycle.period,
        inertia: theta[0]! - notAdded,
        dragCoefficient: theta[1]!,
      },
    ];
  });
}
