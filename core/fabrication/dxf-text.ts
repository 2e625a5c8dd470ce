import type { Cutout, Point } from '../geometry/geometry.ts';
import { slotCorners } from '../geometry/slot.ts';
import type { FlatPattern } from './flat-pattern.ts';

/** Layers of a flat pattern: what a cutter keeps apart. */
export const dxfLayers = { outside: 'OUTSIDE_CONTOUR', inside: 'INSIDE_CONTOUR', mark: 'MARKING' } as const;

/**
 * A flat pattern as DXF, the ASCII exchange form of release 12 (AC1009): group codes and values on lines of their own.
 * Millimetres, datum corner at the origin, seen from above. The contour is a closed polyline on OUTSIDE_CONTOUR, each hole a
 * circle on INSIDE_CONTOUR, each slot a closed polyline there whose round ends are bulges of 1 (half circles), the part number a text on MARKING. Kerf is not taken off: the cutter's. Digits to a nanometre.
 * Source: DXF reference, release 12 (public copies, from memory).
 */
export function dxfText({ contour, holes, height, width }: FlatPattern, mark: string): string {
  const mm = (metres: number): string => (1000 * metres).toFixed(6);
  const groups: (readonly [number, string | number])[] = [
    [999, `Part ${mark}; millimetres; seen from above; kerf not taken off`],
    [0, 'SECTION'], [2, 'HEADER'],
    [9, '$ACADVER'], [1, 'AC1009'],
    [9, '$EXTMIN'], [10, '0.0'], [20, '0.0'], [30, '0.0'],
    [9, '$EXTMAX'], [10, mm(width)], [20, mm(height)], [30, '0.0'],
    [0, 'ENDSEC'],
    [0, 'SECTION'], [2, 'TABLES'],
    [0, 'TABLE'], [2, 'LAYER'], [70, 3],
    ...[dxfLayers.outside, dxfLayers.inside, dxfLayers.mark].flatMap((name, i) => [[0, 'LAYER'], [2, name], [70, 0], [62, i + 1], [6, 'CONTINUOUS']] as const),
    [0, 'ENDTAB'], [0, 'ENDSEC'],
    [0, 'SECTION'], [2, 'ENTITIES'],
    [0, 'POLYLINE'], [8, dxfLayers.outside], [66, 1], [70, 1], [10, '0.0'], [20, '0.0'], [30, '0.0'],
    ...contour.flatMap(([x, y]) => [[0, 'VERTEX'], [8, dxfLayers.outside], [10, mm(x)], [20, mm(y)], [30, '0.0']] as const),
    [0, 'SEQEND'], [8, dxfLayers.outside],
    ...holes.flatMap((hole) => (hole.slot ? slotGroups(hole, mm) : circleGroups(hole, mm))),
    [0, 'TEXT'], [8, dxfLayers.mark], [10, mm(width / 2)], [20, mm(height / 2)], [30, '0.0'], [40, mm(Math.min(width, height) / 12)], [1, mark],
    [0, 'ENDSEC'], [0, 'EOF'],
  ]; // prettier-ignore
  return groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

type Groups = (readonly [number, string | number])[];
type Print = (metres: number) => string;

const circleGroups = ({ x, y, diameter }: Cutout, mm: Print): Groups => [
  [0, 'CIRCLE'], [8, dxfLayers.inside], [10, mm(x)], [20, mm(y)], [30, '0.0'], [40, mm(diameter / 2)],
]; // prettier-ignore

/** Counter-clockwise; a bulge stands at the vertex where its arc begins: tan of a quarter of the arc's angle. */
function slotGroups(hole: Cutout, mm: Print): Groups {
  const vertex = ([x, y]: Point, bulge: 0 | 1): Groups => [
    [0, 'VERTEX'], [8, dxfLayers.inside], [10, mm(x)], [20, mm(y)], [30, '0.0'], [42, bulge],
  ]; // prettier-ignore
  return [
    [0, 'POLYLINE'], [8, dxfLayers.inside], [66, 1], [70, 1], [10, '0.0'], [20, '0.0'], [30, '0.0'],
    ...slotCorners(hole).flatMap((corner, i) => vertex(corner, i % 2 === 0 ? 0 : 1)),
    [0, 'SEQEND'], [8, dxfLayers.inside],
  ]; // prettier-ignore
}
