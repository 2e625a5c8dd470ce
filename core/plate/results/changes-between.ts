import { csvTable } from '../../quantity/csv-table.ts';
import type { SolvedCases } from '../solve-cases.ts';
import { splitParts } from './deflection-split.ts';
import type { SolverTable } from './solver-tables.ts';
import { whatChanged, type WhatChanged } from './what-changed.ts';

/** What changed under one loading that both options have. */
export interface LoadingChange {
  readonly situation: string;
  readonly title: string;
  readonly loading: string;
  readonly variant: number;
  readonly changed: WhatChanged;
}

/** Every loading of the whole plate that was solved for both options, in the order of the second. */
export function changesBetween(before: SolvedCases, after: SolvedCases): LoadingChange[] {
  return after.solved.flatMap((solved) => {
    const { situation, loading, variant } = solved;
    const same = before.solved.find((one) => one.situation.id === situation.id && one.loading === loading && one.variant === variant); // prettier-ignore
    if (!same) return [];
    const changed = whatChanged({ plate: before.plate, solved: same }, { plate: after.plate, solved });
    return [{ situation: situation.id, title: situation.title, loading, variant, changed }];
  });
}

/** The same as a file: a line for each part of the rise at each place, and for the rise itself, SI. */
export function changesTable(changes: readonly LoadingChange[]): SolverTable {
  const rows = changes.flatMap(({ situation, loading, variant, changed }) =>
    changed.places.flatMap(({ of, point, rise, parts }) => {
      const place = of === 'after' ? point.after : point.before;
      const own = [situation, loading, variant + 1, `where it is largest ${of === 'after' ? 'now' : 'before'}`, `${place.part} ${place.id}`, place.x, place.y]; // prettier-ignore
      return [
        [...own, 'rise', rise.before, rise.after, rise.after - rise.before],
        ...splitParts.map((part) => [...own, part, parts[part].before, parts[part].after, parts[part].change]),
      ];
    }),
  );
  const head = ['load case', 'loading', 'variant', 'place', 'part of the plate', 'x [m]', 'y [m]', 'from', 'before [m]', 'now [m]', 'change [m]']; // prettier-ignore
  return { name: 'what-changed.csv', text: csvTable(head, rows) };
}
