import type { ComparisonView } from '../../core/engine/comparison-view.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { FigureView } from './FigureView.tsx';

const width = 560;
const height = 300;
const margin = { left: 48, right: 40, top: 24, bottom: 40 };
const plan = 44;

/** Mass against governing utilisation, each option drawn as its plan. Below the line at one is where one wants to be. */
export function ComparisonPlot({ comparison }: { comparison: ComparisonView }) {
  const session = useSession();
  const shown = useWorkbench((state) => state.document?.option ?? null);
  const points = comparison.options.flatMap(({ id, title, numbers }) =>
    numbers?.highest
      ? [
          {
            id,
            title,
            plan: numbers.plan,
            mass: numbers.quantities['mass.air']!,
            use: numbers.highest.utilisation,
            fails: numbers.fails > 0,
          },
        ]
      : [],
  );
  if (points.length === 0) return null;
  const masses = points.map(({ mass }) => mass.value);
  const [least, most] = [Math.min(...masses), Math.max(...masses)];
  const room = Math.max(most - least, 0.02 * most) * 0.15;
  const [x0, x1] = [least - room, most + room];
  const top = Math.max(1.2, ...points.map(({ use }) => Math.min(use, 3))) * 1.08;
  const x = (mass: number) => margin.left + ((mass - x0) / (x1 - x0)) * (width - margin.left - margin.right);
  const y = (use: number) =>
    height - margin.bottom - (Math.min(use, top) / top) * (height - margin.top - margin.bottom);
  const ticks = Array.from({ length: Math.floor(top / 0.5) + 1 }, (_, n) => n / 2);
  return (
    <svg className="comparison-plot" viewBox={`0 0 ${width} ${height}`} role="group" aria-label={texts.options.plot}>
      {ticks.map((tick) => (
        <g key={tick}>
          <line
            className={tick === 1 ? 'limit' : 'grid-line'}
            x1={margin.left}
            x2={width - margin.right}
            y1={y(tick)}
            y2={y(tick)}
          />
          <text x={margin.left - 6} y={y(tick) + 4} textAnchor="end">
            {tick.toFixed(1)}
          </text>
        </g>
      ))}
      <text x={margin.left} y={14}>
        {texts.options.plotUse}
      </text>
      <text x={width - margin.right} y={height - 8} textAnchor="end">
        {texts.options.plotMass}
      </text>
      {points.map((point) => (
        <g
          key={point.id ?? ''}
          className={`point${point.id === shown ? ' shown' : ''}${point.fails ? ' fails' : ''}`}
          role="button"
          tabIndex={0}
          aria-label={`${point.title}: ${point.mass.text}, ${point.use.toFixed(2)}`}
          onClick={() => void session.show(point.id)}
          onKeyDown={({ key }) => key === 'Enter' && void session.show(point.id)}
        >
          <rect
            x={x(point.mass.value) - plan / 2 - 2}
            y={y(point.use) - plan / 2 - 2}
            width={plan + 4}
            height={plan + 4}
          />
          <svg x={x(point.mass.value) - plan / 2} y={y(point.use) - plan / 2} width={plan} height={plan}>
            <FigureView figure={point.plan} width={plan} plain />
          </svg>
          <text x={x(point.mass.value)} y={y(point.use) + plan / 2 + 14} textAnchor="middle">
            {point.title.length > 22 ? `${point.title.slice(0, 21)}…` : point.title}
          </text>
        </g>
      ))}
    </svg>
  );
}
