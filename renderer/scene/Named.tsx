import type { Reading } from '../../core/scene/reading.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { projected } from './camera.ts';
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
  const { centre, box, lift } = part;
  const { width, height } = store.size();
  const [x, y] = projected([centre[0], centre[1], box.high[2] + lift * apart], view, { width, height });
  if (x < 0 || y < 0 || x > width || y > height) return null;
  const reason = reading?.reasons.get(id);
  const [left, top] = [Math.min(Math.max(x, 130), width - 130), Math.max(y - 14, 56)];
  return (
    <div
      className={`scene-name${isSelected ? ' selected' : ''}`}
      style={{ transform: `translate(${left}px, ${top}px) translate(-50%, -100%)` }}
      aria-hidden="true"
    >
      <b>{titleWithValue(scene, reading, id)}</b>
      {reason && <span>{reason}</span>}
    </div>
  );
}
