import type { Elimination } from './elimination.ts';
import { factorScratch, round6, type Front, type FrontKernels, type MakeKernels } from './front-kernels.ts';
import { mechanismAt } from './mechanism.ts';
import type { StiffnessSystem } from './stiffness-system.ts';

/** A matrix taken apart: the panels of all fronts in one arena, with room for a vector and a front's part of it. */
export interface FactoredFronts {
  readonly elimination: Elimination;
  readonly plan: ArenaPlan;
  readonly kernels: FrontKernels;
  readonly fronts: readonly Front[];
  /** Where each front's rows stand, in integers. */
  readonly rows: Int32Array;
  /** Where the vector and the room for a front's part of it stand. */
  readonly x: number;
  readonly t: number;
  /** Where the diagonal before elimination stands. */
  readonly diagonal: number;
  /** Bytes of the panels alone. */
  readonly factorBytes: number;
  /** Multiplications and additions done for it. */
  readonly flopsDone: number;
}

/** A pivot at or below this part of what stood on the diagonal cannot be gone on with. */
const leastPivot = 1e-13;
/** Rounding can leave a free motion of many elements a pivot well above that. So the weakest pivots are looked at: their
 *  motion is free where its energy is no more than rounding makes of the energies that cancel in it. */
const weakPivot = 1e-6;
const weakest = 4;
const noEnergy = 1e-14;

export interface FactorSettings {
  /** The last front is gathered and not eliminated. */
  readonly lastStays?: boolean;
  /** Every front keeps what it left for the one above: more memory, and `again` may go on from it. */
  readonly keepsUpdates?: boolean;
  /** A factor of the same elimination that kept its updates, and the elements whose matrices are others now: only the fronts
   *  on the way from these to the root are done again, in its arena, to the bits of a whole factorisation. */
  readonly again?: { readonly factored: FactoredFronts; readonly changed: readonly boolean[] };
}

/** K = L Lᵀ by fronts (Duff & Reid 1983, ACM Trans. Math. Softw. 9, 302, from memory): each front gathers its elements and
 *  what the fronts below it left, eliminates its own freedoms, and leaves the rest to the front above. Throws a Mechanism
 *  where a pivot is nil; the arena of `again` is then of no more use. */
export function factorFronts(
  elimination: Elimination,
  system: StiffnessSystem,
  make: MakeKernels,
  { lastStays = false, keepsUpdates = false, again }: FactorSettings = {},
): FactoredFronts {
  const { count, size, parent, rowStart, rows } = elimination;
  const plan = again?.factored.plan ?? arenaPlan(elimination, keepsUpdates);
  const kernels = again?.factored.kernels ?? make(plan.length);
  const { doubles: M, integers: I } = kernels;
  I.set(rows, 2 * plan.rows);
  M.fill(0, plan.diagonal, plan.diagonal + size);
  addDiagonal(M, plan.diagonal, elimination, system);
  const children = Array.from({ length: count }, (): number[] => []);
  parent.forEach((above, s) => {
    if (above >= 0) children[above]!.push(s);
  });
  const local = new Int32Array(size);
  const stale = again && staleFronts(elimination, again.changed);
  const flopsDone = plan.fronts.reduce(
    (sum, front, s) => sum + ((stale && stale[s] === 0) || (lastStays && s === count - 1) ? 0 : frontFlops(front)),
    0,
  );
  const factored: FactoredFronts = { ...inArena(elimination, plan), kernels, flopsDone };
  for (let s = 0; s < count; s++) {
    if (stale && stale[s] === 0) continue;
    const front = plan.fronts[s]!;
    numberRows(elimination, s, local);
    kernels.clear(front);
    addElements(M, front, s, local, elimination, system);
    for (const c of children[s]!) {
      const runs = runsOf(I, 2 * plan.runs, rows, rowStart[c]!, rowStart[c + 1]!, local);
      const { update, b } = plan.fronts[c]!;
      kernels.addUpdate(update, b, 2 * plan.runs, runs, front);
    }
    if (lastStays && s === count - 1) break;
    const failed = kernels.factor(front, plan.diagonal + elimination.first[s]!, leastPivot, plan.scratch);
    if (failed >= 0) throw mechanismAt(factored, system, s, failed);
  }
  for (const [s, pivot] of weakPivots(factored, lastStays ? count - 1 : count)) {
    const found = mechanismAt(factored, system, s, pivot);
    if (found.share <= noEnergy) throw found;
  }
  return factored;
}

/** Where all of a factor stands in an arena, by its plan. */
export const inArena = (elimination: Elimination, plan: ArenaPlan): Omit<FactoredFronts, 'kernels' | 'flopsDone'> => ({
  elimination,
  plan,
  fronts: plan.fronts,
  rows: elimination.rowStart.map((start) => 2 * plan.rows + start),
  x: plan.x,
  t: plan.t,
  diagonal: plan.diagonal,
  factorBytes: plan.factorBytes,
});

const frontFlops = ({ w, b }: Pick<Front, 'w' | 'b'>): number => w ** 3 / 3 + w * w * b + w * b * b;

/** 1 for fronts that take in a changed element, and for all above them. */
function staleFronts({ count, parent, elementStart, elements }: Elimination, changed: readonly boolean[]): Uint8Array {
  const stale = new Uint8Array(count);
  for (let s = 0; s < count; s++) {
    for (let p = elementStart[s]!; stale[s] === 0 && p < elementStart[s + 1]!; p++)
      if (changed[elements[p]!]) stale[s] = 1;
    if (stale[s] === 1 && parent[s]! >= 0) stale[parent[s]!] = 1;
  }
  return stale;
}

export interface ArenaPlan {
  readonly length: number;
  readonly diagonal: number;
  readonly x: number;
  readonly t: number;
  readonly rows: number;
  readonly runs: number;
  readonly scratch: number;
  readonly fronts: readonly Front[];
  readonly factorBytes: number;
}

/** Where everything stands. Updates wait on two stacks, those of even and of odd depth in the tree: when a front's update is
 *  laid on one, the updates it takes in lie on top of the other, so nothing is ever moved. With `keepsUpdates` nothing is
 *  taken off them. */
export function arenaPlan(
  { count, size, parent, first, rowStart, rows }: Elimination,
  keepsUpdates: boolean,
): ArenaPlan {
  const depth = new Uint8Array(count);
  for (let s = count - 1; s >= 0; s--) depth[s] = parent[s]! < 0 ? 0 : 1 - depth[parent[s]!]!;
  const width = (s: number): number => first[s + 1]! - first[s]!;
  const further = (s: number): number => rowStart[s + 1]! - rowStart[s]!;
  let tallest = 0;
  let panels = 0;
  let runs = 0;
  const top = [0, 0];
  const peak = [0, 0];
  const panelAt = new Float64Array(count);
  const updateAt = new Float64Array(count);
  const taken = new Float64Array(count);
  for (let s = 0; s < count; s++) {
    const [w, b] = [width(s), further(s)];
    const ld = round6(w) + round6(b);
    tallest = Math.max(tallest, ld);
    runs = Math.max(runs, b);
    panelAt[s] = panels;
    panels += ld * w;
    const side = depth[s]!;
    updateAt[s] = top[side]!;
    top[side]! += round6(b) * b;
    peak[side] = Math.max(peak[side]!, top[side]!);
    if (!keepsUpdates) top[1 - side]! -= taken[s]!;
    if (parent[s]! >= 0) taken[parent[s]!]! += round6(b) * b;
  }
  // A tile is four columns wide: beyond the last column it writes back what stands there.
  const slack = 3 * tallest;
  let end = 0;
  const place = (doubles: number): number => {
    const at = end;
    end += 2 * Math.ceil(doubles / 2);
    return at;
  };
  const diagonal = place(size);
  const x = place(size);
  const t = place(tallest);
  const rowsAt = place(Math.ceil(rows.length / 2));
  const runsAt = place(runs);
  const scratch = place(factorScratch(tallest));
  const panel = place(panels + slack);
  const stacks = [place(peak[0]! + slack), place(peak[1]! + slack)];
  return {
    length: end,
    diagonal,
    x,
    t,
    rows: rowsAt,
    runs: runsAt,
    scratch,
    fronts: Array.from({ length: count }, (_, s) => ({
      w: width(s),
      b: further(s),
      panel: panel + panelAt[s]!,
      update: stacks[depth[s]!]! + updateAt[s]!,
    })),
    factorBytes: 8 * panels,
  };
}

/** What stands on the diagonal before anything is eliminated. */
function addDiagonal(M: Float64Array, diagonal: number, { place }: Elimination, { elements }: StiffnessSystem): void {
  for (const { nodes, stiffness } of elements) {
    const size = 6 * nodes.length;
    for (let a = 0; a < size; a++) {
      const i = place[6 * nodes[(a / 6) | 0]! + (a % 6)]!;
      if (i >= 0) M[diagonal + i]! += stiffness[a * size + a]!;
    }
  }
}

/** local[i]: row of freedom i in the panel of front s, for its own freedoms and those above it. */
function numberRows({ first, rowStart, rows }: Elimination, s: number, local: Int32Array): void {
  const own = first[s]!;
  const below = round6(first[s + 1]! - own);
  for (let i = own; i < first[s + 1]!; i++) local[i] = i - own;
  for (let p = rowStart[s]!; p < rowStart[s + 1]!; p++) local[rows[p]!] = below + p - rowStart[s]!;
}

/** Adds the strands of front s; of each pair of freedoms the entry below the diagonal. */
function addElements(
  M: Float64Array,
  { w, b, panel, update }: Front,
  s: number,
  local: Int32Array,
  { place, elementStart, elements: list, elementStrand, strands }: Elimination,
  { elements }: StiffnessSystem,
): void {
  const own = round6(w);
  const ldU = round6(b);
  const ld = own + ldU;
  for (let p = elementStart[s]!; p < elementStart[s + 1]!; p++) {
    const { nodes, stiffness } = elements[list[p]!]!;
    const members = strands[list[p]!]!.members[elementStrand[p]!]!;
    const size = 6 * nodes.length;
    if (rowOf.length < members.length) [rowOf, memberOf] = [new Int32Array(members.length), new Int32Array(members.length)]; // prettier-ignore
    const [row, member] = [rowOf, memberOf];
    // Free members by their rows in the front, ascending: what comes after a member is below its diagonal.
    let count = 0;
    for (let k = 0; k < members.length; k++) {
      const a = members[k]!;
      const node = (a / 6) | 0;
      const i = place[6 * nodes[node]! + a - 6 * node]!;
      if (i < 0) continue;
      const r = local[i]!;
      let at = count++;
      for (; at > 0 && row[at - 1]! > r; at--) {
        row[at] = row[at - 1]!;
        member[at] = member[at - 1]!;
      }
      row[at] = r;
      member[at] = a;
    }
    for (let k = 0; k < count; k++) {
      const j = row[k]!;
      // Row a of the element is column j of the front: the matrix is symmetric.
      const column = j < w ? panel + j * ld : update + (j - own) * ldU - own;
      const from = member[k]! * size;
      for (let c = k; c < count; c++) M[column + row[c]!]! += stiffness[from + member[c]!]!;
    }
  }
}

/** Room for the rows and members of the largest strand so far. */
let rowOf = new Int32Array(48);
let memberOf = new Int32Array(48);

/** A child's rows as runs of rows of its parent, into I at `at`. Gives how many. */
function runsOf(I: Int32Array, at: number, rows: Int32Array, from: number, to: number, local: Int32Array): number {
  let runs = 0;
  for (let p = from; p < to; p++) {
    const row = local[rows[p]!]!;
    const last = at + 2 * (runs - 1);
    if (runs > 0 && I[last]! + I[last + 1]! === row) I[last + 1]!++;
    else {
      I[at + 2 * runs] = row;
      I[at + 2 * runs++ + 1] = 1;
    }
  }
  return runs;
}

/** The weakest pivots as a part of what stood on the diagonal: front and own freedom, weakest first. */
function weakPivots(
  { elimination, kernels, fronts, diagonal }: FactoredFronts,
  count: number,
): [front: number, pivot: number][] {
  const M = kernels.doubles;
  const found: { s: number; k: number; part: number }[] = [];
  fronts.slice(0, count).forEach(({ w, b, panel }, s) => {
    const step = round6(w) + round6(b) + 1;
    for (let k = 0; k < w; k++) {
      const part = M[panel + k * step]! ** 2 / M[diagonal + elimination.first[s]! + k]!;
      if (part < weakPivot) found.push({ s, k, part });
    }
  });
  return found
    .sort((a, b) => a.part - b.part)
    .slice(0, weakest)
    .map(({ s, k }) => [s, k]);
}
