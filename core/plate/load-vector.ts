import type { PlateLoads } from '../loads/plate-loads.ts';
import type { NamedLoading } from '../loads/situation.ts';
import { addPointForce } from '../solve/structure/point-force.ts';
import type { BeamPart, Structure, Vector } from '../solve/structure/structure.ts';

/**
 * Nodal loads, 6N, of one loading of a case: pressures of fields on the panels' rectangles (a quarter to each corner, with
 * the field's own area, so that the force is that of the loads), loads on tubes by the shape functions of the beams.
 * A field whose panel is not in the structure gives nothing.
 */
export function loadVector(structure: Structure, plate: PlateLoads, loading: NamedLoading): Float64Array {
  const f = new Float64Array(2 * structure.coordinates.length);
  addPressures(f, structure, plate, loading.pressures);
  addTubeLoads(f, structure, plate, loading.onTubes);
  return f;
}

function addPressures(f: Float64Array, { shells }: Structure, { fields }: PlateLoads, pressures: Float64Array): void {
  const meshed = new Float64Array(fields.length);
  for (const { field, a, b } of shells) if (field >= 0) meshed[field]! += a * b;
  for (const { field, a, b, nodes } of shells) {
    if (field < 0) continue;
    const force = (pressures[field]! * fields[field]!.area * a * b) / meshed[field]!;
    for (const node of nodes) f[6 * node + 2]! += force / 4;
  }
}

/** Points and weights of Gauss on [0, 1], exact to degree 5. Source: Abramowitz & Stegun, Table 25.4. */
const gauss = [
  [0.5 - Math.sqrt(0.15), 5 / 18],
  [0.5, 8 / 18],
  [0.5 + Math.sqrt(0.15), 5 / 18],
] as const;

function addTubeLoads(f: Float64Array, structure: Structure, { lines }: PlateLoads, load: Float64Array): void {
  const main = (tube: number): boolean => structure.tubes[tube]!.set === 'main';
  structure.tubes.forEach(({ beams: [first, last], stations, nodes, offsets }, tube) => {
    const own = structure.beams.slice(first, last);
    const along = (by: number): Vector => (main(tube) ? [by, 0, 0] : [0, by, 0]);
    for (let e = lines.firstCell[tube]!; e < lines.firstCell[tube + 1]!; e++) {
      const [from, to] = [lines.from[e]!, lines.to[e]!];
      const [q0, q1, t0, t1] = [load[4 * e]!, load[4 * e + 1]!, load[4 * e + 2]!, load[4 * e + 3]!];
      if (q0 === 0 && q1 === 0 && t0 === 0 && t1 === 0) continue;
      for (const { low, high, beam } of stretches(own, from, to))
        for (const [s, weight] of gauss) {
          const place = low + s * (high - low);
          const r = (place - from) / (to - from);
          const ds = weight * (high - low);
          const q = (q0 + (q1 - q0) * r) * ds;
          const t = (t0 + (t1 - t0) * r) * ds;
          const torque: Vector = main(tube) ? [t, 0, 0] : [0, -t, 0];
          if (beam) addOnBeam(f, beam, place, q, torque, main(tube));
          else {
            // in a joint, or past the end of the steel: the nearest node carries it on a rigid arm
            const k = nearest(stations, place);
            const [x, y, z] = offsets[k]!;
            const [dx, dy] = along(place - stations[k]!);
            addPointForce(f, nodes[k]!, [x + dx, y + dy, z], [0, 0, q], torque);
          }
        }
    }
  });
}

/** Force q up and a torque at a place within a beam, on its ends by the beam's shape functions. */
function addOnBeam(
  f: Float64Array,
  { nodes, offsets, from, to, section: { E, Iy, G, Az } }: BeamPart,
  place: number,
  q: number,
  torque: Vector,
  main: boolean,
): void {
  const L = to - from;
  const Φ = (12 * E * Iy) / (G * Az * L ** 2);
  const z = (place - from) / L;
  const r = 1 - z;
  const shares = [(r * (r * (1 + 2 * z) + Φ)) / (1 + Φ), (z * (z * (3 - 2 * z) + Φ)) / (1 + Φ)];
  // work on the slope dw/ds: about -y for a tube along x, about +x for a tube along y
  const slopes = [(L * z * r * (r + Φ / 2)) / (1 + Φ), (-L * z * r * (z + Φ / 2)) / (1 + Φ)];
  [0, 1].forEach((end) => {
    const slope = q * slopes[end]!;
    const twist = end ? z : r;
    const moment: Vector = main
      ? [torque[0] * twist, torque[1] * twist - slope, 0]
      : [torque[0] * twist + slope, torque[1] * twist, 0];
    addPointForce(f, nodes[end]!, offsets[end]!, [0, 0, q * shares[end]!], moment);
  });
}

/** A stretch [from, to] parted by the beams that lie under it; what no beam covers comes without one. */
function stretches(
  beams: readonly BeamPart[],
  from: number,
  to: number,
): { low: number; high: number; beam: BeamPart | null }[] {
  const parts: { low: number; high: number; beam: BeamPart | null }[] = [];
  let at = from;
  for (const beam of beams) {
    if (beam.to <= at) continue;
    if (beam.from >= to) break;
    if (beam.from > at) parts.push({ low: at, high: beam.from, beam: null });
    const high = Math.min(beam.to, to);
    parts.push({ low: Math.max(at, beam.from), high, beam });
    at = high;
  }
  if (at < to) parts.push({ low: at, high: to, beam: null });
  return parts;
}

function nearest(stations: Float64Array, place: number): number {
  let best = 0;
  for (let k = 1; k < stations.length; k++)
    if (Math.abs(stations[k]! - place) < Math.abs(stations[best]! - place)) best = k;
  return best;
}
