import type { Geometry } from '../geometry/geometry.ts';
import { barInertia, type Body } from './body.ts';

/** Weld metal: the document's allowance on the tubes' mass, spread evenly over the crossings, and the fillets along the
 *  panels' edges (throat² × length: the leg of an equal fillet is √2 throats), with the plugs that fill their holes. */
export function weldBodies(geometry: Geometry, tubeMass: number, allowance: number): Body[] {
  const { crossings, crossTubes, mainTubes, arrangement, panels } = geometry;
  const mass = (allowance * tubeMass) / crossings.length;
  const cross = new Map(crossTubes.map((tube) => [tube.id, tube]));
  const density = mainTubes[0]!.material.density;
  const joints: Body[] = crossings.map(({ x, y, cross: id }) => {
    const tube = cross.get(id)!;
    return {
      name: 'Welds at the crossings, allowance',
      kind: 'welds',
      allowance: true,
      mass,
      volume: mass / density,
      centre: [x, y, arrangement === 'stacked' ? 0 : (tube.bottom + tube.top) / 2],
      inertia: [0, 0, 0],
    };
  });
  const edges = panels.flatMap((panel): Body[] => {
    const { fixing } = panel.design;
    if (fixing.kind !== 'welded') return [];
    const a = fixing.throat.si;
    const arm = (Math.SQRT2 / 3) * a;
    const plugs = panel.plugs.map(({ x, y, diameter }): Body => {
      const volume = (Math.PI / 4) * diameter ** 2 * panel.thickness;
      return {
        name: 'Welds of panels',
        kind: 'welds',
        mass: panel.material.density * volume,
        volume,
        centre: [x, y, (panel.bottom + panel.top) / 2],
        inertia: [0, 0, 0],
        panel: panel.id,
      };
    });
    const fillets = [...panel.weldRuns, ...panel.weldReturns].map(({ from, to, length }): Body => {
      const volume = a ** 2 * length;
      const m = panel.material.density * volume;
      const z = panel.pressedBy === 'down' ? panel.bottom + arm : panel.top - arm;
      return {
        name: 'Welds of panels',
        kind: 'welds',
        mass: m,
        volume,
        centre: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, z],
        inertia: barInertia(Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]) ? 'x' : 'y', m, length),
        panel: panel.id,
      };
    });
    return [...fillets, ...plugs];
  });
  return [...(mass > 0 ? joints : []), ...edges];
}
