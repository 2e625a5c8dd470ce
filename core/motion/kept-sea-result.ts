import type { Json } from '../document/edit.ts';
import type { SeaDeployment } from '../document/sea-tests-field.ts';
import { thinned } from '../record/thinned.ts';
import { integrateTwice, highPass } from './filtered.ts';
import { powerSpectrum } from './power-spectrum.ts';
import type { ReducedDeployment } from './reduced-deployment.ts';
import { seaKey } from './sea-key.ts';
import type { Banded } from './sea-record.ts';
import { seaSetupOf } from './sea-setup-of.ts';
import { seaWindows } from './sea-windows.ts';

/** Columns of a picture of the whole record, readings of one of its first minute, and lines of a spectrum that are kept. */
const [mostColumns, mostReadings, mostLines] = [250, 600, 400];
/** Of a spectrum's pieces, s: tells 0.004 Hz apart. */
const piece = 256;

/** What a document keeps of an accepted deployment: numbers, curves for its pictures, and what they are of. */
export function keptSeaResult(
  deployment: SeaDeployment,
  { recording, result, steps, findings }: ReducedDeployment,
  programVersion: string,
): { readonly [key: string]: Json } {
  const { takeOff, dt, begins } = result;
  return {
    key: seaKey(deployment),
    programVersion,
    by: result.by,
    significant: banded(result.significant),
    largest: text(result.largest, 'm'),
    floatSignificant: text(result.floatSignificant, 'm'),
    ...some('strokeSignificant', result.strokeSignificant, 'm'),
    ...some('period', result.meanPeriod, 's'),
    ...some('floatPeriod', result.floatPeriod, 's'),
    ...(result.within === null ? {} : { within: rounded(result.within) }),
    held: result.held.map(({ part, doubleAmplitude }) => ({ part, doubleAmplitude: text(doubleAmplitude, 'm') })),
    ways: result.ways.map(({ by, significant, apart }) => ({ by, significant: banded(significant), apart: text(apart, 'm') })), // prettier-ignore
    causes: result.causes.map(({ id, kind, value }) => ({ id, kind, value: text(value, 'm') })),
    ...(takeOff === null
      ? {}
      : {
          takeOff: {
            ...{ mean: text(takeOff.mean, 'N'), least: text(takeOff.least, 'N'), largest: text(takeOff.largest, 'N') },
            slack: rounded(takeOff.slack),
            ...(takeOff.power === null || takeOff.peakPower === null ? {} : { power: rounded(takeOff.power), peakPower: rounded(takeOff.peakPower) }), // prettier-ignore
          },
        }),
    seconds: rounded(result.plate.length * dt),
    readings: result.plate.length,
    rowsKeptOut: recording.recordings.reduce((sum, { bad }) => sum + bad.length, 0),
    whole: curvesOf({ ...result, stroke: null }, begins, 0, result.plate.length, mostColumns),
    minute: curvesOf(result, begins, 0, Math.min(result.plate.length, Math.ceil(60 / dt)), mostReadings),
    spectra: spectraOf(result, deployment),
    windows: seaWindows(result).slice(0, 2000).map(({ from, float, plate, period }) => ({ from: rounded(from), float: rounded(float), plate: rounded(plate), period: rounded(period) })), // prettier-ignore
    steps: steps.slice(0, 60),
    findings: findings.slice(0, 60).map(({ text: what, mend }) => `${what} ${mend}`),
  };
}

type Result = ReducedDeployment['result'];

/** Five figures: a millimetre in a hundred metres. */
const rounded = (value: number): number => Number(value.toPrecision(5));
/** Of a picture: half a millimetre of a metre. */
const drawn = (value: number): number => Number(value.toPrecision(4));
const text = (value: number, unit: string): string => `${rounded(value)} ${unit}`;
const banded = ({ value, low, high }: Banded): Json => ({ value: text(value, 'm'), low: text(low, 'm'), high: text(high, 'm') }); // prettier-ignore
const some = (name: string, value: number | null, unit: string): { readonly [key: string]: Json } => value === null ? {} : { [name]: text(value, unit) }; // prettier-ignore

/** Plate, float and stroke over the same times, thinned so that no peak of the plate is lost. */
function curvesOf(result: Result, begins: number, from: number, to: number, columns: number): Json {
  const time = Float64Array.from({ length: to }, (_, i) => begins + i * result.dt);
  const places = thinned(time, result.plate, columns, from, to).x.map((t) => Math.round((t - begins) / result.dt));
  const of = (values: Float64Array): number[] => places.map((i) => drawn(values[i]!));
  return { at: places.map((i) => rounded(time[i]!)), plate: of(result.plate), float: of(result.float), ...(result.stroke ? { stroke: of(result.stroke) } : {}) }; // prettier-ignore
}

/** Densities up to what matters: where the float has no thousandth of its largest left, and three times that at least in reach. */
function spectraOf({ plate, float, stroke, dt, causes, by }: Result, deployment: SeaDeployment): Json {
  const [ofPlate, ofFloat, ofStroke] = [plate, float, stroke].map((x) => x && powerSpectrum(x, dt, piece)) as [ReturnType<typeof powerSpectrum>, ReturnType<typeof powerSpectrum>, ReturnType<typeof powerSpectrum> | null]; // prettier-ignore
  const largest = Math.max(...ofFloat.S);
  let last = ofFloat.S.length - 1;
  while (last > 0 && ofFloat.S[last]! < largest / 1000) last--;
  const kept = Math.min(ofFloat.S.length, last + 2, mostLines);
  const of = (values: Float64Array): number[] => [...values.subarray(0, kept)].map(drawn);
  const setup = seaSetupOf(deployment);
  const twice = integrateTwice(highPass(setup.highPass));
  const keep = highPass(setup.highPass);
  const total = (id: string): number => causes.find((cause) => cause.id === id)?.value ?? 0;
  // white noise through its filter: its variance is spread as the filter's gain squared
  const spread = (gain: (omega: number) => number, deviation: number): ((f: number) => number) => {
    const all = Array.from({ length: 4000 }, (_, k) => gain((Math.PI / dt) * ((k + 0.5) / 4000)) ** 2);
    const area = all.reduce((sum, one) => sum + one, 0) / (8000 * dt);
    return (f) => (area === 0 ? 0 : (gain(2 * Math.PI * f) * deviation) ** 2 / area);
  };
  const noises = by === 'accelerometer' ? [spread(twice, total('plate'))] : by === 'difference' ? [spread(twice, total('acceleration')), spread(keep, Math.hypot(total('stroke'), total('force')))] : [spread(keep, total('pressure'))]; // prettier-ignore
  const floor = of(ofPlate.frequency).map((f) => rounded(noises.reduce((sum, noise) => sum + noise(f), 0)));
  return { at: of(ofPlate.frequency), plate: of(ofPlate.S), float: of(ofFloat.S), ...(ofStroke ? { stroke: of(ofStroke.S) } : {}), floor }; // prettier-ignore
}
