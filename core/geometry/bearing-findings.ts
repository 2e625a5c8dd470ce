import type { Finding } from '../finding.ts';
import type { Bearing, Panel } from './geometry.ts';
import type { Inspected } from './findings-of.ts';
import { commonArea } from './plan-areas.ts';

/** Panels that do not bear as their design says, lap past a tube, or run into each other; welds that cannot go all round. */
export function bearingFindings({ geometry: { panels }, tubes, text }: Inspected): Finding[] {
  const onPanels = panels.flatMap((panel): Finding[] => {
    const { id: place, design, bearings } = panel;
    const findings: Finding[] = [];
    const reliedOn = bearings.filter(
      ({ side }) =>
        design.support === 'four sides' || side.startsWith(design.support === 'main tubes' ? 'main' : 'cross'),
    );
    const bare = reliedOn.filter((b) => !b.fixed || b.flatLap <= 0);
    if (bare.length > 0)
      findings.push({
        id: 'panel-does-not-bear',
        place,
        text: `Panel ${place} is said to bear on ${design.support}, but ${bare.map(why).join('; ')}.`,
        mend: 'Lap it past the corner radius of tubes at its level, or state the support that it has.',
      });
    const past = bearings.filter((b) => b.lap > tubes.get(b.tube)!.section.width + 1e-9);
    if (past.length > 0)
      findings.push({
        id: 'overlap-past-tube',
        place,
        text: `Panel ${place} laps past ${past.map((b) => `tube ${b.tube}: ${text(b.lap)} onto a width of ${text(tubes.get(b.tube)!.section.width)}`).join('; ')}.`,
        mend: 'Take a smaller overlap.',
      });
    const { fixing } = design;
    if (fixing.kind === 'welded' && fixing.pattern === 'all round' && bearings.some((b) => !b.fixed))
      findings.push({
        id: 'weld-not-all-round',
        place,
        text: `Panel ${place} is to be welded all round, but it meets no tube along ${bearings
          .filter((b) => !b.fixed)
          .map((b) => b.tube)
          .join(', ')}: ${bearings.filter((b) => b.fixed).length} sides are welded.`,
        mend: 'State “two sides”, or give it a tube at its level along each side.',
      });
    if (fixing.kind === 'welded' && fixing.pattern === 'intermittent')
      findings.push({
        id: 'intermittent-weld-in-water',
        place,
        text: `Panel ${place} has an intermittent weld; EN 1993-1-8:2005, 4.3.2 does not allow it where it can corrode.`,
        mend: 'Weld all round or along two sides without gaps.',
      });
    return findings;

    function why({ tube, lap, flatLap, level, fixed }: Bearing): string {
      if (!level) return `tube ${tube} lies at another level`;
      if (!fixed) return `it has no overlap on tube ${tube}`;
      return `on tube ${tube} its overlap of ${text(lap)} ends ${flatLap === 0 ? 'where' : `${text(-flatLap)} before`} the flat begins (corner radius ${text(tubes.get(tube)!.section.outerRadius)})`;
    }
  });
  return [...onPanels, ...collisions(panels, text)];
}

function collisions(panels: readonly Panel[], text: Inspected['text']): Finding[] {
  const findings: Finding[] = [];
  const byX = [...panels].sort((a, b) => a.outline.x0 - b.outline.x0);
  byX.forEach((a, i) => {
    for (let j = i + 1; j < byX.length && byX[j]!.outline.x0 < a.outline.x1 - touch; j++) {
      const b = byX[j]!;
      const deep = [
        Math.min(a.outline.x1, b.outline.x1) - Math.max(a.outline.x0, b.outline.x0),
        Math.min(a.outline.y1, b.outline.y1) - Math.max(a.outline.y0, b.outline.y0),
        Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom),
      ];
      if (Math.min(...deep) <= touch || commonArea(a, b) <= touch) continue;
      findings.push({
        id: 'panels-collide',
        place: a.id,
        text: `Panels ${a.id} and ${b.id} lie in the same place: they overlap by ${text(deep[0]!)} along x and ${text(deep[1]!)} along y on their ${a.design.side}.`,
        mend: 'Take overlaps that together stay below the width of the shared tube, or notch the corners.',
      });
    }
  });
  return findings;
}

/** Panels that touch without overlap do not collide, in spite of rounding; m, m². */
const touch = 1e-9;
