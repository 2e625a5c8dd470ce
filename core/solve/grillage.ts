import { refusal } from '../refusal.ts';
import { envelope, envelopeCholesky, solveLower, solveUpper, type Envelope } from './envelope-cholesky.ts';
import { addGlobal, beamOf, endForces, type Beam } from './grillage-beam.ts';
import { requireHeld } from './grillage-held.ts';
import { inertiaOf, type Inertia } from './grillage-inertia.ts';
import { nodeName, requireGrid, requireLoads } from './grillage-input.ts';
import { beamActions, equivalentEndForces, type LineLoad } from './grillage-member.ts';
import type { Grillage, GrillageAnswer, GrillageLoads, GrillageModel } from './grillage-model.ts';
import { feltAt, spanOf, type RigidFrame, type RigidMotion } from './rigid-motion.ts';

const { abs, hypot, max, min } = Math;

/** Factors a grid once; `solve` then answers any number of load cases. Displacement method with exact beams (bending,
 *  shear, St Venant torsion), numbered along the longer side, envelope Cholesky, one step of refinement.
 *  Refuses a grid that can move, in words, and input that is not a grid. Error: round-off (see `residual`); beams of
 *  small deflection without warping, joints without size. Source: the displacement method, e.g. Przemieniecki, Theory
 *  of Matrix Structural Analysis (1968). */
export function grillage(model: GrillageModel): Grillage {
  requireGrid(model);
  const beams = model.members.map((member) => beamOf(model, member));
  const frame = frameOf(model);
  const [held, spring] = supportsOf(model);
  const free = requireHeld(model, frame);
  // A free body is fixed at as many freedoms as it has free motions; its loads are in balance, so these carry nothing.
  const fixed = model.freeBody ? fixForNow(model, frame, free) : [];
  for (const freedom of fixed) held[freedom] = 1;
  const place = numbering(model, held);
  const unknowns = place.reduce((count, row) => count + (row >= 0 ? 1 : 0), 0);
  const own = beams.map(globalStiffness);
  const K = assemble(beams, own, spring, place, unknowns);
  const failed = envelopeCholesky(K);
  if (failed >= 0) throw looseNode(model, place.indexOf(failed));
  const inertia = free.length > 0 ? inertiaOf(model, beams, frame, free) : null;
  const factored = { model, beams, frame, held, spring, fixed, place, K, inertia };
  return {
    unknowns,
    solve: (loads) => solve(factored, loads),
    displacements: (forces) => displacements(factored, own, forces),
  };
}

interface Factored {
  readonly model: GrillageModel;
  readonly beams: readonly Beam[];
  readonly frame: RigidFrame;
  /** By freedom: 1 where it cannot move, the stiffness of springs, and its row among the unknowns, -1 where held. */
  readonly held: Uint8Array;
  readonly spring: Float64Array;
  readonly place: Int32Array;
  /** Freedoms of a free body that are held only so that it can be solved. */
  readonly fixed: readonly number[];
  readonly K: Envelope;
  readonly inertia: Inertia | null;
}

function solve(
  { model, beams, frame, held, spring, fixed, place, K, inertia }: Factored,
  loads: GrillageLoads,
): GrillageAnswer {
  const { nodal, lines } = requireLoads(model, loads);
  const size = scaleOf(nodal, lines, beams, frame);
  const acceleration = inertia ? inertia.balance(nodal, lines) : null;
  const equivalent = beams.map((beam, e) => equivalentEndForces(beam, lines[e]!));

  /** Forces of the nodes on the beams' ends, and in the grid's axes, summed at each node. */
  const forcesOf = (u: Float64Array): { sum: Float64Array; ends: Float64Array[] } => {
    const sum = new Float64Array(u.length);
    const ends = beams.map((beam, e) => {
      const f = endForces(beam, u);
      equivalent[e]!.forEach((value, i) => (f[i]! -= value));
      addGlobal(beam, f, sum);
      return f;
    });
    return { sum, ends };
  };
  const unbalanced = (u: Float64Array, sum: Float64Array): Float64Array =>
    nodal.map((force, i) => force - sum[i]! - spring[i]! * u[i]!);

  const u = new Float64Array(nodal.length);
  for (let round = 0; round < 2; round++) {
    const rest = unbalanced(u, forcesOf(u).sum);
    const x = new Float64Array(K.size);
    place.forEach((row, i) => row >= 0 && (x[row] = rest[i]!));
    solveUpper(K, solveLower(K, x));
    place.forEach((row, i) => row >= 0 && (u[i]! += x[row]!));
  }
  const bent = Float64Array.from(u); // before it is levelled: a rigid motion bends nothing
  if (inertia) inertia.level(u);
  // Many callers ask for the motion alone: forces inside, reactions and what is left over are worked out when asked for.
  let known: { rest: Float64Array; ends: Float64Array[] } | null = null;
  const inside = () => {
    if (!known) {
      const { sum, ends } = forcesOf(bent);
      known = { rest: unbalanced(bent, sum), ends };
    }
    return known;
  };
  const part = (freedom: number): Float64Array => Float64Array.from(model.nodes, (_, i) => u[3 * i + freedom]!);
  return {
    w: part(0),
    rx: part(1),
    ry: part(2),
    get reactions() {
      const { rest } = inside();
      const reaction = (i: number): number => (held[i] ? -rest[i]! : -spring[i]! * bent[i]!) + 0; // + 0 turns -0 into 0
      return [...new Set(model.supports.map((s) => s.node))].map((node) => {
        const at = (freedom: number): number => (fixed.includes(3 * node + freedom) ? 0 : reaction(3 * node + freedom));
        return { node, w: at(0), mx: at(1), my: at(2) };
      });
    },
    get members() {
      const { ends } = inside();
      return beams.map((beam, e) => beamActions(beam.length, ends[e]!, lines[e]!));
    },
    acceleration,
    get residual() {
      let residual = 0;
      inside().rest.forEach((force, i) => {
        if (held[i] && !fixed.includes(i)) return;
        residual = max(residual, abs(force) / (i % 3 ? frame.length : 1));
      });
      return size > 0 ? residual / size : 0;
    },
  };
}

/** As `solve`, with nothing between the nodes and nothing made but the displacements. */
function displacements(
  { beams, spring, place, K, inertia }: Factored,
  own: readonly Float64Array[],
  forces: Float64Array,
): Float64Array {
  const f = inertia ? inertia.balanced(forces) : forces;
  const u = new Float64Array(f.length);
  const x = new Float64Array(K.size);
  for (let round = 0; round < 2; round++) {
    const rest = Float64Array.from(f);
    if (round > 0) takeResistance(beams, own, spring, u, rest);
    for (let i = 0; i < place.length; i++) if (place[i]! >= 0) x[place[i]!] = rest[i]!;
    solveUpper(K, solveLower(K, x));
    for (let i = 0; i < place.length; i++) if (place[i]! >= 0) u[i]! += x[place[i]!]!;
  }
  inertia?.level(u);
  return u;
}

/** rest ← rest − (Σ K_e + springs) u */
function takeResistance(
  beams: readonly Beam[],
  own: readonly Float64Array[],
  spring: Float64Array,
  u: Float64Array,
  rest: Float64Array,
): void {
  for (let e = 0; e < beams.length; e++) {
    const { freedoms } = beams[e]!;
    const k = own[e]!;
    for (let i = 0; i < 6; i++) {
      let sum = 0;
      for (let j = 0; j < 6; j++) sum += k[6 * i + j]! * u[freedoms[j]!]!;
      rest[freedoms[i]!]! -= sum;
    }
  }
  for (let i = 0; i < u.length; i++) rest[i]! -= spring[i]! * u[i]!;
}

/** Stiffness of a beam on the freedoms of its ends in the grid's axes, 6 × 6 by rows. */
function globalStiffness(beam: Beam): Float64Array {
  const alone = { ...beam, freedoms: [0, 1, 2, 3, 4, 5] };
  const k = new Float64Array(36);
  for (let j = 0; j < 6; j++) {
    const [unit, column] = [new Float64Array(6), new Float64Array(6)];
    unit[j] = 1;
    addGlobal(alone, endForces(alone, unit), column);
    for (let i = 0; i < 6; i++) k[6 * i + j] = column[i]!;
  }
  return k;
}

function frameOf({ nodes }: GrillageModel): RigidFrame {
  const [xs, ys] = [nodes.map((n) => n.x), nodes.map((n) => n.y)];
  const [x0, x1, y0, y1] = [min(...xs), max(...xs), min(...ys), max(...ys)];
  return { x: (x0 + x1) / 2, y: (y0 + y1) / 2, length: max(x1 - x0, y1 - y0) };
}

/** Which freedoms are held rigidly, and the springs on the others. */
function supportsOf({ nodes, supports }: GrillageModel): [Uint8Array, Float64Array] {
  const [held, spring] = [new Uint8Array(3 * nodes.length), new Float64Array(3 * nodes.length)];
  for (const support of supports)
    [support.w, support.rx, support.ry].forEach((stiffness, freedom) => {
      if (stiffness === Infinity) held[3 * support.node + freedom] = 1;
      else if (stiffness !== undefined) spring[3 * support.node + freedom]! += stiffness;
    });
  held.forEach((rigid, i) => rigid && (spring[i] = 0));
  return [held, spring];
}

/** One freedom for each free motion, at the node nearest to the middle: those that feel the free motions most. */
function fixForNow({ nodes }: GrillageModel, frame: RigidFrame, free: readonly RigidMotion[]): number[] {
  const away = nodes.map(({ x, y }) => hypot(x - frame.x, y - frame.y));
  const node = away.indexOf(min(...away));
  const { x, y } = nodes[node]!;
  // What each freedom feels of the free motions alone, as coordinates along them.
  const felt = [0, 1, 2].map((freedom) => {
    const row = feltAt(frame, freedom, x, y);
    return [0, 1, 2].map((k) =>
      free[k] ? row[0] * free[k][0] + row[1] * free[k][1] + row[2] * free[k][2] : 0,
    ) as unknown as RigidMotion;
  });
  const fixed: number[] = [];
  while (fixed.length < free.length) {
    const span = spanOf(fixed.map((freedom) => felt[freedom]!));
    const left = felt.map((row) =>
      hypot(
        ...row.map(
          (value, k) =>
            value - span.reduce((sum, s) => sum + s[k]! * (s[0] * row[0] + s[1] * row[1] + s[2] * row[2]), 0),
        ),
      ),
    );
    fixed.push(left.indexOf(max(...left)));
  }
  return fixed.map((freedom) => 3 * node + freedom);
}

/** Row of each freedom, -1 where held: node after node along the longer side, so that the envelope stays narrow. */
function numbering({ nodes }: GrillageModel, held: Uint8Array): Int32Array {
  const [xs, ys] = [nodes.map((n) => n.x), nodes.map((n) => n.y)];
  const alongX = max(...xs) - min(...xs) >= max(...ys) - min(...ys);
  const [major, minor] = alongX ? [xs, ys] : [ys, xs];
  const order = nodes.map((_, i) => i).sort((i, j) => major[i]! - major[j]! || minor[i]! - minor[j]! || i - j);
  const place = new Int32Array(3 * nodes.length).fill(-1);
  let row = 0;
  for (const node of order)
    for (let freedom = 3 * node; freedom < 3 * node + 3; freedom++) if (!held[freedom]) place[freedom] = row++;
  return place;
}

function assemble(
  beams: readonly Beam[],
  own: readonly Float64Array[],
  spring: Float64Array,
  place: Int32Array,
  unknowns: number,
): Envelope {
  const first = Int32Array.from({ length: unknowns }, (_, i) => i);
  for (const { freedoms } of beams) {
    const rows = freedoms.map((freedom) => place[freedom]!).filter((row) => row >= 0);
    for (const row of rows) first[row] = min(first[row]!, ...rows);
  }
  const K = envelope(first);
  const add = (i: number, j: number, value: number): void => {
    if (i >= 0 && j >= 0 && j <= i) K.entries[K.start[i]! + j]! += value;
  };
  beams.forEach(({ freedoms }, e) => {
    for (let i = 0; i < 6; i++)
      for (let j = 0; j < 6; j++) add(place[freedoms[i]!]!, place[freedoms[j]!]!, own[e]![6 * i + j]!);
  });
  spring.forEach((stiffness, i) => add(place[i]!, place[i]!, stiffness));
  return K;
}

const turnWords = ['sink', 'turn about x', 'turn about y'] as const;

const looseNode = (model: GrillageModel, freedom: number): Error => {
  const [node, way] = [Math.floor(freedom / 3), turnWords[freedom % 3]!];
  const { x, y } = model.nodes[node]!;
  return refusal({
    what: `${nodeName(model, node)} (x = ${x} m, y = ${y} m) can ${way}: nothing holds it`,
    where: { node: node + 1 },
    mend: 'Give the members there torsion stiffness, or hold the node',
  });
};

/** Sum of all loads as forces, moments over the grid's size. */
function scaleOf(
  nodal: Float64Array,
  lines: readonly LineLoad[],
  beams: readonly Beam[],
  { length }: RigidFrame,
): number {
  const nodes = nodal.reduce((sum, force, i) => sum + abs(force) / (i % 3 ? length : 1), 0);
  return lines.reduce(
    (sum, line, e) => sum + beams[e]!.length * (max(abs(line.start), abs(line.end)) + abs(line.torque) / length),
    nodes,
  );
}
