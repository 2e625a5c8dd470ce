import type { Patches } from './lattice/patches.ts';
import { outlineOf, type Plan, type Rectangle } from './lattice/plan.ts';

/** An opening within the outline that water passes through. */
export interface PlanOpening extends Rectangle {
  /** As `Cover.opening` counts them. */
  readonly id: number;
  readonly area: number;
  /** Open part of the rectangle around it with half its own breadth added on each side: what its flow contracts from. */
  readonly tau: number;
  /** 4 area / perimeter of the rectangle around it, m. */
  readonly hydraulicDiameter: number;
}

/** The openings within the outline, bounded ones and round holes. Openings that reach the rim belong to the water outside. */
export function openingsOf(plan: Plan, patches: Patches): PlanOpening[] {
  const outline = outlineOf(plan);
  const bounded = patches.openings.slice(1).map((opening, k) => ({ ...opening, id: k + 1 }));
  const round = plan.holes.map(({ x, y, diameter: d }, k) => ({
    x0: x - d / 2,
    x1: x + d / 2,
    y0: y - d / 2,
    y1: y + d / 2,
    area: (Math.PI / 4) * d ** 2,
    id: patches.openings.length + k,
  }));
  const holesIn = (w: Rectangle): number =>
    round.reduce((sum, o) => sum + (o.x0 >= w.x0 && o.x1 <= w.x1 && o.y0 >= w.y0 && o.y1 <= w.y1 ? o.area : 0), 0);
  return [...bounded, ...round].map((opening) => {
    const [a, b] = [opening.x1 - opening.x0, opening.y1 - opening.y0];
    const window = {
      x0: Math.max(outline.x0, opening.x0 - a / 2),
      x1: Math.min(outline.x1, opening.x1 + a / 2),
      y0: Math.max(outline.y0, opening.y0 - b / 2),
      y1: Math.min(outline.y1, opening.y1 + b / 2),
    };
    const whole = (window.x1 - window.x0) * (window.y1 - window.y0);
    const tau = Math.min(0.99, (openWithin(patches, window) + holesIn(window)) / whole);
    return { ...opening, tau, hydraulicDiameter: (2 * a * b) / (a + b) };
  });
}

/** Open area of the patches within a rectangle, m². */
export function openWithin({ X, Y, solid }: Patches, { x0, x1, y0, y1 }: Rectangle): number {
  const nx = X.length - 1;
  let sum = 0;
  for (let j = 0; j < Y.length - 1; j++) {
    const height = Math.min(y1, Y[j + 1]!) - Math.max(y0, Y[j]!);
    if (height <= 0) continue;
    for (let i = 0; i < nx; i++)
      if (!solid[j * nx + i]) sum += Math.max(0, Math.min(x1, X[i + 1]!) - Math.max(x0, X[i]!)) * height;
  }
  return sum;
}

/** Open part of the outline, round holes with it. */
export function openPart(plan: Plan, patches: Patches): number {
  const outline = outlineOf(plan);
  const round = plan.holes.reduce((sum, { diameter }) => sum + (Math.PI / 4) * diameter ** 2, 0);
  const whole = (outline.x1 - outline.x0) * (outline.y1 - outline.y0);
  return Math.min(0.99, (openWithin(patches, outline) + round) / whole);
}
