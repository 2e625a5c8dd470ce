import type { Source } from '../source.ts';

/** Where a row comes from. `memory` marks a row whose numbers were not read in the document or in a copy of it. */
export type SourceOfRow = Source;

/** What every row has. A user's row may have no source; it is then printed as "no source". */
export interface Row {
  readonly id: string;
  readonly title: string;
  readonly source: SourceOfRow | null;
  /** Other spellings under which the row is found. */
  readonly also?: readonly string[];
  readonly cautions?: readonly string[];
}

/** A strength that holds up to and with this thickness. Thickness in m, value in Pa. */
export interface StrengthStep {
  readonly upTo: number;
  readonly value: number;
}

export type MaterialFamily = 'carbon steel' | 'stainless steel' | 'aluminium' | 'thermoplastic' | 'laminate';
export type MaterialForm = 'plate' | 'hollow section';

export interface Material extends Row {
  readonly family: MaterialFamily;
  /** kg/m³ */
  readonly density: number;
  /** Pa. For a directional laminate: along the fibres. */
  readonly youngModulus: number;
  readonly poisson: number;
  /** Yield or 0.2 % proof strength, thinnest step first. Empty for a material that breaks without yielding. */
  readonly yieldStrength: readonly StrengthStep[];
  readonly ultimateStrength: readonly StrengthStep[];
  /** Strengths within reach of a weld, Pa. Aluminium only. */
  readonly heatAffected?: { readonly yield: number; readonly ultimate: number };
  /** Across the fibres, Pa. Directional laminates only. */
  readonly across?: { readonly youngModulus: number; readonly ultimate: number };
  /** beta_w for fillet welds, EN 1993-1-8 Table 4.1; null where that table does not list the material. */
  readonly correlationFactor: number | null;
  /** Modulus under long load, Pa: absent for a metal (no creep at sea temperature), null where the document must give it. */
  readonly longTermModulus?: number | null;
  readonly forms: readonly MaterialForm[];
  /** How far the checks can judge a panel or tube of this material. */
  readonly judged: 'full' | 'bending only' | 'no published rule';
  readonly cautions: readonly string[];
}

export type SectionShape = 'square' | 'rectangular' | 'round';
export type SectionProcess = 'hot finished' | 'cold formed';

/** A hollow section: lengths m, areas m², and so on. y is the axis for bending of the height, z for bending of the width. */
export interface HollowSection extends Row {
  readonly shape: SectionShape;
  readonly process: SectionProcess;
  readonly height: number;
  readonly width: number;
  /** Design wall: what strength and stiffness are computed with. */
  readonly wall: number;
  /** Wall as ordered; differs from `wall` for ASTM A500 (design wall 0.93 of nominal). Mass and bore follow this one. */
  readonly nominalWall: number;
  /** Corner radii of the design section; half the diameter and the bore for a round one. */
  readonly outerRadius: number;
  readonly innerRadius: number;
  /** Area of the design section. */
  readonly area: number;
  /** Area of the metal as ordered, for mass and displaced volume. */
  readonly nominalArea: number;
  readonly inertiaY: number;
  readonly inertiaZ: number;
  readonly elasticY: number;
  readonly elasticZ: number;
  readonly plasticY: number;
  readonly plasticZ: number;
  /** Torsion constant, m⁴. */
  readonly torsion: number;
  /** Torsion section modulus, m³. */
  readonly torsionModulus: number;
  /** Shear area for a force along z (the height) and along y (the width). */
  readonly shearAreaZ: number;
  readonly shearAreaY: number;
  /** kg/m in steel of 7850 kg/m³; for reference only, mass is computed from `nominalArea` and the material. */
  readonly massPerMetre: number;
  readonly outerPerimeter: number;
  /** Bore: area inside the wall as ordered. */
  readonly innerArea: number;
}

/** A plate thickness that merchants keep, with the sheets it comes in. m. */
export interface StockPlate extends Row {
  readonly thickness: number;
  readonly series: 'metric' | 'inch';
  readonly sheets: readonly { readonly width: number; readonly length: number }[];
}

/** A hexagon bolt with its nut and washer, coarse thread. m, m². */
export interface Bolt extends Row {
  readonly series: 'metric' | 'inch';
  readonly diameter: number;
  readonly pitch: number;
  readonly tensileArea: number;
  readonly shankArea: number;
  readonly headAcrossFlats: number;
  /** The least that the standards allow, of head and nut. */
  readonly headAcrossCorners: number;
  readonly headHeight: number;
  readonly nutHeight: number;
  readonly washerOuter: number;
  readonly washerInner: number;
  readonly washerThickness: number;
  /** Clearance holes of ISO 273; for inch bolts close, normal and loose of ASME B18.2.8. */
  readonly holeFine: number;
  readonly holeMedium: number;
  readonly holeCoarse: number;
  /** Holes for structures: EN 1090-2 Table 11; for inch bolts AISC 360 Table J3.3. Slots: the whole length. Null where the table has none. */
  readonly holeNormal: number;
  readonly holeOversize: number | null;
  readonly shortSlotLength: number | null;
  readonly longSlotLength: number | null;
}

export interface BoltClass extends Row {
  readonly family: 'carbon steel' | 'stainless steel';
  /** Nominal values for design, Pa. Null where the standard sets none. */
  readonly yield: number | null;
  readonly ultimate: number;
  /** Shear factor alpha_v with threads in the shear plane, and with the shank in it. Null where EN 1993 has no value. */
  readonly alphaV: number | null;
  readonly alphaVShank: number | null;
  /** Nominal stresses of AISC 360 Table J3.2, Pa; null for a class which that table does not list by name. */
  readonly nominal: { readonly tension: number; readonly shearThreads: number; readonly shearShank: number } | null;
  /** Greatest Vickers hardness that the standard allows; null where it sets none. */
  readonly hardnessMax: number | null;
  readonly cautions: readonly string[];
}

export interface WeldMetal extends Row {
  readonly family: 'carbon steel' | 'stainless steel' | 'aluminium';
  /** Tensile strength, Pa; for aluminium the characteristic weld strength f_w. Null: at least that of the parts joined. */
  readonly ultimate: number | null;
  /** Shear strength of an aluminium filler by the Aluminum Design Manual, Pa. */
  readonly shear?: number;
}

/** A substance that only has weight: coating, anode. kg/m³. */
export interface Substance extends Row {
  readonly density: number;
}
