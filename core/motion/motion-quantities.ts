import type { HarmonicResponse } from './harmonic-response.ts';
import type { SteppedResponse } from './stepped-response.ts';
import type { StochasticResponse } from './stochastic-response.ts';

export interface MotionQuantity {
  readonly value: number;
  readonly unit: string;
  readonly title: string;
  readonly source: string;
}

const stepping = 'two bodies in heave, drag and slack as they are, Runge-Kutta of order four';
const harmonic = 'two bodies in heave, drag linearised by equal work: Kryloff & Bogoliuboff (1943), from memory';
const random = 'two bodies in heave, drag linearised for a Gaussian speed: Borgman (1967), from memory';

const quantity = (value: number, unit: string, title: string, source: string): MotionQuantity => ({
  value,
  unit,
  title,
  source,
});

/** Range of a history after its first part has died away. */
function range(values: Float64Array, from: number): number {
  let [low, high] = [Infinity, -Infinity];
  for (let i = from; i < values.length; i++) {
    low = Math.min(low, values[i]!);
    high = Math.max(high, values[i]!);
  }
  return high - low;
}

/** Largest rise or fall between two turns that lie on either side of the mean: the largest double amplitude. */
function largestSwing(values: Float64Array, from: number): number {
  const own = values.subarray(from);
  const mean = own.reduce((sum, z) => sum + z, 0) / own.length;
  let [most, before, extreme, side] = [0, 0, 0, 0];
  for (const z of own) {
    const now = z >= mean ? 1 : -1;
    if (now !== side) {
      if (side !== 0 && before !== 0) most = Math.max(most, Math.abs(extreme - before));
      before = side === 0 ? 0 : extreme;
      [extreme, side] = [z, now];
    } else if (Math.abs(z - mean) > Math.abs(extreme - mean)) extreme = z;
  }
  return most;
}

const deviation = (values: Float64Array, from: number): number => {
  const own = values.subarray(from);
  const mean = own.reduce((sum, z) => sum + z, 0) / own.length;
  return Math.sqrt(own.reduce((sum, z) => sum + (z - mean) ** 2, 0) / own.length);
};

/** What of all that came in the balance does not account for. */
function unaccounted({ energy }: SteppedResponse): number {
  const out = energy.float + energy.link + energy.plate + energy.stored;
  return energy.in === 0 ? 0 : Math.abs(out / energy.in - 1);
}

function pulls({ pull, slackTimes, snapSpeed }: SteppedResponse, from: number): Record<string, MotionQuantity> {
  const own = pull.subarray(from);
  return {
    'line.largest': quantity(
      own.reduce((a, b) => Math.max(a, b), -Infinity),
      'N',
      'Largest pull of the line',
      stepping,
    ),
    'line.least': quantity(
      own.reduce((a, b) => Math.min(a, b), Infinity),
      'N',
      'Least pull of the line',
      stepping,
    ),
    'line.slackTimes': quantity(slackTimes, '1', 'Times that the line goes slack', stepping),
    'line.snapSpeed': quantity(snapSpeed, 'm/s', 'Largest speed at which it draws tight again', stepping),
  };
}

/** A regular wave: by time steps from `from` on, and linearised beside it. SI. */
export function regularQuantities(
  stepped: SteppedResponse,
  from: number,
  linear: HarmonicResponse,
  waterRise: number,
): Readonly<Record<string, MotionQuantity>> {
  const size = ([re, im]: readonly [number, number]): number => 2 * Math.hypot(re, im);
  return {
    'wave.motionAtPlate': quantity(
      2 * waterRise,
      'm',
      'Double amplitude of the water at the plate, undisturbed',
      'linear wave theory',
    ),
    'motion.peakToPeak': quantity(range(stepped.plate, from), 'm', 'Double amplitude of the plate', stepping),
    'motion.linearised.peakToPeak': quantity(size(linear.plate), 'm', 'The same, drag linearised', harmonic),
    'motion.float.peakToPeak': quantity(range(stepped.float, from), 'm', 'Double amplitude of the float', stepping),
    ...pulls(stepped, from),
    'power.in': quantity(linear.power.in, 'W', 'Mean power that comes in, linearised', harmonic),
    'power.takeOff': quantity(linear.power.link, 'W', 'Of it, in the power take-off', harmonic),
    'power.plate': quantity(linear.power.plate, 'W', 'Of it, lost by the plate’s motion', harmonic),
    'power.float': quantity(linear.power.float, 'W', 'Of it, lost by the float', harmonic),
    'energy.unaccounted': quantity(unaccounted(stepped), '1', 'Part of the energy that the time steps lose', stepping),
  };
}

/** A sea state: by spectra, and by one seeded history from `from` on beside it. SI. */
export function seaQuantities(
  stepped: SteppedResponse,
  from: number,
  linear: StochasticResponse,
): Readonly<Record<string, MotionQuantity>> {
  return {
    'motion.significant': quantity(
      4 * deviation(stepped.plate, from),
      'm',
      'Significant double amplitude of the plate',
      stepping,
    ),
    'motion.linearised.significant': quantity(linear.significant, 'm', 'The same, drag linearised', random),
    'motion.peakToPeak': quantity(
      largestSwing(stepped.plate, from),
      'm',
      'Largest double amplitude of the plate in this history',
      stepping,
    ),
    'motion.zeroCrossingPeriod': quantity(linear.zeroCrossing, 's', 'Mean period of the plate’s motion', random),
    'motion.float.significant': quantity(
      4 * deviation(stepped.float, from),
      'm',
      'Significant double amplitude of the float',
      stepping,
    ),
    ...pulls(stepped, from),
    'line.linearised.significant': quantity(
      4 * linear.pull,
      'N',
      'Significant range of the line’s varying pull, drag linearised',
      random,
    ),
    'power.takeOff': quantity(
      stepped.energy.link / (stepped.dt * (stepped.plate.length - 1)),
      'W',
      'Mean power in the power take-off',
      stepping,
    ),
    'power.plate': quantity(
      stepped.energy.plate / (stepped.dt * (stepped.plate.length - 1)),
      'W',
      'Mean power lost by the plate’s motion',
      stepping,
    ),
    'energy.unaccounted': quantity(unaccounted(stepped), '1', 'Part of the energy that the time steps lose', stepping),
  };
}
