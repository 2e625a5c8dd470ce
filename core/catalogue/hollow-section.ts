import { refusal, requirePositive } from '../refusal.ts';
import type { HollowSection, SectionProcess, SectionShape, SourceOfRow } from './rows.ts';

const { PI: π } = Math;

/** What a hollow section is computed from; lengths in m. */
export interface HollowSectionSize {
  readonly id: string;
  readonly title?: string;
  readonly shape: SectionShape;
  readonly process: SectionProcess;
  /** The diameter for a round section. */
  readonly height: number;
  /** May be left out for a square or round section. */
  readonly width?: number;
  /** Design wall. */
  readonly wall: number;
  /** Wall as ordered; the design wall by default. */
  readonly nominalWall?: number;
  /** Corner radii; by default those on which the tables of the standard of the process are computed. */
  readonly outerRadius?: number;
  readonly innerRadius?: number;
  readonly source: SourceOfRow | null;
  readonly also?: readonly string[];
  readonly cautions?: readonly string[];
}

/** Properties of a hollow section with its rounded corners, all in m, m², m³, m⁴.
 *    A, I, W_pl: outer rounded rectangle less the inner one; a corner lost to the radius r has area (1 − π/4) r²,
 *      centroid (10 − 3π)/(12 − 3π) r from the sharp corner, own inertia [1/3 − π/16 − 1/(9(4 − π))] r⁴
 *      (a round section is the case r = D/2, exactly)
 *    I_t = t³h/3 + 2K A_h,  W_t = I_t/(t + K/t),  h = 2[(B − t) + (H − t)] − 2R_c(4 − π),
 *      A_h = (B − t)(H − t) − R_c²(4 − π),  K = 2A_h t/h,  R_c = (r_o + r_i)/2;  round: I_t = 2I, W_t = 2W_el
 *    A_v: A H/(B + H) along the height, A B/(B + H) along the width; round 2A/π
 *  Refuses sizes that are not positive, and a wall or radius that does not fit.
 *  Source: EN 10210-2 and EN 10219-2 Annex B, formulas from memory, held to printed rows in the tests;
 *  shear areas EN 1993-1-1:2005, 6.2.6(3), from memory. */
export function hollowSection(size: HollowSectionSize): HollowSection {
  const { id, shape, process, source, height: H, wall: t } = size;
  const B = size.width ?? H;
  const nominalWall = size.nominalWall ?? t;
  requirePositive({ height: H, width: B, wall: t, nominalWall });
  const [r_o, r_i] = radii(size);
  requireFits(size, B, nominalWall, r_o, r_i);

  const outer = { H, B, r: r_o };
  const inner = { H: H - 2 * t, B: B - 2 * t, r: r_i };
  const area = areaOf(outer) - areaOf(inner);
  const inertiaY = inertiaOf(outer) - inertiaOf(inner);
  const inertiaZ = inertiaOf(turned(outer)) - inertiaOf(turned(inner));
  const elasticY = (2 * inertiaY) / H;

  // the wall as ordered has its corners in the same proportion to the wall
  const grown = shape === 'round' ? 1 : nominalWall / t;
  const bore = {
    H: H - 2 * nominalWall,
    B: B - 2 * nominalWall,
    r: shape === 'round' ? H / 2 - nominalWall : r_i * grown,
  };
  const innerArea = areaOf(bore);
  const nominalArea = areaOf({ H, B, r: r_o * grown }) - innerArea;

  return {
    id,
    title: size.title ?? titleOf(size),
    source,
    ...(size.also && { also: size.also }),
    ...(size.cautions && { cautions: size.cautions }),
    shape,
    process,
    height: H,
    width: B,
    wall: t,
    nominalWall,
    outerRadius: r_o,
    innerRadius: r_i,
    area,
    nominalArea,
    inertiaY,
    inertiaZ,
    elasticY,
    elasticZ: (2 * inertiaZ) / B,
    plasticY: plasticOf(outer) - plasticOf(inner),
    plasticZ: plasticOf(turned(outer)) - plasticOf(turned(inner)),
    ...(shape === 'round'
      ? { torsion: 2 * inertiaY, torsionModulus: 2 * elasticY }
      : boxTorsion(H, B, t, (r_o + r_i) / 2)),
    shearAreaZ: shape === 'round' ? (2 * area) / π : (area * H) / (B + H),
    shearAreaY: shape === 'round' ? (2 * area) / π : (area * B) / (B + H),
    massPerMetre: 7850 * nominalArea,
    outerPerimeter: 2 * (B + H) - (8 - 2 * π) * r_o,
    innerArea,
  };
}

/** A solid rectangle, H high and B wide, with four corners rounded to r; bending of H. */
interface Rounded {
  readonly H: number;
  readonly B: number;
  readonly r: number;
}

const turned = ({ H, B, r }: Rounded): Rounded => ({ H: B, B: H, r });
const cornerArea = (r: number): number => (1 - π / 4) * r ** 2;
const cornerArm = ({ H, r }: Rounded): number => H / 2 - ((10 - 3 * π) / (12 - 3 * π)) * r;
const cornerInertia = (r: number): number => (1 / 3 - π / 16 - 1 / (9 * (4 - π))) * r ** 4;
const areaOf = ({ H, B, r }: Rounded): number => H * B - 4 * cornerArea(r);
const inertiaOf = (s: Rounded): number =>
  (s.B * s.H ** 3) / 12 - 4 * (cornerInertia(s.r) + cornerArea(s.r) * cornerArm(s) ** 2);
const plasticOf = (s: Rounded): number => (s.B * s.H ** 2) / 4 - 4 * cornerArea(s.r) * cornerArm(s);

function boxTorsion(H: number, B: number, t: number, R_c: number): Pick<HollowSection, 'torsion' | 'torsionModulus'> {
  const h = 2 * (B - t + (H - t)) - 2 * R_c * (4 - π);
  const A_h = (B - t) * (H - t) - R_c ** 2 * (4 - π);
  const K = (2 * A_h * t) / h;
  const torsion = (t ** 3 * h) / 3 + 2 * K * A_h;
  return { torsion, torsionModulus: torsion / (t + K / t) };
}

/** Hot finished 1.5t and 1.0t; cold formed 2.0t and 1.0t to 6 mm, 2.5t and 1.5t to 10 mm, 3.0t and 2.0t above.
 *  Source: EN 10210-2:2006, Annex B, from memory; EN 10219-2:2006, from a public copy of its tables. */
function radii({ shape, process, height, wall: t, outerRadius, innerRadius }: HollowSectionSize): [number, number] {
  if (shape === 'round') return [height / 2, height / 2 - t];
  if (outerRadius !== undefined) return [outerRadius, innerRadius ?? Math.max(outerRadius - t, 0)];
  if (process === 'hot finished') return [1.5 * t, innerRadius ?? t];
  const factor = t <= 0.006 ? 2 : t <= 0.01 ? 2.5 : 3;
  return [factor * t, innerRadius ?? (factor - 1) * t];
}

function requireFits(size: HollowSectionSize, width: number, nominalWall: number, r_o: number, r_i: number): void {
  const { id, shape, height, wall } = size;
  const least = Math.min(height, width);
  const thickest = Math.max(wall, nominalWall);
  const wrong =
    shape !== 'rectangular' && height !== width
      ? `it is called ${shape}, but its height and width differ`
      : 2 * thickest >= least
        ? 'its wall leaves no bore'
        : !(r_o >= 0 && 2 * r_o <= least) || !(r_i >= 0 && 2 * r_i <= least - 2 * wall)
          ? 'its corner radius does not fit'
          : null;
  if (wrong)
    throw refusal({
      what: `the hollow section ${id} cannot be made: ${wrong}`,
      where: { section: id },
      mend: 'Check height, width, wall and radii, and that all have the same unit',
    });
}

const shapeTitle = { square: 'Square', rectangular: 'Rectangular', round: 'Circular' } as const;

function titleOf({ shape, process, height, width, wall, nominalWall }: HollowSectionSize): string {
  const lengths = [height, ...(shape === 'round' ? [] : [width ?? height]), nominalWall ?? wall];
  const millimetres = lengths.map((length) => String(Number((length * 1000).toPrecision(6)))).join(' × ');
  return `${shapeTitle[shape]} hollow section ${millimetres} mm, ${process}`;
}
