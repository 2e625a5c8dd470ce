import { expect, it } from 'vitest';
import { bolts } from '../../core/catalogue/bolts.ts';
import { boltAccess, leastRoom } from '../../core/checks/bolt-access.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { socketDiameter, spannerRooms } from '../../core/geometry/spanner-room.ts';
import { drawingSection } from '../../core/note/drawing-section.ts';
import type { Figure } from '../../core/note/note.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const bolted = (fixing: object, more: object = {}) => demoModel({ designs: { deck: { fixing, ...more } } });
const roomsOf = (model: ReturnType<typeof demoModel>) => spannerRooms(model.geometry, model.document, model.catalogue);

it.each([
  [13, 19],
  [16, 24],
  [17, 25.5],
  [19, 28],
  [24, 34.5],
  [30, 42],
  [36, 50],
])(
  'covers the socket of DIN 3124 for %d mm across flats, ⌀ %f mm (from memory), with 4 mm to spare at the most',
  (s, D) => {
    const { D_s, r_s } = valuesGiven(boltAccess, 'partial factors', { s_h: s, c_5: 5, c_1: 1 });
    expect(D_s! - D).toBeGreaterThanOrEqual(0);
    expect(D_s! - D).toBeLessThan(4);
    expect(r_s).toBe(D_s! / 2 + 1);
    expect(socketDiameter(s / 1e3)).toBeCloseTo(D_s! / 1e3, 12);
  },
);

it('lies between half across corners and twice the flats for every bolt held', () => {
  for (const { headAcrossFlats, headAcrossCorners } of bolts) {
    const given = { s_h: headAcrossFlats, e_h: headAcrossCorners, c_5: 0.005, c_1: 0.001 };
    const { r_s, r_low, r_high } = valuesGiven(boltAccess, 'allowable stress', given);
    expect(r_s).toBeGreaterThan(r_low!);
    expect(r_s).toBeLessThan(r_high!);
  }
});

it('bolts in a row leave a pitch less half a head: M12 at about 40 mm', () => {
  const model = bolted({ pitch: '40 mm', edgeDistance: '25 mm', bolt: 'M12' });
  const own = model.panels.get('A1')!.bolts;
  const nearest = Math.min(
    ...own.flatMap((a) => own.filter((b) => b !== a).map((b) => Math.hypot(a.x - b.x, a.y - b.y))),
  );
  expect(leastRoom(model, 'A1')!.room).toBeCloseTo(nearest - 0.02003 / 2, 9);
  // 1.3 · 18 + 5 = 28.4 mm: 15.2 mm with its play
  expect(checkRows(boltAccess, model).rows[0]).toMatchObject({ verdict: 'passes' });
  const tight = checkRows(boltAccess, bolted({ pitch: '25 mm', edgeDistance: '25 mm', bolt: 'M12' })).rows[0]!;
  expect(tight).toMatchObject({ verdict: 'fails' });
});

it('the nut of a through-bolt under a stacked cross tube has the side of the main tube beside it', () => {
  const model = demoModel({
    grid: { arrangement: 'stacked' },
    designs: { deck: { support: 'cross tubes', fixing: { into: 'through-bolt with sleeve' } } },
  });
  const rooms = roomsOf(model);
  for (const { id, y } of model.geometry.panels.flatMap(({ bolts }) => bolts)) {
    const { room, end, beside } = rooms.get(id)!;
    if (!beside.startsWith('tube')) continue;
    expect(end).toBe('nut');
    const main = model.tubes.get(beside.slice(5))!;
    expect(main.set).toBe('main');
    expect(room).toBeCloseTo(Math.max(0, Math.abs(y - main.at) - main.section.width / 2), 9);
  }
  expect([...rooms.values()].some(({ beside }) => beside.startsWith('tube'))).toBe(true);
  const inside = bolted({ into: 'tapped pad' });
  expect([...roomsOf(inside).values()].every(({ end }) => end === 'head')).toBe(true);
});

it('a panel of the other side that laps over the same tube stands beside the nut: 100 mm of lap leave 20 mm (by hand)', () => {
  const through = { into: 'through-bolt with sleeve' };
  const under = {
    ...{ side: 'underside', thickness: '10 mm', material: 'S355 plate', support: 'four sides', holes: [] },
    overlap: { onMain: '100 mm', onCross: '60 mm' },
    fixing: {
      ...{ kind: 'bolted', bolt: 'M12', class: '8.8', pitch: '200 mm', edgeDistance: '30 mm', shear: 'clearance' },
      ...through,
    },
  };
  const model = demoModel({ designs: { deck: { fixing: through }, under }, panels: { B1: 'under' } });
  const tube = model.tubes.get('B')!;
  const own = model.panels.get('A1')!.bolts.filter(({ side }) => side === 'mainHigh');
  expect(own.length).toBeGreaterThan(2);
  // The bolt 45 mm below the tube's middle, the panel's edge 25 mm below it.
  expect(own[0]!.y - tube.at).toBeCloseTo(-0.045, 9);
  const rooms = roomsOf(model);
  for (const { id } of own.slice(1, -1)) expect(rooms.get(id)).toEqual({ bolt: id, room: expect.closeTo(0.02, 9), end: 'nut', beside: 'panel B1' }); // prettier-ignore
});

it('reads its sizes from the catalogue, and leaves a welded panel alone', () => {
  const model = bolted({ bolt: 'M16' });
  expect(reads(boltAccess, 's_h', model, 'A1')).toBe(0.024);
  expect(reads(boltAccess, 'e_h', model, 'A1')).toBe(0.02675);
  expect(boltAccess.applies(demoModel(welded()), 'A1', situationOf(model))).toMatch(/welded/);
});

it('draws the socket over the bolt with the least room, and says what stands beside it', () => {
  const model = bolted({ bolt: 'M16' });
  const figure = drawingSection(model).blocks.filter((block): block is Figure => block.kind === 'figure')[1]!;
  const tools = figure.shapes.filter((shape) => shape.kind === 'circle' && shape.pen === 'hidden');
  expect(tools).toHaveLength(1);
  for (const shape of tools) expect(shape.kind === 'circle' && shape.radius).toBeCloseTo((1.3 * 24 + 5) / 2, 9);
  const { bolt, beside } = leastRoom(model, 'A1')!;
  expect(figure.caption).toContain(`a socket of ⌀ 36.2 takes over bolt ${bolt}, which has the least:`);
  expect(figure.caption).toContain(`to ${beside}`);
});
