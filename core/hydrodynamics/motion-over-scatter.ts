import type { Model } from '../model.ts';
import { stochasticResponse } from '../motion/stochastic-response.ts';
import { waveForcing } from '../motion/wave-forcing.ts';
import { jonswap, zeroCrossingOver } from '../water/waves/spectrum.ts';
import { heaveSystemOf } from './heave-system-of.ts';
import { movingCurve, type MovingCurve } from './moving-curve.ts';
import { throughSea } from './through-sea.ts';

/** The plate under its float in one state of the scatter table, by spectra. SI. */
export interface MotionInState {
  readonly height: number;
  readonly peakPeriod: number;
  /** Of the time. */
  readonly part: number;
  /** Significant double amplitude of the plate, m. */
  readonly significant: number;
  /** Most probable largest rise or fall of the pull about the weight while the state lasts, N; a line goes slack where it is more than the weight. */
  readonly pull: number;
  readonly slack: boolean;
  /** Mean power that the power take-off takes, W. */
  readonly power: number;
}

/** The plate under its float over all states of the scatter table. */
export interface MotionOverScatter {
  readonly states: readonly MotionInState[];
  /** Of the states that could be had: means over their time. */
  readonly mean: { readonly significant: number; readonly power: number };
  /** Part of the time in which the plate's significant double amplitude is at most so much, m. */
  readonly within: readonly { readonly limit: number; readonly part: number }[];
  /** Part of the time in which a line goes slack. */
  readonly slack: number;
  /** States without an answer, with the reason, and their part of the time. */
  readonly unjudged: readonly { readonly height: number; readonly peakPeriod: number; readonly part: number; readonly why: string }[]; // prettier-ignore
  readonly from: MovingCurve['from'];
}

/** m. */
const limits = [0.25, 0.5, 1] as const;
const lines = 120;

/** Null where no scatter table is stated; what is missing, where nothing can be had. A hundred states take a second or two. */
export function motionOverScatter(model: Model): MotionOverScatter | { readonly missing: string } | null {
  const { scatter } = model.document.hydrodynamics ?? {};
  if (!scatter) return null;
  const bare = heaveSystemOf(model, 0, 0);
  if ('missing' in bare) return bare;
  const all = scatter.states.reduce((sum, { count }) => sum + count, 0);
  const peakOf = scatter.period === 'peak' ? 1 : 1 / zeroCrossingOver(scatter.peakedness);
  const { curve, area, from } = movingCurve(model, Math.max(...scatter.states.map(({ height }) => height.si)));
  const states: MotionInState[] = [];
  const unjudged: { height: number; peakPeriod: number; part: number; why: string }[] = [];
  for (const { height, period, count } of scatter.states) {
    if (count === 0) continue;
    const peakPeriod = peakOf * period.si;
    const S = jonswap(height.si, peakPeriod, scatter.peakedness);
    const own = { height: height.si, peakPeriod, part: count / all };
    const found = throughSea(model, { S, peakPeriod }, curve, area);
    if ('missing' in found) {
      unjudged.push({ ...own, why: found.missing });
      continue;
    }
    const { system, field } = found.made;
    const peak = (2 * Math.PI) / peakPeriod;
    const omegas = Float64Array.from({ length: lines + 1 }, (_, i) => peak * (0.4 + (4.6 * i) / lines));
    const linear = stochasticResponse(system, S, omegas, (omega) => waveForcing(field, omega));
    const cycles = Math.max(1, scatter.duration.si / linear.pullPeriod);
    const pull = linear.pull * Math.sqrt(2 * Math.log(cycles));
    const slack = !system.link.pushes && pull > system.plate.weight;
    states.push({ ...own, significant: linear.significant, pull, slack, power: system.link.damping * linear.stroke ** 2 }); // prettier-ignore
  }
  if (states.length === 0) return { missing: unjudged[0]!.why };
  const known = states.reduce((sum, { part }) => sum + part, 0);
  const timed = (of: (state: MotionInState) => number): number => states.reduce((sum, state) => sum + state.part * of(state), 0) / known; // prettier-ignore
  return {
    states,
    mean: { significant: timed(({ significant }) => significant), power: timed(({ power }) => power) },
    within: limits.map((limit) => ({ limit, part: timed(({ significant }) => (significant <= limit ? 1 : 0)) })),
    slack: timed((state) => (state.slack ? 1 : 0)),
    unjudged,
    from,
  };
}
