import type { UnitSystem } from '../../quantity/format-quantity.ts';
import { printedUnit, quantityText, significant } from '../../quantity/format-quantity.ts';
import { splitParts } from './deflection-split.ts';
import type { LoadPath } from './load-path.ts';
import type { PlatePoint } from './plate-point.ts';
import type { ChangeAtPlace, PanelDip, WhatChanged } from './what-changed.ts';

/** What changed and why, in sentences: a moved place first, then the load, then each place with its parts, largest change first;
 *  then the panels' own dip, and the way that the load takes. */
export function changeWords({ largest, moved, load, places, dip, path }: WhatChanged, units: UnitSystem): string[] {
  const text = (si: number, unit: string): string => quantityText(si, printedUnit(unit, units), 3);
  const length = (m: number): string => text(m, 'mm');
  const words: string[] = [];
  const at = ({ part, id, x, y }: PlatePoint): string => `${part} ${id} (x ${length(x)}, y ${length(y)})`;
  if (moved) words.push(`The largest deflection moved from ${at(largest.before.point)} to ${at(largest.after.point)}.`);
  if (!load.same)
    words.push(
      `The two do not carry the same load: ${text(load.before, 'kN')} before, ${text(load.after, 'kN')} now (upward). What follows is the change of load and of stiffness together.`,
    );
  words.push(
    `Largest deflection: ${length(largest.before.rise)} before, ${length(largest.after.rise)} now${moved ? '' : `, at ${at(largest.after.point)}`} (up is positive).`,
  );
  for (const place of places) words.push(...placeWords(place, moved, length, at));
  const dips = (of: PanelDip | null): string => (of ? `${of.panel} by ${length(of.rise)}` : 'none');
  if (dip.before || dip.after)
    words.push(`Panels between their tubes, whatever these do, dip most: ${dips(dip.before)} before, ${dips(dip.after)} now.`); // prettier-ignore
  words.push(`Where the load goes: before, ${pathWords(path.before)}; now, ${pathWords(path.after)}.`);
  return words;
}

/** A part of the load that is none but for rounding is nought. */
const percent = (part: number): string => (Math.abs(part) < 1e-9 ? '0 %' : `${significant(100 * part, 3)} %`);

const pathWords = ({ toMainTubes, toCrossTubes, tubes, byInertia }: LoadPath): string =>
  [
    `${percent(toMainTubes.all)} from panels to main tubes`,
    `${percent(toCrossTubes.all)} to cross tubes`,
    `${percent(tubes)} on the tubes themselves`,
    ...(Math.abs(byInertia) > 1e-9 ? [`${percent(byInertia)} balanced by the panels’ own inertia`] : []),
  ].join(', ');

function placeWords(
  { of, point, apart, rise, parts }: ChangeAtPlace,
  moved: boolean,
  length: (m: number) => string,
  at: (point: PlatePoint) => string,
): string[] {
  const change = rise.after - rise.before;
  const where = moved ? `Where it ${of === 'after' ? 'is now' : 'was'}, at ${at(of === 'after' ? point.after : point.before)}` : 'There'; // prettier-ignore
  const words = [
    `${where}, the rise goes from ${length(rise.before)} to ${length(rise.after)}: a change of ${length(change)}.`,
  ];
  const other = of === 'after' ? point.before : point.after;
  const own = of === 'after' ? point.after : point.before;
  if (other.part !== own.part || other.id !== own.id || apart > noticeable)
    words.push(`The other option is read at its nearest point, ${at(other)}, ${length(apart)} away.`);
  const most = Math.max(...splitParts.map((part) => Math.abs(parts[part].change)));
  const told = splitParts
    .filter((part) => most > 0 && Math.abs(parts[part].change) >= worthTelling * most)
    .sort((a, b) => Math.abs(parts[b].change) - Math.abs(parts[a].change));
  for (const part of told)
    words.push(
      `${part[0]!.toUpperCase()}${part.slice(1)}: ${length(parts[part].before)} before, ${length(parts[part].after)} now, a change of ${length(parts[part].change)}.`,
    );
  return words;
}

/** A point this far off, m, is said. */
const noticeable = 0.001;
/** Changes below this part of the largest are left to the table. */
const worthTelling = 0.01;
