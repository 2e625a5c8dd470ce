import type { Cycle } from './cycles.ts';
import type { FittedRun } from './fitted-run.ts';
import { forceColumns } from './force-columns.ts';
import { fourierAveraging, type FourierAverages } from './fourier-averaging.ts';
import { summedFit } from './summed-fit.ts';
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
export function runResult(part: FittedRun, setup: TankSetup, notAdded: number): RunResult {
  const { run, motion, at, t, F } = part;
  const { width, density: rho, area: S } = setup;
  const columns = forceColumns(plain, motion, part, none, setup);
  const own = fitOf(columns, F, 0, F.length);
  const { omega, amplitude, cosine, sine, first } = motion;
  // phase counts from the travel's own first harmonic: z = a sin θ, so that v goes with cos θ
  const [zc, zs] = [first[0] / amplitude, first[1] / amplitude];
  const [F_s, F_c] = summedFit(F.length, 3, (p, x) => {
    const [c, s] = [cosine[at[p]!]!, sine[at[p]!]!];
    x[0] = zc * c + zs * s;
    x[1] = zs * c - zc * s;
    x[2] = 1;
    return F[p]!;
  }).theta;
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

/** Inertia (kg), drag coefficient and zero (N) of the readings from one place to another. */
const fitOf = (columns: readonly Float64Array[], F: Float64Array, from: number, to: number): Float64Array =>
  summedFit(to - from, columns.length, (i, x) => {
    for (let j = 0; j < x.length; j++) x[j] = columns[j]![from + i]!;
    return F[from + i]!;
  }).theta;

/** What each of its cycles says; a cycle with too few good readings says nothing. */
export function cycleResults(part: FittedRun, setup: TankSetup, notAdded: number): CycleResult[] {
  const { run, motion, F, places } = part;
  const columns = forceColumns(plain, motion, part, none, setup);
  let to = 0;
  return run.cycles.flatMap((cycle: Cycle) => {
    // cycles follow each other, and so do the places of their readings
    const from = to;
    while (to < places.length && places[to]! < cycle.to) to++;
    if (to - from < fewestInCycle) return [];
    const theta = fitOf(columns, F, from, to);
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
