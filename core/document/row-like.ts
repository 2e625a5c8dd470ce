import { catalogueWith, type RowOf } from '../catalogue/catalogue.ts';
import { hollowSection } from '../catalogue/hollow-section.ts';
import type { Bolt, BoltClass, HollowSection, Material, StockPlate, WeldMetal } from '../catalogue/rows.ts';
import { inUnit, type UnitSystem } from '../quantity/format-quantity.ts';
import { refusal } from '../refusal.ts';
import type { Json } from './edit.ts';
import type { UserRowKind } from './user-rows.ts';

type Row = { readonly [name: string]: Json };

/** Lists of a document's own rows, by kind of row. */
export const listOfKind: Readonly<Record<UserRowKind, string>> = {
  material: 'materials',
  section: 'sections',
  bolt: 'bolts',
  boltClass: 'boltClasses',
  weldMetal: 'weldMetals',
  stockPlate: 'stockPlates',
};

/**
 * A row of the catalogue as the document's own row under another id, typed in round units: what an engineer
 * begins with who has a certificate or a maker's sheet of something similar. It has no source: whose numbers it then
 * holds is for the engineer to say. A material begins with the strengths of its thinnest step.
 * Refuses an id that the catalogue does not have.
 */
export function rowLike(kind: UserRowKind, id: string, { as, units }: { as: string; units: UnitSystem }): Row {
  const row = catalogueWith()
    .list(kind)
    .find((one) => one.id === id || one.also?.includes(id));
  if (!row)
    throw refusal({
      what: `The catalogue has no row “${id}” of this kind to begin with`,
      where: { [kind]: id },
      mend: 'Choose one of its list.',
    });
  return { id: as, title: `Like ${row.title}`, source: null, ...valuesTyped(kind, row, units) };
}

/** The values of a row in round units; of two as round, the document's. */
export const valuesTyped = <K extends UserRowKind>(kind: K, row: RowOf[K], units: UnitSystem): Row =>
  (like[kind] as Like)(row, typist(units));

type Like = (row: RowOf[UserRowKind], type: Typist) => Row;

/** Writes SI values as an engineer types them. */
interface Typist {
  readonly length: (si: number) => string;
  readonly area: (si: number) => string;
  readonly stress: (si: number) => string;
  readonly modulus: (si: number) => string;
  readonly density: (si: number) => string;
}

/** In the unit that gives the shorter number, which is that of the row's source; where both do, in the document's. */
function typist(units: UnitSystem): Typist {
  const write =
    (metric: string, inch: string) =>
    (si: number): string => {
      const [first, second] = (units === 'metric' ? [metric, inch] : [inch, metric]).map((unit) => typed(si, unit));
      return second!.length < first!.length ? second! : first!;
    };
  return {
    length: write('mm', 'in'),
    area: write('mm^2', 'in^2'),
    stress: write('MPa', 'ksi'),
    modulus: write('GPa', 'ksi'),
    density: write('kg/m^3', 'lbm/ft^3'),
  };
}

/** Twelve figures bring the same number back and hide what binary fractions add. */
const typed = (si: number, unit: string): string => `${Number(inUnit(si, unit).toPrecision(12))} ${unit}`;

function materialLike(row: Material, type: Typist): Row {
  const breaks = row.ultimateStrength[0]!;
  // What breaks without yielding is said to yield where it breaks.
  const yields = row.yieldStrength[0] ?? breaks;
  const { heatAffected, across } = row;
  return {
    family: row.family,
    density: type.density(row.density),
    youngModulus: type.modulus(row.youngModulus),
    poisson: row.poisson,
    yieldStrength: type.stress(yields.value),
    ultimateStrength: type.stress(breaks.value),
    upToThickness: type.length(Math.min(yields.upTo, breaks.upTo)),
    ...(row.correlationFactor === null ? {} : { correlationFactor: row.correlationFactor }),
    ...(heatAffected && {
      heatAffected: { yield: type.stress(heatAffected.yield), ultimate: type.stress(heatAffected.ultimate) },
    }),
    ...(across && {
      across: { youngModulus: type.modulus(across.youngModulus), ultimate: type.stress(across.ultimate) },
    }),
  };
}

function sectionLike(row: HollowSection, { length }: Typist): Row {
  const { shape, process, height, width, wall, nominalWall, outerRadius, innerRadius } = row;
  const usual = hollowSection({ id: row.id, title: row.title, source: null, shape, process, height, width, wall, nominalWall }); // prettier-ignore
  const isUsual = near(usual.outerRadius, outerRadius) && near(usual.innerRadius, innerRadius);
  return {
    shape,
    process,
    height: length(height),
    width: length(width),
    wall: length(wall),
    ...(near(wall, nominalWall) ? {} : { nominalWall: length(nominalWall) }),
    ...(isUsual ? {} : { outerRadius: length(outerRadius), innerRadius: length(innerRadius) }),
  };
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

function boltLike(row: Bolt, { length, area }: Typist): Row {
  const where = (name: string, value: number | null): Row => (value === null ? {} : { [name]: length(value) });
  return {
    series: row.series,
    diameter: length(row.diameter),
    pitch: length(row.pitch),
    tensileArea: area(row.tensileArea),
    headAcrossFlats: length(row.headAcrossFlats),
    headAcrossCorners: length(row.headAcrossCorners),
    headHeight: length(row.headHeight),
    nutHeight: length(row.nutHeight),
    washerOuter: length(row.washerOuter),
    washerInner: length(row.washerInner),
    washerThickness: length(row.washerThickness),
    holeFine: length(row.holeFine),
    holeMedium: length(row.holeMedium),
    holeCoarse: length(row.holeCoarse),
    holeNormal: length(row.holeNormal),
    ...where('holeOversize', row.holeOversize),
    ...where('shortSlotLength', row.shortSlotLength),
    ...where('longSlotLength', row.longSlotLength),
  };
}

function boltClassLike(row: BoltClass, { stress }: Typist): Row {
  const { nominal } = row;
  return {
    family: row.family,
    ...(row.yield === null ? {} : { yield: stress(row.yield) }),
    ultimate: stress(row.ultimate),
    ...(row.alphaV === null ? {} : { alphaV: row.alphaV }),
    ...(row.alphaVShank === null ? {} : { alphaVShank: row.alphaVShank }),
    ...(nominal && {
      nominal: {
        tension: stress(nominal.tension),
        shearThreads: stress(nominal.shearThreads),
        shearShank: stress(nominal.shearShank),
      },
    }),
    ...(row.hardnessMax === null ? {} : { hardnessMax: row.hardnessMax }),
  };
}

const weldMetalLike = ({ family, ultimate, shear }: WeldMetal, { stress }: Typist): Row => ({
  family,
  ...(ultimate === null ? {} : { ultimate: stress(ultimate) }),
  ...(shear === undefined ? {} : { shear: stress(shear) }),
});

const stockPlateLike = ({ series, thickness, sheets }: StockPlate, { length }: Typist): Row => ({
  series,
  thickness: length(thickness),
  sheets: sheets.map((sheet) => ({ width: length(sheet.width), length: length(sheet.length) })),
});

const like: { readonly [K in UserRowKind]: (row: RowOf[K], type: Typist) => Row } = {
  material: materialLike,
  section: sectionLike,
  bolt: boltLike,
  boltClass: boltClassLike,
  weldMetal: weldMetalLike,
  stockPlate: stockPlateLike,
};
