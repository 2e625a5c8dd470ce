import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtCholmod, startCholmod } from '../../../build/cholmod/cholmod.ts';
import { systemOf } from '../../../build/cholmod/exported.ts';
import { lowerTriangle } from '../../../build/cholmod/lower-triangle.ts';
import { exportedSystems } from '../../../build/cholmod/record.ts';
import { factorise } from '../../../core/solve/sparse/factorise.ts';
import type { StiffnessSystem } from '../../../core/solve/sparse/stiffness-system.ts';
import { energyDifference, holding, shellPlate } from './systems.ts';

/** Ours and CHOLMOD's answer to a right-hand side of ones, by one measure. */
function expectAgreement(system: StiffnessSystem, of: Float64Array): void {
  const made = factorise(system);
  const f = Float64Array.from(system.held, (held) => 1 - held);
  const theirs = new Float64Array(f.length);
  let p = 0;
  system.held.forEach((held, i) => {
    if (held === 0) theirs[i] = of[p++]!;
  });
  const u = made.solve(f);
  expect(made.residual(u, f)).toBeLessThan(1e-14);
  expect(made.residual(theirs, f)).toBeLessThan(1e-14);
  expect(energyDifference(system, u, theirs)).toBeLessThan(Math.max(1e-10, 100 * 2 ** -52 * made.conditionEstimate));
}

describe('CHOLMOD of SuiteSparse (Debian 12, recorded by build/cholmod/record.mjs)', () => {
  for (const [name, made] of Object.entries(exportedSystems())) {
    const folder = new URL('./exported/', import.meta.url);
    const system = systemOf(readFileSync(new URL(`${name}.mtx.gz`, folder)));
    const recorded = Float64Array.from(
      readFileSync(new URL(`${name}.solution.txt`, folder), 'utf8')
        .trim()
        .split('\n')
        .map(Number),
    );

    it(`${name}: the solution of the exported matrix, and of the system it was exported from`, () => {
      expectAgreement(system, recorded);
      expectAgreement(made, recorded);
    });
  }

  it('the thin shell is ill conditioned: an estimate above 1e9', () =>
    expect(factorise(exportedSystems()['thin-shell']!).conditionEstimate).toBeGreaterThan(1e9));
});

// On CI CHOLMOD must be there (.ci/run installs it); on a developer's machine it may be missing, and the recorded solutions serve.
describe.runIf(process.env.CI !== undefined || builtCholmod())('CHOLMOD as it is here', () => {
  it('is there', () => expect(builtCholmod()).toBe(true));

  for (const ordering of ['amd', 'metis'] as const)
    it(`solves a plate of 2 500 unknowns to the same, ordered by ${ordering}`, async () => {
      const system = holding(shellPlate(20, 20, 0.004, 0.05, true), (_x, _y, _z, node) => node < 21);
      const K = lowerTriangle(system);
      const cholmod = startCholmod(`test-${ordering}`, K, new Float64Array(K.freedoms.length).fill(1), ordering);
      try {
        const { residual } = await cholmod.round();
        expect(residual).toBeLessThan(1e-14);
        expectAgreement(system, await cholmod.solution());
      } finally {
        cholmod.end();
      }
    });
});
