import type { UserRows } from '../catalogue/catalogue.ts';
import { comparedWithNearest } from '../catalogue/compared-with-nearest.ts';
import type { Bolt, BoltClass, Material, Row, StockPlate, WeldMetal } from '../catalogue/rows.ts';
import type { Finding } from '../finding.ts';
import type { PlateDocument } from './schema.ts';
import { sectionRow } from './section-row.ts';

const { PI: π } = Math;

/** Kinds of row that a document can add to. */
export type UserRowKind = 'material' | 'section' | 'bolt' | 'boltClass' | 'weldMetal' | 'stockPlate';

type Rows = PlateDocument['catalogue'];

/** The document's own catalogue rows in the catalogue's shape, SI. A row with no source keeps none. */
export function userRows({ catalogue }: PlateDocument): Required<Pick<UserRows, UserRowKind>> {
  return {
    material: catalogue.materials.map(materialRow),
    section: catalogue.sections.map(sectionRow),
    bolt: catalogue.bolts.map(boltRow),
    boltClass: catalogue.boltClasses.map(boltClassRow),
    weldMetal: catalogue.weldMetals.map(weldMetalRow),
    stockPlate: catalogue.stockPlates.map(stockPlateRow),
  };
}

/** A row without a source, or one that lies far from the catalogue's nearest. */
export function userRowFindings(document: PlateDocument): readonly Finding[] {
  const own = userRows(document);
  const rows = Object.values(own).flat() as Row[];
  const far = [
    ...own.material.map((row) => ({ kind: 'material', row }) as const),
    ...own.section.map((row) => ({ kind: 'section', row }) as const),
    ...own.bolt.map((row) => ({ kind: 'bolt', row }) as const),
    ...own.boltClass.map((row) => ({ kind: 'boltClass', row }) as const),
    ...own.weldMetal.map((row) => ({ kind: 'weldMetal', row }) as const),
    ...own.stockPlate.map((row) => ({ kind: 'stockPlate', row }) as const),
  ];
  return [
    ...rows
      .filter(({ source }) => source === null)
      .map(({ id }) => ({
        id: 'row-without-source',
        place: id,
        text: `The catalogue row “${id}” of this document has no source`,
        mend: 'Give the certificate, standard or maker it comes from.',
      })),
    ...far.flatMap((row) =>
      comparedWithNearest(row).map((text) => ({
        id: 'row-far-from-catalogue',
        place: row.row.id,
        text,
        mend: 'Check the value and its unit against its source.',
      })),
    ),
  ];
}

function materialRow(row: Rows['materials'][number]): Material {
  const metal = row.family !== 'thermoplastic' && row.family !== 'laminate';
  const upTo = row.upToThickness.si;
  const { heatAffected, across } = row;
  return {
    id: row.id,
    title: row.title,
    source: row.source,
    family: row.family,
    density: row.density.si,
    youngModulus: row.youngModulus.si,
    poisson: row.poisson,
    yieldStrength: [{ upTo, value: row.yieldStrength.si }],
    ultimateStrength: [{ upTo, value: row.ultimateStrength.si }],
    ...(heatAffected && { heatAffected: { yield: heatAffected.yield.si, ultimate: heatAffected.ultimate.si } }),
    ...(across && { across: { youngModulus: across.youngModulus.si, ultimate: across.ultimate.si } }),
    correlationFactor: row.correlationFactor ?? null,
    // The modulus under long load hangs on the load's duration: the panel design gives it, with its source.
    ...(metal ? {} : { longTermModulus: null }),
    forms: ['plate', 'hollow section'],
    judged: row.family === 'aluminium' ? 'bending only' : metal ? 'full' : 'no published rule',
    cautions: [],
  };
}

function boltRow(row: Rows['bolts'][number]): Bolt {
  return {
    id: row.id,
    title: row.title,
    source: row.source,
    series: row.series,
    diameter: row.diameter.si,
    pitch: row.pitch.si,
    tensileArea: row.tensileArea.si,
    shankArea: (π / 4) * row.diameter.si ** 2,
    headAcrossFlats: row.headAcrossFlats.si,
    headAcrossCorners: row.headAcrossCorners.si,
    headHeight: row.headHeight.si,
    nutHeight: row.nutHeight.si,
    washerOuter: row.washerOuter.si,
    washerInner: row.washerInner.si,
    washerThickness: row.washerThickness.si,
    holeFine: row.holeFine.si,
    holeMedium: row.holeMedium.si,
    holeCoarse: row.holeCoarse.si,
    holeNormal: row.holeNormal.si,
    holeOversize: row.holeOversize?.si ?? null,
    shortSlotLength: row.shortSlotLength?.si ?? null,
    longSlotLength: row.longSlotLength?.si ?? null,
  };
}

function boltClassRow(row: Rows['boltClasses'][number]): BoltClass {
  const { nominal } = row;
  return {
    id: row.id,
    title: row.title,
    source: row.source,
    family: row.family,
    yield: row.yield?.si ?? null,
    ultimate: row.ultimate.si,
    alphaV: row.alphaV ?? null,
    alphaVShank: row.alphaVShank ?? null,
    nominal: nominal
      ? { tension: nominal.tension.si, shearThreads: nominal.shearThreads.si, shearShank: nominal.shearShank.si }
      : null,
    hardnessMax: row.hardnessMax ?? null,
    cautions: [],
  };
}

const weldMetalRow = ({ id, title, source, family, ultimate, shear }: Rows['weldMetals'][number]): WeldMetal => ({
  id,
  title,
  source,
  family,
  ultimate: ultimate?.si ?? null,
  ...(shear ? { shear: shear.si } : {}),
});

const stockPlateRow = ({ id, title, source, series, thickness, sheets }: Rows['stockPlates'][number]): StockPlate => ({
  id,
  title,
  source,
  series,
  thickness: thickness.si,
  sheets: sheets.map(({ width, length }) => ({ width: width.si, length: length.si })),
});
