import { isInside } from '../geometry/panel-of.ts';
import type { Geometry, Panel, Point } from '../geometry/geometry.ts';
import { holeArea, holeMoments } from '../geometry/slot.ts';
import type { Body } from './body.ts';

/** Panels: net area × thickness, with exact centre and inertia of the contour less its holes. */
export function panelBodies({ panels }: Geometry): Body[] {
  return panels.map((panel) => {
    const { area, sx, sy, sxx, syy } = netMoments(panel);
    const t = panel.thickness;
    const [x, y] = [sx / area, sy / area];
    const perArea = panel.material.density * t;
    const mass = perArea * area;
    const flat = (mass * t ** 2) / 12;
    const xx = perArea * (syy - area * y ** 2);
    const yy = perArea * (sxx - area * x ** 2);
    return {
      name: `Panels, ${panel.designName}`,
      kind: 'panels' as const,
      mass,
      volume: area * t,
      centre: [x, y, (panel.bottom + panel.top) / 2] as const,
      inertia: [xx + flat, yy + flat, xx + yy] as const,
      panel: panel.id,
    };
  });
}

interface Moments {
  area: number;
  /** ∫x, ∫y, ∫x², ∫y² over the area. */
  sx: number;
  sy: number;
  sxx: number;
  syy: number;
}

function netMoments(panel: Panel): Moments {
  const m = polygonMoments(panel.contour);
  for (const hole of panel.cutouts) {
    if (!isInside(hole, panel.outline, panel.design.cornerNotch?.si ?? 0)) continue;
    const area = holeArea(hole);
    const [xx, yy] = holeMoments(hole);
    m.area -= area;
    m.sx -= area * hole.x;
    m.sy -= area * hole.y;
    m.sxx -= xx + area * hole.x ** 2;
    m.syy -= yy + area * hole.y ** 2;
  }
  return m;
}

/** Area and moments of a counter-clockwise polygon by Green's theorem. */
function polygonMoments(points: readonly Point[]): Moments {
  const m: Moments = { area: 0, sx: 0, sy: 0, sxx: 0, syy: 0 };
  points.forEach(([x0, y0], i) => {
    const [x1, y1] = points[(i + 1) % points.length]!;
    const cross = x0 * y1 - x1 * y0;
    m.area += cross / 2;
    m.sx += (cross * (x0 + x1)) / 6;
    m.sy += (cross * (y0 + y1)) / 6;
    m.sxx += (cross * (x0 ** 2 + x0 * x1 + x1 ** 2)) / 12;
    m.syy += (cross * (y0 ** 2 + y0 * y1 + y1 ** 2)) / 12;
  });
  return m;
}
