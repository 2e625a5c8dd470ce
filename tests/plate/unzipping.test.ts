import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { readDocument } from '../../core/document/read-document.ts';
import type { RawDocument } from '../../core/document/read-document.ts';
import { fixingRows, rowPulls } from '../../core/plate/fixing-rows.ts';
import type { BoltForce, WeldForce } from '../../core/plate/results/fixing-forces.ts';
import { solveCases } from '../../core/plate/solve-cases.ts';
import { readyPlate, solveLoading } from '../../core/plate/solve-plate.ts';
import { unzipping } from '../../core/plate/unzipping.ts';
import { drained } from '../../core/solve/drained.ts';
import { tieForce } from '../../core/solve/structure/tie.ts';

const model = modelOf(readDocument(JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument));
const size = 0.4;
const cases = model.loads.situations.filter((s) => s.loadCase === 'lost bolt row' && s.direction === 'up');
const rows = fixingRows(model);
const pullOver = (F: number) => (force: BoltForce | WeldForce) => force.pull / F;
const start = rows[0]!;
const follow = (F: number) => drained(unzipping(model, { size, start, cases, use: pullOver(F) }));

describe('a row that is lost, followed to its end', () => {
  /** Largest pull of the bolts that are left once the first row is lost, N. */
  const weak = follow(1);
  const after = weak.steps[0]!.worst!.use;

  it('ends at once where the rest is stronger than what it then carries', () => {
    const { steps, off, end, words } = follow(after * 1.01);
    expect(steps).toHaveLength(1);
    expect(steps[0]!.worst!.use).toBeCloseTo(1 / 1.01, 9);
    expect([end, off]).toEqual(['holds', []]);
    expect(words).toMatch(
      new RegExp(`^Without ${start.id}: row ${start.id} is lost.*no panel comes off; the others hold\\.$`),
    );
  });
  it('goes on to the row with the largest use where it does not, on a plate without both', () => {
    const strength = after * 0.99;
    const { steps } = follow(strength);
    expect(steps.length).toBeGreaterThan(1);
    const second = rows.find(({ id }) => id === steps[0]!.worst!.row)!;
    expect(steps[1]!.lost).toContain(second.id);
    // the second state by itself
    const plate = readyPlate(model, { size, without: new Set([...start.parts, ...second.parts]) });
    const [situation] = cases;
    const pulls = situation!.loadings.map((_, loading) => drained(solveLoading(plate, situation!, { loading, variant: 0, stage: 'contact' }))); // prettier-ignore
    const most = Math.max(...pulls.flatMap((solved) => plate.structure.ties.map((tie) => Math.abs(tieForce(tie, solved.answer.u).z)))); // prettier-ignore
    expect(steps[1]!.worst!.use * strength).toBeLessThanOrEqual(most * (1 + 1e-9));
  });
  it('takes a panel off when no row holds it, with its load, and says so', () => {
    // with next to no strength every row goes
    expect(weak.end).toBe('holds');
    expect([...weak.off].sort()).toEqual(model.geometry.panels.map(({ id }) => id).sort());
    expect(weak.words).toMatch(/comes? off/);
    expect(weak.words).toMatch(/no row is left/);
  });
  it('says that it was not followed where a resistance is not known', () => {
    const { end, steps } = drained(unzipping(model, { size, start, cases, use: () => null }));
    expect(end).toBe('not followed');
    expect(steps).toEqual([{ lost: start.id, worst: null }]);
  });
});

describe('losses of all', () => {
  const all = drained(solveCases(model, { size, stage: 'linear', cases: 'service', losses: 'all' }));
  const worst = drained(solveCases(model, { size, stage: 'linear', cases: 'service', losses: true }));
  it('are every row, panel and joint once, among them the worst of each', () => {
    const of = (kind: string) => all.losses.filter((lost) => lost.kind === kind).map(({ id }) => id);
    expect(of('bolt row').sort()).toEqual(rows.map(({ id }) => id).sort());
    expect(of('panel').sort()).toEqual(model.geometry.panels.map(({ id }) => id).sort());
    expect(of('joint').sort()).toEqual(model.geometry.crossings.map(({ id }) => id).sort());
    for (const { kind, id } of worst.losses) expect(of(kind)).toContain(id);
  });
  it('lose the row with the largest sum of pulls as the worst', () => {
    const service = worst.solved.filter(({ situation }) => situation.loadCase === 'service');
    const pulls = rowPulls(worst.plate, service);
    const { id } = worst.losses.find(({ kind }) => kind === 'bolt row')!;
    expect(pulls.get(id)).toBe(Math.max(...pulls.values()));
  });
});
