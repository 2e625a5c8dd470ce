import type { Finding } from '../finding.ts';
import type { Inspected } from './findings-of.ts';
import type { Tube } from './geometry.ts';
import { listed } from './listed.ts';

/** Flooded tubes that keep air or water for want of a hole, and tubes that end inside a crossing. */
export function tubeFindings(inspected: Inspected): Finding[] {
  return [...withoutHoles(inspected), ...shortEnds(inspected)];
}

function withoutHoles({ geometry: { mainTubes, crossTubes } }: Inspected): Finding[] {
  return (
    [
      ['main', mainTubes],
      ['cross', crossTubes],
    ] as const
  ).flatMap(([set, tubes]) =>
    (['vent', 'drain'] as const).flatMap((hole): Finding[] => {
      const without = tubes.filter((tube) => tube.flooded && tube[hole] === null);
      if (without.length === 0) return [];
      const pieces = without.reduce((n, tube) => n + tube.pieces.length, 0);
      return [
        {
          id: `tube-without-${hole}`,
          place: `grid.${set}Tubes.${hole}`,
          text: `The flooded ${set} tubes ${listed(without.map((tube) => tube.id))} have no ${hole} hole: ${hole === 'vent' ? 'air stays in at the high point, and they do not flood' : 'water stays in at the low point when the plate is lifted out'}.`,
          mend: `State the ${hole} hole; each of the ${pieces} pieces needs one.`,
        },
      ];
    }),
  );
}

/** A through tube should cover the whole width of each tube that it crosses; a cross tube let in ends at the face anyway. */
function shortEnds({ geometry: { crossings, arrangement }, tubes, text }: Inspected): Finding[] {
  const worst = new Map<string, { other: Tube; missing: number }>();
  for (const crossing of crossings)
    for (const [tube, other] of [
      [tubes.get(crossing.main)!, tubes.get(crossing.cross)!],
      [tubes.get(crossing.cross)!, tubes.get(crossing.main)!],
    ] as const) {
      if (arrangement === 'flush' && tube.set === 'cross') continue;
      const half = other.section.width / 2;
      const missing = Math.max(tube.from - (other.at - half), other.at + half - tube.to);
      if (missing > 1e-9 && missing > (worst.get(tube.id)?.missing ?? 0)) worst.set(tube.id, { other, missing });
    }
  return [...worst].map(([place, { other, missing }]) => ({
    id: 'tube-ends-in-crossing',
    place,
    text: `Tube ${place} ends ${text(missing)} before the far face of tube ${other.id}: the weld of that crossing does not go all round.`,
    mend: `Take an overhang of at least ${text(other.section.width / 2)}.`,
  }));
}
