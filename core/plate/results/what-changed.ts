import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { deflections, type Deflections, type RiseAt } from './deflections.ts';
import { deflectionSplit, splitParts, type SplitPart } from './deflection-split.ts';
import { loadPath, type LoadPath } from './load-path.ts';
import { pointOn, type PlatePoint } from './plate-point.ts';

/** One option's plate with one of its loadings solved. */
export interface SolvedOption {
  readonly plate: ReadyPlate;
  readonly solved: SolvedLoading;
}

/** What changed between two options, and which parts it came from, as data: `changeWords` says it. Up is positive, SI. */
export interface WhatChanged {
  /** Largest deflection of each. */
  readonly largest: { readonly before: RiseAt; readonly after: RiseAt };
  /** The largest deflection is at another place: on another part, or further off than a cell. */
  readonly moved: boolean;
  /** Upward force applied in all, N. Not the same: what changed is then the load as well, and no comparison of stiffness. */
  readonly load: { readonly before: number; readonly after: number; readonly same: boolean };
  readonly places: readonly ChangeAtPlace[];
  /** Where a panel dips most between its tubes, whatever these do; null where no panel is carried. */
  readonly dip: { readonly before: PanelDip | null; readonly after: PanelDip | null };
  readonly path: { readonly before: LoadPath; readonly after: LoadPath };
}

/** A panel's dip: its largest rise from the motion of its tubes, m. */
export interface PanelDip {
  readonly panel: string;
  readonly rise: number;
}

/** The change at one place: where the largest deflection is now, then, if that moved, where it was. */
export interface ChangeAtPlace {
  readonly of: 'after' | 'before';
  readonly point: { readonly before: PlatePoint; readonly after: PlatePoint };
  /** How far apart the two meshes' points are, m in plan. */
  readonly apart: number;
  readonly rise: { readonly before: number; readonly after: number };
  /** By kind of part; the changes sum to the change of the rise. */
  readonly parts: Readonly<
    Record<SplitPart, { readonly before: number; readonly after: number; readonly change: number }>
  >;
}

export function whatChanged(before: SolvedOption, after: SolvedOption): WhatChanged {
  const bent = { before: deflections(before.plate, before.solved), after: deflections(after.plate, after.solved) };
  const largest = { before: bent.before.largest, after: bent.after.largest };
  const load = { before: upward(before.solved), after: upward(after.solved) };
  const [p, q] = [largest.before.point, largest.after.point];
  const cell = Math.max(before.plate.size, after.plate.size);
  const moved = p.part !== q.part || p.id !== q.id || Math.hypot(p.x - q.x, p.y - q.y) > cell;
  const size = Math.max(Math.abs(load.before), Math.abs(load.after));
  const now = pointOn(before.plate.structure, q);
  const then = pointOn(after.plate.structure, p);
  const places = [atPlace('after', before, now.point, after, q, now.apart)];
  if (moved) places.push(atPlace('before', before, p, after, then.point, then.apart));
  return {
    largest,
    moved,
    load: { ...load, same: Math.abs(load.after - load.before) <= sameLoad * size },
    places,
    dip: { before: deepest(bent.before), after: deepest(bent.after) },
    path: { before: loadPath(before.plate, before.solved), after: loadPath(after.plate, after.solved) },
  };
}

const deepest = ({ panels }: Deflections): PanelDip | null =>
  panels.reduce<PanelDip | null>((most, { id, dip }) => (dip && (!most || Math.abs(dip.rise) > Math.abs(most.rise)) ? { panel: id, rise: dip.rise } : most), null); // prettier-ignore

/** Loads closer than this, as a part, are one: rounding of pressures times areas. */
const sameLoad = 1e-6;

const upward = ({ applied }: SolvedLoading): number =>
  applied.reduce((sum, value, i) => (i % 6 === 2 ? sum + value : sum), 0);

function atPlace(
  of: 'after' | 'before',
  before: SolvedOption,
  p: PlatePoint,
  after: SolvedOption,
  q: PlatePoint,
  apart: number,
): ChangeAtPlace {
  const [was, is] = [deflectionSplit(before.plate, before.solved, p), deflectionSplit(after.plate, after.solved, q)];
  return {
    of,
    point: { before: p, after: q },
    apart,
    rise: { before: was.rise, after: is.rise },
    parts: Object.fromEntries(
      splitParts.map((part) => {
        const [b, a] = [was.parts[part], is.parts[part]];
        return [part, { before: b, after: a, change: a - b }];
      }),
    ) as ChangeAtPlace['parts'],
  };
}
