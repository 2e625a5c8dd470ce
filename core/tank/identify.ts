import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { usualStep } from '../record/read-recording.ts';
import { refusal } from '../refusal.ts';
import { g } from '../water/sea-water.ts';
import { blockBootstrap } from './block-bootstrap.ts';
import { cyclesOf, runsOf, steady, type Run } from './cycles.ts';
import type { Estimate } from './estimate.ts';
import { fittedRun, periodOf } from './fitted-run.ts';
import { forceColumns, forceRate, type Unknown } from './force-columns.ts';
import type { FourierAverages } from './fourier-averaging.ts';
import { influences } from './influences.ts';
import { leftOutFindings, leftOutOf } from './left-out.ts';
import { leastSquares, type Fit } from './least-squares.ts';
import { criticalValue95, neweyWest } from './newey-west.ts';
import { recordFaults } from './record-faults.ts';
import { robustFit } from './robust-fit.ts';
import { cycleResults, runResult, type CycleResult, type RunResult } from './run-results.ts';
import { delayFindings, stretchFindings } from './tank-findings.ts';
import { stickSlip, stickSlipFindings } from './stick-slip.ts';
import { trendFindings, trendsOf, type Trend } from './trend.ts';
import type { Also, TankSetup } from './tank-setup.ts';

export interface TankResult {
  readonly addedMass: Estimate;
  readonly dragCoefficient: Estimate;
  /** What the load cell says when nothing moves, N. */
  readonly weight: Estimate;
  readonly also: ReadonlyMap<Also, Estimate>;
  /** Added mass and drag by a fit that outliers cannot pull. */
  readonly robust: FourierAverages;
  readonly outliers: number;
  /** Intervals by drawing blocks anew. */
  readonly bootstrap: {
    readonly addedMass: readonly [number, number];
    readonly dragCoefficient: readonly [number, number];
    readonly seed: number;
    readonly draws: number;
  };
  /** Change of the drag coefficient for a force read 1 s late, 1/s. */
  readonly dragByDelay: number;
  readonly runs: readonly RunResult[];
  readonly cycles: readonly CycleResult[];
  /** With amplitude and frequency, of added mass and of drag. */
  readonly trends: readonly Trend[];
  /** Variance inflation of the drag coefficient by the other unknowns: 1 when nothing else can take its place. */
  readonly inflation: number;
  readonly residual: { readonly rms: number; readonly ofForce: number; readonly lagOne: number };
  /** For the picture of the fit; only readings that were used. Arrays of like length, SI. */
  readonly overlay: { readonly time: Float64Array; readonly measured: Float64Array; readonly modelled: Float64Array };
  readonly used: number;
  /** Fastest drift of the travel that was taken off, m/s. */
  readonly drift: number;
  readonly findings: readonly Finding[];
}

const bootstrapSeed = 1;
const bootstrapDraws = 1000;
/** Beyond this, two unknowns cannot be told apart: at one amplitude and period, linear damping (or a delay) beside
 *  quadratic drag inflates by 1/(1 − 256/27π²) = 25.4, whatever the record's length. */
const worstInflation = 20;

/**
 * Added mass A and drag coefficient C_d of a body that is driven up and down by a line:
 *   F = (m + A) z″ + ½ ρ C_d S z′|z′| + W  (+ b z′ + f sign z′ + d t + F′ τ, as asked)
 * F: pull of the line, N; z: travel, m, up. Over each run of like cycles the travel is fitted by drift and harmonics
 * (`harmonicMotion`), so that noisy travel biases neither; then all runs together are fitted by least squares.
 * Intervals: each reading's influence on the result, through its force and through its travel, summed by Newey-West with
 * the lag of one cycle, and critical values that count for the lag (`criticalValue95`). A stated bound on delay widens them.
 * Refuses a record without three like cycles, and unknowns that the record cannot tell apart.
 */
export function identify(time: Float64Array, travel: Float64Array, force: Float64Array, setup: TankSetup): TankResult {
  const { density: rho } = setup;
  const atRest = (setup.mass - rho * setup.volume + setup.rigMass) * g;
  const z = setup.stiffness === null ? travel : plateTravel(travel, force, setup.stiffness);
  const cycles = cyclesOf(time, z);
  const runs = runsOf(cycles);
  if (runs.length === 0)
    throw refusal({
      what: `The record has ${cycles.length} whole ${cycles.length === 1 ? 'cycle' : 'cycles'} and no three in a row that are alike`,
      where: { field: 'record' },
      mend: 'Give a record with at least three cycles at one period and amplitude.',
    });
  const period = runs.reduce((sum, run) => sum + periodOf(run), 0) / runs.length;
  if (setup.also.has('delay') && isOnePeriod(runs))
    throw refusal({
      what: 'This record cannot tell drag and delay apart: at one period a force read late is a larger drag',
      where: { field: 'model' },
      mend: 'State a bound on the delay, or give a record with several periods.',
    });
  const step = usualStep(time);
  const faults = recordFaults(time, z, force, atRest, period, step);
  const findings: Finding[] = [...faults.findings];

  const parts = runs.map((run) => fittedRun(run, time, z, force, faults, setup.harmonics));
  const unknowns: readonly Unknown[] = ['inertia', 'drag', 'zero', ...setup.also];
  const y = joined(parts.map(({ F }) => F));
  let theta = new Float64Array(unknowns.length);
  let fit: Fit | null = null;
  let X: Float64Array[] = [];
  // a delay enters through the modelled force's own rate: two turns settle it
  for (let turn = 0; turn < (setup.also.has('delay') ? 4 : 1); turn++) {
    const own = parts.map((part) => forceColumns(unknowns, part.motion, part, theta, setup));
    X = unknowns.map((_, j) => joined(own.map((columns) => columns[j]!)));
    fit = leastSquares(X, y);
    theta = Float64Array.from(fit.theta);
  }
  const { residual, inverse } = fit!;
  const k = unknowns.length;
  const inflations = unknowns.map((_, j) => inverse[j * k + j]! * dot(X[j]!, X[j]!));
  const told = unknowns
    .map((name, j) => ({ name, inflation: inflations[j]! }))
    .filter(({ name }) => name !== 'inertia' && name !== 'zero');
  const mixed = told.filter(({ inflation }) => inflation > worstInflation);
  if (mixed.length > 0)
    throw refusal({
      what: `This record cannot tell ${mixed.map(({ name }) => name).join(' and ')} apart (variance inflation ${significant(Math.max(...mixed.map((one) => one.inflation)), 3)}, at most ${worstInflation}): at one amplitude and period they act alike`,
      where: { field: 'model' },
      mend: 'Drop one of them, state it as a bound, or give a record with several amplitudes and periods.',
    });

  const psi = influences(unknowns, parts, X, fit!, setup);
  const lag = Math.max(1, Math.round(period / step));
  const V = neweyWest(psi, lag);
  const critical = criticalValue95(Math.min(1, (lag + 1) / psi[0]!.length));
  const rate = joined(parts.map(({ motion, at }) => forceRate(motion, at, theta, setup)));
  const byDelay = times(
    inverse,
    X.map((column) => -dot(column, rate)),
    k,
  );
  const bound = setup.also.has('delay') ? 0 : (setup.delayBound ?? 0);
  const estimate = (j: number, less = 0): Estimate => {
    const standardError = Math.sqrt(V[j * k + j]!);
    const reach = critical * standardError + Math.abs(byDelay[j]!) * bound;
    const value = theta[j]! - less;
    return { value, low: value - reach, high: value + reach, standardError };
  };
  const notAdded = setup.mass + setup.rigMass + rho * setup.waterInside;
  const drawn = (j: number, value: number): readonly [number, number] => {
    const [low, high] = blockBootstrap(psi[j]!, lag, bootstrapDraws, bootstrapSeed);
    return [value + low, value + high];
  };
  const addedMass = estimate(0, notAdded);
  const dragCoefficient = estimate(1);
  const robust = robustFit(X, y, theta);
  const modelled = difference(y, residual);
  const rms = Math.sqrt(dot(residual, residual) / y.length);
  const swing = Math.sqrt(dot(modelled, modelled) / y.length - (total(modelled) / y.length) ** 2);
  const lagOne = correlation(residual);

  findings.push(...stickSlipFindings(parts.flatMap(({ motion, tz }) => stickSlip(tz, motion))));
  findings.push(...delayFindings(setup, byDelay[1]!, theta[1]!, period), ...stretchFindings(setup, theta[0]!, period));
  if (swing > 0 && rms > 0.1 * swing)
    findings.push({ id: 'fit-poor', place: 'force', text: `What the model leaves over is ${significant((100 * rms) / swing, 2)} % of the force’s own swing.`, mend: 'Look at the picture of the fit: another term, a delay, or a spoiled channel.' }); // prettier-ignore
  if (lagOne > 0.5)
    findings.push({ id: 'residual-correlated', place: 'force', text: `What the model leaves over keeps its sign from reading to reading (correlation ${significant(lagOne, 2)}): something with a shape of its own is not in the model. The intervals count for that correlation, not for what causes it.`, mend: 'Look at the picture of the fit.' }); // prettier-ignore
  const { standardError: weightError, value: weight } = estimate(2);
  if (Math.abs(weight - atRest) > 0.02 * Math.abs(atRest) + 3 * weightError)
    findings.push({ id: 'zero-off', place: 'force', text: `The load cell’s mean is ${significant(weight, 4)} N, mass and volume give ${significant(atRest, 4)} N in the water.`, mend: 'Zero the load cell, or look at mass, volume and rig. Added mass and drag do not depend on it.' }); // prettier-ignore
  if (robust.outliers > 0)
    findings.push({ id: 'outliers', place: 'force', text: `${robust.outliers} readings of force lie more than four deviations off the fit; they count in the result. Without their pull: added mass ${significant(robust.theta[0]! - notAdded, 4)} kg, drag ${significant(robust.theta[1]!, 4)}.`, mend: 'Look at them; take them out of the record if the cause is known.' }); // prettier-ignore

  const each = parts.map((part) => ({ run: runResult(part, setup, notAdded), cycles: cycleResults(part, setup, notAdded) })); // prettier-ignore
  const trends = trendsOf(each);
  findings.push(...trendFindings(trends));
  findings.push(...leftOutFindings(leftOutOf(unknowns, parts, setup, { theta, cycle: period / step, onePeriod: isOnePeriod(runs), worst: worstInflation }))); // prettier-ignore

  return {
    addedMass,
    dragCoefficient,
    weight: estimate(2),
    also: new Map([...setup.also].map((name, j) => [name, estimate(3 + j)])),
    robust: { inertia: robust.theta[0]! - notAdded, dragCoefficient: robust.theta[1]! },
    outliers: robust.outliers,
    bootstrap: {
      addedMass: drawn(0, addedMass.value),
      dragCoefficient: drawn(1, dragCoefficient.value),
      seed: bootstrapSeed,
      draws: bootstrapDraws,
    },
    dragByDelay: byDelay[1]!,
    runs: each.map(({ run }) => run),
    cycles: each.flatMap(({ cycles: own }) => own),
    trends,
    inflation: inflations[1]!,
    residual: { rms, ofForce: swing > 0 ? rms / swing : 0, lagOne },
    overlay: { time: joined(parts.map(({ t }) => t)), measured: y, modelled },
    used: y.length,
    drift: Math.max(...parts.map(({ motion }) => Math.abs(motion.drift))),
    findings,
  };
}

/** Travel of the plate: the ram's less the stretch of the line under what the force varies. */
function plateTravel(travel: Float64Array, force: Float64Array, stiffness: number): Float64Array {
  const mean = total(force) / force.length;
  return travel.map((z, i) => z - (force[i]! - mean) / stiffness);
}

/** Whether all runs have the same period, within what counts as steady. */
const isOnePeriod = (runs: readonly Run[]): boolean => {
  const periods = runs.map(periodOf);
  return Math.max(...periods) - Math.min(...periods) <= steady * Math.max(...periods);
};

const joined = (parts: readonly Float64Array[]): Float64Array => {
  const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};
// loops, not callbacks: each goes over a million readings
function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
function total(a: Float64Array): number {
  let sum = 0;
  for (const value of a) sum += value;
  return sum;
}
function difference(a: Float64Array, b: Float64Array): Float64Array {
  const all = new Float64Array(a.length);
  for (let i = 0; i < all.length; i++) all[i] = a[i]! - b[i]!;
  return all;
}
const times = (matrix: Float64Array, vector: readonly number[], k: number): number[] =>
  vector.map((_, r) => vector.reduce((sum, x, c) => sum + matrix[r * k + c]! * x, 0));
function correlation(e: Float64Array): number {
  let [own, next] = [0, 0];
  for (let i = 1; i < e.length; i++) {
    own += e[i]! ** 2;
    next += e[i]! * e[i - 1]!;
  }
  return own > 0 ? next / own : 0;
}
