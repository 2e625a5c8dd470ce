import type { Estimate } from './estimate.ts';
import type { TankResult } from './identify.ts';

/** A number as the commands print it; `low` and `high` bound it at 95 %. */
export interface TankQuantity {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  readonly title: string;
  readonly source: string;
}

const morison =
  'inertia and quadratic drag by least squares: Sarpkaya & Isaacson, Mechanics of Wave Forces (1981), from memory';
const intervals = 'Newey & West (1987) with fixed-lag critical values, Kiefer & Vogelsang (2005), from memory';
const averaging = 'Fourier averaging: Keulegan & Carpenter, J. Res. NBS 60 (1958) 423, from memory';
const drawing = 'circular block bootstrap: Politis & Romano (1992), from memory';

/** Numbers of a test by id, SI. */
export function tankQuantities(result: TankResult): Readonly<Record<string, TankQuantity>> {
  const bounded = ({ value, low, high }: Estimate, unit: string, title: string): TankQuantity => ({
    ...{ value, low, high, unit, title },
    source: `${morison}; interval: ${intervals}`,
  });
  const plain = (value: number, unit: string, title: string, source: string): TankQuantity => ({
    value,
    unit,
    title,
    source,
  });
  const { addedMass, dragCoefficient, weight, also, runs, bootstrap, robust, residual, trends } = result;
  const one = runs.length === 1 ? runs[0]! : null;
  return {
    'tank.addedMass': bounded(addedMass, 'kg', 'Added mass'),
    'tank.dragCoefficient': bounded(dragCoefficient, '1', 'Drag coefficient, of the stated area'),
    'tank.weight': bounded(weight, 'N', 'Force of the line with nothing moving, as the record has it'),
    ...Object.fromEntries([...also].map(([name, estimate]) => {
      const { id, unit, title } = alsoWords[name];
      return [id, bounded(estimate, unit, title)] as const;
    })), // prettier-ignore
    'tank.bootstrap.addedMass': { ...plain(addedMass.value, 'kg', 'Added mass, interval by drawing blocks of the record anew', drawing), low: bootstrap.addedMass[0], high: bootstrap.addedMass[1] }, // prettier-ignore
    'tank.bootstrap.dragCoefficient': { ...plain(dragCoefficient.value, '1', 'Drag coefficient, interval by drawing blocks of the record anew', drawing), low: bootstrap.dragCoefficient[0], high: bootstrap.dragCoefficient[1] }, // prettier-ignore
    'tank.robust.addedMass': plain(
      robust.inertia,
      'kg',
      'Added mass by a fit that outliers cannot pull',
      'Huber, Robust Statistics (1981), from memory',
    ),
    'tank.robust.dragCoefficient': plain(
      robust.dragCoefficient,
      '1',
      'Drag coefficient by a fit that outliers cannot pull',
      'Huber, Robust Statistics (1981), from memory',
    ),
    ...(one
      ? {
          'tank.fourier.addedMass': plain(one.fourier.inertia, 'kg', 'Added mass by Fourier averaging', averaging),
          'tank.fourier.dragCoefficient': plain(
            one.fourier.dragCoefficient,
            '1',
            'Drag coefficient by Fourier averaging',
            averaging,
          ),
        }
      : {}),
    ...Object.fromEntries(runs.flatMap((run, i) => {
      const at = `tank.run.${i + 1}`;
      const of = `of run ${i + 1}`;
      return [
        [`${at}.period`, plain(run.period, 's', `Period ${of}`, 'fitted')],
        [`${at}.amplitude`, plain(run.amplitude, 'm', `Amplitude ${of}`, 'fitted')],
        [`${at}.keuleganCarpenter`, plain(run.keuleganCarpenter, '1', `Keulegan-Carpenter number ${of}, 2π amplitude / width`, 'definition')],
        [`${at}.addedMass`, plain(run.fit.inertia, 'kg', `Added mass ${of} by itself`, morison)],
        [`${at}.dragCoefficient`, plain(run.fit.dragCoefficient, '1', `Drag coefficient ${of} by itself`, morison)],
      ] as const;
    })), // prettier-ignore
    ...Object.fromEntries(trends.flatMap(({ of, amplitude, frequency }) => ([['keuleganCarpenter', 'Keulegan-Carpenter number', amplitude], ['frequencyParameter', 'frequency parameter', frequency]] as const).flatMap(([id, name, one]) => (one === null ? [] : [[`tank.trend.${of}.${id}`, { ...plain(one.value, '1', `Exponent of ${of === 'addedMass' ? 'added mass' : 'drag coefficient'} with the ${name}`, 'weighted regression over the runs'), low: one.low, high: one.high }] as const])))), // prettier-ignore
    'tank.residual': plain(
      residual.ofForce,
      '1',
      'What the model leaves over, of the force’s own swing',
      'this record',
    ),
    'tank.residual.correlation': plain(
      residual.lagOne,
      '1',
      'Correlation of what is left over from reading to reading',
      'this record',
    ),
    'tank.readings': plain(result.used, '1', 'Readings that were used', 'this record'),
  };
}

const alsoWords = {
  'linear damping': { id: 'tank.linearDamping', unit: 'N*s/m', title: 'Linear damping' },
  'dry friction': { id: 'tank.dryFriction', unit: 'N', title: 'Dry friction' },
  'force drift': { id: 'tank.forceDrift', unit: 'N/s', title: 'Drift of the load cell’s zero' },
  delay: { id: 'tank.delay', unit: 's', title: 'Delay of the force behind the travel' },
} as const;
