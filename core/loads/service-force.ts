import type { DesignBasis } from '../catalogue/design-basis.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import { inUnit, printedUnit, quantityText, significant } from '../quantity/format-quantity.ts';

/** The stated force of the water, read: what it is, and in words what it would be if read otherwise. */
export interface ServiceForce {
  /** Largest force either way, N, without load factor. */
  readonly amplitude: number;
  /** Load factor of its level by the design basis; 1 for a mean, which is not judged. */
  readonly loadFactor: number;
  /** The number holds the weight in water already: it is not added again. */
  readonly holdsWeight: boolean;
  /** The number holds inertia already: the panels' own inertia gives no relief. */
  readonly holdsInertia: boolean;
  /** Why strength cannot be judged with it. */
  readonly missing?: string;
  readonly definition: readonly string[];
  readonly findings: readonly Finding[];
}

const place = 'loads.service';

/** Reads the service force of a document: half of a range, load factor by level. Nothing is assumed that it does not say. */
export function serviceForce(
  { loads: { service }, basis: { life }, units }: PlateDocument,
  basis: DesignBasis,
): ServiceForce {
  const { force, measure, level, includes, returnPeriod } = service;
  const text = (newtons: number): string => quantityText(newtons, printedUnit('kN', units));
  const years = (seconds: number): string => {
    const count = Number(inUnit(seconds, 'year').toPrecision(3));
    return `${count} ${count === 1 ? 'year' : 'years'}`;
  };
  const amplitude = measure === 'range' ? force.si / 2 : force.si;
  const otherAmplitude = measure === 'range' ? force.si : force.si / 2;
  const gamma = {
    extreme: basis.factors['gamma_F_extreme']!.value,
    characteristic: basis.factors['gamma_F_characteristic']!.value,
  };
  const factorText = (of: 'extreme' | 'characteristic'): string =>
    `a load factor of ${significant(gamma[of], 3)} (${basis.name})`;
  const loadFactor = level === 'mean' ? 1 : gamma[level];
  const other = level === 'extreme' ? 'characteristic' : 'extreme';
  const has = (part: (typeof includes)[number]): boolean => includes.includes(part);
  const steady = measure === 'range' ? (['weight', 'current'] as const).filter(has) : [];
  const holdsWeight = has('weight') && measure === 'amplitude';

  const definition = [
    measure === 'amplitude'
      ? `The force of the water is stated as an amplitude: ${text(amplitude)} up and ${text(amplitude)} down. Read as a range (largest up to largest down) the amplitude would be ${text(otherAmplitude)}.`
      : `The force of the water is stated as a range, ${text(force.si)} from largest up to largest down; half of it, ${text(amplitude)}, is the amplitude each way. Read as an amplitude it would be ${text(otherAmplitude)}.`,
    level === 'mean'
      ? `It is a mean: strength cannot be judged with it, and forces below stand without load factor. Read as an extreme value the design force would be ${text(gamma.extreme * amplitude)} with ${factorText('extreme')}, as a characteristic value ${text(gamma.characteristic * amplitude)} with ${factorText('characteristic')}.`
      : `It is ${level === 'extreme' ? 'an extreme' : 'a characteristic'} value with a return period of ${years(returnPeriod.si)}: design force ${text(loadFactor * amplitude)} with ${factorText(level)}. Read as ${other === 'extreme' ? 'an extreme' : 'a characteristic'} value it would be ${text(gamma[other] * amplitude)} with ${factorText(other)}; a mean could not be judged.`,
    holdsWeight
      ? 'The stated number holds the weight in water: no weight is added in service, and the same number is taken up and down.'
      : `The weight in water is not in the number${has('weight') ? ' (half of a range holds no steady part)' : ''}: it is added in service, with its own factor where it makes things worse; where it helps, without factor and at its least: allowances for weld metal and rolling, coating and what corrodes in the life taken off.`,
    has('inertia')
      ? 'The number holds inertia (added mass of the water): where the plate is balanced by its own inertia, the panels are not relieved by theirs a second time.'
      : 'The number holds no inertia: where the plate is balanced by its own inertia, the panels are relieved by theirs.',
    `Drag is ${has('drag') ? 'in the number' : 'not in the number'}; current is ${has('current') ? 'in the number' : 'not in the number'}. What is not in the number is not on the plate.`,
  ];

  const findings: Finding[] = [];
  const find = (id: string, what: string, mend: string): number => findings.push({ id, place, text: what, mend });
  if (level === 'mean')
    find(
      'load-mean',
      'The service force is a mean: strength cannot be judged with it.',
      'State an extreme or a characteristic value with its return period.',
    );
  if (!has('inertia') && !has('drag'))
    find(
      'load-without-water',
      'The service force includes neither inertia nor drag: it is then no force of moving water on the plate.',
      'Say which of the two the number holds, or state the force that does.',
    );
  if (steady.length > 0)
    find(
      'range-of-steady',
      `A range cannot hold what is steady (${steady.join(' and ')}): half of it is taken as the part that goes up and down.`,
      'State an amplitude, or take the steady parts out of what it includes.',
    );
  if (holdsWeight)
    find(
      'weight-both-ways',
      'The stated amplitude holds the weight, which acts down only: the same number up is too large by twice the weight at most.',
      'State the force of the water alone and leave the weight to the mass report.',
    );
  if (level === 'extreme' && returnPeriod.si < life.si) {
    const chance = 1 - Math.exp(-life.si / returnPeriod.si);
    find(
      'return-period-short',
      `The extreme force returns every ${years(returnPeriod.si)}, the life is ${years(life.si)}: it is passed within the life with a chance of ${significant(100 * chance, 3)} %.`,
      'State the extreme for a return period longer than the life.',
    );
  }
  return {
    amplitude,
    loadFactor,
    holdsWeight,
    holdsInertia: has('inertia'),
    ...(level === 'mean'
      ? { missing: 'an extreme or characteristic service force: a mean cannot be judged for strength' }
      : {}),
    definition,
    findings,
  };
}
