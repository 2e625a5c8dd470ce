import type { ComparisonView } from '../../core/engine/comparison-view.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { FigureView } from './FigureView.tsx';
import { plotPlaces } from './plot-places.ts';
import './comparison.css';

const width = 600;
const height = 320;
const margin = { left: 44, right: 16, top: 30, bottom: 46 };
const plan = 46;

/**
 * Mass against governing utilisation, each option drawn as its plan and named by its number in the table. Below the
 * line at one is where one wants to be.
 */
export function ComparisonPlot({ comparison }: { comparison: ComparisonView }) {
  const session = useSession();
  const shown = useWorkbench((state) => state.document?.option ?? null);
  const options = comparison.options.flatMap(({ id, title, numbers }, n) =>
    numbers?.highest
      ? [
          {
            id,
            title,
            number: n + 1,
            plan: numbers.plan,
            mass: numbers.quantities['mass.air']!,
            use: numbers.highest.utilisation,
            fails: numbers.fails > 0,
          },
        ]
      : [],
  );
  if (options.length === 0) return <p className="quiet">{texts.options.nothingToPlot}</p>;
  const masses = options.map(({ mass }) => mass.printed);
  const [least, most] = [Math.min(...masses), Math.max(...masses)];
  const room = Math.max(most - least, 0.05 * most) * 0.12;
  const [x0, x1] = [least - room, most + room];
  const highest = Math.max(...options.map(({ use }) => use));
  // A use far above the limit would press all others onto the axis: it stands at the top edge with its number.
  const top = Math.max(1.25, Math.min(highest, 3) * 1.1);
  const x = (mass: number) => margin.left + ((mass - x0) / (x1 - x0)) * (width - margin.left - margin.right);
  const y = (use: number) =>
    height - margin.bottom - (Math.min(use, top) / top) * (height - margin.top - margin.bottom);
  const uses = Array.from({ length: Math.floor(top / 0.5) + 1 }, (_, n) => n / 2);
  const step = niceStep((x1 - x0) / 5);
  const ticks = Array.from({ length: 12 }, (_, n) => (Math.ceil(x0 / step) + n) * step).filter((mass) => mass <= x1);
  const points = options.map(({ mass, use }) => ({ x: x(mass.printed), y: y(use) }));
  const half = plan / 2 + 3;
  const places = plotPlaces(points, plan + 8, {
    x0: margin.left + half,
    x1: width - margin.right - half,
    y0: margin.top - 8 + half,
    y1: height - margin.bottom - half,
  });
  return (
    <svg className="comparison-plot" viewBox={`0 0 ${width} ${height}`} role="group" aria-label={texts.options.plot}>
      {uses.map((use) => (
        <g key={use}>
          <line
            className={use === 1 ? 'limit' : 'grid-line'}
            x1={margin.left}
            x2={width - margin.right}
            y1={y(use)}
            y2={y(use)}
          />
          <text x={margin.left - 6} y={y(use) + 4} textAnchor="end">
            {use.toFixed(1)}
          </text>
        </g>
      ))}
      {ticks.map((mass) => (
        <g key={mass}>
          <line
            className="tick"
            x1={x(mass)}
            x2={x(mass)}
            y1={height - margin.bottom}
            y2={height - margin.bottom + 5}
          />
          <text x={x(mass)} y={height - margin.bottom + 19} textAnchor="middle">
            {Math.round(mass).toString()}
          </text>
        </g>
      ))}
      <text className="axis" x={margin.left} y={14}>
        {texts.options.plotUse}
      </text>
      <text className="axis" x={width - margin.right} y={height - 8} textAnchor="end">
        {texts.options.plotMass(options[0]!.mass.unit)}
      </text>
      {options.map((option, n) => {
        const place = places[n]!;
        const name = `${option.number} ${option.title}: ${option.mass.text}, ${option.use.toFixed(2)}`;
        return (
          <g
            key={option.id ?? ''}
            className={`point${option.id === shown ? ' shown' : ''}${option.fails ? ' fails' : ''}`}
            role="button"
            tabIndex={0}
            aria-label={name}
            onClick={() => void session.show(option.id)}
            onKeyDown={(event) => {
              if (event.key !== 'Enter' && event.key !== ' ') return;
              event.preventDefault();
              void session.show(option.id);
            }}
          >
            <title>{name}</title>
            <rect x={place.x - plan / 2} y={place.y - plan / 2} width={plan} height={plan} rx={3} />
            <svg x={place.x - plan / 2 + 3} y={place.y - plan / 2 + 11} width={plan - 6} height={plan - 14}>
              <FigureView figure={option.plan} width={plan} plain />
            </svg>
            <text className="number-of" x={place.x - plan / 2 + 4} y={place.y - plan / 2 + 12}>
              {option.number}
            </text>
          </g>
        );
      })}
      {/* Where a picture stands off its point, a line leads back to it. */}
      {points.map((point, n) => {
        const place = places[n]!;
        const far = Math.hypot(place.x - point.x, place.y - point.y);
        if (far === 0) return null;
        const toEdge = Math.max(0, 1 - plan / 2 / Math.max(Math.abs(place.x - point.x), Math.abs(place.y - point.y)));
        return (
          <g key={n} className="leader">
            <line
              x1={point.x}
              y1={point.y}
              x2={point.x + (place.x - point.x) * toEdge}
              y2={point.y + (place.y - point.y) * toEdge}
            />
            <circle cx={point.x} cy={point.y} r={3.2} />
          </g>
        );
      })}
    </svg>
  );
}

/** The largest of 1, 2 and 5 times a power of ten that is not over `step`. */
function niceStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  return ([5, 2, 1].find((times) => times * power <= step) ?? 1) * power;
}
