import type { Rectangle } from 'electron';

/** Where a window stood, kept between sessions. */
export interface WindowPlace extends Rectangle {
  readonly maximised: boolean;
}

const least = { width: 1024, height: 700 };

/**
 * Where a window opens: where it stood if enough of it is still on a display, else in the middle of the first one.
 * Never larger than the display, never smaller than what the window needs.
 */
export function placeOnDisplays(kept: WindowPlace | null, displays: readonly Rectangle[]): WindowPlace {
  const [first = { x: 0, y: 0, width: 1440, height: 900 }] = displays;
  if (kept) {
    const home = displays.find((display) => overlap(kept, display) >= 0.25 * kept.width * kept.height);
    if (home) return { ...fitted(kept, home), maximised: kept.maximised };
  }
  const width = Math.min(1440, first.width);
  const height = Math.min(900, first.height);
  return {
    x: first.x + Math.round((first.width - width) / 2),
    y: first.y + Math.round((first.height - height) / 2),
    width,
    height,
    maximised: kept?.maximised ?? false,
  };
}

function overlap(a: Rectangle, b: Rectangle): number {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return width > 0 && height > 0 ? width * height : 0;
}

function fitted(place: Rectangle, display: Rectangle): Rectangle {
  const width = Math.min(Math.max(place.width, least.width), display.width);
  const height = Math.min(Math.max(place.height, least.height), display.height);
  const between = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
  return {
    x: between(place.x, display.x, display.x + display.width - width),
    y: between(place.y, display.y, display.y + display.height - height),
    width,
    height,
  };
}

/** A place read from a settings file; null for anything that is none. */
export function readPlace(value: unknown): WindowPlace | null {
  if (typeof value !== 'object' || value === null) return null;
  const { x, y, width, height, maximised } = value as Record<string, unknown>;
  const whole = [x, y, width, height].every((n) => Number.isInteger(n));
  return whole
    ? {
        x: x as number,
        y: y as number,
        width: width as number,
        height: height as number,
        maximised: maximised === true,
      }
    : null;
}
