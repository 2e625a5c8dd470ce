import type { Hydrodynamics } from '../document/hydrodynamics-field.ts';
import type { PlateDocument } from '../document/schema.ts';
import { requirePositive } from '../refusal.ts';

/** What marine growth does to a plate. */
export interface Growth {
  /** m on every face. */
  readonly thickness: number;
  /** kg/m³, of the growth. */
  readonly density: number;
}

/** kg/m³. Source: DNV-RP-C205 (from memory; NORSOK N-003 has 1300). */
export const growthDensity = 1325;

/**
 * Thickness of marine growth, m, at a depth below mean sea level and after some years: 100 mm down to 40 m, below that 50 mm
 * (56 to 59° N) or 20 mm (59 to 72° N, and where no latitude is given the larger); grown in two years in a straight line.
 * Other seas differ: let a survey overrule it.
 * Source: Norwegian guidance later taken into NORSOK N-003 (Dahle and Kvitrud 1995/2003); the two years are common practice,
 * no source.
 */
export function marineGrowth(depth: number, years: number, latitude: number | null): Growth {
  requirePositive({ depth });
  const north = latitude !== null && latitude > (59 * Math.PI) / 180;
  const full = depth <= 40 ? 0.1 : north ? 0.02 : 0.05;
  return { thickness: full * Math.min(1, Math.max(0, years) / 2), density: growthDensity };
}

type Rows = NonNullable<NonNullable<Hydrodynamics['growth']>['rows']>;

/** Thickness by the user's rows, m: of those whose band holds the depth, straight between their years, from none at the start; the last one's from there on. Null where no band holds it. */
export function thicknessByRows(rows: Rows, depth: number, years: number): number | null {
  const known = rows.filter(({ from, to }) => depth >= from.si && depth <= to.si).sort((a, b) => a.years - b.years);
  if (known.length === 0) return null;
  let before = { years: 0, thickness: 0 };
  for (const { years: at, thickness } of known) {
    if (years <= at)
      return before.thickness + ((years - before.years) / (at - before.years)) * (thickness.si - before.thickness);
    before = { years: at, thickness: thickness.si };
  }
  return before.thickness;
}

/** Growth on the plate of a document after some years: by its own rows, else by the guidance. */
export function growthAfter(
  { water, hydrodynamics }: Pick<PlateDocument, 'water' | 'hydrodynamics'>,
  years: number,
): Growth {
  // prettier-ignore
  const { rows, density } = hydrodynamics?.growth ?? {};
  const own = rows ? thicknessByRows(rows, water.depth.si, years) : null;
  const guided = marineGrowth(water.depth.si, years, water.latitude?.si ?? null);
  return { thickness: own ?? guided.thickness, density: density?.si ?? guided.density };
}

/** Growth of the stated years; null where none is stated, or none has grown yet. */
export function growthOf(document: Pick<PlateDocument, 'water' | 'hydrodynamics'>): Growth | null {
  const stated = document.hydrodynamics?.growth;
  if (!stated) return null;
  const growth = growthAfter(document, stated.years);
  return growth.thickness > 0 ? growth : null;
}

/** Mass of growth on a square or rectangular tube, kg/m: on all four faces and out to square corners. Width and height in m. */
export const growthOnTube = (width: number, height: number, { thickness, density }: Growth): number =>
  density * ((width + 2 * thickness) * (height + 2 * thickness) - width * height);
