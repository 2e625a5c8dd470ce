import type { Finding } from '../finding.ts';
import type { Inspected } from './findings-of.ts';
import { listed } from './listed.ts';

/** Plug welds that reach past the flat of their tube, where there is nothing to weld to; and that no S-N class is held for them. */
export function plugFindings({ geometry: { panels }, tubes, text }: Inspected): Finding[] {
  return panels.flatMap(({ id: place, plugs }): Finding[] => {
    if (plugs.length === 0) return [];
    const off = plugs.filter(({ x, y, diameter, tube: id }) => {
      const { set, at, section } = tubes.get(id)!;
      const fromAxis = Math.abs((set === 'main' ? y : x) - at);
      return fromAxis + diameter / 2 > section.width / 2 - section.outerRadius + 1e-9;
    });
    const fatigue: Finding = {
      id: 'plug-weld-fatigue',
      place,
      text: `Panel ${place} has plug welds, for which no S-N class is held: their life under a load that turns round is not judged.`,
      mend: 'Prove them by test, or leave the pull in the plane to the weld of the edge.',
    };
    if (off.length === 0) return [fatigue];
    const on = listed([...new Set(off.map(({ tube }) => tube))]);
    return [
      {
        id: 'plug-off-flat',
        place,
        text: `${off.length} plug welds of panel ${place}, ⌀ ${text(off[0]!.diameter)}, reach past the flat of tube ${on}: they have nothing to weld to there.`,
        mend: 'Take another edge distance, a larger overlap or smaller plugs.',
      },
      fatigue,
    ];
  });
}
