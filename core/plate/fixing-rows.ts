import type { Model } from '../model.ts';
import type { ReadyPlate, SolvedLoading } from './solve-plate.ts';
import { fixingForces } from './results/fixing-forces.ts';

/** A row of bolts (by panel, tube and side) or a side of weld: what is lost together. */
export interface FixingRow {
  readonly kind: 'bolt row' | 'weld side';
  /** “A1 mainLow”, or “A1 inner B” on a tube between its bays. */
  readonly id: string;
  readonly panel: string;
  /** Ids of its bolts, or of the weld, as the mesh leaves them out. */
  readonly parts: readonly string[];
}

/** Every row of bolts and side of weld of the panels that are there, in the order of the panels. */
export function fixingRows({ geometry }: Model): FixingRow[] {
  return geometry.panels.flatMap((panel): FixingRow[] => {
    if (panel.design.fixing.kind === 'welded') {
      const sides = [...new Set(panel.weldRuns.map(({ side }) => `${panel.id} ${side}`))];
      return sides.map((id) => ({ kind: 'weld side', id, panel: panel.id, parts: [id] }));
    }
    const rows = new Map<string, string[]>();
    for (const bolt of panel.bolts) {
      const id = `${panel.id} ${bolt.inner ? `inner ${bolt.tube}` : bolt.side}`;
      rows.set(id, [...(rows.get(id) ?? []), bolt.id]);
    }
    return [...rows].map(([id, parts]) => ({ kind: 'bolt row', id, panel: panel.id, parts }));
  });
}

/** Largest sum of pulls of each row over several solved loadings, N, by id. */
export function rowPulls(plate: ReadyPlate, solved: readonly SolvedLoading[]): Map<string, number> {
  const rowOf = new Map(fixingRows(plate.model).flatMap(({ id, parts }) => parts.map((part) => [part, id] as const)));
  const most = new Map<string, number>();
  for (const one of solved) {
    const { bolts, welds } = fixingForces(plate, one);
    const own = new Map<string, number>();
    const add = (part: string, force: number): void => {
      const row = rowOf.get(part)!;
      own.set(row, (own.get(row) ?? 0) + Math.max(force, 0));
    };
    for (const { id, pull } of bolts) add(id, pull);
    for (const { id, pull, length } of welds) add(id, pull * length);
    for (const [row, sum] of own) most.set(row, Math.max(most.get(row) ?? 0, sum));
  }
  return most;
}
