import { refusal } from '../refusal.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper } from './envelope-cholesky.ts';
import type { Beam } from './grillage-beam.ts';
import type { LineLoad } from './grillage-member.ts';
import type { GrillageModel } from './grillage-model.ts';
import { feltAt, motionInWords, type RigidFrame, type RigidMotion } from './rigid-motion.ts';

export interface Inertia {
  /** Adds the inertia forces of the free motions to loads, in place, and gives the accelerations. */
  readonly balance: (nodal: Float64Array, lines: LineLoad[]) => { w: number; rx: number; ry: number };
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
  /** ∫ m w v over the grid, for w and v straight along each member. */
  const product = (w: (node: number) => number, v: (node: number) => number): number => {
    let sum = model.nodes.reduce((total, { mass = 0 }, i) => total + mass * w(i) * v(i), 0);
    beams.forEach(({ mass, length }, e) => {
      const { from, to } = model.members[e]!;
      sum += ((mass * length) / 6) * (2 * w(from) * v(from) + w(from) * v(to) + w(to) * v(from) + 2 * w(to) * v(to));
    });
    return sum;
  };
  const shapes = felt.map(
    (motion) =>
      (node: number): number =>
        motion[3 * node]!,
  );
  const M = envelope(new Int32Array(free.length));
  shapes.forEach((w, i) => shapes.slice(0, i + 1).forEach((v, j) => (M.entries[M.start[i]! + j] = product(w, v))));
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
    level: (u) => {
      const part = solved(shapes.map((shape) => product((node) => u[3 * node]!, shape)));
      u.forEach((_, i) => felt.forEach((motion, k) => (u[i]! -= part[k]! * motion[i]!)));
    },
  };
}
