import type { UserRowKind } from '../../../core/document/user-rows.ts';
import type { FieldSpec } from '../../parts/FieldList.tsx';

/** Fields of a row of the document's own, by kind. */

const families = ['carbon steel', 'stainless steel', 'aluminium', 'thermoplastic', 'laminate'] as const;

const named: readonly FieldSpec[] = [
  { at: ['id'], takes: 'text', label: 'Name', help: 'By which other fields ask for the row; another than any built-in row has.' },
  { at: ['title'], takes: 'text', label: 'Title', help: 'As the note prints it.' },
]; // prettier-ignore

export const source: readonly FieldSpec[] = [
  { at: ['document'], takes: 'text', label: 'Document', help: 'Inspection certificate, standard or maker’s sheet.' },
  { at: ['edition'], takes: 'text', label: 'Edition', help: 'Year or date.', optional: true },
  { at: ['clause'], takes: 'text', label: 'Clause', help: 'Clause, table, page or heat number.', optional: true },
];

export const heatAffected: readonly FieldSpec[] = [
  { at: ['yield'], takes: 'stress', label: '0.2 % proof strength beside a weld', help: 'In the zone that the heat softens.' },
  { at: ['ultimate'], takes: 'stress', label: 'Ultimate strength beside a weld', help: 'In the zone that the heat softens.' },
]; // prettier-ignore

export const across: readonly FieldSpec[] = [
  { at: ['youngModulus'], takes: 'stress', label: 'Modulus across the fibres', help: 'Young’s modulus at right angles to the main direction.' },
  { at: ['ultimate'], takes: 'stress', label: 'Strength across the fibres', help: 'At right angles to the main direction.' },
]; // prettier-ignore

export const nominal: readonly FieldSpec[] = [
  { at: ['tension'], takes: 'stress', label: 'Nominal tension', help: 'F_nt of Table J3.2.' },
  { at: ['shearThreads'], takes: 'stress', label: 'Nominal shear, threads in the plane', help: 'F_nv of Table J3.2.' },
  { at: ['shearShank'], takes: 'stress', label: 'Nominal shear, shank in the plane', help: 'F_nv of Table J3.2.' },
];

const values: Readonly<Record<UserRowKind, readonly FieldSpec[]>> = {
  material: [
    { at: ['family'], takes: families, label: 'Family', help: 'Decides which rules judge it.' },
    { at: ['yieldStrength'], takes: 'stress', label: 'Yield strength', help: 'The least that is guaranteed: yield or 0.2 % proof strength; for a laminate that of its break.' },
    { at: ['ultimateStrength'], takes: 'stress', label: 'Ultimate strength', help: 'The least that is guaranteed.' },
    { at: ['upToThickness'], takes: 'length', label: 'Up to a thickness of', help: 'The strengths hold so far and no further.' },
    { at: ['youngModulus'], takes: 'stress', label: 'Young’s modulus', help: 'Under short load.' },
    { at: ['poisson'], takes: 'number', label: 'Poisson’s ratio', help: '0.3 for steel.' },
    { at: ['density'], takes: 'density', label: 'Density', help: '7850 kg/m³ for steel.' },
    { at: ['correlationFactor'], takes: 'number', label: 'Correlation factor of its welds', help: 'β_w of EN 1993-1-8 Table 4.1, where that table lists the steel.', optional: true },
  ],
  section: [
    { at: ['shape'], takes: ['square', 'rectangular', 'round'], label: 'Shape', help: 'Of the outline.' },
    { at: ['height'], takes: 'length', label: 'Height', help: 'Outside; of a round tube its diameter.' },
    { at: ['width'], takes: 'length', label: 'Width', help: 'Outside; of a round tube its diameter.' },
    { at: ['wall'], takes: 'length', label: 'Wall', help: 'For strength: the design wall, where a standard asks for less than is ordered.' },
    { at: ['nominalWall'], takes: 'length', label: 'Wall as ordered', help: 'For mass and bore, where it is another.', optional: true },
    { at: ['process'], takes: ['hot finished', 'cold formed'], label: 'Made', help: 'Decides the usual radii and the buckling curve.' },
    { at: ['outerRadius'], takes: 'length', label: 'Outer corner radius', help: 'By its process where it is left out.', optional: true },
    { at: ['innerRadius'], takes: 'length', label: 'Inner corner radius', help: 'By its process where it is left out.', optional: true },
  ],
  bolt: [
    { at: ['series'], takes: ['metric', 'inch'], label: 'Series', help: 'Decides which standards its holes and washers go by.' },
    { at: ['diameter'], takes: 'length', label: 'Diameter', help: 'Of the shank, nominal.' },
    { at: ['pitch'], takes: 'length', label: 'Pitch of the thread', help: 'From crest to crest.' },
    { at: ['tensileArea'], takes: 'area', label: 'Tensile stress area', help: 'Of the thread.' },
    { at: ['headAcrossFlats'], takes: 'length', label: 'Across flats', help: 'Of head and nut: the spanner’s size.' },
    { at: ['headAcrossCorners'], takes: 'length', label: 'Across corners', help: 'The least that its standard allows.' },
    { at: ['headHeight'], takes: 'length', label: 'Height of the head', help: 'Nominal.' },
    { at: ['nutHeight'], takes: 'length', label: 'Height of the nut', help: 'Nominal.' },
    { at: ['washerOuter'], takes: 'length', label: 'Washer, outside', help: 'Diameter.' },
    { at: ['washerInner'], takes: 'length', label: 'Washer, bore', help: 'Diameter.' },
    { at: ['washerThickness'], takes: 'length', label: 'Washer, thickness', help: 'Nominal.' },
    { at: ['holeNormal'], takes: 'length', label: 'Normal hole', help: 'For structures: EN 1090-2 Table 11 or AISC 360 Table J3.3.' },
    { at: ['holeFine'], takes: 'length', label: 'Clearance hole, fine', help: 'ISO 273, or close of ASME B18.2.8.' },
    { at: ['holeMedium'], takes: 'length', label: 'Clearance hole, medium', help: 'ISO 273, or normal of ASME B18.2.8.' },
    { at: ['holeCoarse'], takes: 'length', label: 'Clearance hole, coarse', help: 'ISO 273, or loose of ASME B18.2.8.' },
    { at: ['holeOversize'], takes: 'length', label: 'Oversize hole', help: 'Where the table has one.', optional: true },
    { at: ['shortSlotLength'], takes: 'length', label: 'Short slot, length', help: 'The whole length, where the table has one.', optional: true },
    { at: ['longSlotLength'], takes: 'length', label: 'Long slot, length', help: 'The whole length, where the table has one.', optional: true },
  ],
  boltClass: [
    { at: ['family'], takes: ['carbon steel', 'stainless steel'], label: 'Family of the bolt', help: 'Decides preload and galvanic couples.' },
    { at: ['yield'], takes: 'stress', label: 'Yield strength of the bolt', help: 'Nominal; left out where its standard sets none.', optional: true },
    { at: ['ultimate'], takes: 'stress', label: 'Ultimate strength of the bolt', help: 'Nominal.' },
    { at: ['alphaV'], takes: 'number', label: 'Shear factor, threads', help: 'α_v of EN 1993-1-8 Table 3.4 with threads in the shear plane.', optional: true },
    { at: ['alphaVShank'], takes: 'number', label: 'Shear factor, shank', help: 'α_v with the shank in the shear plane.', optional: true },
    { at: ['hardnessMax'], takes: 'number', label: 'Greatest hardness', help: 'HV that its standard allows; above 350 cathodic protection can crack the bolt.', optional: true },
  ],
  weldMetal: [
    { at: ['family'], takes: ['carbon steel', 'stainless steel', 'aluminium'], label: 'Family of the weld metal', help: 'Of the parts that it joins.' },
    { at: ['ultimate'], takes: 'stress', label: 'Strength of the weld metal', help: 'Left out: at least that of the parts joined.', optional: true },
    { at: ['shear'], takes: 'stress', label: 'Shear strength of the filler', help: 'Aluminium, allowable-stress basis.', optional: true },
  ],
  stockPlate: [
    { at: ['series'], takes: ['metric', 'inch'], label: 'Series of plates', help: 'Offered for documents in these units.' },
    { at: ['thickness'], takes: 'length', label: 'Thickness that is kept', help: 'As a merchant or your store has it.' },
  ],
}; // prettier-ignore

/** All fields of a row of a kind but its source and what may be left out as a whole. */
export const fieldsOf = (kind: UserRowKind): readonly FieldSpec[] => [...named, ...values[kind]];

/** All of them, for the finder. */
export const catalogueLabels = [...new Set([named, source, heatAffected, across, nominal, ...Object.values(values)].flat().map(({ label }) => label))]; // prettier-ignore
