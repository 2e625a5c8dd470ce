import { expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { boltTension } from '../../core/checks/bolt-tension.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { solvedForcesOf } from '../../core/plate/solved-forces-of.ts';
import { drained } from '../../core/solve/drained.ts';
import { demoDocument } from '../geometry/demo-document.ts';

/** One panel, few bolts: what the whole plate makes of them. */
const one = { panels: { A1: null, A3: null, B1: null, B3: null, A2: 'deck' }, forces: { from: 'hand and solver' } };
const lines = { designs: { deck: { fixing: { pitch: '0.65 m' } } } };
const on = (places: readonly object[]) => ({
  designs: { deck: { fixing: { places, pitch: null, edgeDistance: null } } },
});

const corners = ['low x, low y', 'high x, low y', 'high x, high y', 'low x, high y'].map((from) => ({ x: '30 mm', y: '30 mm', from })); // prettier-ignore

it('gives the same solution of the whole plate where the list is the lines, and judges by it', () => {
  const byLines = modelOf(demoDocument(one, lines));
  const { bolts, outline } = byLines.panels.get('A2')!;
  const places = bolts.map(({ x, y }) => ({ x: `${1000 * (x - outline.x0)} mm`, y: `${1000 * (y - outline.y0)} mm` }));
  const listed = modelOf(demoDocument(one, on(places)));
  const [a, b] = [drained(solvedForcesOf(byLines)), drained(solvedForcesOf(listed))];
  for (const id of ['service-up', 'service-down']) {
    const [p, q] = [a.situations[id]!.panels['A2']!, b.situations[id]!.panels['A2']!];
    expect(q.pull!.force / p.pull!.force).toBeCloseTo(1, 6);
    expect(q.shear!.force / p.shear!.force).toBeCloseTo(1, 6);
    expect(q.dip! / p.dip!).toBeCloseTo(1, 6);
  }
  const both = modelOf(demoDocument(one, on(places)), b);
  const row = checkRows(boltTension, both).rows.find(({ situation }) => situation === 'service-up')!;
  expect(row.both!.solver.demand).toBeCloseTo(b.situations['service-up']!.panels['A2']!.pull!.force, 6);
}, 300_000);

it('puts each bolt on a node of its own place: moved from the middle of its side it does as its mirror image, and the worst bolt carries more', () => {
  const moved = (x: string) => modelOf(demoDocument(one, on([...corners, { x, y: '30 mm' }, { x, y: '30 mm', from: 'low x, high y' }, { x: '30 mm', y: '635 mm' }, { x: '30 mm', y: '635 mm', from: 'high x, low y' }]))); // prettier-ignore
  const pulls = ['535 mm', '300 mm', '770 mm'].map((x) => drained(solvedForcesOf(moved(x))).situations['service-up']!.panels['A2']!.pull!.force); // prettier-ignore
  // The panel lies in the middle of its grid, which is symmetric: a bolt moved one way does as one moved the other, and worse than in the middle.
  expect(pulls[1]! / pulls[2]!).toBeCloseTo(1, 6);
  expect(pulls[1]!).toBeGreaterThan(pulls[0]!);
}, 300_000);

it('stands bolts that a micrometre or a tenth of a millimetre parts as if they were in line, and not on a sliver', () => {
  const pull = (off: number): number => {
    const pairs = [200, 540, 880].flatMap((x) => [{ x: `${x} mm`, y: '30 mm' }, { x: `${x + off} mm`, y: '30 mm', from: 'low x, high y' }]); // prettier-ignore
    const ends = [400, 860].flatMap((y) => [{ x: '30 mm', y: `${y} mm` }, { x: '30 mm', y: `${y + off} mm`, from: 'high x, low y' }]); // prettier-ignore
    return drained(solvedForcesOf(modelOf(demoDocument(one, on([...corners, ...pairs, ...ends]))))).situations['service-up']!.panels['A2']!.pull!.force; // prettier-ignore
  };
  const inLine = pull(0);
  for (const off of [0.001, 0.09, 0.2]) expect(pull(off) / inLine, `${off} mm`).toBeCloseTo(1, 2);
  expect(pull(0.001) / inLine).toBeCloseTo(1, 6);
}, 300_000);
