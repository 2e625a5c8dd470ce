import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Vector } from '../../core/scene/scene.ts';
import {
  axesOf,
  between,
  cornersOf,
  directions,
  fitted,
  isPlan,
  orbited,
  panned,
  projected,
  rayThrough,
  viewNames,
  zoomed,
  type View,
} from '../../renderer/scene/camera.ts';

const size = { width: 900, height: 600 };
const box = { low: [-0.2, -0.3, -0.15] as Vector, high: [5.1, 3, 0.2] as Vector };
const angle = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const views: fc.Arbitrary<View> = fc.record({
  target: fc.constant<Vector>([1, 2, 0.3]),
  azimuth: angle(-10, 10),
  elevation: angle(-Math.PI / 2, Math.PI / 2),
  scale: angle(5, 2000),
});
const places = fc.tuple(angle(0, size.width), angle(0, size.height));

it('has three axes square to each other, right-handed, for every view', () => {
  fc.assert(
    fc.property(views, (view) => {
      const { right: r, up: u, eye: e } = axesOf(view);
      const cross = [r[1] * u[2] - r[2] * u[1], r[2] * u[0] - r[0] * u[2], r[0] * u[1] - r[1] * u[0]];
      cross.forEach((x, axis) => expect(x).toBeCloseTo(e[axis]!, 12));
    }),
  );
});

it('sees a plan with x to the right and y up, a side with z up, an end with y to the right', () => {
  const way = (name: (typeof viewNames)[number], point: Vector) => {
    const view = { ...directions[name], target: [0, 0, 0] as Vector, scale: 100 };
    const [x, y] = projected(point, view, size);
    return [x - 450, 300 - y].map((d) => Math.round(d) + 0);
  };
  expect([way('plan', [1, 0, 0]), way('plan', [0, 1, 0]), way('plan', [0, 0, 1])]).toEqual([[100, 0], [0, 100], [0, 0]]); // prettier-ignore
  expect([way('side', [1, 0, 0]), way('side', [0, 1, 0]), way('side', [0, 0, 1])]).toEqual([[100, 0], [0, 0], [0, 100]]); // prettier-ignore
  expect([way('end', [1, 0, 0]), way('end', [0, 1, 0]), way('end', [0, 0, 1])]).toEqual([[0, 0], [100, 0], [0, 100]]); // prettier-ignore
  expect(viewNames.map((name) => isPlan({ ...directions[name], target: [0, 0, 0], scale: 1 }))).toEqual([
    true,
    false,
    false,
    false,
  ]);
});

it('sends a line of sight through the place that every point of it is drawn at', () => {
  fc.assert(
    fc.property(views, places, angle(900, 1100), (view, [x, y], s) => {
      const { origin: o, direction: d } = rayThrough(x, y, view, size);
      const [u, v] = projected([o[0] + s * d[0], o[1] + s * d[1], o[2] + s * d[2]], view, size);
      expect(Math.hypot(u - x, v - y)).toBeLessThan(1e-6 * view.scale);
    }),
  );
});

it('fits a box with its margin, tight in one direction, from wherever it is seen', () => {
  fc.assert(
    fc.property(views, (direction) => {
      const view = fitted(direction, box, size, 50);
      const at = cornersOf(box).map((corner) => projected(corner, view, size));
      const [xs, ys] = [at.map(([x]) => x), at.map(([, y]) => y)];
      const room = [Math.min(...xs), size.width - Math.max(...xs), Math.min(...ys), size.height - Math.max(...ys)];
      expect(Math.min(...room)).toBeGreaterThan(50 - 1e-6);
      expect(Math.min(...room)).toBeLessThan(50 + 1e-6);
    }),
  );
});

it('keeps the point under the pointer when it zooms, and under the hand when it moves', () => {
  fc.assert(
    fc.property(views, places, angle(0.5, 2), (view, [x, y], factor) => {
      const { origin: point } = rayThrough(x, y, view, size);
      const [u, v] = projected(point, zoomed(view, factor, x, y, size), size);
      expect(Math.hypot(u - x, v - y)).toBeLessThan(1e-6 * view.scale);
      const [p, q] = projected(point, panned(view, 30, -20), size);
      expect(Math.hypot(p - x - 30, q - y + 20)).toBeLessThan(1e-6 * view.scale);
    }),
  );
});

it('never turns over the top, and goes between views the short way round', () => {
  const view = { ...directions.oblique, target: [0, 0, 0] as Vector, scale: 100 };
  expect(orbited(view, 0, 1e4).elevation).toBe(Math.PI / 2);
  expect(orbited(view, 0, -1e4).elevation).toBe(-Math.PI / 2);
  const [from, to] = [
    { ...view, azimuth: -3 },
    { ...view, azimuth: 3 },
  ];
  expect(Math.abs(between(from, to, 0.5).azimuth)).toBeGreaterThan(3);
  const arrived = between(from, to, 1);
  expect(Math.cos(arrived.azimuth - to.azimuth)).toBeCloseTo(1, 12);
  expect({ ...arrived, azimuth: 0 }).toEqual({ ...to, azimuth: 0 });
});
