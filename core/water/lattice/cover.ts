import { patchesOf, type Patches } from './patches.ts';
import type { Plan } from './plan.ts';

/** How a plan lies on a lattice. */
export interface Cover {
  /** 1/m, for each cell: jump of the potential μ = w / D for a mean velocity w through the cell; 0 solid, Infinity open. */
  readonly D: Float64Array;
  /** Part of each cell through which water passes: sums to the true open area of every opening. */
  readonly open: Float64Array;
  /** Opening each cell belongs to most, −1 where none; 0 the water outside; round holes follow the patches' openings. */
  readonly opening: Int32Array;
  readonly patches: Patches;
}

export interface LatticeFrame {
  readonly nx: number;
  readonly ny: number;
  readonly h: number;
  /** Corner of cell (0, 0). */
  readonly x: number;
  readonly y: number;
}

/**
 * Lays a plan on a lattice of cells of constant doublet strength. The rule, for edges anywhere in a cell:
 *  - A row of full cells acts as a strip that ends h/4 beyond its last cell (exact in two dimensions: N cells carry the added
 *    mass of a strip of N + 1/2 cells, less 1/4 of a cell squared). So openings are widened by h/4 on each side; beside tubes
 *    of height t, where the edge is no longer sharp to the lattice, by h/4 / (1 + t/h) (chosen by trial on bars in two dimensions).
 *  - A cell covered in the part s of it by what is left lets water through by D = (1 − s) / (2 s h): with it the strip's effective
 *    end runs linearly from one cell to the next (exact for a half-plane, from the factors of its symbol |sin θ/2| / h).
 *  - A slot of width g under h acts in one cell by D h = (π/2) / ln(e^−γ h/g), which fixes how far it is widened; it is
 *    moved by at most half a cell to begin at a lattice line.
 *  - A hole smaller than a cell acts by its conductivity c (diameter of a round one): D = 1 / (h (h/c − g0)).
 * All D grow with the opening, so that the matrix keeps an inverse without a negative entry. Derived here; tests hold the
 * rule against two-dimensional closed forms.
 */
export function cover(plan: Plan, frame: LatticeFrame): Cover {
  const { nx, ny, h } = frame;
  const patches = patchesOf(plan);
  const small = new Set<number>();
  patches.openings.forEach(({ x0, y0, x1, y1 }, k) => {
    if (k > 0 && x1 - x0 < h / 2 && y1 - y0 < h / 2) small.add(k);
  });
  const D = new Float64Array(nx * ny);
  const open = new Float64Array(nx * ny);
  const opening = new Int32Array(nx * ny).fill(-1);
  const solid = new Float64Array(nx * ny).fill(1);
  const most = new Float64Array(nx * ny);

  for (const { x0, x1, y0, y1, factor, of } of widened(patches, small, frame, plan.thickness)) {
    const [i0, i1] = within((x0 - frame.x) / h, (x1 - frame.x) / h, nx);
    const [j0, j1] = within((y0 - frame.y) / h, (y1 - frame.y) / h, ny);
    for (let j = Math.floor(j0); j < j1; j++)
      for (let i = Math.floor(i0); i < i1; i++) {
        const area = (Math.min(i + 1, i1) - Math.max(i, i0)) * (Math.min(j + 1, j1) - Math.max(j, j0));
        const k = j * nx + i;
        solid[k]! -= area;
        open[k]! += area * factor;
        if (area > most[k]!) [most[k], opening[k]] = [area, of];
      }
  }
  for (let k = 0; k < D.length; k++) {
    const s = solid[k]!;
    D[k] = s < 1e-9 ? Infinity : s > 1 - 1e-12 ? 0 : (1 - s) / (2 * s * h);
  }
  const hole = (x: number, y: number, conductivity: number, area: number, of: number): void => {
    const i = Math.floor((x - frame.x) / h);
    const j = Math.floor((y - frame.y) / h);
    if (i < 0 || j < 0 || i >= nx || j >= ny) return;
    // A hole as large as a cell and larger spreads over as many cells as have its area.
    const side = Math.max(1, Math.round(Math.sqrt(area) / h));
    const [a, b] = [Math.round((x - frame.x) / h - side / 2), Math.round((y - frame.y) / h - side / 2)];
    for (let v = Math.max(0, b); v < Math.min(ny, b + side); v++)
      for (let u = Math.max(0, a); u < Math.min(nx, a + side); u++) {
        const k = v * nx + u;
        const own = h / (conductivity / side) - ownHole;
        D[k]! += own > 0 ? 1 / (h * own) : Infinity;
        open[k] = Math.min(1, open[k]! + area / (side * h) ** 2);
        opening[k] = of;
      }
  };
  for (const k of small) {
    const { x0, y0, x1, y1, area } = patches.openings[k]!;
    hole((x0 + x1) / 2, (y0 + y1) / 2, 2 * Math.sqrt(area / Math.PI), area, k);
  }
  plan.holes.forEach(({ x, y, diameter }, k) =>
    hole(x, y, diameter, (Math.PI / 4) * diameter ** 2, patches.openings.length + k),
  );
  return { D, open, opening, patches };
}

/** Mean over all wave numbers of 1 / (h · symbol): an open cell is a hole of conductivity h / this. */
export const ownHole = 1.337;

interface Widened {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  /** True open area over that of the widened opening. */
  readonly factor: number;
  readonly of: number;
}

/** Openings widened first along x, strip by strip, then along y. */
function widened(
  { X, Y, solid, opening }: Patches,
  small: ReadonlySet<number>,
  frame: LatticeFrame,
  thickness: number,
): Widened[] {
  // prettier-ignore
  const margin = 0.25 / (1 + thickness / frame.h);
  const [nx, ny] = [X.length - 1, Y.length - 1];
  const openAt = (i: number, j: number): boolean => {
    const k = j * nx + i;
    return !solid[k] && !small.has(opening[k]!);
  };
  const alongX = Array.from({ length: ny }, (_, j) =>
    runs(nx, (i) => openAt(i, j)).map(([a, b]) => ({
      ...slot(X[a]!, X[b]!, frame.h, frame.x, margin),
      of: opening[j * nx + a]!,
    })),
  );
  const cuts = [...new Set([-Infinity, ...alongX.flat().flatMap(({ from, to }) => [from, to]), Infinity])].sort(
    (a, b) => a - b,
  );
  const found: Widened[] = [];
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [x0, x1] = [cuts[i]!, cuts[i + 1]!];
    const over = alongX.map((slots) => slots.find(({ from, to }) => from <= x0 && to >= x1));
    for (const [a, b] of runs(ny, (j) => over[j] !== undefined)) {
      const wide = slot(Y[a]!, Y[b]!, frame.h, frame.y, margin);
      found.push({ x0, x1, y0: wide.from, y1: wide.to, factor: wide.factor * over[a]!.factor, of: over[a]!.of });
    }
  }
  return found;
}

/** Runs a … b of neighbours for which something holds. */
function runs(n: number, holds: (i: number) => boolean): [number, number][] {
  const found: [number, number][] = [];
  for (let i = 0; i < n; i++) {
    if (!holds(i)) continue;
    const last = found.at(-1);
    if (last && last[1] === i) last[1] = i + 1;
    else found.push([i, i + 1]);
  }
  return found;
}

/** An opening between a and b in one direction, as wide as it acts on the lattice. */
function slot(
  a: number,
  b: number,
  h: number,
  origin: number,
  margin: number,
): { from: number; to: number; factor: number } {
  // prettier-ignore
  if (a === -Infinity || b === Infinity)
    return { from: a === -Infinity ? a : a - margin * h, to: b === Infinity ? b : b + margin * h, factor: 1 };
  const g = (b - a) / h;
  const width =
    g >= 1
      ? g + 2 * margin
      : g > openCell
        ? 1 + (2 * margin * (g - openCell)) / (1 - openCell)
        : 1 / (1 + Math.log(openCell / g) / Math.PI);
  const middle = ((a + b) / 2 - origin) / h;
  let from = middle - width / 2;
  if (width < 1.5) {
    const cell = Math.floor(middle);
    from = width <= 1 || middle - cell > 0.5 ? cell : cell + 1 - width;
  }
  return { from: origin + from * h, to: origin + (from + width) * h, factor: g / width };
}

/** e^−γ: the width, in cells, of the slot that one open cell of a long row is. */
const openCell = 0.5614594835668851;

/** Clips an interval in cells to the lattice. */
const within = (a: number, b: number, n: number): [number, number] => [
  Math.max(0, Math.min(n, a)),
  Math.max(0, Math.min(n, b)),
];
