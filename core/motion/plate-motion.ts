import { waveNumber } from '../water/waves/dispersion.ts';
import { g } from '../water/sea-water.ts';
import { deviation } from './deviation.ts';
import { filtered, highPass, integrateTwice, noiseThrough, type Gain } from './filtered.ts';
import type { PlateWay, SeaChannels, SeaSetup } from './sea-setup.ts';
import { whiteNoise } from './white-noise.ts';

/** What one sensor or bound leaves open of the plate's motion, m: noise as one deviation, a bound as it stands. */
export interface Cause {
  readonly id: 'acceleration' | 'stroke' | 'force' | 'clock' | 'scale' | 'plate' | 'pressure' | 'wave';
  readonly kind: 'noise' | 'bound';
  readonly value: number;
}

/** The plate's height found in one way, m, as long as the record. */
export interface PlateMotion {
  readonly by: PlateWay;
  readonly plate: Float64Array;
  readonly causes: readonly Cause[];
}

/** Noise and bounds of all causes together, m: noises add as squares, bounds as they stand. */
export function leftOpen(causes: readonly Cause[]): { readonly random: number; readonly bound: number } {
  const of = (kind: Cause['kind']): number[] => causes.filter((one) => one.kind === kind).map(({ value }) => value);
  return { random: Math.hypot(...of('noise')), bound: of('bound').reduce((sum, value) => sum + value, 0) };
}

/**
 * Float less what hangs between float and plate:  z_p = z_f − [(L + s + ΔF / k) cos θ], each with the high pass; L the line
 * (left out where it hangs straight), s the stroke about its middle, ΔF the pull about its mean. Null without stroke.
 */
export function plateByDifference(channels: SeaChannels, setup: SeaSetup, float: Float64Array): PlateMotion | null {
  const { dt, acceleration, stroke, force, lineAngle } = channels;
  if (!stroke) return null;
  const keep = highPass(setup.highPass);
  const s = aboutMean(stroke);
  const stretched = force && setup.stiffness !== null ? aboutMean(force).map((F, i) => s[i]! + F / setup.stiffness!) : s; // prettier-ignore
  const L = setup.lineLength;
  const drop = lineAngle && L !== null ? stretched.map((x, i) => (L + x) * Math.cos(lineAngle[i]!)) : stretched;
  const below = filtered(drop, dt, keep);
  const kept = filtered(stroke, dt, keep);
  const noise = setup.accelerationNoise ?? whiteNoise(acceleration, dt);
  return {
    by: 'difference',
    plate: float.map((z, i) => z - below[i]!),
    causes: [
      { id: 'acceleration', kind: 'noise', value: noise * noiseThrough(integrateTwice(keep), dt) },
      { id: 'stroke', kind: 'noise', value: setup.strokeNoise * noiseThrough(keep, dt) },
      ...(stretched === s ? [] : [{ id: 'force', kind: 'noise', value: (setup.forceNoise / setup.stiffness!) * noiseThrough(keep, dt) } as const]), // prettier-ignore
      { id: 'clock', kind: 'bound', value: setup.clock * deviation(rateOf(kept, dt)) },
      { id: 'scale', kind: 'bound', value: setup.scaleError * deviation(kept) },
    ],
  };
}

/** The plate's own acceleration integrated twice: no difference, no second clock. Null where none is carried. */
export function plateByAccelerometer({ dt, plateAcceleration }: SeaChannels, setup: SeaSetup): PlateMotion | null {
  if (!plateAcceleration) return null;
  const twice = integrateTwice(highPass(setup.highPass));
  const noise = setup.plateNoise ?? whiteNoise(plateAcceleration, dt);
  return {
    by: 'accelerometer',
    plate: filtered(plateAcceleration, dt, twice),
    causes: [{ id: 'plate', kind: 'noise', value: noise * noiseThrough(twice, dt) }],
  };
}

/**
 * Height of a pressure logger on the plate, the waves' own pressure taken off:
 *   z_p = ζ cosh k(h − d) / cosh kh − Δp / ρg,
 * ζ the surface, for which the float's height stands, d the plate's depth, h the water's (deep: e^(−kd)), ω² = gk tanh kh.
 * Null without the logger, the plate's depth or the water's density. Error: to first order in the waves' steepness; the pressure that the moving plate itself makes at the logger
 * is not taken off (it is small where the logger hangs clear of the panels).
 * Source: linear wave theory, DNV-RP-C205, 3.2.2 (from memory).
 */
export function plateByPressure(
  { dt, pressure }: SeaChannels,
  setup: SeaSetup,
  float: Float64Array,
  noise: number,
): PlateMotion | null {
  // prettier-ignore
  const d = setup.plateDepth;
  if (!pressure || d === null || setup.density === null) return null;
  const keep = highPass(setup.highPass);
  const reach: Gain = (omega) => waveReach(omega, d, setup.waterDepth);
  const wave = filtered(float, dt, reach);
  const weight = setup.density * g;
  const lift = filtered(pressure, dt, keep);
  return {
    by: 'pressure',
    plate: wave.map((z, i) => z - lift[i]! / weight),
    causes: [
      { id: 'pressure', kind: 'noise', value: (setup.pressureNoise / weight) * noiseThrough(keep, dt) },
      { id: 'acceleration', kind: 'noise', value: noise * noiseThrough((omega) => reach(omega) * integrateTwice(keep)(omega), dt, 8192) }, // prettier-ignore
      { id: 'wave', kind: 'bound', value: setup.waveError * deviation(wave) },
      { id: 'clock', kind: 'bound', value: setup.clock * deviation(rateOf(wave, dt)) },
    ],
  };
}

/** Part of the surface's pressure that reaches a depth. Of waves so short that nothing arrives, none is worked out. */
export function waveReach(omega: number, d: number, h: number | null): number {
  const deep = (omega ** 2 / g) * d;
  if (deep > 25) return 0;
  if (h === null) return Math.exp(-deep);
  const k = waveNumber(omega, h, g);
  return (Math.exp(-k * d) + Math.exp(k * (d - 2 * h))) / (1 + Math.exp(-2 * k * h));
}

/** Central differences, m/s; the ends as their neighbours. */
export function rateOf(x: Float64Array, dt: number): Float64Array {
  const n = x.length;
  return x.map((_, i) => {
    const [a, b] = [Math.max(0, i - 1), Math.min(n - 1, i + 1)];
    return (x[b]! - x[a]!) / ((b - a) * dt);
  });
}

function aboutMean(x: Float64Array): Float64Array {
  const mean = x.reduce((sum, value) => sum + value, 0) / x.length;
  return x.map((value) => value - mean);
}
