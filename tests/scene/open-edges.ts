/** How many edges do not lie between two triangles that run along it in opposite directions; corners are joined by place. */
export function openEdges(
  positions: ArrayLike<number>,
  indices: ArrayLike<number>,
  from = 0,
  count = indices.length,
): number {
  const corners = new Map<string, number>();
  const corner = (index: number): number => {
    const key = `${positions[3 * index]} ${positions[3 * index + 1]} ${positions[3 * index + 2]}`;
    const known = corners.get(key);
    if (known !== undefined) return known;
    corners.set(key, corners.size);
    return corners.size - 1;
  };
  const runs = new Map<string, number>();
  for (let i = from; i < from + count; i += 3) {
    const own = [corner(indices[i]!), corner(indices[i + 1]!), corner(indices[i + 2]!)];
    own.forEach((a, k) => {
      const b = own[(k + 1) % 3]!;
      const [key, way] = a < b ? [`${a} ${b}`, 1] : [`${b} ${a}`, -1];
      runs.set(key, (runs.get(key) ?? 0) + way);
    });
  }
  return [...runs.values()].filter((sum) => sum !== 0).length;
}
