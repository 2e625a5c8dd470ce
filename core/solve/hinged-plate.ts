import { boundedMemo } from './bounded-memo.ts';
import { plateAnswer, type PlateAnswer } from './plate-answer.ts';
import { plateShape, withError, type PlateShape } from './plate-shape.ts';
import { sideRatio } from './side-ratio.ts';
import { requirePlate, type UniformPlate } from './uniform-plate.ts';

const { PI: π, abs, ceil, cos, exp, max, min, sin, tanh } = Math;
const memo = boundedMemo<PlateShape>(256);

/** A plate simply supported along all four edges, corners held down, under uniform pressure: Levy's series
 *    w = q (x⁴ - 2 a x³ + a³ x) / 24 D + q a⁴/D Σ sin(mπx/a) Y_m(y),   m odd, y from the middle, α = mπb/2a
 *    Y_m = 2/(π⁵ m⁵) [ -(α tanh α + 2) cosh βy + βy sinh βy ] / cosh α,  β = mπ/a
 *  Refuses sizes that are not positive. Error: below 1e-6 of the largest value (edge reactions 1e-4); thin plates only
 *  (w < t/2). The edge reaction is read at the middle of each edge, where it is largest.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., art. 30. */
export function hingedPlate(plate: UniformPlate): PlateAnswer {
  requirePlate(plate);
  const [ratio, nu] = [sideRatio(plate.b, plate.a), plate.nu];
  const terms = ceil(max(60, 12 / ratio));
  const shape = memo(`${ratio} ${nu}`, () => withError(levy(ratio, nu, 2 * terms), levy(ratio, nu, terms)));
  return plateAnswer(plate, shape);
}

/** The shape from so many odd terms: one quarter is summed and mirrored; sines and Y_m are tabled, since the series is
 *  a sum of products. */
function levy(ratio: number, nu: number, terms: number): PlateShape {
  const halfX = 16 * ceil(min(3, max(1, 1 / ratio)));
  const halfY = 16 * ceil(min(3, max(1, ratio)));
  const [columns, rows] = [2 * halfX + 1, 2 * halfY + 1];
  const empty = (): Float64Array => new Float64Array(columns * rows);
  const [w, xx, yy, xy] = [empty(), empty(), empty(), empty()];
  for (let i = 0; i <= halfX; i++) {
    const x = i / (columns - 1);
    w.fill((x ** 4 - 2 * x ** 3 + x) / 24, i * rows, i * rows + halfY + 1);
    xx.fill((x ** 2 - x) / 2, i * rows, i * rows + halfY + 1);
  }
  let [reactionX, reactionY, corner] = [0.5, 0, 0];
  for (let term = 0; term < terms; term++) {
    const m = 2 * term + 1;
    const [β, sign] = [m * π, term % 2 ? -1 : 1];
    const Y = Array.from({ length: halfY + 1 }, (_, j) => levyTerm(m, ratio, (j / (rows - 1) - 0.5) * ratio));
    const [middle, edge] = [levyTerm(m, ratio, 0), levyTerm(m, ratio, ratio / 2)];
    reactionX += β ** 3 * middle[0] - (2 - nu) * β * middle[2];
    // The alternating sum takes half its last term, which mends its slow end.
    reactionY += (term === terms - 1 ? 0.5 : 1) * sign * (edge[3] - (2 - nu) * β ** 2 * edge[1]);
    corner -= 2 * (1 - nu) * β * edge[1];
    for (let i = 0; i <= halfX; i++) {
      const [s, c] = [sin((β * i) / (columns - 1)), cos((β * i) / (columns - 1))];
      for (let j = 0, ij = i * rows; j <= halfY; j++, ij++) {
        const [y0, y1, y2] = Y[j]!;
        w[ij]! += s * y0;
        xx[ij]! -= β ** 2 * s * y0;
        yy[ij]! += s * y2;
        xy[ij]! += β * c * y1;
      }
    }
  }
  for (let i = 0; i < columns; i++)
    for (let j = 0; j < rows; j++) {
      const [ij, from] = [i * rows + j, min(i, columns - 1 - i) * rows + min(j, rows - 1 - j)];
      for (const values of [w, xx, yy]) values[ij] = values[from]!;
      xy[ij] = i > halfX === j > halfY ? abs(xy[from]!) : -abs(xy[from]!);
    }
  const field = {
    columns,
    rows,
    w,
    Mx: xx.map((value, i) => -(value + nu * yy[i]!)),
    My: yy.map((value, i) => -(value + nu * xx[i]!)),
    Mxy: xy.map((value) => -(1 - nu) * value),
  };
  const edgeReactionLargest = max(reactionX, reactionY);
  return plateShape(field, {
    ratio,
    mirrors: { x: true, y: true },
    momentEdgeX: 0,
    momentEdgeY: 0,
    edgeReactionLargest,
    cornerForce: corner,
  });
}

/** Y_m and its first three derivatives at y from the middle, -ratio/2 ≤ y ≤ ratio/2, with a = 1. The ratios of
 *  hyperbolic functions are written with falling exponentials, so that long plates do not overflow. */
function levyTerm(m: number, ratio: number, y: number): readonly [number, number, number, number] {
  const [β, α] = [m * π, (m * π * ratio) / 2];
  const [up, down, all] = [exp(β * y - α), exp(-β * y - α), 1 + exp(-2 * α)];
  const [C, S] = [(up + down) / all, (up - down) / all]; // cosh βy / cosh α, sinh βy / cosh α
  const [αt, k] = [α * tanh(α), 2 / (π * m) ** 5];
  return [
    k * (-(αt + 2) * C + β * y * S),
    k * β * (-(αt + 1) * S + β * y * C),
    k * β ** 2 * (-αt * C + β * y * S),
    k * β ** 3 * ((1 - αt) * S + β * y * C),
  ];
}
