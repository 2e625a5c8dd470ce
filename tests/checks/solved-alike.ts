import { solvedKey, type SituationForces, type SolvedForces } from '../../core/loads/solved-forces.ts';
import type { Model } from '../../core/model.ts';

/**
 * Forces as if the whole plate's solution had found what the grid of tubes has: for tests of what is made of them. Panels
 * get round numbers.
 */
export function solvedAlike(
  model: Model,
  changed: (forces: SituationForces, situation: string) => SituationForces = (forces) => forces,
): SolvedForces {
  const { swing } = model.loads;
  const situations = [...model.loads.situations, swing.up, swing.down]
    .filter(({ missing }) => missing === undefined)
    .map(({ id, tubes, legs }): [string, SituationForces] => [
      id,
      changed(
        {
          loadings: 1,
          settled: true,
          free: {},
          tubes: Object.fromEntries(
            [...tubes].map(([tube, { moment, shear, torque, axial, deflection }]) => [
              tube,
              { M: Math.abs(moment), V: Math.abs(shear), T: Math.abs(torque), N: Math.abs(axial), rise: Math.abs(deflection) },
            ]),
          ),
          crossings: Object.fromEntries(
            model.geometry.crossings.map(({ id: crossing }) => [crossing, { M_1: 1e3, V_1: 1e3, N_1: 1e3, M_0: 1e3, N_0: 1e3 }]),
          ),
          legs: Object.fromEntries(
            [...legs].map(([leg, { tension, x, y, angle }]) => [
              leg,
              { along: Math.abs(tension), upright: Math.abs(tension) * Math.cos(angle), x: Math.abs(x), y: Math.abs(y) },
            ]),
          ),
          panels: Object.fromEntries(
            model.geometry.panels.map((panel) => [
              panel.id,
              {
                pull: panel.bolts.length > 0 ? { force: 5e3, bolt: panel.bolts[0]!.id } : null,
                shear: panel.bolts.length > 0 ? { force: 2e3, bolt: panel.bolts[0]!.id } : null,
                weld:
                  panel.weldRuns.length > 0
                    ? { side: 'mainLow', along: 1e4, across: 1e4, pull: 2e4, opening: 10, use: 3e4 }
                    : null,
                stress: 50e6,
                membrane: 5e6,
                dip: 1e-3,
              },
            ]),
          ),
          buckling: { factor: 100, within: 100, part: '' },
        },
        id,
      ),
    ]); // prettier-ignore
  return {
    key: solvedKey(model.document),
    mesh: { size: 0.05, unknowns: 1000, stressError: 0.01, residual: 1e-14 },
    situations: Object.fromEntries(situations),
  };
}
