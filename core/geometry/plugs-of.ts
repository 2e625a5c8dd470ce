import { boltsOf, type BoltedEdge } from './bolts-of.ts';
import type { Plug } from './geometry.ts';
import type { WeldedEdge } from './weld-runs-of.ts';

/** Plug welds of a panel, in rows as bolts stand: along each fixed side and over each tube between its bays. m */
export function plugsOf(
  { id, fixing: { plugs }, outline, notch, bearings }: WeldedEdge,
  { lines, isLevel }: Pick<BoltedEdge, 'lines' | 'isLevel'>,
): Plug[] {
  if (!plugs) return [];
  const fixing = { pitch: plugs.pitch, edgeDistance: plugs.edgeDistance, slot: 'along the edge' as const };
  const hole = plugs.diameter.si;
  const edge = { id, fixing, hole, slotLength: null, outline, notch, bearings, lines, isLevel };
  return boltsOf(edge).map(({ x, y, tube, pitch, edge1, edge2 }) => ({
    ...{ x, y, tube, pitch, diameter: hole },
    edge: Math.min(edge1, edge2),
  }));
}
