import type { SceneDimension } from '../../core/scene/scene.ts';
import { projected, type Size, type View } from './camera.ts';

/** px from the plate to its dimension lines. */
export const dimensionStandOff = 52;
const tick = 5;

/** Dimension lines in plan, with extension lines and slanted ticks; a text along y reads from the right, as on a drawing. */
export function DimensionLines({
  dimensions,
  view,
  size,
}: {
  readonly dimensions: readonly SceneDimension[];
  readonly view: View;
  readonly size: Size;
}) {
  return (
    <g className="scene-dimensions">
      {dimensions.map(({ from, to, away, text }) => {
        const [[x0, y0], [x1, y1]] = [projected(from, view, size), projected(to, view, size)];
        const [ox, oy] = [away[0] * dimensionStandOff, -away[1] * dimensionStandOff];
        const upright = Math.abs(x1 - x0) < Math.abs(y1 - y0);
        const [mx, my] = [(x0 + x1) / 2 + ox, (y0 + y1) / 2 + oy];
        const past = 1.18;
        const isLong = Math.hypot(x1 - x0, y1 - y0) > 8 * text.length;
        return (
          <g key={`${text} ${from.join(' ')} ${away.join(' ')}`}>
            <line
              className="extension"
              x1={x0 + 0.15 * ox}
              y1={y0 + 0.15 * oy}
              x2={x0 + past * ox}
              y2={y0 + past * oy}
            />
            <line
              className="extension"
              x1={x1 + 0.15 * ox}
              y1={y1 + 0.15 * oy}
              x2={x1 + past * ox}
              y2={y1 + past * oy}
            />
            <line x1={x0 + ox} y1={y0 + oy} x2={x1 + ox} y2={y1 + oy} />
            {[
              [x0 + ox, y0 + oy],
              [x1 + ox, y1 + oy],
            ].map(([x = 0, y = 0]) => (
              <line key={`${x} ${y}`} className="tick" x1={x - tick} y1={y + tick} x2={x + tick} y2={y - tick} />
            ))}
            {isLong && (
              <text
                x={mx}
                y={my}
                dy={upright ? undefined : -5}
                transform={upright ? `rotate(-90 ${mx} ${my}) translate(0 -5)` : undefined}
              >
                {text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
