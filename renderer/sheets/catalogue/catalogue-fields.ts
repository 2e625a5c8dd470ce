import type { UserRowKind } from '../../../core/document/user-rows.ts';
import { fields, type FieldSpec } from '../../parts/FieldList.tsx';
import { texts } from '../../texts.ts';

const words = texts.catalogueFields;

/** Fields of a row of the document's own, by kind. */

const families = ['carbon steel', 'stainless steel', 'aluminium', 'thermoplastic', 'laminate'] as const;

const named = fields(words.named, [
  { at: ['id'], takes: 'text' },
  { at: ['title'], takes: 'text' },
]); // prettier-ignore

export const source = fields(words.source, [
  { at: ['document'], takes: 'text' },
  { at: ['edition'], takes: 'text', optional: true },
  { at: ['clause'], takes: 'text', optional: true },
]);

export const heatAffected = fields(words.heatAffected, [
  { at: ['yield'], takes: 'stress' },
  { at: ['ultimate'], takes: 'stress' },
]); // prettier-ignore

export const across = fields(words.across, [
  { at: ['youngModulus'], takes: 'stress' },
  { at: ['ultimate'], takes: 'stress' },
]); // prettier-ignore

export const nominal = fields(words.nominal, [
  { at: ['tension'], takes: 'stress' },
  { at: ['shearThreads'], takes: 'stress' },
  { at: ['shearShank'], takes: 'stress' },
]);

const values: Readonly<Record<UserRowKind, readonly FieldSpec[]>> = {
  material: fields(words.material, [
    { at: ['family'], takes: families },
    { at: ['yieldStrength'], takes: 'stress' },
    { at: ['ultimateStrength'], takes: 'stress' },
    { at: ['upToThickness'], takes: 'length' },
    { at: ['youngModulus'], takes: 'stress' },
    { at: ['poisson'], takes: 'number' },
    { at: ['density'], takes: 'density' },
    { at: ['correlationFactor'], takes: 'number', optional: true },
  ]),
  section: fields(words.section, [
    { at: ['shape'], takes: ['square', 'rectangular', 'round'] },
    { at: ['height'], takes: 'length' },
    { at: ['width'], takes: 'length' },
    { at: ['wall'], takes: 'length' },
    { at: ['nominalWall'], takes: 'length', optional: true },
    { at: ['process'], takes: ['hot finished', 'cold formed'] },
    { at: ['outerRadius'], takes: 'length', optional: true },
    { at: ['innerRadius'], takes: 'length', optional: true },
  ]),
  bolt: fields(words.bolt, [
    { at: ['series'], takes: ['metric', 'inch'] },
    { at: ['diameter'], takes: 'length' },
    { at: ['pitch'], takes: 'length' },
    { at: ['tensileArea'], takes: 'area' },
    { at: ['headAcrossFlats'], takes: 'length' },
    { at: ['headAcrossCorners'], takes: 'length' },
    { at: ['headHeight'], takes: 'length' },
    { at: ['nutHeight'], takes: 'length' },
    { at: ['washerOuter'], takes: 'length' },
    { at: ['washerInner'], takes: 'length' },
    { at: ['washerThickness'], takes: 'length' },
    { at: ['holeNormal'], takes: 'length' },
    { at: ['holeFine'], takes: 'length' },
    { at: ['holeMedium'], takes: 'length' },
    { at: ['holeCoarse'], takes: 'length' },
    { at: ['holeOversize'], takes: 'length', optional: true },
    { at: ['shortSlotLength'], takes: 'length', optional: true },
    { at: ['longSlotLength'], takes: 'length', optional: true },
  ]),
  boltClass: fields(words.boltClass, [
    { at: ['family'], takes: ['carbon steel', 'stainless steel'] },
    { at: ['yield'], takes: 'stress', optional: true },
    { at: ['ultimate'], takes: 'stress' },
    { at: ['alphaV'], takes: 'number', optional: true },
    { at: ['alphaVShank'], takes: 'number', optional: true },
    { at: ['hardnessMax'], takes: 'number', optional: true },
  ]),
  weldMetal: fields(words.weldMetal, [
    { at: ['family'], takes: ['carbon steel', 'stainless steel', 'aluminium'] },
    { at: ['ultimate'], takes: 'stress', optional: true },
    { at: ['shear'], takes: 'stress', optional: true },
  ]),
  stockPlate: fields(words.stockPlate, [
    { at: ['series'], takes: ['metric', 'inch'] },
    { at: ['thickness'], takes: 'length' },
  ]),
}; // prettier-ignore

/** All fields of a row of a kind but its source and what may be left out as a whole. */
export const fieldsOf = (kind: UserRowKind): readonly FieldSpec[] => [...named, ...values[kind]];

/** All of them, for the finder. */
export const catalogueLabels = [...new Set([named, source, heatAffected, across, nominal, ...Object.values(values)].flat().map(({ label }) => label))]; // prettier-ignore
