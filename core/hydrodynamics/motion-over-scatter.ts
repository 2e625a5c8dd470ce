import type { Model } from '../model.ts';
import { stochasticResponse } from '../motion/stochastic-response.ts';
import { inSeaState } from '../motion/in-sea-state.ts';
import { oncePerModel } from '../once-per-model.ts';
import { Refusal } from '../refusal.ts';
import { waveForcing } from '../motion/wave-forcing.ts';
import { jonswap, zeroCrossingOver, type Spectrum } from '../water/waves/spectrum.ts';
import { heaveSystemOf, type HeaveOf } from './heave-system-of.ts';
import { movingCurve, type MovingCurve } from './moving-curve.ts';
import { throughSea } from './through-sea.ts';

/** The plate under its float in one state of the scatter table, by spectra, and by time steps beside them. SI. */
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
  /** One seeded history by time steps, drag and slack as they are: motion, and times an hour that the line goes slack. Null for a
   *  state that is not among those that move the plate most, or under whose steps the motion does not stay finite. */
  readonly stepped: { readonly significant: number; readonly slackAnHour: number } | null;
}

/** The plate under its float over all states of the scatter table. */
export interface MotionOverScatter {
  readonly states: readonly MotionInState[];
  /** Of the states that could be had: means over their time. */
  readonly mean: { readonly significant: number; readonly power: number };
  /** Part of the time in which the plate's significant double amplitude is at most so much, m. */
  readonly within: readonly { readonly limit: number; readonly part: number }[];
  /** Over the states that were stepped: their part of the time, means over it by time steps and by spectra, and the part of all
   *  time in states whose history goes slack. Null where none was. */
  readonly stepped: { readonly part: number; readonly significant: number; readonly linearised: number; readonly slack: number } | null; // prettier-ignore
  /** Part of the time in which a line goes slack. */
  readonly slack: number;
  /** States without an answer, with the reason, and their part of the time. */
  readonly unjudged: readonly { readonly height: number; readonly peakPeriod: number; readonly part: number; readonly why: string }[]; // prettier-ignore
  readonly from: MovingCurve['from'];
}

/** m. */
const limits = [0.25, 0.5, 1] as const;
const lines = 120;

/** Of each history, s: its significant value scatters by two or three percent from seed to seed. A state takes some 40 ms. */
export const scatterHistory = { dyingAway: 200, duration: 600, components: 100, seed: 1, dt: 0.05 } as const;
/** So many states are stepped, those that move the plate most. */
const mostStepped = 100;

/** Null where no scatter table is stated; what is missing, where nothing can be had. A hundred states take some seconds. */
export const motionOverScatter = oncePerModel(overScatter);

function overScatter(model: Model): MotionOverScatter | { readonly missing: string } | null {
  const { scatter } = model.document.hydrodynamics ?? {};
  if (!scatter) return null;
  const bare = heaveSystemOf(model, 0, 0);
  if ('missing' in bare) return bare;
  const all = scatter.states.reduce((sum, { count }) => sum + count, 0);
  const peakOf = scatter.period === 'peak' ? 1 : 1 / zeroCrossingOver(scatter.peakedness);
  const { curve, area, from } = movingCurve(model, Math.max(...scatter.states.map(({ height }) => height.si)));
  const states: (Omit<MotionInState, 'stepped'> & Waves)[] = [];
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
    states.push({ ...own, significant: linear.significant, pull, slack, power: system.link.damping * linear.stroke ** 2, made: found.made, S }); // prettier-ignore
  }
  if (states.length === 0) return { missing: unjudged[0]!.why };
  const most = new Set([...states].sort((a, b) => b.significant - a.significant).slice(0, mostStepped));
  const told = states.map((state): MotionInState => {
    const { made: _made, S: _S, ...own } = state;
    return { ...own, stepped: most.has(state) ? steppedIn(state) : null };
  });
  const known = states.reduce((sum, { part }) => sum + part, 0);
  const timed = (of: (state: (typeof states)[number]) => number): number => states.reduce((sum, state) => sum + state.part * of(state), 0) / known; // prettier-ignore
  return {
    states: told,
    stepped: overStepped(told),
    mean: { significant: timed(({ significant }) => significant), power: timed(({ power }) => power) },
    within: limits.map((limit) => ({ limit, part: timed(({ significant }) => (significant <= limit ? 1 : 0)) })),
    slack: timed((state) => (state.slack ? 1 : 0)),
    unjudged,
    from,
  };
}

/** The two bodies of a state, and its sea. */
interface Waves {
  readonly made: HeaveOf;
  readonly S: Spectrum;
}

function steppedIn({ made, S, peakPeriod }: Waves & { readonly peakPeriod: number }): MotionInState['stepped'] {
  try {
    const { quantities, stepped } = inSeaState(made.system, made.field, { S, peakPeriod }, scatterHistory);
    return { significant: quantities['motion.significant']!.value, slackAnHour: (stepped.slackTimes * 3600) / scatterHistory.duration }; // prettier-ignore
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
}

function overStepped(states: readonly MotionInState[]): MotionOverScatter['stepped'] {
  const own = states.flatMap(({ part, significant, stepped }) => (stepped ? [{ part, linearised: significant, ...stepped }] : [])); // prettier-ignore
  const part = own.reduce((sum, state) => sum + state.part, 0);
  if (part === 0) return null;
  const mean = (of: (state: (typeof own)[number]) => number): number => own.reduce((sum, state) => sum + state.part * of(state), 0) / part; // prettier-ignore
  return { part, significant: mean(({ significant }) => significant), linearised: mean(({ linearised }) => linearised), slack: part * mean(({ slackAnHour }) => (slackAnHour > 0 ? 1 : 0)) }; // prettier-ignore
}
