import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import { createEngine } from '../../core/engine/engine.ts';
import type { EngineNews } from '../../core/engine/messages.ts';
import { createSolveService, type FromSolver } from '../../core/engine/solve-service.ts';
import { solvedAlike } from '../checks/solved-alike.ts';

const small = readDocumentText(readFileSync(new URL('../../samples/small.stillplate.json', import.meta.url), 'utf8'));
/** Without panels it is solved in a moment. */
const asking: RawDocument = { ...small, panels: {}, options: [], chosen: null, forces: { from: 'hand and solver' } };

function started(raw: RawDocument) {
  const news: EngineNews[] = [];
  const engine = createEngine({ tell: (item) => news.push(item), later: () => undefined });
  engine.open({ text: JSON.stringify(raw), journal: [] });
  const result = () => news.filter((item) => item.kind === 'result').at(-1)!.view;
  const tube = () =>
    result().rows.find(({ id, situation }) => id === 'tube-bending' && situation?.startsWith('service'))!;
  return { engine, result, tube };
}

/** What the solver's thread tells of a state of the document. */
function forcesOf(raw: RawDocument, edit: number) {
  const news: FromSolver[] = [];
  const waiting: (() => void)[] = [];
  const hear = createSolveService({ tell: (item) => news.push(item), later: (goOn) => waiting.push(goOn) });
  hear({ kind: 'solve', subject: { edit, raw, option: null } });
  while (waiting.length > 0) waiting.shift()!();
  return news.filter((item) => item.kind === 'forces');
}

it('waits with its verdict until the solver has answered, then tells both demands, and waits again after an edit', () => {
  const { engine, result, tube } = started(asking);
  expect(result().forces).toMatchObject({ from: 'waiting', why: 'the plate is not solved yet as one structure' });
  expect(tube().verdict).toBe('cannot be judged');
  expect(tube().both!.hand.use).not.toBe('–');

  const [told] = forcesOf(asking, 3);
  expect([told!.edit, told!.option]).toEqual([3, null]);
  engine.solved({ option: told!.option, forces: told!.forces });
  expect(result().forces.from).toBe('both');
  expect(tube().verdict).toBe('passes');
  expect(tube().both!.hand.demand).not.toBe('–');
  expect(tube().both!.solver.demand).not.toBe('–');
  const larger = Math.max(...[tube().both!.hand, tube().both!.solver].map(({ use }) => Number(use)));
  expect(tube().utilisation).toBeCloseTo(larger, 1);

  engine.edit({ edit: { kind: 'setField', option: null, path: ['loads', 'service', 'force'], value: '7 kN' } });
  expect(result().forces).toMatchObject({ from: 'waiting', why: expect.stringMatching(/before a change/) as unknown });
  expect(tube().verdict).toBe('cannot be judged');
  // what the plate is called changes no force
  engine.undo(null);
  expect(result().forces.from).toBe('both');
  engine.edit({ edit: { kind: 'setField', option: null, path: ['project', 'name'], value: 'Another name' } });
  expect(result().forces.from).toBe('both');
});

it('takes a choice of the smaller as an edit, and forgets all forces with its document', () => {
  const { engine, result, tube } = started(asking);
  const { model } = appraise(asking, readDocument(asking), null);
  const forces = solvedAlike(model, (one) => ({
    ...one,
    tubes: Object.fromEntries(Object.entries(one.tubes).map(([id, of]) => [id, { ...of, M: 3 * of.M }])),
  }));
  engine.solved({ option: null, forces });
  expect(tube().both!.governs).toBe('solver');
  const choice = { check: 'tube-bending', place: tube().place, take: 'hand', reason: 'measured' };
  engine.edit({ edit: { kind: 'setField', option: null, path: ['forces', 'choose'], value: [choice] } });
  const chosen = result().rows.find(({ id, place, both }) => id === 'tube-bending' && place === choice.place && both)!;
  expect([chosen.both!.governs, chosen.both!.smaller]).toEqual(['hand', 'measured']);
  expect(result().forces.smaller).toBeGreaterThan(0);
  expect(result().findings.some(({ id }) => id === 'smaller-demand')).toBe(true);

  engine.open({ text: JSON.stringify(asking), journal: [] });
  expect(result().forces).toMatchObject({ from: 'waiting', why: 'the plate is not solved yet as one structure' });
});

it('solves nothing more where the document takes its forces by hand', () => {
  expect(forcesOf({ ...asking, forces: { from: 'hand' } }, 1)).toEqual([]);
});
