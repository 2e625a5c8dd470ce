import type { PlateLoads } from '../loads/plate-loads.ts';
import type { NamedLoading } from '../loads/situation.ts';
import type { Beam } from '../solve/elements/beam.ts';
import { gaussLegendre } from '../solve/gauss-legendre.ts';
import { addPointForce } from '../solve/structure/point-force.ts';
import type { Structure } from '../solve/structure/structure.ts';
import type { Vector } from '../solve/vector.ts';
import { loadPieces } from './load-pieces.ts';
import { endLoads } from './beam-course.ts';

/**
 * Nodal loads, 6N, of one loading of a case: pressures of fields on the panels' rectangles (a quarter to each corner, with
 * the field's own area, so that the force is that of the loads), loads on tubes by the shape functions of the beams.
 * A field whose panel is not in the structure gives nothing. Preloaded bolts draw panel and tube together: forces that
 * balance each other.
 */
export function loadVector(
  { structure, beams }: { readonly structure: Structure; readonly beams: readonly Beam[] },
  plate: PlateLoads,
  loading: NamedLoading,
): Float64Array {
  const f = new Float64Array(2 * structure.coordinates.length);
  addPressures(f, structure, plate, loading.pressures);
  const { onBeams, onNodes } = loadPieces(structure, plate, loading);
  onBeams.forEach((pieces, e) => {
    if (pieces.length === 0) return;
    const local = endLoads(beams[e]!, pieces);
    const { ends } = beams[e]!;
    structure.beams[e]!.nodes.forEach((node, end) => {
      for (let k = 0; k < 6; k++)
        for (let i = 0; i < 12; i++) f[6 * node + k]! += ends[12 * i + 6 * end + k]! * local[i]!;
    });
  });
  for (const { node, arms, axis, length, q, t } of onNodes)
    for (let p = 0; p < 3; p++) {
      const r = (1 + gauss.x[p]!) / 2;
      const ds = (gauss.weight[p]! * length) / 2;
      const between = (v: readonly [number, number]): number => v[0] + r * (v[1] - v[0]);
      const [low, high] = arms;
      const arm: Vector = [between([low[0], high[0]]), between([low[1], high[1]]), low[2]];
      const torque = ds * between(t);
      addPointForce(f, node, arm, [0, 0, ds * between(q)], [torque * axis[0], torque * axis[1], 0]);
    }
  for (const { nodes, offsets, preload } of structure.ties)
    if (preload !== undefined) {
      addPointForce(f, nodes[0], offsets[0], [0, 0, preload]);
      addPointForce(f, nodes[1], offsets[1], [0, 0, -preload]);
    }
  return f;
}

/** Exact for a load straight along a length times an arm. */
const gauss = gaussLegendre(3);

function addPressures(f: Float64Array, { shells }: Structure, { fields }: PlateLoads, pressures: Float64Array): void {
  const meshed = new Float64Array(fields.length);
  for (const { field, a, b } of shells) if (field >= 0) meshed[field]! += a * b;
  for (const { field, a, b, nodes } of shells) {
    if (field < 0) continue;
    const force = (pressures[field]! * fields[field]!.area * a * b) / meshed[field]!;
    for (const node of nodes) f[6 * node + 2]! += force / 4;
  }
}
