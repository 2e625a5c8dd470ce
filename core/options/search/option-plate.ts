import { catalogueWith } from '../../catalogue/catalogue.ts';
import type { PlateDocument } from '../../document/schema.ts';
import { userRows } from '../../document/user-rows.ts';
import { geometryOf, gridOf } from '../../geometry/geometry-of.ts';
import type { Panel } from '../../geometry/geometry.ts';
import { panelOf } from '../../geometry/panel-of.ts';
import type { Body } from '../../mass/body.ts';
import { fastenersOn } from '../../mass/fastener-bodies.ts';
import { massReport } from '../../mass/mass-report-of.ts';
import type { Model } from '../../model.ts';
import { boundedMemo } from '../../solve/bounded-memo.ts';

export type OptionPlate = Pick<Model, 'catalogue' | 'geometry' | 'mass'>;

/** Panels that are remembered. */
const mostPanels = 500;

/** Builds plates that differ from a document in panels and their designs alone: the grid is laid once, and a panel of one design at one
 *  place is made, and its fasteners are weighed, once. */
export function optionPlates(base: PlateDocument): (document: PlateDocument) => OptionPlate {
  const catalogue = catalogueWith(userRows(base));
  const grid = gridOf(base, catalogue);
  const panels = boundedMemo<Panel>(mostPanels);
  const fasteners = new WeakMap<Panel, readonly Body[]>();
  return (document) => {
    const geometry = geometryOf(document, catalogue, grid, (placed, ...of) =>
      panels(JSON.stringify([placed.id, placed.designName, placed.design]), () => panelOf(placed, ...of)),
    );
    const mass = massReport(document, geometry, catalogue, (panel, ...of) => {
      const bodies = fasteners.get(panel) ?? fastenersOn(panel, ...of);
      fasteners.set(panel, bodies);
      return bodies;
    });
    return { catalogue, geometry, mass };
  };
}
