import type { ShellShape } from './shell-shape.ts';

/** A place in the reference element: (ξ, η) in [-1, 1]² for four nodes, area coordinates (L2, L3) for three. */
export interface ReferencePoint {
  readonly ξ: number;
  readonly η: number;
  /** Share of the reference area (4 or ½) that the point stands for. */
  readonly weight: number;
}

/** The turning of the normal at one place, over the freedoms [w θx θy] of each node (3n), local axes.
 *  βx, βy: displacement in the thickness is (z βx, z βy), and w,x = -βx, w,y = -βy by the Kirchhoff condition.
 *  κ: rows βx,x; βy,y; βx,y + βy,x (3 × 3n). area: m² that the place stands for. N: n, corner shape functions.
 *  gradient: 2 × n, their derivatives by x and y. */
export interface KirchhoffPlace {
  readonly area: number;
  readonly N: Float64Array;
  readonly gradient: Float64Array;
  readonly βx: Float64Array;
  readonly βy: Float64Array;
  readonly κ: Float64Array;
}

/** Rotation field of a thin plate element of three or four nodes. Corner rotations are interpolated with the corners'
 *  shape functions; on side i–j the component along the side, β_s, gets a parabola whose middle value meets
 *  w,s = -β_s for the cubic w of that side:
 *    β = Σ N_i β_i + Σ b_k s_k α_k,   α_k = -3/2 (w_j - w_i)/L - 3/4 (β_s,i + β_s,j),   b_k = 1 at the middle of side k
 *  No transverse shear enters, so nothing can lock and the stiffness is exactly ∝ t³; β is continuous across sides.
 *  Source: J.-L. Batoz, K.-J. Bathe & L.-W. Ho, Int. J. Num. Meth. Eng. 15 (1980) 1771 (three nodes); J.-L. Batoz &
 *  M. Ben Tahar, ibid. 18 (1982) 1655 (four nodes); both from memory, the field rederived as above. */
export function kirchhoffPlace({ count, xy }: ShellShape, point: ReferencePoint): KirchhoffPlace {
  const { N, byξ, byη, bubble, bubbleByξ, bubbleByη } = count === 4 ? quadrilateral(point) : triangle(point);
  let [xξ, xη, yξ, yη] = [0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    xξ += byξ[i]! * xy[2 * i]!;
    xη += byη[i]! * xy[2 * i]!;
    yξ += byξ[i]! * xy[2 * i + 1]!;
    yη += byη[i]! * xy[2 * i + 1]!;
  }
  const J = xξ * yη - xη * yξ;
  const byX = (ξ: number, η: number): number => (ξ * yη - η * yξ) / J;
  const byY = (ξ: number, η: number): number => (η * xξ - ξ * xη) / J;
  const width = 3 * count;
  const place = {
    area: point.weight * J,
    N: Float64Array.from(N),
    gradient: new Float64Array(2 * count),
    βx: new Float64Array(width),
    βy: new Float64Array(width),
    κ: new Float64Array(3 * width),
  };
  const { βx, βy, κ, gradient } = place;
  const add = (freedom: number, x: number, y: number, f: number, fx: number, fy: number): void => {
    βx[freedom]! += x * f;
    βy[freedom]! += y * f;
    κ[freedom]! += x * fx;
    κ[width + freedom]! += y * fy;
    κ[2 * width + freedom]! += x * fy + y * fx;
  };
  for (let i = 0; i < count; i++) {
    const [fx, fy] = [byX(byξ[i]!, byη[i]!), byY(byξ[i]!, byη[i]!)];
    gradient[i] = fx;
    gradient[count + i] = fy;
    add(3 * i + 1, 0, -1, N[i]!, fx, fy); // βy = -θx
    add(3 * i + 2, 1, 0, N[i]!, fx, fy); // βx = θy
  }
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    const [dx, dy] = [xy[2 * j]! - xy[2 * i]!, xy[2 * j + 1]! - xy[2 * i + 1]!];
    const length = Math.hypot(dx, dy);
    const [sx, sy] = [dx / length, dy / length];
    const [f, fx, fy] = [bubble[i]!, byX(bubbleByξ[i]!, bubbleByη[i]!), byY(bubbleByξ[i]!, bubbleByη[i]!)];
    const side = (freedom: number, α: number): void => add(freedom, sx * α, sy * α, f, fx, fy);
    side(3 * i, 1.5 / length);
    side(3 * j, -1.5 / length);
    for (const node of [i, j]) {
      side(3 * node + 1, 0.75 * sy);
      side(3 * node + 2, -0.75 * sx);
    }
  }
  return place;
}

/** Two Gauss points each way for four nodes; the middles of the sides for three: both integrate the element's own
 *  stiffness as its authors do, and constant states exactly. */
export function kirchhoffPoints(count: 3 | 4): readonly ReferencePoint[] {
  return count === 4 ? gaussFour : sideMiddles;
}

const g = 1 / Math.sqrt(3);
const gaussFour: readonly ReferencePoint[] = [
  { ξ: -g, η: -g, weight: 1 },
  { ξ: g, η: -g, weight: 1 },
  { ξ: g, η: g, weight: 1 },
  { ξ: -g, η: g, weight: 1 },
];
const sideMiddles: readonly ReferencePoint[] = [
  { ξ: 0.5, η: 0, weight: 1 / 6 },
  { ξ: 0.5, η: 0.5, weight: 1 / 6 },
  { ξ: 0, η: 0.5, weight: 1 / 6 },
];

interface Shapes {
  readonly N: readonly number[];
  readonly byξ: readonly number[];
  readonly byη: readonly number[];
  readonly bubble: readonly number[];
  readonly bubbleByξ: readonly number[];
  readonly bubbleByη: readonly number[];
}

/** Side k runs from corner k to corner k + 1; its bubble is 1 at its middle and 0 on the other sides. */
function quadrilateral({ ξ, η }: ReferencePoint): Shapes {
  const [a, b, c, d] = [1 - ξ, 1 + ξ, 1 - η, 1 + η];
  return {
    N: [(a * c) / 4, (b * c) / 4, (b * d) / 4, (a * d) / 4],
    byξ: [-c / 4, c / 4, d / 4, -d / 4],
    byη: [-a / 4, -b / 4, b / 4, a / 4],
    bubble: [(a * b * c) / 2, (c * d * b) / 2, (a * b * d) / 2, (c * d * a) / 2],
    bubbleByξ: [-ξ * c, (c * d) / 2, -ξ * d, (-c * d) / 2],
    bubbleByη: [(-a * b) / 2, -η * b, (a * b) / 2, -η * a],
  };
}

function triangle({ ξ, η }: ReferencePoint): Shapes {
  const L = 1 - ξ - η;
  return {
    N: [L, ξ, η],
    byξ: [-1, 1, 0],
    byη: [-1, 0, 1],
    bubble: [4 * L * ξ, 4 * ξ * η, 4 * η * L],
    bubbleByξ: [4 * (L - ξ), 4 * η, -4 * η],
    bubbleByη: [-4 * ξ, 4 * ξ, 4 * (L - η)],
  };
}
