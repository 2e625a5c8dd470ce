import type { SceneLabel } from '../../core/scene/scene.ts';
import { isPlan, projected, type Size, type View } from './camera.ts';
import { placedLabels } from './placed-labels.ts';

/** Names of the tubes in circles at their ends, and of the bays in plan: as grid lines on a drawing. */
export function GridNames({
  labels,
  view,
  size,
  standOff,
}: {
  readonly labels: readonly SceneLabel[];
  readonly view: View;
  readonly size: Size;
  /** px beyond the end of a tube. */
  readonly standOff: number;
}) {
  const inPlan = isPlan(view);
  const across = 26 * textScale();
  const drawn = labels
    .filter(({ role }) => role === 'tube' || inPlan)
    .map(({ role, at, away, text }) => {
      const [x, y] = projected(at, view, size);
      const [u, v] = projected([at[0] + away[0], at[1] + away[1], at[2] + away[2]], view, size);
      const length = Math.hypot(u - x, v - y);
      const out = role === 'tube' && length > 1 ? standOff / length : 0;
      const foot = { x, y };
      return {
        key: `${role} ${text}`,
        role,
        text,
        foot,
        x: x + out * (u - x),
        y: y + out * (v - y),
        width: role === 'tube' ? across : 10 + 9 * text.length,
        height: role === 'tube' ? across : 18,
        // Seen end on, a tube's name would lie on the tube.
        hidden: role === 'tube' && length < 0.2 * view.scale,
      };
    })
    .filter(({ hidden }) => !hidden);
  return (
    <g className="scene-names">
      {placedLabels(drawn, size).map(({ key, role, text, x, y, foot }) => (
        <g key={key} className={role}>
          {role === 'tube' && (
            <>
              <line x1={foot.x} y1={foot.y} x2={x} y2={y} />
              <circle cx={x} cy={y} r={11} />
            </>
          )}
          <text x={x} y={y}>
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Size of text against the usual one, as the window has set it. */
const textScale = (): number => Number(document.documentElement.style.getPropertyValue('--text-scale')) || 1;
