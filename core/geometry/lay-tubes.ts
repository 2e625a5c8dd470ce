import type { Catalogue } from '../catalogue/catalogue.ts';
import type { PlateDocument, TubeSet } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import type { Crossing, Tube } from './geometry.ts';
import type { LengthText } from './length-text.ts';

export interface LaidTubes {
  readonly mainTubes: readonly Tube[];
  readonly crossTubes: readonly Tube[];
  readonly crossings: readonly Crossing[];
}

/**
 * Lays both sets of tubes, sorted by position, with levels, pieces and crossings. m.
 * Ids that the document does not give: A, B, …, Z, AA, … (main) and 1, 2, … (cross), in the order of the list and
 * past ids that are taken; so a tube added with an id of its own, or at the end of the list, renames no other.
 * Refuses a set given twice or not at all, doubled ids, tubes of one set that overlap, and a tube that crosses nothing.
 */
export function layTubes(document: PlateDocument, catalogue: Catalogue, text: LengthText): LaidTubes {
  const { grid } = document;
  const main = nominalTubes(grid.mainTubes, 'main', catalogue);
  const cross = nominalTubes(grid.crossTubes, 'cross', catalogue);
  nameTubes(main, cross);
  const mainLines = withEnds(main, cross, grid.mainTubes).sort(byPosition);
  const crossLines = withEnds(cross, main, grid.crossTubes).sort(byPosition);
  for (const set of [mainLines, crossLines]) refuseOverlaps(set, text);

  const crossings = mainLines.flatMap((m) =>
    crossLines
      .filter((c) => reaches(m, c.at) && reaches(c, m.at))
      .map((c) => ({ id: `${m.id}/${c.id}`, main: m.id, cross: c.id, x: c.at, y: m.at })),
  );
  for (const tube of [...mainLines, ...crossLines])
    if (!crossings.some((c) => c[tube.set] === tube.id))
      throw refusal({
        what: `Tube ${tube.id} crosses no ${tube.set === 'main' ? 'cross' : 'main'} tube, so nothing holds it`,
        where: { path: pathOf(tube.set), tube: tube.id },
        mend: 'Make it long enough to reach a crossing, or take it out.',
      });

  const stacked = grid.arrangement === 'stacked';
  const mainTubes = mainLines.map((t) => finished(t, [[t.from, t.to]], 0));
  const crossTubes = crossLines.map((t) => {
    if (stacked) return finished(t, [[t.from, t.to]], t.section.height);
    const crossed = mainTubes.filter((m) => crossings.some((c) => c.main === m.id && c.cross === t.id));
    return finished(t, piecesBetween(t, crossed), 0);
  });
  return { mainTubes, crossTubes, crossings };
}

/** A tube as the document means it, before it is cut: ends by centre line and overhang. */
type Nominal = { -readonly [K in keyof Omit<Tube, 'bottom' | 'top' | 'pieces'>]: Tube[K] };
type Listed = Omit<Nominal, 'from' | 'to'> & { from: number | undefined; to: number | undefined };

const pathOf = (set: 'main' | 'cross'): string => `grid.${set}Tubes`;
const byPosition = (a: Nominal, b: Nominal): number => a.at - b.at;
/** Ends typed as a tube's centre line must reach it in spite of rounding. */
const touch = 1e-9;
const reaches = (tube: Nominal, at: number): boolean => tube.from <= at + touch && tube.to >= at - touch;

function nominalTubes(set: TubeSet, kind: 'main' | 'cross', catalogue: Catalogue): Listed[] {
  const where = { path: pathOf(kind) };
  const even = set.count !== undefined || set.spacing !== undefined;
  if (even && set.tubes)
    throw refusal({
      what: `The ${kind} tubes are given twice: evenly spaced and one by one`,
      where,
      mend: 'Keep count and spacing, or keep the list of tubes.',
    });
  if (!set.tubes && (set.count === undefined || set.spacing === undefined))
    throw refusal({
      what: `The ${kind} tubes have no positions`,
      where,
      mend: 'Give count and spacing, or a list of tubes with “at”.',
    });
  const same = { set: kind, vent: set.vent?.si ?? null, drain: set.drain?.si ?? null } as const;
  if (!set.tubes) {
    const step = set.spacing!.si;
    const section = catalogue.section(set.section);
    const material = catalogue.material(set.material);
    return Array.from({ length: set.count! }, (_, i) => ({
      ...same,
      id: '',
      section,
      material,
      flooded: set.flooding === 'flooded',
      at: i * step,
      from: undefined,
      to: undefined,
    }));
  }
  return set.tubes.map((tube) => ({
    ...same,
    id: tube.id ?? '',
    section: catalogue.section(tube.section ?? set.section),
    material: catalogue.material(tube.material ?? set.material),
    flooded: (tube.flooding ?? set.flooding) === 'flooded',
    at: tube.at.si,
    from: tube.from?.si,
    to: tube.to?.si,
  }));
}

function nameTubes(main: Listed[], cross: Listed[]): void {
  const taken = new Map<string, Listed>();
  for (const tube of [...main, ...cross]) {
    if (tube.id === '') continue;
    const other = taken.get(tube.id);
    if (other)
      throw refusal({
        what: `Two tubes have the id “${tube.id}”: the ${other.set} tube at ${other.at} m and the ${tube.set} tube at ${tube.at} m`,
        where: { path: pathOf(tube.set), tube: tube.id },
        mend: 'Give each tube an id of its own.',
      });
    taken.set(tube.id, tube);
  }
  for (const [set, name] of [
    [main, letters],
    [cross, String],
  ] as const) {
    let next = 1;
    for (const tube of set) {
      if (tube.id !== '') continue;
      while (taken.has(name(next))) next++;
      tube.id = name(next++);
    }
  }
}

/** 1 → A, 26 → Z, 27 → AA. */
function letters(n: number): string {
  const last = String.fromCharCode(65 + ((n - 1) % 26));
  return n > 26 ? letters(Math.floor((n - 1) / 26)) + last : last;
}

function withEnds(tubes: readonly Listed[], others: readonly Listed[], set: TubeSet): Nominal[] {
  const low = Math.min(...others.map((o) => o.at)) - set.overhang.si;
  const high = Math.max(...others.map((o) => o.at)) + set.overhang.si;
  return tubes.map((tube) => {
    const ended = { ...tube, from: tube.from ?? low, to: tube.to ?? high };
    if (!(ended.to > ended.from))
      throw refusal({
        what: `Tube ${tube.id} ends at ${ended.to} m, before it begins at ${ended.from} m`,
        where: { path: pathOf(tube.set), tube: tube.id },
        mend: 'Give “to” a larger value than “from”.',
      });
    return ended;
  });
}

function refuseOverlaps(tubes: readonly Nominal[], text: LengthText): void {
  for (const [i, a] of tubes.entries())
    for (const b of tubes.slice(i + 1)) {
      const needed = (a.section.width + b.section.width) / 2;
      const apart = b.at - a.at;
      const beside = a.from < b.to - touch && b.from < a.to - touch;
      if (beside && apart < needed - touch)
        throw refusal({
          what: `Tubes ${a.id} and ${b.id} overlap: their centre lines are ${text(apart)} apart, their widths need ${text(needed)}`,
          where: { path: pathOf(a.set), tube: b.id },
          mend: 'Move one of them, or take narrower tubes.',
        });
    }
}

/** Steel of a cross tube that is cut between the faces of the main tubes that it meets. */
function piecesBetween(tube: Nominal, mains: readonly Tube[]): [number, number][] {
  const cuts = mains.map((m) => [m.at - m.section.width / 2, m.at + m.section.width / 2] as const);
  const starts = [tube.from, ...cuts.map(([, high]) => high)];
  const ends = [...cuts.map(([low]) => low), tube.to];
  return starts.map((from, i): [number, number] => [from, ends[i]!]).filter(([from, to]) => to - from > touch);
}

function finished(tube: Nominal, pieces: readonly (readonly [number, number])[], top: number): Tube {
  const [first] = pieces;
  const last = pieces.at(-1);
  if (!first || !last)
    throw refusal({
      what: `Cross tube ${tube.id} has no steel left between the main tubes' faces`,
      where: { path: pathOf(tube.set), tube: tube.id },
      mend: 'Let it reach at least two main tubes, or past one of them.',
    });
  return { ...tube, from: first[0], to: last[1], bottom: top - tube.section.height, top, pieces };
}
