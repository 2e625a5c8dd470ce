import { describe, expect, it } from 'vitest';
import { factorise } from '../../../core/solve/sparse/factorise.ts';
import { partElements } from '../../../core/solve/structure/part-elements.ts';
import { noOffset, type BeamPart, type BeamSection, type Structure } from '../../../core/solve/structure/structure.ts';

// Cross tubes that lie on main tubes: their axes a height e above, joined to the mains’ nodes by rigid links.

const main: BeamSection = { E: 210e9, G: 81e9, A: 30e-4, Iy: 900e-8, Iz: 500e-8, J: 800e-8, Ay: 14e-4, Az: 18e-4 };
const cross: BeamSection = { E: 210e9, G: 81e9, A: 12e-4, Iy: 180e-8, Iz: 150e-8, J: 260e-8, Ay: 6e-4, Az: 7e-4 };
const e = 0.15;

interface Grid {
  readonly structure: Structure;
  readonly at: (i: number, j: number) => number;
}

/** Mains along x at each of ys, with nodes at xs; cross tubes along y at each of xs but the first and last, a height above. */
function stacked(xs: readonly number[], ys: readonly number[], height: number): Grid {
  const coordinates = ys.flatMap((y) => xs.flatMap((x) => [x, y, 0]));
  const at = (i: number, j: number): number => j * xs.length + i;
  const beams: BeamPart[] = [];
  const up = [0, 0, height] as const;
  ys.forEach((_, j) => {
    for (let i = 1; i < xs.length; i++) beams.push({ tube: j, nodes: [at(i - 1, j), at(i, j)], offsets: [noOffset, noOffset], from: xs[i - 1]!, to: xs[i]!, section: main }); // prettier-ignore
  });
  for (let i = 1; i + 1 < xs.length; i++)
    for (let j = 1; j < ys.length; j++) beams.push({ tube: ys.length + i, nodes: [at(i, j - 1), at(i, j)], offsets: [up, up], from: ys[j - 1]!, to: ys[j]!, section: cross }); // prettier-ignore
  const structure: Structure = { coordinates: Float64Array.from(coordinates), beams, shells: [], ties: [], contacts: [], panels: [], tubes: [] }; // prettier-ignore
  return { structure, at };
}

/** Displacements with all freedoms of the given nodes held. */
function displaced({ structure }: Grid, held: readonly number[], f: Float64Array): Float64Array {
  const { coordinates } = structure;
  const holds = new Uint8Array(2 * coordinates.length);
  for (const node of held) holds.fill(1, 6 * node, 6 * node + 6);
  return factorise({ coordinates, elements: partElements(structure).elements, held: holds }).solve(f);
}

describe('a grillage of stacked tubes', () => {
  it('of two mains clamped at both ends and a loaded cross tube on them follows slope and deflection with the eccentric link (derived by hand)', () => {
    const [L, s, P] = [3, 2, 10e3];
    /** By symmetry both ends of the cross tube turn by t and press together by δ:
     *    t (k_φ + 2 E I/s + e² K) = P s/8,    K = 1 / (s/2EA + 1/k_y),    M = P s/8 - 2 E I t/s
     *  k_φ, k_y and k_z: a main's stiffness at midspan against twist, shift aside and sinking. */
    const hand = (height: number): { sinks: number; turns: number; aside: number } => {
      const { E, G } = main;
      const k_φ = (4 * G * main.J) / L;
      const k_y = 1 / (L ** 3 / (192 * E * main.Iz) + L / (4 * G * main.Ay));
      const k_z = 1 / (L ** 3 / (192 * E * main.Iy) + L / (4 * G * main.Az));
      const { A, Iy: I, Az } = cross;
      const K = 1 / (s / (2 * E * A) + 1 / k_y);
      const turns = (P * s) / 8 / (k_φ + (2 * E * I) / s + height ** 2 * K);
      const M = (P * s) / 8 - (2 * E * I * turns) / s;
      const sinks = P / 2 / k_z + (P * s ** 3) / (48 * E * I) + (P * s) / (4 * G * Az) - (M * s ** 2) / (8 * E * I);
      return { sinks, turns, aside: (K * height * turns) / k_y };
    };
    for (const height of [0, e, -e]) {
      const plain = stacked([0, L / 2, L], [0, s], height);
      const { at } = plain;
      // the cross tube’s middle, where the load is
      const middle = 6;
      const [beam] = plain.structure.beams.slice(-1);
      const half = (nodes: [number, number], offsets: BeamPart['offsets'], from: number): BeamPart => ({ ...beam!, nodes, offsets, from, to: from + s / 2 }); // prettier-ignore
      const up = [0, 0, height] as const;
      const grid: Grid = {
        at,
        structure: {
          ...plain.structure,
          coordinates: Float64Array.from([...plain.structure.coordinates, L / 2, s / 2, height]),
          beams: [...plain.structure.beams.slice(0, -1), half([at(1, 0), middle], [up, noOffset], 0), half([middle, at(1, 1)], [noOffset, up], s / 2)], // prettier-ignore
        },
      };
      const f = new Float64Array(42);
      f[6 * middle + 2] = -P;
      const u = displaced(grid, [at(0, 0), at(2, 0), at(0, 1), at(2, 1)], f);
      const { sinks, turns, aside } = hand(height);
      expect(-u[6 * middle + 2]! / sinks).toBeCloseTo(1, 9);
      expect(-u[6 * at(1, 0) + 3]! / turns).toBeCloseTo(1, 9);
      expect(u[6 * at(1, 1) + 3]! / turns).toBeCloseTo(1, 9);
      // the mains are thrust apart below a cross tube on top, drawn together above one underneath
      if (height === 0) expect(Math.abs(u[6 * at(1, 0) + 1]!)).toBeLessThan(1e-15);
      else expect(-u[6 * at(1, 0) + 1]! / aside).toBeCloseTo(1, 8);
    }
    expect(hand(e).sinks / hand(0).sinks).toBeLessThan(0.97); // so the link is felt
  });

  it('of 3 mains and 2 cross tubes deflects as an exact stiffness solution with links put in by constraint', () => {
    const [xs, ys] = [
      [0, 0.9, 2.1, 3],
      [0, 0.8, 2],
    ] as const;
    const grid = stacked(xs, ys, e);
    const { at, structure } = grid;
    const f = Float64Array.from({ length: 2 * structure.coordinates.length }, (_, k) => 1e3 * Math.sin(1 + 7 * k));
    const held = ys.flatMap((_, j) => [at(0, j), at(3, j)]);
    const found = displaced(grid, held, f);

    // Axes of mains and of cross tubes have nodes of their own, six freedoms each; T puts the latter on the former.
    const [mains, all] = [12, 24];
    const K = square(6 * all);
    ys.forEach((_, j) => {
      for (let i = 1; i < 4; i++) lay(K, at(i - 1, j), at(i, j), member(main, xs[i]! - xs[i - 1]!, 'x'));
    });
    for (const i of [1, 2])
      for (let j = 1; j < 3; j++)
        lay(K, mains + at(i, j - 1), mains + at(i, j), member(cross, ys[j]! - ys[j - 1]!, 'y'));
    const T = Array.from({ length: 6 * all }, () => new Array<number>(6 * mains).fill(0));
    for (let n = 0; n < mains; n++)
      for (let k = 0; k < 6; k++) T[6 * n + k]![6 * n + k] = T[6 * (mains + n) + k]![6 * n + k] = 1;
    for (let n = 0; n < mains; n++) {
      // θ × (0, 0, e)
      T[6 * (mains + n)]![6 * n + 4] = e;
      T[6 * (mains + n) + 1]![6 * n + 3] = -e;
    }
    const free = [...Array(6 * mains).keys()].filter((k) => !held.includes(Math.floor(k / 6)));
    const reduced = free.map((a) => free.map((b) => K.reduce((sum, row, p) => (T[p]![a] === 0 ? sum : sum + T[p]![a]! * row.reduce((of, value, q) => of + value * T[q]![b]!, 0)), 0))); // prettier-ignore
    const exact = solved(reduced, free.map((k) => f[k]!)); // prettier-ignore
    const most = Math.max(...exact.map(Math.abs));
    free.forEach((k, a) => expect(Math.abs(found[k]! - exact[a]!)).toBeLessThan(1e-9 * most));
    const flat = displaced(stacked(xs, ys, 0), held, f);
    expect(Math.max(...free.map((k) => Math.abs(flat[k]! - found[k]!)))).toBeGreaterThan(0.05 * most);
  });
});

const square = (n: number): number[][] => Array.from({ length: n }, () => new Array<number>(n).fill(0));

/** End forces for end displacements of a member along x or y, z up, by slope and deflection with shear (φ = 12 E I / G A_s l²):
 *  4 E I/l and 2 E I/l become (4 + φ) and (2 - φ) over 1 + φ. Freedoms of both ends in global axes. */
function member({ E, G, A, Iy, Iz, J, Ay, Az }: BeamSection, l: number, along: 'x' | 'y'): number[][] {
  const K = square(12);
  // along, aside and up; turns about them
  const place = along === 'x' ? [0, 1, 2] : [1, 0, 2];
  // y, -x, z is a right-handed set
  const sign = along === 'x' ? [1, 1, 1] : [1, -1, 1];
  const freedom = (end: number, axis: number, turn: boolean): number => 6 * end + (turn ? 3 : 0) + place[axis]!;
  const add = (a: readonly [number, number, boolean], b: readonly [number, number, boolean], value: number): void => {
    K[freedom(...a)]![freedom(...b)]! += sign[a[1]]! * sign[b[1]]! * value;
  };
  for (const [k, axis, turn] of [
    [(E * A) / l, 0, false],
    [(G * J) / l, 0, true],
  ] as const)
    for (const p of [0, 1]) for (const q of [0, 1]) add([p, axis, turn], [q, axis, turn], p === q ? k : -k);
  // aside with turns about z: slope is +θz; up with turns about the member's own y: slope is -θy
  for (const [axis, about, I, As, s] of [
    [1, 2, Iz, Ay, 1],
    [2, 1, Iy, Az, -1],
  ] as const) {
    const φ = (12 * E * I) / (G * As * l ** 2);
    const [k, near, far] = [(E * I) / (l * (1 + φ)), 4 + φ, 2 - φ];
    for (const p of [0, 1])
      for (const q of [0, 1]) {
        add([p, axis, false], [q, axis, false], ((p === q ? 12 : -12) * k) / l ** 2);
        add([p, about, true], [q, about, true], (p === q ? near : far) * k);
        const shear = (s * 6 * k) / l;
        add([p, axis, false], [q, about, true], p === 0 ? shear : -shear);
        add([q, about, true], [p, axis, false], p === 0 ? shear : -shear);
      }
  }
  return K;
}

function lay(K: number[][], a: number, b: number, k: readonly number[][]): void {
  const to = (i: number): number => (i < 6 ? 6 * a + i : 6 * b + i - 6);
  k.forEach((row, i) => row.forEach((value, j) => (K[to(i)]![to(j)]! += value)));
}

/** Gauss with the largest pivot. */
function solved(A: readonly (readonly number[])[], b: readonly number[]): number[] {
  const M = A.map((row, i) => [...row, b[i]!]);
  const n = M.length;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(M[i]![k]!) > Math.abs(M[pivot]![k]!)) pivot = i;
    [M[k], M[pivot]] = [M[pivot]!, M[k]!];
    for (let i = k + 1; i < n; i++) {
      const factor = M[i]![k]! / M[k]![k]!;
      for (let j = k; j <= n; j++) M[i]![j]! -= factor * M[k]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = M[i]![n]!;
    for (let j = i + 1; j < n; j++) sum -= M[i]![j]! * x[j]!;
    x[i] = sum / M[i]![i]!;
  }
  return x;
}
