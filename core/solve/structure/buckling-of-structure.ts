import { beamEndForces } from '../elements/beam-forces.ts';
import { beamGeometric } from '../elements/beam-mass.ts';
import type { Beam } from '../elements/beam.ts';
import { shellGeometric } from '../elements/shell-geometric.ts';
import { shellForces } from '../elements/shell-recovery.ts';
import { elementProduct } from '../sparse/element-product.ts';
import { eigenPairs } from './eigen-pairs.ts';
import type { ElementStiffness } from './element-stiffness.ts';
import type { ModeSupport } from './modes-support.ts';
import { shellRecoveries } from './shell-recoveries.ts';
import type { Structure } from './structure.ts';

/** One way in which a structure buckles. */
export interface BucklingMode {
  /** Times the loading at which it comes, by elastic theory and from a flat start. */
  readonly factor: number;
  /** Displacements of all nodes, 6N, the largest shift of a node 1 m. */
  readonly shape: Float64Array;
  /** A factor lies within this part of it. */
  readonly residual: number;
  /** Where it gives way: the panel or tube on which the loading does most work, and its part of all that work. */
  readonly most: { readonly kind: 'panel' | 'tube'; readonly id: string; readonly part: number };
}

export interface BucklingSet {
  /** From the lowest up, to `within` times the loading; none where nothing gives way up to there. */
  readonly modes: readonly BucklingMode[];
  readonly within: number;
  readonly converged: boolean;
}

/** Geometric stiffness of a structure's beams and shells under displacements u (6N): each shell under the membrane forces at
 *  its middle, each beam under its pull. Tubes are there for balance as well: panels and tubes pull on each other, and
 *  only together do they leave a rigid turn alone. */
export function geometricElements({ structure, beams }: { readonly structure: Structure; readonly beams: readonly Beam[] }, u: Float64Array): ElementStiffness[] {
  const own = (nodes: readonly number[]): Float64Array => {
    const out = new Float64Array(6 * nodes.length);
    nodes.forEach((n, i) => out.set(u.subarray(6 * n, 6 * n + 6), 6 * i));
    return out;
  };
  const recoveries = shellRecoveries(structure);
  return [
    ...structure.beams.map(({ nodes }, e): ElementStiffness => {
      const { start, end } = beamEndForces(beams[e]!, own(nodes));
      return { nodes, stiffness: beamGeometric(beams[e]!, (start.N + end.N) / 2) };
    }),
    ...structure.shells.map(({ nodes, thickness, a, b }, e): ElementStiffness => {
      const xyz = Float64Array.of(0, 0, 0, a, 0, 0, a, b, 0, 0, b, 0);
      const N = shellForces(recoveries[e]!, thickness, own(nodes)).subarray(0, 3);
      return { nodes, stiffness: shellGeometric(xyz, N) };
    }),
  ];
} // prettier-ignore

/**
 * Lowest positive factors λ of (K + λ G) φ = 0: linear buckling, with G of the loading as it was solved. Contact that was
 * closed stays closed, and what is open does not close as the panel bulges. Factors beyond `within` are not looked for.
 * Yields the solves done so far.
 */
export function* structureBuckling(
  { structure, system, factor }: ModeSupport,
  geometric: readonly ElementStiffness[],
  count: number,
  within = 100,
): Generator<number, BucklingSet> {
  const { held, coordinates } = system;
  const size = held.length;
  const G = { coordinates, held, elements: geometric };
  if (geometric.every(({ stiffness }) => stiffness.every((value) => value === 0)))
    return { modes: [], within, converged: true };
  const { pairs, converged } = yield* eigenPairs(
    {
      size,
      solve: (f) => factor.solve(f),
      stiffness: (u) => elementProduct(system, u, new Float64Array(size)),
      weight: (u) => {
        const f = elementProduct(G, u, new Float64Array(size));
        for (let i = 0; i < size; i++) f[i] = held[i] === 1 ? 0 : -f[i]!;
        return f;
      },
    },
    { count, within },
  );
  return {
    modes: pairs.map(({ λ, shape, residual }) => ({
      factor: λ,
      shape: scaled(shape),
      residual,
      most: whereIt(structure, geometric, shape),
    })),
    within,
    converged,
  };
}

/** The part on which the loading does most of its work, -½ φᵀ G φ. */
function whereIt(
  { beams, shells, panels, tubes }: Structure,
  geometric: readonly ElementStiffness[],
  shape: Float64Array,
): BucklingMode['most'] {
  const [onTubes, onPanels] = [tubes.map(() => 0), panels.map(() => 0)];
  geometric.forEach(({ nodes, stiffness }, e) => {
    const size = 6 * nodes.length;
    const own = new Float64Array(size);
    nodes.forEach((n, i) => own.set(shape.subarray(6 * n, 6 * n + 6), 6 * i));
    let work = 0;
    for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) work -= own[i]! * stiffness[i * size + j]! * own[j]!;
    if (e < beams.length) onTubes[beams[e]!.tube]! += work;
    else onPanels[shells[e - beams.length]!.panel]! += work;
  });
  const all = [...onTubes, ...onPanels];
  const total = all.reduce((sum, value) => sum + value, 0);
  const at = all.indexOf(Math.max(...all));
  return at < tubes.length
    ? { kind: 'tube', id: tubes[at]!.id, part: all[at]! / total }
    : { kind: 'panel', id: panels[at - tubes.length]!.id, part: all[at]! / total };
}

function scaled(shape: Float64Array): Float64Array {
  let most = 0;
  for (let i = 0; i < shape.length; i++) if (i % 6 < 3 && Math.abs(shape[i]!) > Math.abs(most)) most = shape[i]!;
  return shape.map((value) => value / most);
}
