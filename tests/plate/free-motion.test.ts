import { describe, expect, it } from 'vitest';
import { freeMotionView } from '../../core/engine/motion-view.ts';
import { FreeMotion } from '../../core/plate/free-motion.ts';
import type { ReadyPlate } from '../../core/plate/solve-plate.ts';
import { partElements } from '../../core/solve/structure/part-elements.ts';
import { ready, sampleModel, solvedLoading } from './results/support/solved-sample.ts';

function freeOf(plate: ReadyPlate): FreeMotion {
  try {
    solvedLoading(plate, 'service-down', { stage: 'linear' });
  } catch (error) {
    if (error instanceof FreeMotion) return error;
    throw error;
  }
  throw new Error('It was solved');
}

/** How far each panel moves, 1 at the largest. */
function travels(free: FreeMotion): ReadonlyMap<string, number> {
  const { kind, groups } = freeMotionView(free);
  expect(kind).toBe('free');
  const [{ title, shape }] = groups[0]!.motions as [(typeof groups)[number]['motions'][number]];
  expect(title).toBe(free.what);
  return new Map(
    shape.panels.map(({ id, moves }) => [id, moves.reduce((m, value) => Math.max(m, Math.abs(value)), 0)]),
  );
}

describe('a plate of which something moves freely is refused in words, with its motion to be shown', () => {
  const model = sampleModel('small');
  const { structure } = ready(model, 0.3);
  const bolts = structure.ties.filter(({ kind, panel }) => kind === 'bolt' && structure.panels[panel]!.id === 'A1').map(({ id }) => id); // prettier-ignore

  it('a panel without bolts slides', () => {
    const free = freeOf(ready(model, 0.3, new Set(bolts)));
    expect(free.what).toBe('Panel A1 is held by nothing and can slide on its tubes');
    expect(free.all[0]!.mend).toMatch(/two opposite sides/);
    for (const [id, most] of travels(free)) if (id === 'A1') expect(most).toBeGreaterThan(0.5); else expect(most).toBeLessThan(1e-3); // prettier-ignore
  });

  it('a panel on one bolt that does not resist turning turns about it', () => {
    const plate = ready(model, 0.3, new Set(bolts.slice(1)));
    const loose = { ...plate.structure, ties: plate.structure.ties.map((tie) => (tie.id === bolts[0] ? { ...tie, stiffness: { ...tie.stiffness, bending: 0, torsion: 0 } } : tie)) }; // prettier-ignore
    const free = freeOf({ ...plate, structure: loose, elements: partElements(loose).elements });
    expect(free.what).toContain(`Panel A1 is held by 1 bolt and can turn about ${bolts[0]!} (x `);
    expect(travels(free).get('A1')).toBeGreaterThan(0.5);
  });
});
