/** A text at a place on the screen, px; the first in a list has the right of way. */
export interface ScreenLabel {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Labels that fit on the screen and lie clear of those before them. */
export function placedLabels<T extends ScreenLabel>(
  labels: readonly T[],
  { width, height }: { readonly width: number; readonly height: number },
): T[] {
  const placed: T[] = [];
  for (const label of labels) {
    const inside =
      label.x - label.width / 2 >= 0 &&
      label.x + label.width / 2 <= width &&
      label.y - label.height / 2 >= 0 &&
      label.y + label.height / 2 <= height;
    if (inside && placed.every((other) => isClear(label, other))) placed.push(label);
  }
  return placed;
}

const isClear = (a: ScreenLabel, b: ScreenLabel): boolean =>
  Math.abs(a.x - b.x) >= (a.width + b.width) / 2 || Math.abs(a.y - b.y) >= (a.height + b.height) / 2;
