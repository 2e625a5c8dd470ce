import { refusal } from '../refusal.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper } from './envelope-cholesky.ts';
import { addGlobal, type Beam } from './grillage-beam.ts';
import { equivalentEndForces, type LineLoad } from './grillage-member.ts';
import type { GrillageModel } from './grillage-model.ts';
import { feltAt, motionInWords, type RigidFrame, type RigidMotion } from './rigid-motion.ts';

export interface Inertia {
  /** Adds the inertia forces of the free motions to loads, in place, and gives the accelerations. */
  readonly balance: (nodal: Float64Array, lines: LineLoad[]) => { w: number; rx: number; ry: number };
  /** Forces on the nodes with those of inertia: the same, where nothing acts between the nodes. */
  readonly balanced: (nodal: Float64Array) => Float64Array;
  /** Takes the free motions out of a displacement, in place, so that what is left is deformation, weighted with mass. */
  readonly level: (u: Float64Array) => void;
}

/** Inertia of nodes and members in the free motions; members swing with the straight line through their ends. */
export function inertiaOf(
  model: GrillageModel,
  beams: readonly Beam[],
  frame: RigidFrame,
  free: readonly RigidMotion[],
): Inertia {
  // what each freedom feels of each free motion, found once: every load of every case asks for it
  const felt = free.map((motion) =>
    Float64Array.from({ length: 3 * model.nodes.length }, (_, freedom) => {
      const { x, y } = model.nodes[Math.floor(freedom / 3)]!;
      const own = feltAt(frame, freedom % 3, x, y);
      const value = own[0] * motion[0] + own[1] * motion[1] + own[2] * motion[2];
      return freedom % 3 ? value / frame.length : value;
    }),
  );
  // momentum of each free motion by nodes: its sum with w is ∫ m w v over the grid, for w and v straight along each member
  const momentum = felt.map((motion) => {
    const p = Float64Array.from(model.nodes, ({ mass = 0 }, i) => mass * motion[3 * i]!);
    beams.forEach(({ mass, length }, e) => {
      const { from, to } = model.members[e]!;
      const [v, w] = [motion[3 * from]!, motion[3 * to]!];
      p[from]! += ((mass * length) / 6) * (2 * v + w);
      p[to]! += ((mass * length) / 6) * (v + 2 * w);
    });
    return p;
  });
  const product = (p: Float64Array, u: Float64Array): number => {
    let sum = 0;
    for (let node = 0; node < p.length; node++) sum += p[node]! * u[3 * node]!;
    return sum;
  };
  // forces on the nodes of a unit rate of each free motion, with the beams' own shape functions
  const resistance = felt.map((motion) => {
    const f = new Float64Array(motion.length);
    model.nodes.forEach(({ mass = 0 }, i) => (f[3 * i] = mass * motion[3 * i]!));
    for (const beam of beams) {
      const [start, end] = [beam.mass * motion[beam.freedoms[0]!]!, beam.mass * motion[beam.freedoms[3]!]!];
      addGlobal(beam, equivalentEndForces(beam, { start, end, torque: 0 }), f);
    }
    return f;
  });
  const M = envelope(new Int32Array(free.length));
  momentum.forEach((p, i) => felt.slice(0, i + 1).forEach((v, j) => (M.entries[M.start[i]! + j] = product(p, v))));
  const failed = envelopeCholesky(M, 1e-9);
  if (failed >= 0)
    throw refusal({
      what: `the grid can ${motionInWords(frame, free[failed]!)}, and has no mass that would resist it`,
      where: { field: 'mass' },
      mend: 'Give masses to nodes or members, or add a support',
    });
  const solved = (right: number[]): Float64Array => solveUpper(M, solveLower(M, Float64Array.from(right)));
  return {
    balance: (nodal, lines) => {
      const work = felt.map((motion) => {
        let sum = nodal.reduce((total, force, i) => total + force * motion[i]!, 0);
        beams.forEach(({ length, freedoms, cos, sin }, e) => {
          const { start, end, torque } = lines[e]!;
          const [w1, w2] = [motion[freedoms[0]!]!, motion[freedoms[3]!]!];
          sum += (length / 6) * (2 * start * w1 + start * w2 + end * w1 + 2 * end * w2);
          sum += torque * length * (cos * motion[freedoms[1]!]! + sin * motion[freedoms[2]!]!);
        });
        return sum;
      });
      const rate = solved(work);
      const acceleration = (freedom: number): number =>
        felt.reduce((sum, motion, k) => sum + rate[k]! * motion[freedom]!, 0);
      model.nodes.forEach(({ mass = 0 }, i) => (nodal[3 * i]! -= mass * acceleration(3 * i)));
      beams.forEach(({ mass, freedoms }, e) => {
        const { start, end, torque } = lines[e]!;
        lines[e] = {
          start: start - mass * acceleration(freedoms[0]!),
          end: end - mass * acceleration(freedoms[3]!),
          torque,
        };
      });
      return { w: acceleration(0), rx: acceleration(1), ry: acceleration(2) };
    },
    balanced: (nodal) => {
      const rate = solved(felt.map((motion) => dot(motion, nodal)));
      const f = Float64Array.from(nodal);
      resistance.forEach((own, k) => addScaled(f, own, -rate[k]!));
      return f;
    },
    level: (u) => {
      const part = solved(momentum.map((p) => product(p, u)));
      felt.forEach((motion, k) => addScaled(u, motion, -part[k]!));
    },
  };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function addScaled(into: Float64Array, other: Float64Array, scale: number): void {
  for (let i = 0; i < into.length; i++) into[i]! += scale * other[i]!;
}
