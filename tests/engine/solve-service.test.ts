import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import { createSolveService, type FromSolver, type SolveSubject } from '../../core/engine/solve-service.ts';

const small = readDocumentText(readFileSync(new URL('../../samples/small.stillplate.json', import.meta.url), 'utf8'));

/** A service whose slices run when asked. */
function started() {
  const news: FromSolver[] = [];
  const waiting: (() => void)[] = [];
  const hear = createSolveService({ tell: (item) => news.push(item), later: (goOn) => waiting.push(goOn) });
  const step = () => waiting.shift()?.();
  const rest = () => {
    while (waiting.length > 0) step();
  };
  const of = <K extends FromSolver['kind']>(kind: K) =>
    news.filter((item): item is Extract<FromSolver, { kind: K }> => item.kind === kind);
  return { hear, news, step, rest, of };
}

const subject = (edit: number, raw: RawDocument = small): SolveSubject => ({ edit, raw, option: null });

it('solves linear first, then contact, and every number and node of what it tells is finite', () => {
  const { hear, rest, of } = started();
  hear({ kind: 'solve', subject: subject(7) });
  rest();
  const sets = of('set').map(({ set }) => set);
  expect(sets.map(({ name, edit }) => [name, edit])).toEqual([
    ['linear', 7],
    ['contact', 7],
  ]);
  for (const { views } of sets) {
    expect(views.length).toBeGreaterThan(1);
    for (const { numbers, shape, fields, tubes, settled, readings } of views) {
      expect(settled).toBe(true);
      expect(numbers.every(({ solver, hand }) => Number.isFinite(solver) && (hand === null || Number.isFinite(hand)))).toBe(true); // prettier-ignore
      for (const { places, moves, turns, cells } of shape.panels) {
        for (const list of [places, moves, turns]) expect(list.every(Number.isFinite)).toBe(true);
        expect(Math.max(...cells)).toBe(places.length / 3 - 1);
      }
      for (const panel of fields.panels)
        for (const list of Object.values(panel)) expect(list.every(Number.isFinite)).toBe(true);
      for (const { at, moment, shear, rise } of tubes)
        for (const list of [at, moment, shear, rise]) expect(list.every(Number.isFinite)).toBe(true);
      expect(readings.map(({ id }) => id)).toContain('solver-deflection');
      for (const { values } of readings) for (const value of values.values()) expect(value).toBeGreaterThanOrEqual(0);
    }
  }
  expect(of('idle')).toEqual([{ kind: 'idle', edit: 7, cancelled: false }]);
});

it('drops a state when a newer one comes between two slices, and tells nothing of the old one after it', () => {
  const { hear, news, step, rest, of } = started();
  hear({ kind: 'solve', subject: subject(1) });
  step();
  step();
  const before = news.length;
  hear({ kind: 'solve', subject: subject(2) });
  rest();
  expect(news.slice(before).every((item) => 'edit' in item ? item.edit === 2 : item.kind === 'set' && item.set.edit === 2)).toBe(true); // prettier-ignore
  expect(of('set').map(({ set }) => set.edit)).toEqual([2, 2]);
});

it('cancels between two slices and solves again when asked', () => {
  const { hear, step, rest, of } = started();
  hear({ kind: 'solve', subject: subject(1) });
  step();
  hear({ kind: 'cancel' });
  rest();
  expect(of('set')).toEqual([]);
  expect(of('idle')).toEqual([{ kind: 'idle', edit: 1, cancelled: true }]);
  hear({ kind: 'solve', subject: subject(2) });
  rest();
  expect(of('set').map(({ set }) => set.name)).toEqual(['linear', 'contact']);
});

it('gives the tables of a loading shown, and says what is missing for one that is not solved', () => {
  const { hear, rest, of } = started();
  hear({ kind: 'solve', subject: subject(1) });
  rest();
  hear({ kind: 'tables', set: 'contact', loading: 0 });
  expect(of('tables')[0]!.tables.map(({ name }) => name)).toEqual(expect.arrayContaining(['nodes.csv', 'tubes.csv']));
  hear({ kind: 'tables', set: 'losses', loading: 0 });
  expect(of('refused')[0]!.refusals[0]!.mend).toMatch(/solved/);
});

it('hands a document that cannot be read back as what is wrong and how to mend it', () => {
  const { hear, rest, of } = started();
  hear({ kind: 'solve', subject: subject(1, { ...small, water: { depth: 'deep' } } as RawDocument) });
  rest();
  expect(of('set')).toEqual([]);
  expect(of('refused')[0]!.refusals[0]).toMatchObject({ what: expect.any(String), mend: expect.any(String) });
});
