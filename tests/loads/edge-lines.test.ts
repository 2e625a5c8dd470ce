import { expect, it } from 'vitest';
import { edgeLines, type EdgeLine } from '../../core/loads/edge-lines.ts';
import { planShares } from '../../core/loads/plan-shares.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { loadedPlate } from './loaded-plate.ts';

const linesOf = (...changes: unknown[]) => {
  const { geometry } = loadedPlate(demoDocument(...changes));
  const { fields, tubes } = planShares(geometry, ({ x0, x1, y0, y1 }) => (x1 - x0) * (y1 - y0));
  const bay = (id: string) => geometry.bays.find((b) => b.id === id)!;
  return {
    tubes,
    fields: fields.map((field) => ({ ...field, ...edgeLines(field, tubes, bay(field.bay)) })),
    index: (id: string) => tubes.findIndex((t) => t.id === id),
  };
};
const force = (lines: readonly EdgeLine[]): number =>
  lines.reduce((sum, { from, to, first, last }) => sum + ((first + last) / 2) * (to - from), 0);

it.each([
  ['four sides', {}],
  ['main tubes', { designs: { deck: { support: 'main tubes' } } }],
  ['cross tubes', { designs: { deck: { support: 'cross tubes' } } }],
])('hands all of a field to its tubes when held on %s', (_, over) => {
  for (const { area, pressed, pulled } of linesOf(over).fields) {
    expect(force(pressed)).toBeCloseTo(area, 12);
    expect(force(pulled)).toBeCloseTo(area, 12);
  }
});

it('parts a field held on four sides at 45°: s²/4 to each short side (common practice for two-way plates, no source)', () => {
  const { fields, index } = linesOf({ grid: { crossTubes: { spacing: '0.9 m' } }, designs: { deck: { holes: [] } } });
  const { outline, pressed } = fields.find(({ bay }) => bay === 'A1')!;
  const [a, b] = [outline.x1 - outline.x0, outline.y1 - outline.y0];
  expect(a).toBeLessThan(b);
  for (const id of ['A', 'B'])
    expect(force(pressed.filter(({ tube }) => tube === index(id)))).toBeCloseTo(a ** 2 / 4, 12);
  for (const id of ['1', '2'])
    expect(force(pressed.filter(({ tube }) => tube === index(id)))).toBeCloseTo((a * b) / 2 - a ** 2 / 4, 12);
  expect(Math.max(...pressed.flatMap(({ first, last }) => [first, last]))).toBeCloseTo(a / 2, 12);
});

it('bears where the flat of the tube begins and hangs on the bolts, on the side of the panel', () => {
  const { fields, tubes, index } = linesOf();
  const { pressed, pulled, panel } = fields.find(({ bay }) => bay === 'A1')!;
  const { width, outerRadius } = tubes[0]!.section;
  for (const [id, inward] of [['A', 1], ['B', -1], ['1', 1], ['2', -1]] as const) {
    const at = (lines: readonly EdgeLine[]) => lines.filter(({ tube }) => tube === index(id)).map(({ offset }) => offset);
    for (const offset of at(pressed)) expect(offset).toBeCloseTo(inward * (width / 2 - outerRadius), 12);
    // lap 60 mm, bolts 30 mm from the edge: 30 mm from the tube's face
    for (const offset of at(pulled)) expect(offset).toBeCloseTo(inward * (width / 2 - 0.03), 9);
    expect(at(pulled).length).toBeGreaterThan(0);
  } // prettier-ignore
  expect(panel.bolts.every(({ fromFace }) => Math.abs(fromFace - 0.03) < 1e-9)).toBe(true);
});

it('hangs a welded panel of two bays on its outer tubes only, and presses it on the inner one too', () => {
  const { fields, index } = linesOf(
    { designs: { deck: { fixing: null } }, panels: { A1: null, B1: null, 'A1:B1': 'deck' } },
    { designs: { deck: { fixing: { kind: 'welded', throat: '5 mm', pattern: 'all round' } } } },
  );
  const own = fields.filter(({ panel }) => panel.id === 'A1:B1');
  expect(own.length).toBe(2);
  const on = (lines: readonly EdgeLine[]): number => force(lines.filter(({ tube }) => tube === index('B')));
  expect(own.reduce((sum, { pulled }) => sum + on(pulled), 0)).toBe(0);
  expect(own.reduce((sum, { pressed }) => sum + on(pressed), 0)).toBeGreaterThan(0);
  for (const { pulled, area } of own) expect(force(pulled)).toBeCloseTo(area, 12);
});
