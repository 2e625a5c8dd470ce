import { mkdirSync, writeFileSync } from 'node:fs';
import { holding, randomSystem, shellPlate } from '../../tests/solve/sparse/systems.ts';
import type { StiffnessSystem } from '../../core/solve/sparse/stiffness-system.ts';
import { builtCholmod, startCholmod } from './cholmod.ts';
import { matrixMarket } from './exported.ts';
import { lowerTriangle } from './lower-triangle.ts';

const folder = 'tests/solve/sparse/exported';

/** Writes the exported matrices and what CHOLMOD gives for a right-hand side of ones: `node build/cholmod/record.mjs`. */
export async function record(): Promise<void> {
  if (!builtCholmod()) throw new Error('CHOLMOD is not here: apt-get install gcc libsuitesparse-dev');
  mkdirSync(folder, { recursive: true });
  for (const [name, system] of Object.entries(exportedSystems())) {
    const K = lowerTriangle(system);
    const f = new Float64Array(K.freedoms.length).fill(1);
    const cholmod = startCholmod(name, K, f, 'amd');
    const { residual } = await cholmod.round();
    const u = await cholmod.solution();
    cholmod.end();
    writeFileSync(`${folder}/${name}.mtx.gz`, matrixMarket(K));
    writeFileSync(`${folder}/${name}.solution.txt`, `${Array.from(u).join('\n')}\n`);
    console.log(`${name}: ${f.length} unknowns, ${K.entry.length} entries, CHOLMOD's scaled residual ${residual}`);
  }
}

/** Small matrices of the kinds that a structure gives: a thin shell that stands askew and is held at one side only (ill
 *  conditioned), the same with loose freedoms held here and there, and one that is of no mesh. */
export function exportedSystems(): Readonly<Record<string, StiffnessSystem>> {
  return {
    'thin-shell': holding(shellPlate(7, 5, 0.0004, 0.05, true), (_x, _y, _z, node) => node % 8 === 0),
    'flat-plate': holding(
      holding(shellPlate(6, 6, 0.01), (x, y) => x === 0 || y === 0, [0, 1, 2]),
      (x, y) => x > 0.29 && y > 0.29,
      [2],
    ),
    'no-mesh': randomSystem(40, 30, 4),
  };
}
