import { describe, expect, it } from 'vitest';
import { envelopeCholesky, solveLower, solveUpper } from '../../../core/solve/envelope-cholesky.ts';
import { shellLarge } from '../../../core/solve/elements/shell-large.ts';
import type { LargeShell } from '../../../core/solve/elements/shell-large.ts';
import { shellForces, shellRecovery } from '../../../core/solve/elements/shell-recovery.ts';
import { assembled, BenchStructure, shellGrid } from './support/bench-structure.ts';

const material = { thickness: 0.01, E: 1e8, nu: 0.3 };
const Et4 = material.E * material.thickness ** 4;
const unit = material.E * material.thickness ** 2;

/** Quarter of a square plate of side 1 whose edges cannot move in its plane; solves for Q after Q from the last answer. */
class LargePlate extends BenchStructure {
  readonly n: number;
  readonly at: (i: number, j: number) => number;
  readonly quads: number[][];
  readonly shells: LargeShell[];
  u = new Float64Array(0);

  constructor(n: number, clamped: boolean) {
    super();
    this.n = n;
    const { at, quads } = shellGrid(this, n, n, (s, t) => [s / 2, t / 2, 0], material);
    this.at = at;
    this.quads = quads;
    for (let i = 0; i <= n; i++) {
      this.hold(at(0, i), 'xYZ');
      this.hold(at(i, 0), 'yXZ');
      this.hold(at(n, i), clamped ? 'xyzXY' : 'xyzX');
      this.hold(at(i, n), clamped ? 'xyzXY' : 'xyzY');
    }
    const one = shellLarge(this.coordinates(quads[0]!), material);
    this.shells = quads.map(() => one);
    this.u = new Float64Array(this.size);
  }

  own(nodes: readonly number[]): Float64Array {
    return Float64Array.from(nodes.flatMap((k) => [...this.u.subarray(6 * k, 6 * k + 6)]));
  }

  /** Newton's method; gives the number of steps it took. */
  solveFor(Q: number): number {
    const f = new Float64Array(this.size);
    for (const quad of this.quads) for (const k of quad) f[6 * k + 2]! += (Q * Et4) / (16 * this.n ** 2);
    const free = new Int32Array(this.size).fill(-1);
    let count = 0;
    for (let k = 0; k < this.size; k++) if (!this.held.has(k)) free[k] = count++;
    for (let step = 1; step < 40; step++) {
      const r = f.slice();
      const elements = this.quads.map((nodes, e) => {
        const { force, tangent } = this.shells[e]!.respond(this.own(nodes));
        force.forEach((value, k) => (r[6 * nodes[Math.floor(k / 6)]! + (k % 6)]! -= value));
        return { nodes, stiffness: tangent };
      });
      const K = assembled(elements, free, count);
      if (envelopeCholesky(K, 1e-13) !== -1) throw new Error('The tangent is not positive definite');
      const x = new Float64Array(count);
      for (let k = 0; k < this.size; k++) if (free[k]! >= 0) x[free[k]!] = r[k]!;
      solveUpper(K, solveLower(K, x));
      let largest = 0;
      for (let k = 0; k < this.size; k++)
        if (free[k]! >= 0) {
          this.u[k]! += x[free[k]!]!;
          if (k % 6 === 2) largest = Math.max(largest, Math.abs(x[free[k]!]!));
        }
      if (largest < 1e-9 * material.thickness) return step;
    }
    throw new Error(`Newton’s method did not settle at Q = ${Q}`);
  }

  /** Membrane and bending stress along x at a node (mean of its elements), in E t²/a². */
  stress(node: number): { membrane: number; bending: number } {
    let [membrane, bending, count] = [0, 0, 0];
    const t = material.thickness;
    this.quads.forEach((nodes, e) => {
      const corner = nodes.indexOf(node);
      if (corner === -1) return;
      const u = this.own(nodes);
      membrane += this.shells[e]!.membraneForces(u)[3 * (corner + 1)]! / t;
      bending +=
        (6 * shellForces(shellRecovery(this.coordinates(nodes), material), t, u)[6 * (corner + 1) + 3]!) / t ** 2;
      count++;
    });
    return { membrane: membrane / count / unit, bending: bending / count / unit };
  }
}

describe('large deflection of square plates with immovable edges (S. Levy, NACA TR 737 and 740; digits from von Kármán Ritz at nu 0.3, derived)', () => {
  it('clamped: w/t and stresses at the centre and the middle of an edge, where membrane stress comes last but as h²', () => {
    const plates = [8, 16].map((n) => new LargePlate(n, true));
    for (const [Q, ...targets] of [
      [17.8, 0.2388, 0.1895, 2.353, 0.1356, 5.386],
      [63.4, 0.696, 1.592, 6.425, 1.195, 17.06],
      [184, 1.3091, 5.527, 10.44, 4.586, 38.84],
      [402, 1.867, 11.14, 13, 10.08, 67.52],
    ] as const) {
      const [coarse, fine] = plates.map((plate) => {
        plate.solveFor(Q);
        const [centre, edge] = [plate.stress(0), plate.stress(plate.at(plate.n, 0))];
        const found = [plate.u[2]! / material.thickness, centre.membrane, centre.bending, edge.membrane, -edge.bending];
        console.info(`clamped Q ${Q}, mesh ${plate.n}: ${found.map((v, k) => (v / targets[k]!).toFixed(4)).join(' ')}`);
        return found.map((value, k) => Math.abs(value / targets[k]! - 1));
      });
      [5e-3, 5e-3, 5e-3, 0.07, 0.015].forEach((tolerance, k) => expect(fine![k]!).toBeLessThan(tolerance));
      expect(coarse![3]! / fine![3]!).toBeGreaterThan(2.8);
    }
  });

  it('hinged: w/t and stresses at the centre, and w/t converges as h²', () => {
    const plates = [4, 8, 16].map((n) => new LargePlate(n, false));
    for (const [Q, w, m, b] of [
      [12.1, 0.4258, 0.554, 2.687],
      [99.4, 1.2603, 4.954, 6.951],
      [358, 2.0167, 12.96, 10.12],
    ] as const) {
      const values = plates.map((plate) => {
        plate.solveFor(Q);
        return plate.u[2]! / material.thickness / w;
      });
      const { membrane, bending } = plates[2]!.stress(0);
      console.info(
        `hinged Q ${Q}: w ${values.map((v) => v.toFixed(4)).join(' ')}, stress ${(membrane / m).toFixed(4)} ${(bending / b).toFixed(4)}`,
      );
      expect(Math.abs(values[2]! - 1)).toBeLessThan(3e-3);
      expect(Math.abs(membrane / m - 1)).toBeLessThan(0.01);
      expect(Math.abs(bending / b - 1)).toBeLessThan(0.01);
    }
  });
});
