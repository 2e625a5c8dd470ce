import type { PanelDesign, PlateDocument } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import type { PlainBay } from './bays-between.ts';
import type { Side } from './geometry.ts';

/** A panel's name, design and bays, before it has dimensions. */
export interface PlacedPanel {
  readonly id: string;
  readonly designName: string;
  readonly design: PanelDesign;
  readonly bays: readonly PlainBay[];
  /** The tube along each side. */
  readonly tubes: Readonly<Record<Side, string>>;
}

/**
 * Panels as the document places them: key "A1", or "A1:B2" for the rectangle of bays between two corner bays.
 * Refuses a malformed key, a bay or design that does not exist, bays that make no full rectangle, and a bay that two
 * panels cover: two skins share a load in a way that no hand formula gives.
 */
export function placedPanels(document: PlateDocument, bays: readonly PlainBay[]): PlacedPanel[] {
  const known = new Map(bays.map((bay) => [bay.id, bay]));
  const covered = new Map<string, string>();
  return Object.entries(document.panels).map(([key, designName]) => {
    const where = { path: `panels.${key}`, panel: key };
    const design = Object.hasOwn(document.designs, designName) ? document.designs[designName] : undefined;
    if (!design)
      throw refusal({
        what: `Panel “${key}” is of the design “${designName}”, which does not exist`,
        where,
        mend: `Name one of: ${shortened(Object.keys(document.designs))}.`,
      });
    const names = key.split(':').map((part) => part.trim());
    if (names.length > 2 || names.some((name) => name === ''))
      throw refusal({
        what: `“${key}” names no bay and no rectangle of bays`,
        where,
        mend: 'Write a bay (A1), or two corner bays with a colon between them (A1:B2).',
      });
    const corners = names.map((name) => {
      const bay = known.get(name);
      if (!bay)
        throw refusal({
          what: `Panel “${key}”: there is no bay “${name}”`,
          where,
          mend: `The bays are: ${shortened(bays.map((b) => b.id))}.`,
        });
      return bay;
    });
    const panel = { id: key, designName, design, ...rectangleOf(key, corners, bays, where) };
    for (const bay of panel.bays) {
      const other = covered.get(bay.id);
      if (other !== undefined)
        throw refusal({
          what: `Bay ${bay.id} is covered twice: by the panels “${other}” and “${key}”`,
          where: { ...where, bay: bay.id },
          mend: 'Take one of the two away: a bay is closed from above or from below, by one panel.',
        });
      covered.set(bay.id, key);
    }
    return panel;
  });
}

type Where = Readonly<Record<string, string>>;

function rectangleOf(
  key: string,
  corners: readonly PlainBay[],
  all: readonly PlainBay[],
  where: Where,
): Pick<PlacedPanel, 'bays' | 'tubes'> {
  const x0 = Math.min(...corners.map((b) => b.cell.x0));
  const y0 = Math.min(...corners.map((b) => b.cell.y0));
  const x1 = Math.max(...corners.map((b) => b.cell.x1));
  const y1 = Math.max(...corners.map((b) => b.cell.y1));
  const bays =
    corners.length === 1
      ? corners
      : all.filter(({ cell }) => cell.x0 >= x0 && cell.x1 <= x1 && cell.y0 >= y0 && cell.y1 <= y1);
  const area = bays.reduce((sum, { cell }) => sum + (cell.x1 - cell.x0) * (cell.y1 - cell.y0), 0);
  const side = (edge: (bay: PlainBay) => boolean, tube: (bay: PlainBay) => string): string | null => {
    const [first, ...others] = new Set(bays.filter(edge).map(tube));
    return first !== undefined && others.length === 0 ? first : null;
  };
  const mainLow = side(
    (b) => b.cell.y0 === y0,
    (b) => b.main[0],
  );
  const mainHigh = side(
    (b) => b.cell.y1 === y1,
    (b) => b.main[1],
  );
  const crossLow = side(
    (b) => b.cell.x0 === x0,
    (b) => b.cross[0],
  );
  const crossHigh = side(
    (b) => b.cell.x1 === x1,
    (b) => b.cross[1],
  );
  const full = Math.abs(area - (x1 - x0) * (y1 - y0)) <= 1e-9 * area;
  if (!full || mainLow === null || mainHigh === null || crossLow === null || crossHigh === null)
    throw refusal({
      what: `“${key}” is no full rectangle of bays: it takes in ${shortened(bays.map((b) => b.id))}, and something is missing between them`,
      where,
      mend: 'Choose corner bays whose rectangle is closed by one tube along each side, with a bay at every place.',
    });
  return { bays, tubes: { mainLow, mainHigh, crossLow, crossHigh } };
}

/** "A1, A2, A3, … C4" */
function shortened(names: readonly string[]): string {
  if (names.length === 0) return 'none';
  return names.length <= 9 ? names.join(', ') : `${names.slice(0, 7).join(', ')}, … ${names.at(-1)}`;
}
