import { refusal } from '../refusal.ts';
import type { BoltPoint } from './eccentric-group.ts';
import { lengthOf, weldSection, type WeldLine } from './eccentric-weld.ts';
import type { ForceLine } from './bolt-group-coefficient.ts';

const { abs, acos, hypot, max, min, PI: π, sin, sqrt } = Math;

/** Deformations of a fillet over its leg, by the angle θ (degrees) of its force and its own line: at its largest force, at rupture. */
const atLargest = (θ: number): number => 0.209 * (θ + 2) ** -0.32;
const atRupture = (θ: number): number => min(1.087 * (θ + 6) ** -0.65, 0.17);
/** Force over the largest, at p = deformation over that of the largest force. */
const partOf = (p: number): number => (p * (1.9 - 0.9 * p)) ** 0.3;

/** Length of weld, m, that a group is worth under a force in its plane, by the instantaneous centre: P = l f_0, with
 *    f_i = f_0 (1 + k sin^1.5 θ_i) [p (1.9 - 0.9 p)]^0.3,   p = Δ_i / Δ_m(θ_i),   Δ_i = r_i min(Δ_u(θ) / r)
 *  f_0 is the strength per length of a weld pulled along; r from the centre, where the forces balance P and its moment.
 *  rise: k, 0.5 by the published law, 0 where no rise for direction may be counted (on a hollow section's wall).
 *  Refuses an empty group and a force of no direction. Error: 0.2 % against the published tables (120 pieces).
 *  Source: AISC 360-16, J2.4 and its commentary (from memory); AISC Manual, Part 8, tables of C. */
export function weldGroupLength(lines: readonly WeldLine[], { direction, at }: ForceLine, rise: number): number {
  const size = hypot(...direction);
  if (!(size > 0))
    throw refusal({ what: 'the force has no direction', where: { field: 'direction' }, mend: 'Give it one' });
  const [ux, uy] = [direction[0] / size, direction[1] / size];
  const { L, centroid, xx, yy } = weldSection(lines);
  const ρ = sqrt((xx + yy) / L);
  const own = lines.map(([p, q]): WeldLine => [from(p, centroid, ρ), from(q, centroid, ρ)]);
  const lever = ((at[0] - centroid[0]) * uy - (at[1] - centroid[1]) * ux) / ρ;
  const along: Triple = [ux, uy, lever];
  const group = { pieces: piecesOf(own, L / ρ), ends: own.flatMap((line) => line.map((p) => piece(p, line, 0))), rise };
  // Motion of the elastic group, plus two parts on which the force does no work: those are sought.
  const [b1, b2] = across(along);
  const at2 = (z: Pair): { r: Pair; G: Triple } => {
    const G = resistance(group, [0, 1, 2].map((k) => along[k]! / dot(along, along) + z[0] * b1[k]! + z[1] * b2[k]!) as unknown as Triple); // prettier-ignore
    const own = dot(G, along) / hypot(...along);
    return { r: [dot(G, b1) / own, dot(G, b2) / own], G };
  };
  let z: Pair = [0, 0];
  let here = at2(z);
  for (let pass = 0; pass < 60; pass++) {
    const miss = hypot(...here.r);
    if (miss < 1e-7) return (ρ * dot(here.G, along)) / dot(along, along);
    const h = 1e-6 / hypot(...along);
    const [r1, r2] = [at2([z[0] + h, z[1]]).r, at2([z[0], z[1] + h]).r];
    const [k11, k12, k21, k22] = [(r1[0] - here.r[0]) / h, (r2[0] - here.r[0]) / h, (r1[1] - here.r[1]) / h, (r2[1] - here.r[1]) / h]; // prettier-ignore
    const determinant = k11 * k22 - k12 * k21;
    const step: Pair = [(k12 * here.r[1] - k22 * here.r[0]) / determinant, (k21 * here.r[0] - k11 * here.r[1]) / determinant]; // prettier-ignore
    let part = 1;
    for (; part > 1e-6; part /= 2) {
      const next = at2([z[0] + part * step[0], z[1] + part * step[1]]);
      if (dot(next.G, along) > 0 && hypot(...next.r) < miss * (1 - 0.1 * part)) {
        z = [z[0] + part * step[0], z[1] + part * step[1]];
        here = next;
        break;
      }
    }
    if (part <= 1e-6) break;
  }
  if (hypot(...here.r) < 1e-3) return (ρ * dot(here.G, along)) / dot(along, along);
  throw refusal({
    what: 'the instantaneous centre of this group of welds did not settle',
    where: { field: 'welds' },
    mend: 'Judge it as an elastic group',
  });
}

type Pair = readonly [number, number];
type Triple = readonly [number, number, number];

const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const from = (p: BoltPoint, [cx, cy]: BoltPoint, ρ: number): BoltPoint => [(p[0] - cx) / ρ, (p[1] - cy) / ρ];

/** A piece of weld: its middle, its direction and its length. */
interface Piece {
  readonly x: number;
  readonly y: number;
  readonly c: number;
  readonly s: number;
  readonly l: number;
}

function piece([x, y]: BoltPoint, [p, q]: WeldLine, l: number): Piece {
  const long = lengthOf([p, q]);
  return { x, y, c: (q[0] - p[0]) / long, s: (q[1] - p[1]) / long, l };
}

const pieces = 120;
const piecesOf = (lines: readonly WeldLine[], L: number): readonly Piece[] =>
  lines.flatMap(([p, q]) => {
    const l = lengthOf([p, q]);
    const n = max(4, Math.ceil((pieces * l) / L));
    return Array.from({ length: n }, (_, i) => {
      const m = (i + 0.5) / n;
      return piece([p[0] + m * (q[0] - p[0]), p[1] + m * (q[1] - p[1])], [p, q], l / n);
    });
  });

interface Group {
  readonly pieces: readonly Piece[];
  readonly ends: readonly Piece[];
  readonly rise: number;
}

/** Way of a piece, and the angle of that way with its line, degrees from 0 to 90. */
function moved({ x, y, c, s }: Piece, [qx, qy, turn]: Triple) {
  const [dx, dy] = [qx - turn * y, qy + turn * x];
  const δ = max(hypot(dx, dy), 1e-12);
  return { dx: dx / δ, dy: dy / δ, δ, θ: (180 / π) * acos(min(1, abs((dx * c + dy * s) / δ))) };
}

/** Forces of the group on shifts and turn when this motion has grown until the first piece breaks. */
function resistance({ pieces, ends, rise }: Group, q: Triple): Triple {
  const ways = pieces.map((one) => moved(one, q));
  const grown = min(...[...ways, ...ends.map((one) => moved(one, q))].map(({ δ, θ }) => atRupture(θ) / δ));
  const G: [number, number, number] = [0, 0, 0];
  ways.forEach(({ dx, dy, δ, θ }, i) => {
    const { x, y, l } = pieces[i]!;
    const f = l * (1 + rise * sin((θ * π) / 180) ** 1.5) * partOf((grown * δ) / atLargest(θ));
    G[0] += f * dx;
    G[1] += f * dy;
    G[2] += f * (x * dy - y * dx);
  });
  return G;
}

/** Two unit vectors square to this one and to each other. */
function across(c: Triple): readonly [Triple, Triple] {
  const flat = hypot(c[0], c[1]);
  const long = hypot(flat, c[2]);
  return [
    [-c[1] / flat, c[0] / flat, 0],
    [(-c[2] * c[0]) / (flat * long), (-c[2] * c[1]) / (flat * long), flat / long],
  ];
}
