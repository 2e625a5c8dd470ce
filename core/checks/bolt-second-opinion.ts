import type { SecondOpinion } from './check.ts';

/**
 * One second opinion on a bolt's utilisation u from two: one on the force in it, one on what it carries. u_high is the
 * larger force over the own capacity, or the own force over the smaller capacity, whichever is less; u_low likewise: u
 * lies between them when force and capacity each lie inside their own bounds, and only then. Where nothing carries the
 * force, that is said by the check itself and u stays zero.
 */
export function boltSecondOpinion(force: SecondOpinion, capacity: SecondOpinion): SecondOpinion {
  const [F, R] = [force.of, capacity.of];
  const least = [force.low && `${force.low} / ${R}`, capacity.high && `${F} / ${capacity.high}`];
  const most = [force.high && `${force.high} / ${R}`, capacity.low && `${F} / ${capacity.low}`];
  const whereCarried = (ratio: string): string => `${R} > 0 * ${R} ? ${ratio} : 0`;
  const ofAll = (choose: 'min' | 'max', ratios: readonly (string | undefined)[]): string =>
    whereCarried(`${choose}(${ratios.filter((ratio) => ratio !== undefined).join(', ')})`);
  return {
    title: `${force.title}. ${capacity.title}`,
    source: [...force.source, ...capacity.source],
    steps: [
      ...force.steps,
      ...capacity.steps,
      { symbol: 'u', expression: whereCarried(`${F} / ${R}`), unit: '1', meaning: 'utilisation' },
      { symbol: 'u_low', expression: ofAll('max', least), unit: '1', meaning: 'smaller force, or larger capacity' },
      { symbol: 'u_high', expression: ofAll('min', most), unit: '1', meaning: 'larger force, or smaller capacity' },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  };
}
