import type { Bay, Geometry, Panel, Tube } from './geometry.ts';
import { openAreaOf } from './plan-areas.ts';

/**
 * A bay that a panel closes between four walls. `tray`: the panel is its floor and holds water when the plate is
 * lifted out. `bell`: the panel is its roof and holds air when the plate goes in. m, m².
 */
export interface Compartment {
  readonly kind: 'tray' | 'bell';
  readonly bay: Bay;
  readonly panel: Panel;
  /** Clear opening along x and along y. Corner radii and weld fillets are not counted. */
  readonly a: number;
  readonly b: number;
  /** Depth to which all four walls close it. */
  readonly height: number;
  /** Open area of the panel inside the bay: holes, and notches that reach past the tubes. */
  readonly holes: number;
  /** Open area of the panel on the bay's other side; null where there is no such panel. */
  readonly otherHoles: number | null;
}

/**
 * Compartments of a plate. A wall closes only if its tube is at the panel's level: in a stacked grid one pair of tubes
 * lies a tube's height away from the panel, water and air pass there, so there are no compartments at all; in a flush
 * grid cross tubes that are less high than the main tubes leave the underside open.
 */
export function compartmentsOf({
  bays,
  panels,
  mainTubes,
  crossTubes,
}: Pick<Geometry, 'bays' | 'panels' | 'mainTubes' | 'crossTubes'>): Compartment[] {
  const tubes = new Map([...mainTubes, ...crossTubes].map((tube) => [tube.id, tube]));
  const covering = new Map<string, Panel>();
  for (const panel of panels) for (const bay of panel.bays) covering.set(`${bay} ${panel.design.side}`, panel);

  return bays.flatMap((bay) => {
    const walls: Tube[] = [...bay.main, ...bay.cross].map((id) => tubes.get(id)!);
    const under = covering.get(`${bay.id} underside`);
    const over = covering.get(`${bay.id} topside`);
    const closed = (kind: 'tray' | 'bell', panel: Panel | undefined, other: Panel | undefined): Compartment[] => {
      if (!panel) return [];
      const face = kind === 'tray' ? panel.top : panel.bottom;
      const depths = walls.map((tube) => {
        const [near, far] = kind === 'tray' ? [tube.bottom, tube.top] : [tube.top, tube.bottom];
        return Math.abs(near - face) < 1e-6 ? Math.abs(far - face) : 0;
      });
      const height = Math.min(...depths);
      if (height === 0) return [];
      const { x0, y0, x1, y1 } = bay.opening;
      return [
        {
          kind,
          bay,
          panel,
          a: x1 - x0,
          b: y1 - y0,
          height,
          holes: openAreaOf(bay, [panel]),
          otherHoles: other ? openAreaOf(bay, [other]) : null,
        },
      ];
    };
    return [...closed('tray', under, over), ...closed('bell', over, under)];
  });
}
