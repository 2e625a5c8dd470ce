import { catalogueWith } from '../catalogue/catalogue.ts';
import type { PanelDesign, PlateDocument } from '../document/schema.ts';
import { userRows } from '../document/user-rows.ts';
import { mergePatch } from '../document/merge-patch.ts';
import { inUnit } from '../quantity/format-quantity.ts';

/** A fixing as it is written, and in words why it is so. */
export interface DerivedFixing {
  readonly fixing: Readonly<Record<string, unknown>>;
  readonly said: readonly string[];
}

/**
 * The other way of fixing a panel, all else equal: a weld for a bolted panel, bolts for a welded one. Taken from another
 * design of the document if one is fixed so (somebody chose its numbers), else from rules that are said:
 * welded: all round, throat of 0.7 of the panel's thickness and not under 3 mm (EN 1993-1-8, 4.5.2: at least 3 mm);
 * bolted: M12 of class 8.8 (1/2 in, A325) through the tube with a sleeve, edge distance 1.5 and pitch 8 hole diameters, clearance
 * (between least and largest of EN 1993-1-8, Table 3.3). Whether it holds is for the checks to say.
 */
export function oppositeFixing(document: PlateDocument, design: PanelDesign): DerivedFixing {
  const wanted = design.fixing.kind === 'bolted' ? 'welded' : 'bolted';
  const other =
    Object.entries(document.designs).find(([, { fixing, side }]) => fixing.kind === wanted && side === design.side) ??
    Object.entries(document.designs).find(([, { fixing }]) => fixing.kind === wanted);
  if (other)
    return {
      fixing: written(other[1].fixing),
      said: [`The ${wanted} fixing is that of the design “${other[0]}” of the same document.`],
    };
  const inch = document.units === 'inch';
  if (wanted === 'welded') {
    const throat = upTo(Math.max(3e-3, 0.7 * design.thickness.si), inch);
    return {
      fixing: { kind: 'welded', throat, pattern: 'all round' },
      said: [
        `No design of the document is welded. The weld goes all round with a throat of ${throat}: 0.7 of the panel's thickness, and not under 3 mm (EN 1993-1-8:2005, 4.5.2).`,
      ],
    };
  }
  const size = inch ? '1/2 in' : 'M12';
  const bolt = catalogueWith(userRows(document)).bolt(size);
  const pitch = upTo(8 * bolt.holeNormal, inch);
  const edgeDistance = upTo(1.5 * bolt.holeNormal, inch);
  return {
    fixing: {
      kind: 'bolted',
      bolt: size,
      class: inch ? 'ASTM A325 (F3125)' : '8.8',
      pitch,
      edgeDistance,
      shear: 'clearance',
      into: 'through-bolt with sleeve',
    },
    said: [
      `No design of the document is bolted. Bolts ${size} go through the tubes with sleeves, up to ${pitch} (8 hole diameters) apart and ${edgeDistance} (1.5) from the panel's edge, between the least and the largest of EN 1993-1-8:2005, Table 3.3.`,
    ],
  };
}

/** A length as a workshop sets it out, not under what is asked: in halves of a millimetre or sixteenths of an inch. */
function upTo(metres: number, inch: boolean): string {
  const [step, unit] = inch ? [1 / 16, 'in'] : [0.5, 'mm'];
  return `${step * Math.ceil(inUnit(metres, unit) / step - 1e-9)} ${unit}`;
}

/** A fixing as read, as it is written: each quantity as typed. */
function written(fixing: unknown): Record<string, unknown> {
  const plain = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map(plain);
    if ('typed' in value) return (value as { typed: string }).typed;
    return Object.fromEntries(
      Object.entries(value)
        .filter(([, inner]) => inner !== undefined)
        .map(([key, inner]) => [key, plain(inner)]),
    );
  };
  return mergePatch({}, plain(fixing) as never) as Record<string, unknown>;
}
