import { lengthText } from '../../core/geometry/length-text.ts';
import type { Scene, Vector } from '../../core/scene/scene.ts';
import { projected, type Size, type View } from './camera.ts';
import { sceneTexts as texts } from './scene-texts.ts';

/** What is measured between two points, with its parts along the axes. */
export function measuredText([a, b]: readonly [Vector, Vector], units: Scene['units']): string {
  const text = lengthText(units);
  const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]].map((d) => Math.round(Math.abs(d) * 1e7) / 1e7) as [
    number,
    number,
    number,
  ];
  return texts.measured(text(Math.hypot(x, y, z)), text(x), text(y), text(z));
}

/** The points that were measured, and the line between them. */
export function MeasureLine({
  points,
  units,
  view,
  size,
}: {
  readonly points: readonly Vector[];
  readonly units: Scene['units'];
  readonly view: View;
  readonly size: Size;
}) {
  const at = points.map((point) => projected(point, view, size));
  const [a, b] = at;
  return (
    <g className="scene-measure">
      {a && b && <line x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />}
      {at.map(([x, y], i) => (
        <path key={i} d={`M${x - 6} ${y}h12M${x} ${y - 6}v12`} />
      ))}
      {a && b && (
        <text x={(a[0] + b[0]) / 2} y={(a[1] + b[1]) / 2 - 10}>
          {measuredText([points[0]!, points[1]!], units)}
        </text>
      )}
    </g>
  );
}
