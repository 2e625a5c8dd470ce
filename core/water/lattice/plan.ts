/** A rectangle in plan, m: x0 < x1, y0 < y1; sides at infinity make a strip without end. */
export interface Rectangle {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A round hole through what is solid. */
export interface Hole {
  readonly x: number;
  readonly y: number;
  readonly diameter: number;
}

/** What the water sees of a plate from above: the solid is the union of the rectangles less the holes. */
export interface Plan {
  readonly rectangles: readonly Rectangle[];
  readonly holes: readonly Hole[];
  /** Height of the tubes beside the gaps, m: how far water in a gap moves with the gap's velocity. Zero: a thin plate. */
  readonly thickness: number;
}

/** The rectangle about all of it: the outline to which ratios and areas refer. */
export function outlineOf({ rectangles }: Pick<Plan, 'rectangles'>): Rectangle {
  return {
    x0: Math.min(...rectangles.map((r) => r.x0)),
    y0: Math.min(...rectangles.map((r) => r.y0)),
    x1: Math.max(...rectangles.map((r) => r.x1)),
    y1: Math.max(...rectangles.map((r) => r.y1)),
  };
}
