import type { Json } from '../document/edit.ts';
import type { TankTest } from '../document/tests-field.ts';
import type { Estimate } from './estimate.ts';
import type { ReducedTest } from './reduced-test.ts';
import { testKey } from './test-key.ts';

/** Readings of the picture that a document keeps. */
const mostKept = 300;
/** Cycles that it shows. */
const shownCycles = 3;

/** What a document keeps of a test whose result was accepted: the numbers, a piece of the fit, and what they are of. */
export function acceptedResult(
  test: TankTest,
  { recording, result, steps, findings }: ReducedTest,
  programVersion: string,
): { readonly [key: string]: Json } {
  const { addedMass, dragCoefficient, runs, residual, used } = result;
  return {
    key: testKey(test),
    programVersion,
    addedMass: bounded(addedMass, (value) => text(value, 'kg')),
    dragCoefficient: bounded(dragCoefficient, rounded),
    residual: rounded(residual.ofForce),
    readings: used,
    rowsKeptOut: recording.bad.length,
    runs: runs.slice(0, 500).map(({ period, amplitude, cycles, keuleganCarpenter, fit }) => ({
      period: text(period, 's'),
      amplitude: text(amplitude, 'm'),
      cycles,
      keuleganCarpenter: rounded(keuleganCarpenter),
      addedMass: text(fit.inertia, 'kg'),
      dragCoefficient: rounded(fit.dragCoefficient),
    })),
    overlay: pieceOf(result),
    steps: steps.slice(0, 60),
    findings: findings.slice(0, 60).map(({ text: what, mend }) => `${what} ${mend}`),
  };
}

/** Six figures: more than any test gives. */
const rounded = (value: number): number => Number(value.toPrecision(6));
const text = (value: number, unit: string): string => `${rounded(value)} ${unit}`;
const bounded = ({ value, low, high }: Estimate, as: (value: number) => Json): Json => ({
  ...{ value: as(value), low: as(low), high: as(high) },
});

/** The first cycles of the longest-stroked run, thinned. */
function pieceOf({ overlay, runs }: ReducedTest['result']): Json {
  const run = runs.reduce((best, one) => (one.amplitude > best.amplitude ? one : best));
  const until = run.from + shownCycles * run.period;
  const places = [...overlay.time.keys()].filter((i) => overlay.time[i]! >= run.from && overlay.time[i]! <= until);
  const every = Math.max(1, Math.ceil(places.length / mostKept));
  const kept = places.filter((_, n) => n % every === 0);
  const of = (values: Float64Array): number[] => kept.map((i) => rounded(values[i]!));
  return { time: of(overlay.time), measured: of(overlay.measured), modelled: of(overlay.modelled) };
}
