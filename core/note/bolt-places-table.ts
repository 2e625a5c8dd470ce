import { boltPattern } from '../document/bolt-pattern.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import type { Table } from './note.ts';

/** For each design whose bolts are listed: where they stand, by the number that bolts and drawing have. */
export function boltPlacesTables({ geometry }: Model, print: Print): Table[] {
  const used = [...new Map(geometry.panels.map((panel) => [panel.designName, panel])).values()];
  return used.flatMap(({ designName, design: { fixing } }): Table[] => {
    if (fixing.kind !== 'bolted') return [];
    const pattern = boltPattern(fixing);
    if (pattern.kind !== 'listed') return [];
    const own = geometry.panels.filter((panel) => panel.designName === designName);
    const tubes = (i: number): string => [...new Set(own.map(({ bolts }) => bolts[i]!.tube))].join(', ');
    return [
      {
        kind: 'table',
        caption: `Bolt places of design ${designName}, from the panel’s edges`,
        columns: [
          { title: 'Bolt', width: 0.1 },
          { title: 'x', width: 0.18, align: 'right' },
          { title: 'y', width: 0.18, align: 'right' },
          { title: 'Measured from', width: 0.32 },
          { title: own.length > 1 ? 'Tubes under it' : 'Tube under it', width: 0.22 },
        ],
        rows: pattern.places.map(({ x, y, from }, i) => [
          own[0]!.bolts[i]!.id.slice(own[0]!.id.length + 1),
          print.length(x.si),
          print.length(y.si),
          from === 'centre' ? 'centre of the panel' : `edges of ${from.replace(',', ' and')}`,
          tubes(i),
        ]),
      },
    ];
  });
}
