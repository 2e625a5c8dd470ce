import type { ShellShape } from './shell-shape.ts';

/** ∫ N_i dA of the corners' shape functions, m²: what each node carries of a uniform pressure or mass. */
export function cornerShares({ count, xy }: ShellShape): Float64Array {
  const share = new Float64Array(count);
  const twice = (a: number, b: number, c: number): number =>
    (xy[2 * b]! - xy[2 * a]!) * (xy[2 * c + 1]! - xy[2 * a + 1]!) -
    (xy[2 * c]! - xy[2 * a]!) * (xy[2 * b + 1]! - xy[2 * a + 1]!);
  if (count === 3) return share.fill(twice(0, 1, 2) / 6);
  // The Jacobian is bilinear with corner values J_i = twice the corner triangle / 4.
  const J = [twice(0, 1, 3), twice(1, 2, 0), twice(2, 3, 1), twice(3, 0, 2)].map((value) => value / 4);
  for (let i = 0; i < 4; i++) share[i] = (4 * J[i]! + 2 * J[(i + 1) % 4]! + J[(i + 2) % 4]! + 2 * J[(i + 3) % 4]!) / 9;
  return share;
}
