import { compartmentsOf, type Compartment } from '../geometry/compartments-of.ts';
import { dischargeCoefficient } from '../mass/drain-time.ts';
import type { Model } from '../model.ts';
import { g } from '../water/sea-water.ts';
import { missing, type Check, type Input } from './check.ts';
import { constant } from './inputs.ts';
import { liftCautions, ofLift, onEitherBasis, withLift } from './lift-inputs.ts';

const traysOf = ({ geometry }: Model): readonly Compartment[] =>
  compartmentsOf(geometry).filter(({ kind }) => kind === 'tray');
const trayAt = (model: Model, place: string): Compartment | undefined =>
  traysOf(model).find(({ bay }) => bay.id === place);
const ofTray = (unit: string, meaning: string, read: (tray: Compartment) => number): Input => ({
  unit,
  meaning,
  from: 'geometry',
  read: (model, place) => {
    const tray = trayAt(model, place);
    return tray ? read(tray) : missing('the bay');
  },
});

/** A bay that holds water empties while the plate hangs in the splash zone. */
export const liftDrain: Check = {
  id: 'lift-drain',
  title: 'Bay drains while the plate is lifted out',
  limitState: 'handling',
  source: [{ document: 'Torricelli’s law', memory: true }],
  places: (model) => {
    const trays = traysOf(model);
    return trays.length > 0 ? trays.map(({ bay }) => bay.id) : ['recovery'];
  },
  applies: (model, place, situation) => {
    const lifted = withLift(model, place, situation);
    return lifted !== true ? lifted : traysOf(model).length > 0 || 'no bay holds water like a tray';
  },
  once: true,
  rule: (model, place) => {
    const tray = trayAt(model, place);
    return tray && (tray.holes === 0 || tray.otherHoles === 0) ? 'nothing lets the water out, or no air in' : undefined;
  },
  inputs: {
    A: ofTray('m^2', 'clear area of the bay', ({ a, b }) => a * b),
    h_0: ofTray('mm', 'depth of water when full', ({ height }) => height),
    a_h: ofTray('mm^2', 'open area of the panel in the bay', ({ holes }) => holes),
    C_d: constant(
      dischargeCoefficient,
      '1',
      'discharge coefficient of a sharp-edged hole',
      'common practice, from memory',
    ),
    g: constant(g, 'm/s^2', 'gravity', 'ISO 80000-3'),
    t_max: ofLift(
      's',
      'time that the lift waits in the splash zone',
      'document: recovery',
      (_, { drainTime }) => drainTime.si,
    ),
  },
  steps: onEitherBasis(
    {
      symbol: 't',
      expression: '2 * A * sqrt(h_0) / (C_d * a_h * sqrt(2 * g))',
      unit: 's',
      meaning: 'time until it is empty',
    },
    { symbol: 't_w', expression: 't_max', unit: 's', meaning: 'time there is' },
  ),
  demand: 't',
  capacity: 't_w',
  second: {
    title: 'at the speed that it begins with all along; and at that of a tenth of the depth',
    source: [{ document: 'conservation of volume' }],
    steps: [
      {
        symbol: 't_low',
        expression: 'A * h_0 / (C_d * a_h * sqrt(2 * g * h_0))',
        unit: 's',
        meaning: 'at its first speed',
      },
      {
        symbol: 't_high',
        expression: 'A * h_0 / (C_d * a_h * sqrt(2 * g * h_0 / 10))',
        unit: 's',
        meaning: 'at the speed of a tenth of the depth',
      },
    ],
    of: 't',
    low: 't_low',
    high: 't_high',
  },
  cautions: [
    ...liftCautions,
    'Growth and coating close small holes: keep vents clear, and take what is not drained as weight lifted.',
  ],
};
