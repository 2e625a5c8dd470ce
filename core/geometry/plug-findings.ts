import type { Finding } from '../finding.ts';
import type { Inspected } from './findings-of.ts';
import { listed } from './listed.ts';

/** Plug welds that reach past the flat of their tube, where there is nothing to weld to. */
export function plugFindings({ geometry: { panels }, tubes, text }: Inspected): Finding[] {
  return panels.flatMap(({ id: place, plugs }): Finding[] => {
    if (plugs.length === 0) return [];
    const off = plugs.filter(({ x, y, diameter, tube: id }) => {
      const { set, at, section } = tubes.get(id)!;
      const fromAxis = Math.abs((set === 'main' ? y : x) - at);
      return fromAxis + diameter / 2 > section.width / 2 - section.outerRadius + 1e-9;
    });
    if (off.length === 0) return [];
    const on = listed([...new Set(off.map(({ tube }) => tube))]);
    return [
      {
        id: 'plug-off-flat',
        place,
        text: `${off.length} plug welds of panel ${place}, ⌀ ${text(off[0]!.diameter)}, reach past the flat of tube ${on}: they have nothing to weld to there.`,
        mend: 'Take another edge distance, a larger overlap or smaller plugs.',
      },
    ];
  });
}
