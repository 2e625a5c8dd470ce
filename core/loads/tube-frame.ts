import { beamStiffness } from '../solve/grillage-member.ts';
import type { Grillage, GrillageLoads } from '../solve/grillage-model.ts';
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
  readonly length: number;
  readonly EI: number;
  readonly GA: number;
  readonly k: Float64Array;
  /** Its cells. */
  readonly cells: readonly [from: number, to: number];
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
  constructor(lines: TubeLines, nodes: readonly FrameNode[], nodesOf: readonly (readonly NodeOnTube[])[], mu: readonly number[]) {
    this.lines = lines;
    this.nodes = nodes;
    const stiff = lines.tubes.map(({ section, material: { youngModulus: E, poisson } }) => {
      const G = E / (2 * (1 + poisson));
      return { EI: E * section.inertiaY, GJ: G * section.torsion, GA: G * section.shearAreaZ };
    });
    this.members = membersOf(lines, nodesOf, stiff);
    this.#grillage = grillage({
      nodes,
      members: this.members.map(({ tube, first, last }) => ({ from: first, to: last, ...stiff[tube]!, mass: mu[tube]!, name: `tube ${lines.tubes[tube]!.id}` })),
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
        equivalentForces(this.lines, member, load, p);
        const [along, across] = this.#slopes(member.tube);
        const turn = member.tube < this.lines.mains ? 1 : -1;
        for (const [end, node] of [[0, member.first], [3, member.last]] as const) {
          f[3 * node]! += p[end]!;
          f[3 * node + across]! += turn * p[end + 1]!;
          f[3 * node + along]! += p[end + 2]!;
        }
      }
    }
    for (const [point, force] of forces) this.unitForce(point).forEach((value, k) => (f[3 * point.node + k]! += force * value));
    const nodes: NonNullable<GrillageLoads['nodes']>[number][] = [];
    for (let node = 0; node < this.nodes.length; node++) nodes.push({ node, w: f[3 * node]!, mx: f[3 * node + 2]!, my: -f[3 * node + 1]! });
    const { w, rx, ry } = this.#grillage.solve({ nodes });
    const u = new Float64Array(f.length);
    for (let node = 0; node < w.length; node++) {
      u[3 * node] = w[node]!;
      u[3 * node + 1] = -ry[node]!;
      u[3 * node + 2] = rx[node]!;
    }
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
      equivalentForces(lines, member, load, p);
      const endForce = (i: number): number => {
        let sum = -p[i]!;
        for (let j = 0; j < 6; j++) sum += k[6 * i + j]! * v[j]!;
        return sum;
      };
      let [shear, torque, moment] = [endForce(0), -endForce(1), -endForce(2)];
      let [rise, slope] = [v[0]!, v[2]!];
      inside(tube, lines.from[member.cells[0]]!, moment, shear, torque, rise);
      for (let e = member.cells[0]; e < member.cells[1]; e++) {
        const [q, q1, t, t1] = [load[4 * e]!, load[4 * e + 1]!, turn * load[4 * e + 2]!, turn * load[4 * e + 3]!];
        const from = lines.from[e]!;
        const l = lines.to[e]! - from;
        const slant = (q1 - q) / l;
        // M'' = V' = q, E I ψ' = M, w' = ψ − V/GA
        const shearAt = (s: number): number => shear + s * (q + (slant * s) / 2);
        const momentAt = (s: number): number => moment + s * (shear + s * (q / 2 + (slant * s) / 6));
        const torqueAt = (s: number): number => torque - s * (t + (s * (t1 - t)) / (2 * l));
        const riseAt = (s: number): number =>
          rise + s * (slope + (s / EI) * (moment / 2 + s * (shear / 6 + s * (q / 24 + (slant * s) / 120))) - (shear + s * (q / 2 + (slant * s) / 6)) / GA);
        const peak = signChange(shear, q, slant, l);
        if (peak !== null) inside(tube, from + peak, momentAt(peak), 0, torqueAt(peak), riseAt(peak));
        const next = [riseAt(l), slope + (l / EI) * (moment + l * (shear / 2 + l * (q / 6 + (slant * l) / 24))), momentAt(l), shearAt(l), torqueAt(l)] as const;
        [rise, slope, moment, shear, torque] = next;
        inside(tube, lines.to[e]!, moment, shear, torque, rise);
      }
    }
  }
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

/** p += forces on a member's ends that do the work of its load, ∫ N q ds with the shape functions of a beam that also
 *  shears (Φ = 12 E I/(GA L²)), exact for loads linear on each cell. Source: Przemieniecki (1968), art. 5.6, from memory. */
function equivalentForces({ from, to, mains }: TubeLines, { tube, length: L, EI, GA, cells }: Member, load: Float64Array, p: Float64Array): void {
  const Φ = (12 * EI) / (GA * L ** 2);
  const turn = tube < mains ? 1 : -1;
  const start = from[cells[0]]!;
  for (let e = cells[0]; e < cells[1]; e++) {
    const [q0, q1, t0, t1] = [load[4 * e]!, load[4 * e + 1]!, load[4 * e + 2]!, load[4 * e + 3]!];
    if (q0 === 0 && q1 === 0 && t0 === 0 && t1 === 0) continue;
    const l = to[e]! - from[e]!;
    for (let i = 0; i < 3; i++) {
      const [s, weight] = gauss[i]!;
      const z = (from[e]! - start + s * l) / L;
      const r = 1 - z;
      const q = (weight * l * (q0 + (q1 - q0) * s)) / (1 + Φ);
      const t = turn * weight * l * (t0 + (t1 - t0) * s);
      p[0]! += q * r * (r * (1 + 2 * z) + Φ);
      p[1]! += t * r;
      p[2]! += q * L * z * r * (r + Φ / 2);
      p[3]! += q * z * (z * (3 - 2 * z) + Φ);
      p[4]! += t * z;
      p[5]! -= q * L * z * r * (z + Φ / 2);
    }
  }
}

function membersOf(lines: TubeLines, nodesOf: readonly (readonly NodeOnTube[])[], stiff: readonly { EI: number; GJ: number; GA: number }[]): Member[] {
  return lines.tubes.flatMap((_, tube) => {
    const nodes = nodesOf[tube]!;
    let cell = lines.firstCell[tube]!;
    return nodes.slice(1).map(({ at, node }, i): Member => {
      const begin = cell;
      while (cell < lines.firstCell[tube + 1]! && lines.to[cell]! <= at) cell++;
      const length = at - nodes[i]!.at;
      const { EI, GJ, GA } = stiff[tube]!;
      return { tube, first: nodes[i]!.node, last: node, length, EI, GA, k: beamStiffness({ length, EI, GJ, GA }), cells: [begin, cell] };
    });
  });
}
