/** Volume inside triangles by the divergence theorem: a sixth of the sum of a · (b × c). Positions 3 a vertex. */
export function volumeOf(
  positions: ArrayLike<number>,
  indices: ArrayLike<number>,
  from = 0,
  count = indices.length,
): number {
  let sum = 0;
  for (let i = from; i < from + count; i += 3) {
    const [a, b, c] = [3 * indices[i]!, 3 * indices[i + 1]!, 3 * indices[i + 2]!];
    const [ax, ay, az] = [positions[a]!, positions[a + 1]!, positions[a + 2]!];
    const [bx, by, bz] = [positions[b]!, positions[b + 1]!, positions[b + 2]!];
    const [cx, cy, cz] = [positions[c]!, positions[c + 1]!, positions[c + 2]!];
    sum += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return sum / 6;
}
