import { contactForce } from '../../solve/structure/contact.ts';
import { inertiaForces } from '../../solve/structure/lumped-mass.ts';
import { addPointForce, resultantOf } from '../../solve/structure/point-force.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';
import { activeSupports } from './active-supports.ts';

/** Three forces, N, and three moments about the middle of the plate's tubes, N·m, in the axes of the geometry. */
export type Six = readonly [Fx: number, Fy: number, Fz: number, Mx: number, My: number, Mz: number];

/** Equilibrium of a solved loading and what became of its contact, as numbers and as lines to print. */
export interface BalanceReport {
  readonly applied: Six;
  readonly supports: Six;
  readonly inertia: Six;
  /** Sum of the three. */
  readonly rest: Six;
  /** Largest part of the rest, forces over the largest force applied, moments over that times half of the plate's length. */
  readonly residual: number;
  /** Scaled residual of the equations, and what the six freedoms that only say where zero is carry over the largest load. */
  readonly equations: number;
  readonly zero: number;
  readonly contact: {
    readonly settled: boolean;
    /** Sets of closed points that were solved. */
    readonly steps: number;
    readonly closed: number;
    readonly points: number;
    /** Largest force that presses, and the largest that pulls at a closed point, N. */
    readonly pressing: number;
    readonly pulling: number;
    /** Deepest overlap at an open point, m. */
    readonly overlap: number;
  };
}

export function balanceReport(plate: ReadyPlate, solved: SolvedLoading): BalanceReport {
  const { structure, masses } = plate;
  const { coordinates, contacts } = structure;
  const { answer, applied: f } = solved;
  const nodes = structure.tubes.flatMap((tube) => [...tube.nodes]);
  const range = (k: 0 | 1 | 2): readonly [number, number] => [
    nodes.reduce((m, n) => Math.min(m, coordinates[3 * n + k]!), Infinity),
    nodes.reduce((m, n) => Math.max(m, coordinates[3 * n + k]!), -Infinity),
  ];
  const [x, y, z] = [range(0), range(1), range(2)];
  const middle = [x, y, z].map(([low, high]) => (low + high) / 2) as [number, number, number];
  const about = (loads: Float64Array): Six => {
    const [Fx, Fy, Fz, Mx, My, Mz] = resultantOf(coordinates, loads) as unknown as Six;
    const [cx, cy, cz] = middle;
    return [Fx, Fy, Fz, Mx - (cy * Fz - cz * Fy), My - (cz * Fx - cx * Fz), Mz - (cx * Fy - cy * Fx)];
  };
  const held = new Float64Array(f.length);
  activeSupports(plate, solved).parts.forEach(({ node, offset, direction }, i) => {
    const V = answer.forces[i]!;
    addPointForce(held, node, offset, [V * direction[0], V * direction[1], V * direction[2]]);
  });
  const [applied, supports, inertia] = [
    about(f),
    about(held),
    about(inertiaForces(structure, masses, answer.acceleration)),
  ];
  const rest = applied.map((value, k) => value + supports[k]! + inertia[k]!) as unknown as Six;
  const arm = Math.max(x[1] - x[0], y[1] - y[0]) / 2;
  const most = Math.max(...applied.slice(0, 3).map(Math.abs), ...applied.slice(3).map((m) => Math.abs(m) / arm));
  const left = Math.max(...rest.slice(0, 3).map(Math.abs), ...rest.slice(3).map((m) => Math.abs(m) / arm));
  let [pressing, pulling, overlap, closed] = [0, 0, 0, 0];
  contacts.forEach((part, i) => {
    const force = contactForce(part, answer.u);
    if (answer.closed[i]) {
      closed++;
      pressing = Math.max(pressing, force);
      pulling = Math.max(pulling, -force);
    } else overlap = Math.max(overlap, force / part.stiffness);
  });
  return {
    applied,
    supports,
    inertia,
    rest,
    residual: most > 0 ? left / most : 0,
    equations: answer.residual,
    zero: answer.held,
    contact: {
      settled: answer.settled,
      steps: answer.steps,
      closed,
      points: contacts.length,
      pressing,
      pulling,
      overlap,
    },
  };
}
