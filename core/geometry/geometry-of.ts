import type { Catalogue } from '../catalogue/catalogue.ts';
import type { PlateDocument } from '../document/schema.ts';
import { once } from '../once.ts';
import { baysBetween, type PlainBay } from './bays-between.ts';
import { findingsOf } from './findings-of.ts';
import type { Bay, Geometry, Rectangle } from './geometry.ts';
import { layTubes, type LaidTubes } from './lay-tubes.ts';
import { lengthText } from './length-text.ts';
import { panelOf } from './panel-of.ts';
import { placedPanels } from './placed-panels.ts';
import { openAreaOf, planAreas, tubeRectangle } from './plan-areas.ts';

/** What of a plate stands whatever closes its bays. */
export interface Grid extends LaidTubes {
  readonly bays: readonly PlainBay[];
}

/** Tubes, crossings and bays of a document. Refuses a grid that cannot be built. */
export function gridOf(document: PlateDocument, catalogue: Catalogue): Grid {
  const laid = layTubes(document, catalogue, lengthText(document.units));
  return { ...laid, bays: baysBetween(laid.mainTubes, laid.crossTubes, laid.crossings) };
}

/**
 * The plate as built from a document: tubes, bays, crossings, panels with bearings, bolts and welds, plan areas, and
 * findings on what does not fit. SI. Refuses what cannot be built; what can be built but is wrong is a finding. Areas and findings are
 * made when they are first asked for. `grid`: of a document that differs in panels and their designs alone. `panelFor`: `panelOf`, or
 * the same remembered.
 */
export function geometryOf(
  document: PlateDocument,
  catalogue: Catalogue,
  grid = gridOf(document, catalogue),
  panelFor = panelOf,
): Geometry {
  const text = lengthText(document.units);
  const { mainTubes, crossTubes, crossings } = grid;
  const tubes = [...mainTubes, ...crossTubes];
  const byId = new Map(tubes.map((tube) => [tube.id, tube]));
  const panels = placedPanels(document, grid.bays).map((placed) => panelFor(placed, byId, document, catalogue, text));
  const outline = around(tubes.map(tubeRectangle));
  const bays = grid.bays.map((bay): Bay => {
    const { id, main, cross, opening } = bay;
    const openArea = once(() => openAreaOf(bay, panels));
    return {
      id,
      main,
      cross,
      opening,
      get openArea() {
        return openArea();
      },
    };
  });
  const areas = once(() => planAreas(tubes, panels, bays, outline));
  const findings = once(() => findingsOf(document, geometry, catalogue, text));
  const geometry: Geometry = {
    arrangement: document.grid.arrangement,
    mainTubes,
    crossTubes,
    bays,
    crossings,
    panels,
    outline,
    extents: around([outline, ...panels.map((p) => p.outline)]),
    get areas() {
      return areas();
    },
    get findings() {
      return findings();
    },
  };
  return geometry;
}

const around = (rectangles: readonly Rectangle[]): Rectangle => ({
  x0: Math.min(...rectangles.map((r) => r.x0)),
  y0: Math.min(...rectangles.map((r) => r.y0)),
  x1: Math.max(...rectangles.map((r) => r.x1)),
  y1: Math.max(...rectangles.map((r) => r.y1)),
});
