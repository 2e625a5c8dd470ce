import { sides, type Panel, type Side } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { addBead, legOf, type Bead } from './bead.ts';
import { crossingBeads } from './crossing-beads.ts';
import { liftOf } from './panel-parts.ts';
import type { PartDraft } from './part-draft.ts';
import type { Vector } from './scene.ts';

/** Welds at the crossings, one part each, and of the panels, one part for each side. */
export function weldParts({ document, geometry, tubes }: Model): PartDraft[] {
  const throat = document.grid.jointThroat.si;
  const crossings = geometry.crossings.map((crossing): PartDraft => {
    const beads = crossingBeads(crossing, tubes.get(crossing.main)!, tubes.get(crossing.cross)!, throat);
    return {
      kind: 'weld',
      place: crossing.id,
      title: `Weld at crossing ${crossing.id}`,
      bays: [],
      lift: 0,
      build: (into) => beads.forEach((bead) => addBead(into, bead)),
    };
  });
  const panels = geometry.panels.flatMap((panel) => {
    const beads = beadsOf(panel);
    return sides.flatMap((side): PartDraft[] => {
      const own = beads.filter((bead) => bead.side === side);
      const [first] = own;
      if (!first) return [];
      return [
        {
          kind: 'weld',
          place: `${panel.id}-${first.tube}`,
          title: `Weld of panel ${panel.id} on tube ${first.tube}`,
          bays: panel.bays,
          lift: liftOf(panel),
          build: (into) => own.forEach(({ bead }) => addBead(into, bead)),
        },
      ];
    });
  });
  return [...crossings, ...panels];
}

const outwards: Readonly<Record<Side, Vector>> = {
  mainLow: [0, -1, 0],
  mainHigh: [0, 1, 0],
  crossLow: [-1, 0, 0],
  crossHigh: [1, 0, 0],
};

/** Fillets along a panel's edges, on the face of the tube. */
function beadsOf(panel: Panel): { readonly side: Side; readonly tube: string; readonly bead: Bead }[] {
  const { fixing } = panel.design;
  if (fixing.kind !== 'welded') return [];
  const topside = panel.pressedBy === 'down';
  const edges = [...panel.weldRuns.map((run) => ({ ...run, edge: run.side })), ...panel.weldReturns];
  return edges.map(({ side, edge, tube, from, to, length }) => ({
    side,
    tube,
    bead: {
      root: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, topside ? panel.bottom : panel.top],
      legs: [outwards[edge], [0, 0, topside ? 1 : -1]],
      leg: legOf(fixing.throat.si),
      length,
    },
  }));
}
