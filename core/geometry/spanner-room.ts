import type { Catalogue } from '../catalogue/catalogue.ts';
import { attachmentPoints } from './attachment-points.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { Bolt, Geometry, Panel, Rectangle } from './geometry.ts';
import { tubeRectangle } from './plan-areas.ts';

/** Room about the axis of a bolt for the tool that turns it, m, at the end where it is least, and what stands nearest. */
export interface SpannerRoom {
  readonly bolt: string;
  readonly room: number;
  readonly end: 'head' | 'nut';
  readonly beside: string;
}

/**
 * Outer diameter of a socket for a size across flats, m: 1.3 s + 5 mm. Common practice, no source; it covers the sockets
 * of DIN 3124 as remembered (13 mm: 19; 19 mm: 28; 24 mm: 34.5; 36 mm: 50). A ring spanner is about as wide.
 */
export const socketDiameter = (acrossFlats: number): number => 1.3 * acrossFlats + 0.005;

/** Beyond this nothing is in the way of a tool, m. */
const reach = 0.25;

/** What may stand in the way at a level: a rectangle in plan, or a head or nut. */
type Obstacle = { readonly name: string; readonly z: readonly [number, number]; readonly owner: string } & (
  { readonly box: Rectangle } | { readonly x: number; readonly y: number; readonly r: number }
);

/** An end of a bolt that a tool goes over: where it stands, and the heights that head or nut take. */
interface Turned {
  readonly bolt: Bolt;
  readonly panel: Panel;
  readonly end: 'head' | 'nut';
  readonly z: readonly [number, number];
  readonly r: number;
}

/** Least room of each bolt of the plate: over its head on the panel, and over the nut of a through-bolt on the tube's far face. */
export function spannerRooms(
  geometry: Omit<Geometry, 'findings'>,
  document: PlateDocument,
  catalogue: Catalogue,
): ReadonlyMap<string, SpannerRoom> {
  const tubes = new Map([...geometry.mainTubes, ...geometry.crossTubes].map((tube) => [tube.id, tube]));
  const turned = geometry.panels.flatMap((panel) => endsOf(panel, tubes, catalogue));
  const still: Obstacle[] = [
    ...[...tubes.values()].flatMap(
      (tube) =>
      tube.pieces.map(([from, to]) => ({ name: `tube ${tube.id}`, owner: tube.id, z: [tube.bottom, tube.top] as const, box: tubeRectangle({ ...tube, from, to }) })), // prettier-ignore
    ),
    ...geometry.panels.map(({ id, bottom, top, outline }) => ({ name: `panel ${id}`, owner: id, z: [bottom, top] as const, box: outline })), // prettier-ignore
    ...attachmentPoints(document, geometry).map(({ id, x, y, foot, eye, tube }) => {
      const [long, wide] = [eye.width.si / 2, eye.thickness.si / 2];
      const [dx, dy] = tube?.set === 'cross' ? [wide, long] : [long, wide];
      return { name: `eye ${id}`, owner: id, z: [foot, foot + eye.height.si] as const, box: { x0: x - dx, x1: x + dx, y0: y - dy, y1: y + dy } }; // prettier-ignore
    }),
  ];
  const heads = new Map<string, Obstacle[]>();
  for (const { bolt, z, r } of turned) {
    const cell = cellOf(bolt.x, bolt.y);
    const others = heads.get(cell) ?? [];
    others.push({ name: `bolt ${bolt.id}`, owner: bolt.id, z, x: bolt.x, y: bolt.y, r });
    heads.set(cell, others);
  }
  // Few heights occur: what stands at each is sought once.
  const standing = new Map<string, readonly Obstacle[]>();
  const rooms = new Map<string, SpannerRoom>();
  for (const { bolt, panel, end, z } of turned) {
    const at = standing.get(String(z)) ?? still.filter((one) => overlap(one.z, z));
    standing.set(String(z), at);
    let least: SpannerRoom = rooms.get(bolt.id) ?? { bolt: bolt.id, room: reach, end, beside: 'nothing' };
    const look = (near: readonly Obstacle[]): void => {
      for (const one of near) {
        if (one.owner === bolt.id || one.owner === panel.id || one.owner === bolt.tube) continue;
        const room = distance(one, bolt);
        if (room < least.room && overlap(one.z, z)) least = { bolt: bolt.id, room, end, beside: one.name };
      }
    };
    look(at);
    for (const dx of [-reach, 0, reach])
      for (const dy of [-reach, 0, reach]) look(heads.get(cellOf(bolt.x + dx, bolt.y + dy)) ?? []);
    rooms.set(bolt.id, least);
  }
  return rooms;
}

const cellOf = (x: number, y: number): string => `${Math.floor(x / reach)} ${Math.floor(y / reach)}`;

function endsOf(
  panel: Panel,
  tubes: ReadonlyMap<string, Geometry['mainTubes'][number]>,
  catalogue: Catalogue,
): Turned[] {
  const { fixing } = panel.design;
  if (fixing.kind !== 'bolted') return [];
  const row = catalogue.bolt(fixing.bolt);
  const [out, face] = panel.pressedBy === 'down' ? [1, panel.top] : [-1, panel.bottom];
  const level = (from: number, way: number, height: number): readonly [number, number] =>
    way > 0 ? [from, from + height] : [from - height, from];
  const r = row.headAcrossCorners / 2;
  const end = fixing.into === 'welded stud' || fixing.into === 'clamp' ? 'nut' : 'head';
  return panel.bolts.flatMap((bolt): Turned[] => {
    const top: Turned = { bolt, panel, end, r, z: level(face, out, row.washerThickness + row.headHeight) };
    if (fixing.into !== 'through-bolt with sleeve') return [top];
    const tube = tubes.get(bolt.tube)!;
    const far = out > 0 ? tube.bottom : tube.top;
    return [top, { bolt, panel, end: 'nut', r, z: level(far, -out, row.washerThickness + row.nutHeight) }];
  });
}

const overlap = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  Math.min(a[1], b[1]) - Math.max(a[0], b[0]) > 1e-6;

function distance(one: Obstacle, { x, y }: Bolt): number {
  if (!('box' in one)) return length(one.x - x, one.y - y) - one.r;
  const { x0, x1, y0, y1 } = one.box;
  return length(Math.max(x0 - x, x - x1, 0), Math.max(y0 - y, y - y1, 0));
}

/** Asked thousands of times an option, where Math.hypot is many times as slow. */
const length = (x: number, y: number): number => Math.sqrt(x * x + y * y);
