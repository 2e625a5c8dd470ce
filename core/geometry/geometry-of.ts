import type { Catalogue } from '../catalogue/catalogue.ts';
import type { PlateDocument } from '../document/schema.ts';
import { baysBetween } from './bays-between.ts';
import { findingsOf } from './findings-of.ts';
import type { Geometry, Rectangle } from './geometry.ts';
import { layTubes } from './lay-tubes.ts';
import { lengthText } from './length-text.ts';
import { panelOf } from './panel-of.ts';
import { placedPanels } from './placed-panels.ts';
import { openAreaOf, planAreas, tubeRectangle } from './plan-areas.ts';

/**
 * The plate as built from a document: tubes, bays, crossings, panels with bearings, bolts and welds, plan areas, and
 * findings on what does not fit. SI. Refuses what cannot be built; what can be built but is wrong is a finding.
 */
export function geometryOf(document: PlateDocument, catalogue: Catalogue): Geometry {
  const text = lengthText(document.units);
  const { mainTubes, crossTubes, crossings } = layTubes(document, catalogue, text);
  const plainBays = baysBetween(mainTubes, crossTubes, crossings);
  const tubes = [...mainTubes, ...crossTubes];
  const byId = new Map(tubes.map((tube) => [tube.id, tube]));
  const panels = placedPanels(document, plainBays).map((placed) => panelOf(placed, byId, document, catalogue, text));
  const outline = around(tubes.map(tubeRectangle));
  const bays = plainBays.map((bay) => {
    const { id, main, cross, opening } = bay;
    return { id, main, cross, opening, openArea: openAreaOf(bay, panels) };
  });
  const bare = {
    arrangement: document.grid.arrangement,
    mainTubes,
    crossTubes,
    bays,
    crossings,
    panels,
    outline,
    extents: around([outline, ...panels.map((p) => p.outline)]),
    areas: planAreas(tubes, panels, bays, outline),
  };
  return { ...bare, findings: findingsOf(document, bare, catalogue, text) };
}

const around = (rectangles: readonly Rectangle[]): Rectangle => ({
  x0: Math.min(...rectangles.map((r) => r.x0)),
  y0: Math.min(...rectangles.map((r) => r.y0)),
  x1: Math.max(...rectangles.map((r) => r.x1)),
  y1: Math.max(...rectangles.map((r) => r.y1)),
});
