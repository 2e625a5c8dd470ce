/** Normal velocity at (i, j) cells from a cell of side h with unit doublet strength; even in both. Unit: 1/m. */
export type Kernel = (i: number, j: number) => number;

/** Images of the plate: the same doublets at a height, of the same sense (free surface at high frequency) or against (a wall). */
export interface Image {
  /** Plate to its image: twice the distance to the plane of mirroring, m. */
  readonly height: number;
  readonly sense: 1 | -1;
}

/**
 * Square cells of constant doublet strength in one plane, velocity at their middles, exactly integrated:
 *   w = −(1/4π) ΣΣ ± F(x ± h/2, y ± h/2, z),   F = x y (x² + y² + 2 z²) / ((x² + z²)(y² + z²) R)
 * so that its own cell is positive, all others in the plane negative, and the sum over the plane zero: the matrix on any set
 * of cells is symmetric, diagonally dominant and has an inverse without a negative entry. A cell that is added therefore
 * never lowers the added mass. Source: field of a ring of straight vortices (Katz and Plotkin, Low-Speed Aerodynamics), integrated here.
 */
export function doubletKernel(h: number, images: readonly Image[] = []): Kernel {
  const corner = (x: number, y: number, z: number): number => {
    const [a, b] = [x * x + z * z, y * y + z * z];
    return (x * y * (a + b)) / (a * b * Math.sqrt(x * x + b));
  };
  const cell = (x: number, y: number, z: number): number =>
    (corner(x + h / 2, y + h / 2, z) -
      corner(x - h / 2, y + h / 2, z) -
      corner(x + h / 2, y - h / 2, z) +
      corner(x - h / 2, y - h / 2, z)) /
    (4 * Math.PI);
  return (i, j) =>
    images.reduce((sum, { height, sense }) => sum + sense * cell(i * h, j * h, height), cell(i * h, j * h, 0));
}

/** The same in two dimensions, strips along y without end: w = −1 / (2π h (i² − 1/4)). Taken on a lattice of one row. */
export const stripKernel =
  (h: number): Kernel =>
  (i) =>
    -1 / (2 * Math.PI * h * (i * i - 0.25));
