import type { Reading } from '../../core/scene/reading.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { cornersOf, projected } from './camera.ts';
import { titleWithValue } from './title-with-value.ts';
import { useView } from './use-view.ts';
import type { ViewStore } from './view-store.ts';

/** The name of a part beside it, with its value and what gives it. */
export function Named({
  scene,
  reading,
  store,
  apart,
  id,
  isSelected = false,
}: {
  readonly scene: Scene;
  readonly reading: Reading | null;
  readonly store: ViewStore;
  readonly apart: number;
  readonly id: string;
  readonly isSelected?: boolean;
}) {
  const view = useView(store);
  const part = scene.parts.find((other) => other.id === id);
  if (!part) return null;
  const { width, height } = store.size();
  const raised = part.lift * apart;
  const corners = cornersOf(part.box).map(([x, y, z]) => projected([x, y, z + raised], view, { width, height }));
  const over = (axis: 0 | 1) => corners.map((corner) => corner[axis]);
  const [west, east, north, south] = [
    Math.min(...over(0)),
    Math.max(...over(0)),
    Math.min(...over(1)),
    Math.max(...over(1)),
  ];
  if (east < 0 || south < 0 || west > width || north > height) return null;
  const reason = reading?.reasons.get(id);
  const left = Math.min(Math.max((west + east) / 2, 140), Math.max(140, width - 140));
  // Above the part where there is room, else below it, else over its top edge.
  const isAbove = north > 76 || south > height - 76;
  const top = isAbove ? Math.max(north - 10, 76) : south + 10;
  return (
    <div
      className={`scene-name${isSelected ? ' selected' : ''}`}
      style={{ transform: `translate(${left}px, ${top}px) translate(-50%, ${isAbove ? '-100%' : '0'})` }}
      aria-hidden="true"
    >
      <b>{titleWithValue(scene, reading, id)}</b>
      {reason && <span>{reason}</span>}
    </div>
  );
}
