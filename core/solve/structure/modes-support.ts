import type { StiffnessSystem } from '../sparse/stiffness-system.ts';
import { withContact } from './contact.ts';
import { denseEigenpairs } from './eigen-dense.ts';
import type { ElementStiffness } from './element-stiffness.ts';
import type { Factored, Factorise } from './factorise.ts';
import { holdFreedoms } from './hold-freedoms.ts';
import { addRigidMotion, pointMotion } from './point-force.ts';
import type { Structure, SupportPart } from './structure.ts';
import type { Vector } from '../vector.ts';

/** A structure as it moves by small amounts: what is stiff, what holds it, and the motions that nothing holds. */
export interface ModeSupport {
  readonly structure: Structure;
  readonly system: StiffnessSystem;
  readonly factor: Factored;
  /** Freedoms that cannot move at all. */
  readonly held: Uint8Array;
  /** Rigid motions that no support resists, each 6N: six for a plate that floats free. */
  readonly rigid: readonly Float64Array[];
  /** Supports as springs along their lines, N/m. */
  readonly springs: readonly { readonly support: SupportPart; readonly stiffness: number }[];
}

export interface ModeHolding {
  /** Held along their lines, both ways: a line or leg stays taut while the mean pull is more than what the mode takes off. */
  readonly supports?: readonly SupportPart[];
  /** Freedoms that cannot move at all, 6N. */
  readonly held?: Uint8Array;
  /** Points of contact that stay closed, and carry both ways. */
  readonly closed?: Uint8Array;
}

/**
 * Puts supports under a structure for its modes. A support is a spring k d dᵀ along its line with k a thousand times the
 * stiffness of its own node that way, so it gives way by less than a thousandth of what the structure does (`supportGive`
 * of a mode says how much). What supports leave free is held at as few freedoms as that takes and put back as a rigid
 * motion afterwards, so that no invented support is felt.
 */
export function modeSupport(
  structure: Structure,
  elements: readonly ElementStiffness[],
  factorise: Factorise,
  { supports = [], held = new Uint8Array(2 * structure.coordinates.length), closed }: ModeHolding,
): ModeSupport {
  const { coordinates } = structure;
  const all = withContact(elements, structure, closed);
  const springs = supports.map((support) => ({ support, stiffness: stiffer * ownStiffness(all, support) }));
  const rigid = freeMotions(structure, supports, held);
  const rest = Uint8Array.from(held);
  for (const freedom of fewest(structure, rigid)) rest[freedom] = 1;
  const system: StiffnessSystem = {
    coordinates,
    elements: [...all, ...springs.map(({ support, stiffness }) => springElement(support, stiffness))],
    held: rest,
  };
  return { structure, system, factor: factorise(system), held, rigid, springs };
}

/** A support's spring over the node's own stiffness. A stiffer one would only cost figures. */
const stiffer = 1000;

/** Rows of a support's motion over its node's six freedoms: d · (u + θ × r). */
const alongLine = ({ offset, direction }: SupportPart): Float64Array =>
  Float64Array.from({ length: 6 }, (_, k) => {
    const one = new Float64Array(6);
    one[k] = 1;
    return product(pointMotion(one, 0, offset), direction);
  });

const product = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

function springElement(support: SupportPart, stiffness: number): ElementStiffness {
  const g = alongLine(support);
  return {
    nodes: [support.node],
    stiffness: Float64Array.from({ length: 36 }, (_, k) => stiffness * g[Math.floor(k / 6)]! * g[k % 6]!),
  };
}

/** dᵀ K d of the support's node, all other nodes fast, for a line of unit length. */
function ownStiffness(elements: readonly ElementStiffness[], { node, direction }: SupportPart): number {
  let sum = 0;
  for (const { nodes, stiffness } of elements)
    nodes.forEach((n, a) => {
      if (n !== node) return;
      const size = 6 * nodes.length;
      for (let i = 0; i < 3; i++)
        for (let j = 0; j < 3; j++) sum += direction[i]! * stiffness[(6 * a + i) * size + 6 * a + j]! * direction[j]!;
    });
  return sum / product(direction, direction) ** 2;
}

/** Rigid motions, of size one, that neither supports nor held freedoms resist. */
function freeMotions({ coordinates }: Structure, supports: readonly SupportPart[], held: Uint8Array): Float64Array[] {
  const all = rigidMotions(coordinates);
  const rows = [
    ...supports.map(({ node, offset, direction }) => {
      const size = Math.hypot(...direction);
      return all.map((motion) => product(pointMotion(motion, node, offset), direction) / size);
    }),
    ...[...held.keys()].filter((k) => held[k] === 1).map((k) => all.map((motion) => motion[k]!)),
  ];
  const S = new Float64Array(36);
  for (const row of rows) for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) S[6 * i + j]! += row[i]! * row[j]!;
  const { values, vectors } = denseEigenpairs(S, 6);
  return Array.from(values.keys())
    .filter((k) => values[k]! <= 1e-10 * Math.max(values[0]!, 1e-300))
    .map((k) => combined(all, vectors.subarray(6 * k, 6 * k + 6)));
}

/** Three shifts, and three turns about the middle by which the furthest nodes move about as far. */
function rigidMotions(coordinates: Float64Array): Float64Array[] {
  const count = coordinates.length / 3;
  const middle = [0, 1, 2].map((c) => {
    let sum = 0;
    for (let n = 0; n < count; n++) sum += coordinates[3 * n + c]!;
    return sum / count;
  }) as [number, number, number];
  let reach = 0;
  for (let n = 0; n < count; n++)
    reach = Math.max(reach, Math.hypot(...middle.map((at, c) => coordinates[3 * n + c]! - at)));
  return [0, 1, 2, 3, 4, 5].map((k) => {
    const q = new Float64Array(6);
    q[k] = k < 3 ? 1 : 1 / reach;
    const [x, y, z] = middle;
    // about the middle: the origin goes by -θ × middle
    q[0]! -= q[4]! * z - q[5]! * y;
    q[1]! -= q[5]! * x - q[3]! * z;
    q[2]! -= q[3]! * y - q[4]! * x;
    const u = new Float64Array(2 * coordinates.length);
    addRigidMotion(coordinates, q, u);
    return u;
  });
}

function combined(of: readonly Float64Array[], by: Float64Array): Float64Array {
  const sum = new Float64Array(of[0]!.length);
  of.forEach((motion, k) => motion.forEach((value, i) => (sum[i]! += by[k]! * value)));
  return sum;
}

/** As many freedoms as there are free motions, among those that hold a free structure: the ones that hold them best. */
function fewest(structure: Structure, rigid: readonly Float64Array[]): number[] {
  if (rigid.length === 0) return [];
  const candidates = holdFreedoms(structure);
  const rows = [...candidates.keys()]
    .filter((k) => candidates[k] === 1)
    .map((freedom) => ({ freedom, row: rigid.map((motion) => motion[freedom]!) }));
  const chosen: number[] = [];
  for (let step = 0; step < rigid.length; step++) {
    let best = { size: 0, at: -1, column: -1 };
    rows.forEach(({ row }, at) =>
      row.forEach((value, column) => {
        if (Math.abs(value) > best.size) best = { size: Math.abs(value), at, column };
      }),
    );
    const [pivot] = rows.splice(best.at, 1) as [(typeof rows)[number]];
    chosen.push(pivot.freedom);
    for (const { row } of rows) {
      const factor = row[best.column]! / pivot.row[best.column]!;
      row.forEach((value, c) => (row[c] = c === best.column ? 0 : value - factor * pivot.row[c]!));
    }
  }
  return chosen;
}
