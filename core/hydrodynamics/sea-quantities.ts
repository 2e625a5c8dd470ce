import type { Model } from '../model.ts';
import type { WaterQuantity } from '../water/water-report.ts';
import { longTerm, stormExtremes } from './sea-extremes.ts';
import { waterForces, type ForceWay } from './water-forces.ts';

/** Ways in the words of a heading. */
export const wayTitles: Readonly<Record<ForceWay, string>> = {
  motion: 'stated motion',
  record: 'recorded motion',
  wave: 'regular wave',
  sea: 'storm',
};

/**
 * Largest force of the water in each way that the document tells the motion, and the largest waves of its storm and in the long
 * run; SI. `force.peak` is the stated motion's, without one the first of record, wave and storm. `missing`: ways without an answer.
 */
export function seaWater(model: Model): {
  readonly quantities: Readonly<Record<string, WaterQuantity>>;
  readonly missing: readonly { readonly id: string; readonly reason: string }[];
} {
  const quantities: Record<string, WaterQuantity> = {};
  const missing: { id: string; reason: string }[] = [];
  for (const force of waterForces(model)) {
    const at = (what: string): string => `force.${force.way}.${what}`;
    if ('missing' in force) {
      missing.push({ id: at('peak'), reason: force.missing });
      continue;
    }
    const { best, low, high, told, way } = force;
    const title = `in the ${wayTitles[way]}`;
    quantities[at('peak')] = { value: best.peak, unit: 'N', title: `Peak force of the water ${title}`, source: told, low, high }; // prettier-ignore
    quantities[at('inertia')] = { value: best.inertia, unit: 'N', title: `Largest inertia ${title}`, source: 'added mass times acceleration' }; // prettier-ignore
    quantities[at('drag')] = { value: best.drag, unit: 'N', title: `Largest drag ${title}`, source: 'drag area' };
    quantities[at('phase')] = { value: best.phase, unit: 'rad', title: `Peak after that of inertia ${title}`, source: 'Morison’s sum' }; // prettier-ignore
    quantities[at('amplitude')] = { value: force.amplitude, unit: 'm', title: `Largest swing through the water ${title}, amplitude`, source: told }; // prettier-ignore
    quantities[at('period')] = { value: force.period, unit: 's', title: `Its period ${title}`, source: told };
    quantities['force.peak'] ??= quantities[at('peak')]!;
  }
  const storm = stormExtremes(model.document);
  if (storm)
    for (const [where, words] of [
      ['surface', 'at the surface'],
      ['plate', 'of the water’s rise at the plate'],
    ] as const) {
      const { mostProbable, mean, tenPercent, cycles } = storm.height[where];
      const put = (what: string, value: number, title: string, unit = 'm') => (quantities[`storm.${where}.${what}`] = { value, unit, title: `${title} ${words}`, source: 'Rayleigh: Longuet-Higgins 1952' }); // prettier-ignore
      put('waves', cycles, 'Waves in the storm', '1');
      put('mostProbable', mostProbable, 'Most probable largest height in the storm');
      put('mean', mean, 'Mean largest height in the storm');
      put('tenPercent', tenPercent, 'Height that one storm in ten exceeds');
    }
  const long = longTerm(model.document);
  if (long) {
    const put = (id: string, value: number, title: string, unit = 'm') => (quantities[id] = { value, unit, title, source: 'scatter table: Battjes 1972 (from memory)' }); // prettier-ignore
    put('longTerm.surface.height', long.height.surface, `Wave height exceeded once in ${long.years} years`);
    put('longTerm.plate.height', long.height.plate, `Height of the water’s rise at the plate exceeded once in ${long.years} years`); // prettier-ignore
    for (const { height, part } of long.calm) put(`longTerm.plate.within.${height}`, part, `Part of the time with at most ${height} m of significant height at the plate`, '1'); // prettier-ignore
  }
  return { quantities, missing };
}
