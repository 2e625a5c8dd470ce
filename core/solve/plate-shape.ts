/** Deflection and moments on a grid over the whole plate, in units where a = D = q = 1. The value at column i (along x)
 *  and row j (along y) stands at i * rows + j; the grid is even and includes the edges.
 *  Mx = -(w_xx + ν w_yy), My = -(w_yy + ν w_xx), Mxy = -(1 - ν) w_xy: positive moments pull on the far face. */
export interface PlateField {
  readonly columns: number;
  readonly rows: number;
  readonly w: Float64Array;
  readonly Mx: Float64Array;
  readonly My: Float64Array;
  readonly Mxy: Float64Array;
}

/** Moments at a point [x/a, y/a] that is not on the grid: on the rim of a disc round a point support. */
export interface PointMoments {
  readonly at: readonly [number, number];
  readonly Mx: number;
  readonly My: number;
  readonly Mxy: number;
}

/** A plate's answer in units where a = D = q = 1: it depends on b/a, ν and the supports alone, so it is kept. */
export interface PlateShape {
  readonly ratio: number;
  readonly deflectionCentre: number;
  readonly deflectionLargest: number;
  readonly momentXCentre: number;
  readonly momentYCentre: number;
  /** Largest principal moment, as a magnitude, and largest von Mises moment √(Mx² - Mx My + My² + 3 Mxy²). */
  readonly momentLargest: number;
  readonly momentVonMises: number;
  /** Where momentVonMises is, [x/a, y/a]. */
  readonly largestAt: readonly [number, number];
  readonly momentEdgeX: number;
  readonly momentEdgeY: number;
  readonly edgeReactionLargest: number;
  readonly cornerForce: number;
  readonly error: number;
  readonly field: PlateField;
}

/** What a kernel knows beside the field. */
type Rest = Pick<PlateShape, 'ratio' | 'momentEdgeX' | 'momentEdgeY' | 'edgeReactionLargest' | 'cornerForce'> & {
  readonly rim?: readonly PointMoments[];
  /** Where the field mirrors about its middle, so that one half is enough to read. */
  readonly mirrors?: { readonly x: boolean; readonly y: boolean };
  /** True where moments are not to be read: inside a disc round a singular point. x/a, y/a. */
  readonly excluded?: (x: number, y: number) => boolean;
};

/** Reads the largest values off a field (and off the rims of excluded discs). columns and rows are odd, so that the
 *  centre is a grid point. The true peak between grid points is missed by about (grid step)² / 8 of the curvature of
 *  the moment: below 0.2 % on the grids used here. `error` is left to the caller, see `withError`. */
export function plateShape(
  field: PlateField,
  { rim = [], mirrors = { x: false, y: false }, excluded = () => false, ...rest }: Rest,
): PlateShape {
  const { columns, rows, w, Mx, My, Mxy } = field;
  const centre = ((columns - 1) / 2) * rows + (rows - 1) / 2;
  let [deflectionLargest, momentLargest, momentVonMises] = [0, 0, 0];
  let largestAt: readonly [number, number] = [0, 0];
  const read = (at: readonly [number, number], mx: number, my: number, mxy: number): void => {
    momentLargest = Math.max(momentLargest, Math.abs(mx + my) / 2 + Math.hypot((mx - my) / 2, mxy));
    const vonMises = Math.sqrt(mx * mx - mx * my + my * my + 3 * mxy * mxy);
    // A hair above the last one, so that round-off does not choose among points that symmetry makes equal.
    if (vonMises > momentVonMises * (1 + 1e-9)) [momentVonMises, largestAt] = [vonMises, at];
  };
  for (let i = 0; i < (mirrors.x ? (columns + 1) / 2 : columns); i++)
    for (let j = 0; j < (mirrors.y ? (rows + 1) / 2 : rows); j++) {
      const ij = i * rows + j;
      const [x, y] = [i / (columns - 1), (j / (rows - 1)) * rest.ratio];
      deflectionLargest = Math.max(deflectionLargest, Math.abs(w[ij]!));
      if (!excluded(x, y)) read([x, y], Mx[ij]!, My[ij]!, Mxy[ij]!);
    }
  for (const point of rim) read(point.at, point.Mx, point.My, point.Mxy);
  return {
    ...rest,
    deflectionCentre: w[centre]!,
    deflectionLargest,
    momentXCentre: Mx[centre]!,
    momentYCentre: My[centre]!,
    momentLargest,
    momentVonMises,
    largestAt,
    error: 0,
    field,
  };
}

/** The finer of two answers, with `error`: the largest relative change from the coarser in deflection, principal
 *  moment and von Mises moment. It is an estimate of the coarser one's error, so the finer is usually better. */
export function withError(fine: PlateShape, coarse: PlateShape): PlateShape {
  const change = (of: 'deflectionLargest' | 'momentLargest' | 'momentVonMises'): number =>
    Math.abs(coarse[of] / fine[of] - 1);
  return { ...fine, error: Math.max(change('deflectionLargest'), change('momentLargest'), change('momentVonMises')) };
}
