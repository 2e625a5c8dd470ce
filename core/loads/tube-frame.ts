import { beamStiffness } from '../solve/grillage-member.ts';
import type { Grillage } from '../solve/grillage-model.ts';
import { grillage } from '../solve/grillage.ts';
import type { TubeLines } from './tube-lines.ts';

/** Where a tube crosses another, ends, or is held; m in plan. */
export interface FrameNode {
  readonly x: number;
  readonly y: number;
  readonly name: string;
}

/** A node's place along a tube. */
export interface NodeOnTube {
  readonly at: number;
  readonly node: number;
}

/** A tube between two of its nodes. Local order of freedoms: w, turn about the axis, slope along, at either end. */
interface Member {
  readonly tube: number;
  readonly first: number;
  readonly last: number;
  readonly EI: number;
  readonly GA: number;
  readonly k: Float64Array;
  /** Its cells, and for each the forces on the member's ends by q at its two ends (w and slope, 8 numbers) and by torque (4). */
  readonly cells: readonly [from: number, to: number];
  readonly equivalents: Float64Array;
}

/** Where a force acts: a node, and the point in plan through which its line of action passes. */
export interface FramePoint {
  readonly node: number;
  readonly x: number;
  readonly y: number;
}

/** Rise and slopes of all nodes: w, ∂w/∂x, ∂w/∂y, three numbers a node. */
export type Motion = Float64Array;

/** Inside a tube at one place: moment (positive: its top is pressed), shear (the moment's slope), torque, rise. */
export type Inside = (tube: number, place: number, moment: number, shear: number, torque: number, rise: number) => void;

/**
 * The tubes as a grillage that nothing holds (`freeBody`): each a beam that bends about its level axis, shears and
 * twists, rigid at the crossings. Everything put on it, the forces at its attachments among it, balances itself, so no
 * support is invented. Loads between nodes come as equivalent forces on nodes, exact for any linear piece of load.
 * Left out: the eccentricity of stacked tubes, bending in plan, and the size of the joints.
 */
export class TubeFrame {
  readonly lines: TubeLines;
  readonly nodes: readonly FrameNode[];
  readonly members: readonly Member[];
  readonly #grillage: Grillage;

  /** nodesOf: each tube's nodes, sorted along it, at ends of cells. mu: mass per length of each tube, kg/m.
   *  Refuses a frame that falls apart. */
  constructor(
    lines: TubeLines,
    nodes: readonly FrameNode[],
    nodesOf: readonly (readonly NodeOnTube[])[],
    mu: readonly number[],
  ) {
    this.lines = lines;
    this.nodes = nodes;
    const stiff = lines.tubes.map(({ section, material: { youngModulus: E, poisson } }) => {
      const G = E / (2 * (1 + poisson));
      return { EI: E * section.inertiaY, GJ: G * section.torsion, GA: G * section.shearAreaZ };
    });
    this.members = membersOf(lines, nodesOf, stiff);
    this.#grillage = grillage({
      nodes,
      members: this.members.map(({ tube, first, last }) => ({
        from: first,
        to: last,
        ...stiff[tube]!,
        mass: mu[tube]!,
        name: `tube ${lines.tubes[tube]!.id}`,
      })),
      supports: [],
      freeBody: true,
    });
  }

  /** Motion under a load on the cells and forces up at points (which together need not balance: inertia takes the rest). */
  motion(load: Float64Array | null, forces: readonly (readonly [FramePoint, number])[] = []): Motion {
    const f = new Float64Array(3 * this.nodes.length);
    if (load) {
      const p = new Float64Array(6);
      for (const member of this.members) {
        p.fill(0);
        addEquivalents(member, load, p);
        const [along, across] = this.#slopes(member.tube);
        const turn = member.tube < this.lines.mains ? 1 : -1;
        for (const [end, node] of [
          [0, member.first],
          [3, member.last],
        ] as const) {
          f[3 * node]! += p[end]!;
          f[3 * node + across]! += turn * p[end + 1]!;
          f[3 * node + along]! += p[end + 2]!;
        }
      }
    }
    for (const [point, force] of forces)
      this.unitForce(point).forEach((value, k) => (f[3 * point.node + k]! += force * value));
    // slopes against turns: rx = ∂w/∂y, ry = −∂w/∂x, there and back
    for (let i = 0; i < f.length; i += 3) [f[i + 1], f[i + 2]] = [f[i + 2]!, -f[i + 1]!];
    const u = this.#grillage.displacements(f);
    for (let i = 0; i < u.length; i += 3) [u[i + 1], u[i + 2]] = [-u[i + 2]!, u[i + 1]!];
    return u;
  }

  /** Force and first moments about its node of a unit force up at a point. */
  unitForce({ node, x, y }: FramePoint): readonly [number, number, number] {
    return [1, x - this.nodes[node]!.x, y - this.nodes[node]!.y];
  }

  /** Rise of a point: that on which a unit force there would do work. */
  riseAt(point: FramePoint, u: Motion): number {
    const p = this.unitForce(point);
    return p[0] * u[3 * point.node]! + p[1] * u[3 * point.node + 1]! + p[2] * u[3 * point.node + 2]!;
  }

  /** Places of the slopes along and across a tube among a node's three numbers. */
  #slopes(tube: number): readonly [along: number, across: number] {
    return tube < this.lines.mains ? [1, 2] : [2, 1];
  }

  /** Walks along every tube: what is inside at both ends of each cell, and where the moment peaks within one. */
  walk(u: Motion, load: Float64Array, inside: Inside): void {
    const { lines } = this;
    const p = new Float64Array(6);
    const v = new Float64Array(6);
    for (const member of this.members) {
      const { tube, first, last, EI, GA, k } = member;
      const [along, across] = this.#slopes(tube);
      const turn = tube < lines.mains ? 1 : -1;
      v[0] = u[3 * first]!;
      v[1] = turn * u[3 * first + across]!;
      v[2] = u[3 * first + along]!;
      v[3] = u[3 * last]!;
      v[4] = turn * u[3 * last + across]!;
      v[5] = u[3 * last + along]!;
      p.fill(0);
      addEquivalents(member, load, p);
      let shear = endForce(k, v, p, 0);
      let torque = -endForce(k, v, p, 1);
      let moment = -endForce(k, v, p, 2);
      let rise = v[0];
      let slope = v[2];
      inside(tube, lines.from[member.cells[0]]!, moment, shear, torque, rise);
      for (let e = member.cells[0]; e < member.cells[1]; e++) {
        const q = load[4 * e]!;
        const t = turn * load[4 * e + 2]!;
        const from = lines.from[e]!;
        const l = lines.to[e]! - from;
        const slant = (load[4 * e + 1]! - q) / l;
        const twist = (turn * load[4 * e + 3]! - t) / l;
        const peak = signChange(shear, q, slant, l);
        // s runs to the peak of the moment inside the cell if there is one, and to the cell's end
        for (let end = peak === null ? 1 : 0; end < 2; end++) {
          const s = end ? l : peak!;
          // M'' = V' = q, E I ψ' = M, w' = ψ − V/GA
          const M = moment + s * (shear + s * (q / 2 + (slant * s) / 6));
          const V = shear + s * (q + (slant * s) / 2);
          const T = torque - s * (t + (twist * s) / 2);
          const w =
            rise +
            s *
              (slope +
                (s / EI) * (moment / 2 + s * (shear / 6 + s * (q / 24 + (slant * s) / 120))) -
                (shear + s * (q / 2 + (slant * s) / 6)) / GA);
          inside(tube, from + s, M, V, T, w);
          if (!end) continue;
          slope += (s / EI) * (moment + s * (shear / 2 + s * (q / 6 + (slant * s) / 24)));
          moment = M;
          shear = V;
          torque = T;
          rise = w;
        }
      }
    }
  }
}

/** Row i of K v − p. */
function endForce(k: Float64Array, v: Float64Array, p: Float64Array, i: number): number {
  let sum = -p[i]!;
  for (let j = 0; j < 6; j++) sum += k[6 * i + j]! * v[j]!;
  return sum;
}

/** Where v + q s + a s²/2 changes its sign within (0, l), or null. */
function signChange(v: number, q: number, a: number, l: number): number | null {
  if (v * (v + l * (q + (a * l) / 2)) >= 0) return null;
  const root = Math.sqrt(q * q - 2 * a * v);
  const t = -(q + (q < 0 ? -root : root)); // the form that does not cancel
  return [t / a, (2 * v) / t].find((s) => s > 0 && s < l) ?? null;
}

/** Three points and weights of Gauss on [0, 1], exact to degree 5. Source: Abramowitz & Stegun, Table 25.4. */
const gauss = [
  [0.5 - Math.sqrt(0.15), 5 / 18],
  [0.5, 8 / 18],
  [0.5 + Math.sqrt(0.15), 5 / 18],
] as const;

/** Forces on a member's ends that do the work of a load on a cell, ∫ N q ds with the shape functions of a beam that also
 *  shears (Φ = 12 E I/(GA L²)), exact for loads linear on each cell. Twelve numbers a cell: by q and t at its start, then
 *  at its end; each on w, slope and turn of the first end, then of the last, where the load has a part in it.
 *  Source: Przemieniecki (1968), art. 5.6, from memory. */
function equivalentsOf(
  { from, to, mains }: TubeLines,
  tube: number,
  [first, last]: readonly [number, number],
  L: number,
  Φ: number,
): Float64Array {
  const turn = tube < mains ? 1 : -1;
  const start = from[first]!;
  const out = new Float64Array(12 * (last - first));
  for (let e = first; e < last; e++) {
    const o = 12 * (e - first);
    const l = to[e]! - from[e]!;
    for (const [s, weight] of gauss) {
      const z = (from[e]! - start + s * l) / L;
      const r = 1 - z;
      for (const end of [0, 1] as const) {
        const q = (weight * l * (end ? s : 1 - s)) / (1 + Φ);
        const t = turn * weight * l * (end ? s : 1 - s);
        out[o + 6 * end]! += q * r * (r * (1 + 2 * z) + Φ);
        out[o + 6 * end + 1]! += t * r;
        out[o + 6 * end + 2]! += q * L * z * r * (r + Φ / 2);
        out[o + 6 * end + 3]! += q * z * (z * (3 - 2 * z) + Φ);
        out[o + 6 * end + 4]! += t * z;
        out[o + 6 * end + 5]! -= q * L * z * r * (z + Φ / 2);
      }
    }
  }
  return out;
}

/** p += forces on a member's ends for its load. */
function addEquivalents({ cells: [first, last], equivalents: c }: Member, load: Float64Array, p: Float64Array): void {
  for (let e = first; e < last; e++) {
    const o = 12 * (e - first);
    const q0 = load[4 * e]!;
    const q1 = load[4 * e + 1]!;
    const t0 = load[4 * e + 2]!;
    const t1 = load[4 * e + 3]!;
    p[0]! += c[o]! * q0 + c[o + 6]! * q1;
    p[1]! += c[o + 1]! * t0 + c[o + 7]! * t1;
    p[2]! += c[o + 2]! * q0 + c[o + 8]! * q1;
    p[3]! += c[o + 3]! * q0 + c[o + 9]! * q1;
    p[4]! += c[o + 4]! * t0 + c[o + 10]! * t1;
    p[5]! += c[o + 5]! * q0 + c[o + 11]! * q1;
  }
}

function membersOf(
  lines: TubeLines,
  nodesOf: readonly (readonly NodeOnTube[])[],
  stiff: readonly { EI: number; GJ: number; GA: number }[],
): Member[] {
  return lines.tubes.flatMap((_, tube) => {
    const nodes = nodesOf[tube]!;
    let cell = lines.firstCell[tube]!;
    return nodes.slice(1).map(({ at, node }, i): Member => {
      const begin = cell;
      while (cell < lines.firstCell[tube + 1]! && lines.to[cell]! <= at) cell++;
      const length = at - nodes[i]!.at;
      const { EI, GJ, GA } = stiff[tube]!;
      const cells = [begin, cell] as const;
      const equivalents = equivalentsOf(lines, tube, cells, length, (12 * EI) / (GA * length ** 2));
      return {
        tube,
        first: nodes[i]!.node,
        last: node,
        EI,
        GA,
        k: beamStiffness({ length, EI, GJ, GA }),
        cells,
        equivalents,
      };
    });
  });
}
