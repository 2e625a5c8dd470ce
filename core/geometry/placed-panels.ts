import type { PanelDesign, PlateDocument } from '../document/schema.ts';
import { refusal } from '../refusal.ts';
import { bayRectangle } from './bay-rectangle.ts';
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

function rectangleOf(
  key: string,
  corners: readonly PlainBay[],
  all: readonly PlainBay[],
  where: Readonly<Record<string, string>>,
): Pick<PlacedPanel, 'bays' | 'tubes'> {
  const { bays, tubes } = bayRectangle(corners, all);
  if (!tubes)
    throw refusal({
      what: `“${key}” is no full rectangle of bays: it takes in ${shortened(bays.map((b) => b.id))}, and something is missing between them`,
      where,
      mend: 'Choose corner bays whose rectangle is closed by one tube along each side, with a bay at every place.',
    });
  return { bays, tubes };
}

/** "A1, A2, A3, … C4" */
function shortened(names: readonly string[]): string {
  if (names.length === 0) return 'none';
  return names.length <= 9 ? names.join(', ') : `${names.slice(0, 7).join(', ')}, … ${names.at(-1)}`;
}
