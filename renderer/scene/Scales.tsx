import { printedUnit, quantityText, fromUnit } from '../../core/quantity/format-quantity.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { projected, type Size, type View } from './camera.ts';
import { niceStep } from './nice-step.ts';
import { sceneTexts as texts } from './scene-texts.ts';

/** A bar of a round length at the lower edge, in the document's units. */
export function ScaleBar({
  units,
  view,
  size,
}: {
  readonly units: Scene['units'];
  readonly view: View;
  readonly size: Size;
}) {
  const unit = printedUnit('m', units);
  const metre = fromUnit(1, unit);
  const step = niceStep(70 / (view.scale * metre));
  const length = step * metre * view.scale;
  const [x, y] = [size.width - 24 - length, size.height - 12];
  return (
    <g className="scene-scale">
      <path d={`M${x} ${y - 5}v5h${length}v-5`} />
      <text x={x + length / 2} y={y - 4}>
        {quantityText(step * metre, unit, 3).replace(/\.?0+(?=\s)/, '')}
      </text>
    </g>
  );
}

/**
 * Seen level, depth below the surface as a rule down the left edge, at the scale of the picture; where the surface is in
 * sight it is drawn as a line. Seen from above or below a rule would mislead: the depth itself is said.
 */
export function DepthScale({ scene, view, size }: { readonly scene: Scene; readonly view: View; readonly size: Size }) {
  const { water, units } = scene;
  const metrePx = view.scale;
  if (Math.abs(view.elevation) > 0.02) {
    const [depth, below] = texts.below(water.depth);
    // Two lines in the corner: beside the dimension lines of the plan there is no room for one.
    return (
      <text className="scene-depth-said" x={16} y={16}>
        <tspan>{depth} </tspan>
        <tspan x={16} dy="1.25em">
          {below}
        </tspan>
      </text>
    );
  }
  const unit = printedUnit('m', units);
  const metre = fromUnit(1, unit);
  const [, surface] = projected([view.target[0], view.target[1], water.surface], view, size);
  const step = niceStep(56 / (metrePx * metre));
  const stepPx = step * metre * metrePx;
  const [x, top, bottom] = [52, Math.max(surface, 12), size.height - 60];
  const first = Math.ceil((top - surface) / stepPx - 1e-6);
  const last = Math.floor((bottom - surface) / stepPx);
  const ticks = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  if (bottom <= top) return null;
  return (
    <g className="scene-depth">
      <line x1={x} y1={top} x2={x} y2={bottom} />
      {ticks.map((i) => (
        <g key={i}>
          <line x1={x} y1={surface + i * stepPx} x2={x + 7} y2={surface + i * stepPx} />
          <text x={x - 6} y={surface + i * stepPx}>
            {i === 0 ? '0' : depthText(i * step, step)}
          </text>
        </g>
      ))}
      <text className="unit" x={x} y={bottom + 16}>
        {texts.surface.toLowerCase()} = 0, {unit}
      </text>
      {surface > 0 && surface < size.height && (
        <>
          <line className="surface" x1={0} y1={surface} x2={size.width} y2={surface} />
          <text className="surface" x={x + 16} y={surface - 8}>
            {texts.surface}
          </text>
        </>
      )}
    </g>
  );
}

const depthText = (depth: number, step: number): string =>
  depth.toFixed(Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));
