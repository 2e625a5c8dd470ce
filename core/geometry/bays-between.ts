import { refusal } from '../refusal.ts';
import type { Bay, Crossing, Rectangle, Tube } from './geometry.ts';

/** A bay with the rectangle of its tubes' centre lines; `openArea` comes with the panels. */
export interface PlainBay extends Omit<Bay, 'openArea'> {
  readonly cell: Rectangle;
}

/**
 * Bays between neighbouring tubes, in the order of the low main tube, then of the low cross tube. From each crossing,
 * the next cross tube along the main tube and the next main tube along the cross tube close a bay if they too cross
 * and are neighbours on the far sides: where a short tube ends inside, there is no bay.
 * Refuses more than 2,500 bays and two bays of one id.
 */
export function baysBetween(
  mainTubes: readonly Tube[],
  crossTubes: readonly Tube[],
  crossings: readonly Crossing[],
): PlainBay[] {
  const nextCross = neighbours(crossings, 'main', 'cross');
  const nextMain = neighbours(
    [...crossings].sort((a, b) => a.y - b.y),
    'cross',
    'main',
  );
  const mains = new Map(mainTubes.map((t) => [t.id, t]));
  const crosses = new Map(crossTubes.map((t) => [t.id, t]));
  const bays: PlainBay[] = [];
  for (const { main: m, cross: c } of crossings) {
    const c2 = nextCross.get(key(m, c));
    const m2 = nextMain.get(key(c, m));
    if (c2 === undefined || m2 === undefined) continue;
    if (nextCross.get(key(m2, c)) !== c2 || nextMain.get(key(c2, m)) !== m2) continue;
    const [low, high, left, right] = [mains.get(m)!, mains.get(m2)!, crosses.get(c)!, crosses.get(c2)!];
    const half = (tube: Tube): number => tube.section.width / 2;
    bays.push({
      id: bayId(m, c),
      main: [m, m2],
      cross: [c, c2],
      opening: {
        x0: left.at + half(left),
        y0: low.at + half(low),
        x1: right.at - half(right),
        y1: high.at - half(high),
      },
      cell: { x0: left.at, y0: low.at, x1: right.at, y1: high.at },
    });
  }
  if (bays.length > limit)
    throw refusal({
      what: `The grid has ${bays.length} bays, more than the ${limit} that are reckoned with`,
      where: { path: 'grid' },
      mend: 'Take fewer tubes.',
    });
  const seen = new Map<string, PlainBay>();
  for (const bay of bays) {
    const other = seen.get(bay.id);
    if (other)
      throw refusal({
        what: `Two bays would be called ${bay.id}: at tubes ${other.main[0]} and ${other.cross[0]}, and at ${bay.main[0]} and ${bay.cross[0]}`,
        where: { path: 'grid', bay: bay.id },
        mend: 'Rename one of these tubes, without a hyphen.',
      });
    seen.set(bay.id, bay);
  }
  return bays;
}

const limit = 2500;

/** Id of the bay at a low main and a low cross tube: "A3"; with a hyphen where the join could be read two ways. */
const bayId = (main: string, cross: string): string =>
  /\p{L}$/u.test(main) && /^\d+$/.test(cross) ? main + cross : `${main}-${cross}`;

const key = (along: string, at: string): string => `${along}\n${at}`;

/** Next tube of the other set along each tube, by tube and crossing. Crossings in order of position. */
function neighbours(
  crossings: readonly Crossing[],
  along: 'main' | 'cross',
  other: 'main' | 'cross',
): Map<string, string> {
  const last = new Map<string, string>();
  const next = new Map<string, string>();
  for (const crossing of crossings) {
    const before = last.get(crossing[along]);
    if (before !== undefined) next.set(key(crossing[along], before), crossing[other]);
    last.set(crossing[along], crossing[other]);
  }
  return next;
}
