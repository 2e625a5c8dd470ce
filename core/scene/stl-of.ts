import { modelSolids } from './model-solids.ts';
import type { Scene } from './scene.ts';

/** The plate as binary STL in mm (the format itself has no units): one shell for each tube, panel, weld, eye and bolt. */
export function stlOf(scene: Scene): Uint8Array {
  const { meshes, solids } = modelSolids(scene);
  const triangles = solids.reduce((sum, { count }) => sum + count / 3, 0);
  const bytes = new Uint8Array(84 + 50 * triangles);
  const view = new DataView(bytes.buffer);
  [...'Plate, millimetres, z up'].forEach((letter, i) => view.setUint8(i, letter.charCodeAt(0)));
  view.setUint32(80, triangles, true);
  let at = 84;
  for (const {
    mesh,
    from,
    count,
    at: [dx, dy, dz],
    turned,
  } of solids) {
    const { positions, indices } = meshes[mesh]!;
    const way = turned ? -1 : 1;
    for (let i = from; i < from + count; i += 3) {
      const corner = (k: number): readonly number[] => {
        const p = 3 * indices[i + k]!;
        return [
          1000 * (positions[p]! + dx),
          1000 * (way * positions[p + 1]! + dy),
          1000 * (way * positions[p + 2]! + dz),
        ];
      };
      const [a, b, c] = [corner(0), corner(1), corner(2)];
      for (const value of [...normalOf(a, b, c), ...a, ...b, ...c]) {
        view.setFloat32(at, value, true);
        at += 4;
      }
      at += 2; // attribute count, 0
    }
  }
  return bytes;
}

/** Unit normal by the right hand; of a triangle without area the format's own 0, 0, 0. */
function normalOf(a: readonly number[], b: readonly number[], c: readonly number[]): readonly number[] {
  const [u, v] = [b, c].map((p) => p.map((value, i) => value - a[i]!)) as [number[], number[]];
  const [ux, uy, uz] = u as [number, number, number];
  const [vx, vy, vz] = v as [number, number, number];
  const n = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(...n);
  return length === 0 ? n : n.map((value) => value / length);
}
