import { longTerm, stormExtremes } from '../hydrodynamics/sea-extremes.ts';
import { wayTitles } from '../hydrodynamics/sea-quantities.ts';
import { waterForces } from '../hydrodynamics/water-forces.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Extremes } from '../water/waves/extremes.ts';
import type { Block } from './note.ts';

/** Largest force of the water in each way that the document tells the motion; beside it the force of service that loads take. */
export function forceBlocks(model: Model, print: Print): Block[] {
  const found = waterForces(model);
  if (found.length === 0) return [];
  const newtons = (value: number): string => print.quantity(value, 'kN', 3);
  const known = found.flatMap((one) => ('missing' in one ? [] : [one]));
  const missing = found.flatMap((one) =>
    'missing' in one ? [`Force in the ${wayTitles[one.way]}: ${one.missing}.`] : [],
  );
  const { force, level, measure } = model.document.loads.service;
  const largest = Math.max(...known.map(({ high }) => high));
  const taken = model.loads.swing.amplitude;
  const beside = `Loads of this note take a service force of ${force.typed}${measure === 'range' ? `, a range: ${newtons(taken)} each way` : ''}${level === 'mean' ? ' (mean level)' : ''}, ${significant(taken / largest, 3)} times the largest high value above.`; // prettier-ignore
  return [
    {
      kind: 'table',
      caption: 'Force of the water on the plate, largest in each way of moving: inertia and drag press a quarter of a cycle apart; low and high by the spreads of added mass and drag at that motion', // prettier-ignore
      columns: [
        { title: 'In the', width: 0.14 },
        { title: 'Amplitude through the water, period', width: 0.2, align: 'right' },
        { title: 'Inertia', width: 0.13, align: 'right' },
        { title: 'Drag', width: 0.13, align: 'right' },
        { title: 'Peak', width: 0.13, align: 'right' },
        { title: 'Low to high', width: 0.2, align: 'right' },
        { title: 'Phase', width: 0.07, align: 'right' },
      ],
      rows: known.map(({ way, amplitude, period, best, low, high }) => [
        wayTitles[way],
        `${print.quantity(amplitude, 'm', 3)}, ${print.quantity(period, 's', 3)}`,
        newtons(best.inertia),
        newtons(best.drag),
        newtons(best.peak),
        `${newtons(low)} to ${newtons(high)}`,
        `${Math.round((180 / Math.PI) * best.phase)}°`,
      ]),
    },
    {
      kind: 'list',
      tone: 'plain',
      items: [
        ...known.map(({ way, told, outside }) => `${way === 'motion' ? 'Stated motion' : wayTitles[way].replace(/^./, (c) => c.toUpperCase())}: ${told}${outside ? `; ${outside}, so the drag is a guess` : ''}.`), // prettier-ignore
        ...missing,
        ...(known.length > 0 && taken >= largest ? [beside] : []),
      ],
    },
    ...(known.length > 0 && taken < largest
      ? [{ kind: 'list', tone: 'loud', items: [`${beside} The water may press with more than the loads take: raise the service force, or say why not.`] } as const] // prettier-ignore
      : []),
  ];
}

/** Largest waves of the stated storm, and of the long run by the scatter table, at the surface and at the plate. */
export function extremeBlocks({ document }: Model, print: Print): Block[] {
  const storm = stormExtremes(document);
  const long = longTerm(document);
  const metres = (value: number): string => print.quantity(value, 'm', 3);
  const lines: readonly (readonly [string, (of: Extremes) => string])[] = [
    ['Waves in the storm', (of) => significant(of.cycles, 4)],
    ['Most probable largest height', (of) => metres(of.mostProbable)],
    ['Mean largest height', (of) => metres(of.mean)],
    ['Exceeded by one storm in ten', (of) => metres(of.tenPercent)],
  ];
  const rows = [
    ...(storm ? lines.map(([title, of]) => [title, of(storm.height.surface), of(storm.height.plate)]) : []),
    ...(long ? [[`Exceeded once in ${long.years} years`, metres(long.height.surface), metres(long.height.plate)]] : []),
  ];
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: `Largest wave heights${storm ? `: a storm of ${significant(storm.duration / 3600, 3)} h in the stated sea, by Rayleigh (Longuet-Higgins 1952)` : ''}${long ? `${storm ? '; ' : ': '}in the long run, all sea states of the scatter table (Battjes 1972, from memory)` : ''}`, // prettier-ignore
      columns: [
        { title: 'Height, trough to crest', width: 0.44 },
        { title: 'At the surface', width: 0.28, align: 'right' },
        { title: 'Of the water at the plate', width: 0.28, align: 'right' },
      ],
      rows,
    },
    ...(long
      ? [
          {
            kind: 'list',
            tone: 'plain',
            items: [
              `Scatter table (${document.hydrodynamics!.scatter!.source}): significant heights of ${metres(long.meanHeight)} in the mean and ${metres(long.largestHeight)} at most. The water’s significant height at the plate is at most ${long.calm.map(({ height, part }) => `${metres(height)} in ${significant(100 * part, 3)} %`).join(', ')} of the time.`, // prettier-ignore
              'The table is not drawn out beyond its largest sea state: years that it does not cover may bring a larger one.',
            ],
          } as const,
        ]
      : []),
  ];
}
