import type { Bolt, Material } from '../../catalogue/rows.ts';
import type { BoltedFixing } from '../../document/schema.ts';
import type { TieStiffness } from '../../solve/structure/structure.ts';

/** What a bolt clamps: m, Pa. */
export interface Clamped {
  readonly panelThickness: number;
  readonly panelModulus: number;
  readonly wall: number;
  readonly tubeModulus: number;
  /** Panel, and what of the tube is between head and nut. */
  readonly grip: number;
}

/** Young's modulus and Poisson's ratio of bolts of steel: EN 1993-1-1, 3.2.6. */
export const steel = { E: 210e9, nu: 0.3 };

/**
 * Stiffness of one bolt in a panel and one wall of a tube, N/m and N·m.
 *   axial:   E A_s / L_b, with L_b the grip and half of head and nut (EN 1993-1-8:2005, Table 6.11, symbol L_b)
 *   shear:   1/k = ((t_1 + t_2)/2d)^(2/3) · 3 (1/t_1E_1 + 1/t_2E_2 + 1/2t_1E_3 + 1/2t_2E_3), single shear, bolted metal
 *   bending: E I / L_b,  torsion: G J / L_b, of the tensile area
 * Source of the shear stiffness: H. Huth, LBF report FB-172 (1984), as a later review gives it; from memory.
 * A bolt with clearance slips in its hole when the load turns round: it is given a thousandth of the shear stiffness, so
 * that panels stay where they are and take no part in bending the tubes (the safe side for the tubes; slip-resistant and
 * fitted bolts count in full, and the check of slip says whether they may).
 */
export function boltTieStiffness(bolt: Bolt, clamped: Clamped, shear: BoltedFixing['shear']): TieStiffness {
  const { E, nu } = steel;
  const L = clamped.grip + (bolt.headHeight + bolt.nutHeight) / 2;
  const { panelThickness: t1, panelModulus: E1, wall: t2, tubeModulus: E2 } = clamped;
  const I = bolt.tensileArea ** 2 / (4 * Math.PI);
  const flexibility =
    ((t1 + t2) / (2 * bolt.diameter)) ** (2 / 3) *
    3 *
    (1 / (t1 * E1) + 1 / (t2 * E2) + 1 / (2 * t1 * E) + 1 / (2 * t2 * E));
  return {
    axial: (E * bolt.tensileArea) / L,
    shear: (shear === 'clearance' ? slipped : 1) / flexibility,
    bending: (E * I) / L,
    torsion: (E * I) / ((1 + nu) * L),
  };
}

/** What is left of the shear stiffness of a bolt that slips. */
const slipped = 0.001;

/** Stiffness of a length of fillet weld: its throat, pulled or sheared over its own thickness a, so E l and G l; in bending
 *  about its own line E a² l / 12. Stiff beside any panel, and a stated number, no penalty. N/m and N·m. */
export function weldTieStiffness(length: number, throat: number, { youngModulus: E, poisson }: Material): TieStiffness {
  const bending = (E * throat ** 2 * length) / 12;
  return { axial: E * length, shear: (E * length) / (2 * (1 + poisson)), bending, torsion: bending / (1 + poisson) };
}

/** Stiffness of panel and wall pressed together over an area, N/m: half of each thickness in series, E A / (t/2) each. */
export function contactStiffness(
  area: number,
  { panelThickness, panelModulus, wall, tubeModulus }: Omit<Clamped, 'grip'>,
): number {
  return area / (panelThickness / (2 * panelModulus) + wall / (2 * tubeModulus));
}
