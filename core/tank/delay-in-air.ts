import { usualStep } from '../record/read-recording.ts';
import { refusal } from '../refusal.ts';
import { g } from '../water/sea-water.ts';
import { cyclesOf, runsOf } from './cycles.ts';
import type { Estimate } from './estimate.ts';
import { fittedRun, periodOf, type FittedRun } from './fitted-run.ts';
import { forceColumns, type Unknown } from './force-columns.ts';
import { influences } from './influences.ts';
import { leastSquares } from './least-squares.ts';
import { criticalValue95, neweyWest } from './newey-west.ts';
import { recordFaults } from './record-faults.ts';

/** What a run of a known mass in air tells. SI. */
export interface InAir {
  /** How late the force is read, s, with its 95 % interval. */
  readonly late: Estimate;
  /** Mass that the force answers to, kg. */
  readonly mass: Estimate;
  /** True force over force read, by the known mass. */
  readonly factor: number;
}

const unknowns: readonly Unknown[] = ['inertia', 'delay', 'zero', 'dry friction'];
const noDrag = { density: 0, area: 0 };

/**
 * Delay of the force from a run in air, where nothing but inertia, weight and the guides' friction acts:
 *   F(t) = m z″(t − τ) + W + f sign z′  ≈  m z″ − m τ z‴ + W + f sign z′,
 * travel as harmonics (`harmonicMotion`), least squares over all runs, intervals by Newey and West with the lag of a cycle.
 * Friction that grows with speed acts as a delay does at one frequency and is taken as none. Error of the expansion:
 * (ωτ)²/2 of m. Refuses a record without three like cycles, and a force that does not follow the acceleration.
 */
export function delayInAir(time: Float64Array, travel: Float64Array, force: Float64Array, known: number): InAir {
  const runs = runsOf(cyclesOf(time, travel));
  if (runs.length === 0)
    throw refusal({
      what: 'The run in air has no three like cycles in a row',
      where: { field: 'record' },
      mend: 'Drive the known mass for some cycles at one period and amplitude.',
    });
  const period = runs.reduce((sum, run) => sum + periodOf(run), 0) / runs.length;
  const step = usualStep(time);
  const faults = recordFaults(time, travel, force, known * g, period, step);
  const parts = runs.map((run) => fittedRun(run, time, travel, force, faults, 3));
  const fitted = (late: number) => {
    const kept = parts.map((part) => clearOfTurns(part, 1.5 * step + Math.abs(late)));
    const columns = kept.map((part) => forceColumns(unknowns, part.motion, part, new Float64Array(unknowns.length), noDrag)); // prettier-ignore
    const X = unknowns.map((_, c) => Float64Array.from(columns.flatMap((own) => [...own[c]!])));
    return { kept, X, fit: leastSquares(X, Float64Array.from(kept.flatMap(({ F }) => [...F]))) };
  };
  const first = fitted(0).fit.theta;
  const { kept, X, fit } = fitted(first[1]! / first[0]!);
  const { theta } = fit;
  const psi = influences(unknowns, kept, X, fit, noDrag);
  const k = unknowns.length;
  const lag = Math.max(1, Math.round(period / step));
  const V = neweyWest(psi, lag);
  const critical = criticalValue95(Math.min(1, (lag + 1) / psi[0]!.length));
  const [m, mLate] = [theta[0]!, theta[1]!];
  if (!(m > 0.5 * known && m < 2 * known))
    throw refusal({
      what: `In air the force answers to ${m.toFixed(0)} kg, the known mass is ${known.toFixed(0)} kg`,
      where: { field: 'mass' },
      mend: 'Look at the mass, at signs and units of both channels, and whether this is the run in air.',
    });
  const late = mLate / m;
  // of a quotient: its parts' errors and what they have in common
  const variance = (V[k + 1]! - 2 * late * V[1]! + late ** 2 * V[0]!) / m ** 2;
  const told = (value: number, standardError: number): Estimate => ({ value, low: value - critical * standardError, high: value + critical * standardError, standardError }); // prettier-ignore
  return { late: told(late, Math.sqrt(variance)), mass: told(m, Math.sqrt(V[0]!)), factor: known / m };
}

/** Beside a turning point a force read late still has the friction of before: readings nearer than `near` s tell nothing. */
function clearOfTurns(part: FittedRun, near: number): FittedRun {
  const { motion, at, t, F, places } = part;
  const clear = [...at.keys()].filter((p) => Math.abs(motion.v[at[p]!]!) > near * Math.abs(motion.a[at[p]!]!));
  return {
    ...part,
    at: Int32Array.from(clear, (p) => at[p]!),
    t: Float64Array.from(clear, (p) => t[p]!),
    F: Float64Array.from(clear, (p) => F[p]!),
    places: Int32Array.from(clear, (p) => places[p]!),
  };
}
