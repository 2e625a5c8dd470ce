import { shellStiffness, shellUnits } from '../../../core/solve/elements/shell-stiffness.ts';
import type { StiffnessSystem } from '../../../core/solve/sparse/stiffness-system.ts';
import type { ElementStiffness } from '../../../core/solve/structure/element-stiffness.ts';

/** Numbers from 0 to 1 that are the same each time (a linear congruence, modulus 2³², constants from memory). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}

/** A rectangular plate of real shell elements, n × m, each side × side (m), in plane z = 0 or turned by a rotation about an
 *  axis that is none of the model's. steel, thickness t in m. Nothing is held. */
export function shellPlate(n: number, m: number, t: number, side = 0.05, turned = false): StiffnessSystem {
  const count = (n + 1) * (m + 1);
  const coordinates = new Float64Array(3 * count);
  for (let j = 0; j <= m; j++)
    for (let i = 0; i <= n; i++) {
      const [x, y] = [i * side, j * side];
      const v = 3 * (j * (n + 1) + i);
      // Rows of a rotation with no zero entry: (2 -2 1)/3, (1 2 2)/3.
      coordinates[v] = turned ? (2 * x + y) / 3 : x;
      coordinates[v + 1] = turned ? (-2 * x + 2 * y) / 3 : y;
      coordinates[v + 2] = turned ? (x + 2 * y) / 3 : 0;
    }
  const quad = (i: number, j: number) => {
    const v = j * (n + 1) + i;
    return [v, v + 1, v + n + 2, v + n + 1];
  };
  const corners = quad(0, 0).flatMap((v) => Array.from(coordinates.subarray(3 * v, 3 * v + 3)));
  const stiffness = shellStiffness(shellUnits(Float64Array.from(corners), { E: 210e9, nu: 0.3 }), t);
  const elements: ElementStiffness[] = [];
  for (let j = 0; j < m; j++) for (let i = 0; i < n; i++) elements.push({ nodes: quad(i, j), stiffness });
  return { coordinates, elements, held: new Uint8Array(6 * count) };
}

/** Holds all freedoms, or those named, of the nodes that are chosen. */
export function holding(
  system: StiffnessSystem,
  chosen: (x: number, y: number, z: number, node: number) => boolean,
  freedoms: readonly number[] = [0, 1, 2, 3, 4, 5],
): StiffnessSystem {
  const held = Uint8Array.from(system.held);
  const { coordinates } = system;
  for (let node = 0; node < held.length / 6; node++)
    if (chosen(coordinates[3 * node]!, coordinates[3 * node + 1]!, coordinates[3 * node + 2]!, node))
      for (const k of freedoms) held[6 * node + k] = 1;
  return { ...system, held };
}

/** Elements of one to four nodes with random positive matrices on nodes anywhere, some freedoms held. Some nodes may have
 *  no neighbour: the graph may fall apart. */
export function randomSystem(nodes: number, elements: number, seed: number): StiffnessSystem {
  const next = chance(seed);
  const positive = (size: number): Float64Array => {
    const B = Float64Array.from({ length: size * size }, () => next() - 0.5);
    const K = new Float64Array(size * size);
    for (let i = 0; i < size; i++)
      for (let j = 0; j < size; j++) {
        let sum = i === j ? 1e-3 : 0;
        for (let k = 0; k < size; k++) sum += B[i * size + k]! * B[j * size + k]!;
        K[i * size + j] = sum;
      }
    return K;
  };
  return {
    coordinates: Float64Array.from({ length: 3 * nodes }, next),
    held: Uint8Array.from({ length: 6 * nodes }, () => (next() < 0.15 ? 1 : 0)),
    elements: [
      ...Array.from({ length: nodes }, (_, node) => ({ nodes: [node], stiffness: positive(6) })),
      ...Array.from({ length: elements }, () => {
        const of = new Set(Array.from({ length: 1 + Math.floor(4 * next()) }, () => Math.floor(nodes * next())));
        return { nodes: [...of], stiffness: positive(6 * of.size) };
      }),
    ],
  };
}

/** Forces on all freedoms, the same each time. */
export function someForces(system: StiffnessSystem, seed = 1): Float64Array {
  const next = chance(seed);
  return Float64Array.from(system.held, () => next() - 0.5);
}

/** K over the free freedoms, dense by rows, and which freedom of the system each row is. */
export function denseMatrix(system: StiffnessSystem): { readonly K: Float64Array; readonly freedoms: number[] } {
  const freedoms = Array.from(system.held.keys()).filter((i) => system.held[i] === 0);
  const place = new Map(freedoms.map((freedom, i) => [freedom, i]));
  const n = freedoms.length;
  const K = new Float64Array(n * n);
  for (const { nodes, stiffness } of system.elements) {
    const of = nodes.flatMap((node) => [0, 1, 2, 3, 4, 5].map((k) => place.get(6 * node + k)));
    of.forEach((i, a) => {
      if (i !== undefined) of.forEach((j, b) => j !== undefined && (K[i * n + j]! += stiffness[a * of.length + b]!));
    });
  }
  return { K, freedoms };
}

/** ½ Σ eᵀ K e of the difference of two displacements, as a part of that of the second: its root. */
export function energyDifference(system: StiffnessSystem, u: Float64Array, v: Float64Array): number {
  const energy = (x: (i: number) => number): number => {
    let sum = 0;
    for (const { nodes, stiffness } of system.elements) {
      const local = nodes.flatMap((node) => [0, 1, 2, 3, 4, 5].map((k) => x(6 * node + k)));
      local.forEach((a, i) => local.forEach((b, j) => (sum += a * stiffness[i * local.length + j]! * b)));
    }
    return sum;
  };
  return Math.sqrt(
    Math.max(
      energy((i) => u[i]! - v[i]!),
      0,
    ) / energy((i) => v[i]!),
  );
}

/** The largest entry of u - v as a part of the largest of v. */
export function largestDifference(u: Float64Array, v: Float64Array): number {
  let difference = 0;
  let most = 0;
  v.forEach((value, i) => {
    difference = Math.max(difference, Math.abs(u[i]! - value));
    most = Math.max(most, Math.abs(value));
  });
  return difference / most;
}
