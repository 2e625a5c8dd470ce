import { wavesOfShrinkage } from '../fixings/waves-of-shrinkage.ts';
import { weldShrinkage } from '../fixings/weld-shrinkage.ts';
import type { Panel } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';

/** The largest of each that welding may bring on any panel, m and rad; null where no panel of steel is welded. */
export interface Distortion {
  /** What a panel loses across, both edges. */
  readonly narrower: number;
  readonly angle: number;
  /** Of a tube, along one panel. */
  readonly bow: number;
  /** Depth of waves in a panel. */
  readonly waves: number;
}

/** Estimated for each side of each panel as if it were welded by itself: coefficients are for steel. */
export function distortionOf({ geometry, tubes }: Pick<Model, 'geometry' | 'tubes'>): Distortion | null {
  const sides = geometry.panels.flatMap((panel) =>
    panel.design.fixing.kind === 'welded' && panel.material.family.endsWith('steel') ? shrunk(panel, tubes) : [],
  );
  if (sides.length === 0) return null;
  const largest = (of: keyof Distortion): number => Math.max(...sides.map((side) => side[of]));
  return { narrower: largest('narrower'), angle: largest('angle'), bow: largest('bow'), waves: largest('waves') };
}

function shrunk(panel: Panel, tubes: Model['tubes']): Distortion[] {
  const { fixing } = panel.design;
  if (fixing.kind !== 'welded') return [];
  const { x0, x1, y0, y1 } = panel.outline;
  const ways = new Set(panel.weldRuns.map(({ side }) => side.startsWith('main'))).size as 1 | 2;
  return panel.bearings.flatMap(({ side, tube: id }) => {
    const length = panel.weldRuns.filter((run) => run.side === side).reduce((sum, run) => sum + run.length, 0);
    if (length === 0) return [];
    const { section } = tubes.get(id)!;
    const across = side.startsWith('main') ? y1 - y0 : x1 - x0;
    const area = section.area + (across / 2) * panel.thickness;
    const { transverse, longitudinal, angle, bow } = weldShrinkage({
      ...{ throat: fixing.throat.si, thickness: panel.thickness, length, area },
      ...{ inertia: section.inertiaY, offset: section.height / 2 },
    });
    const span = Math.min(x1 - x0, y1 - y0);
    const waves = wavesOfShrinkage({ strain: longitudinal / length, b: span, t: panel.thickness, nu: panel.material.poisson, ways }); // prettier-ignore
    return [{ narrower: 2 * transverse, angle, bow, waves }];
  });
}
