import type { Model } from '../model.ts';
import type { LiftStage } from '../recovery/lift-stages.ts';
import { liftOf } from '../recovery/lift-stages.ts';
import { graver, type CheckRow } from './check-row.ts';

/** A panel that meets the water in the lift. SI. */
export interface PanelSlam {
  readonly panel: string;
  readonly area: number;
  /** Of the stage that slams hardest. */
  readonly force: number;
  /** The gravest row of the panel and its fixings where the plate crosses the surface; null where none was made. */
  readonly gravest: CheckRow | null;
}

/** Slam of the lift's stages against what panels and fixings are proved for. */
export interface LiftSlam {
  readonly worst: LiftStage;
  /** Pressure that the rows “crossing the surface” are made with, without its load factor; null where the document states none. */
  readonly proved: number | null;
  readonly panels: readonly PanelSlam[];
}

/** Slam on each panel and its fixings in the lift. Null without a lift, or without panels. */
export function liftSlam(model: Model, rows: readonly CheckRow[]): LiftSlam | null {
  const lift = liftOf(model);
  if (!lift || model.geometry.panels.length === 0) return null;
  const worst = lift.stages.reduce((most, stage) => ((stage.slam?.pressure ?? 0) > (most.slam?.pressure ?? 0) ? stage : most)); // prettier-ignore
  if (!worst.slam) return null;
  const { pressure } = worst.slam;
  const crossing = rows.filter(({ loadCase, verdict }) => loadCase === 'crossing the surface' && verdict !== 'not applicable'); // prettier-ignore
  const panels = model.geometry.panels.map(({ id, bays, area }): PanelSlam => {
    const own = crossing.filter(({ place }) => place === id || bays.includes(place)).sort(graver);
    return { panel: id, area, force: pressure * area, gravest: own[0] ?? null };
  });
  return { worst, proved: lift.slamProved, panels };
}
