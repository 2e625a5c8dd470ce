import type { AimId } from '../../core/options/search/aims.ts';
import type { FoundView } from '../../core/engine/search-service.ts';
import { niceStep } from '../scene/nice-step.ts';
import { texts } from '../texts.ts';
import { FigureView } from './FigureView.tsx';
import { plotPlaces } from './plot-places.ts';
import './comparison.css';

const width = 600;
const height = 320;
const margin = { left: 58, right: 16, top: 30, bottom: 46 };
const plan = 46;

/** The front of best compromises: two aims against each other, each option as its plan, a line from one to the next; broken frames
 *  leave checks open. */
export function FrontPlot({
  found,
  across,
  up,
  units,
  at,
  onLook,
}: {
  found: readonly FoundView[];
  across: AimId;
  up: AimId;
  units: Readonly<Record<AimId, string>>;
  at: number;
  onLook: (at: number) => void;
}) {
  const points = found.map(({ aims }) => ({ x: aims[across]!.printed, y: aims[up]!.printed }));
  const x = axis(points.map((point) => point.x), margin.left, width - margin.right); // prettier-ignore
  const y = axis(points.map((point) => point.y), height - margin.bottom, margin.top); // prettier-ignore
  const placed = points.map((point) => ({ x: x.at(point.x), y: y.at(point.y) }));
  const half = plan / 2 + 3;
  const frame = { x0: margin.left + half, x1: width - margin.right - half, y0: margin.top + half - 8, y1: height - margin.bottom - half }; // prettier-ignore
  const places = plotPlaces(placed, plan + 8, frame);
  const inTurn = [...placed].sort((a, b) => a.x - b.x || a.y - b.y);
  const t = texts.search;
  return (
    <svg className="comparison-plot" viewBox={`0 0 ${width} ${height}`} role="group" aria-label={t.plot}>
      {y.ticks.map((value) => (
        <g key={value}>
          <line className="grid-line" x1={margin.left} x2={width - margin.right} y1={y.at(value)} y2={y.at(value)} />
          <text x={margin.left - 6} y={y.at(value) + 4} textAnchor="end">
            {printed(value, y.step)}
          </text>
        </g>
      ))}
      {x.ticks.map((value) => (
        <g key={value}>
          <line
            className="tick"
            x1={x.at(value)}
            x2={x.at(value)}
            y1={height - margin.bottom}
            y2={height - margin.bottom + 5}
          />{' '}
          {/* prettier-ignore */}
          <text x={x.at(value)} y={height - margin.bottom + 19} textAnchor="middle">
            {printed(value, x.step)}
          </text>
        </g>
      ))}
      <text className="axis" x={margin.left} y={14}>
        {titled(up, units)}
      </text>
      <text className="axis" x={width - margin.right} y={height - 8} textAnchor="end">
        {titled(across, units)}
      </text>
      <polyline className="front-line" points={inTurn.map((point) => `${point.x},${point.y}`).join(' ')} />
      {found.map((option, n) => {
        const place = places[n]!;
        const name = `${n + 1} ${option.option.title}: ${option.aims[across]!.text} ${units[across]}, ${option.aims[up]!.text} ${units[up]}${option.unjudged.length > 0 ? `, ${t.leavesOpen}` : ''}`;
        return (
          <g
            key={option.option.id}
            className={`point${n === at ? ' shown' : ''}${option.unjudged.length > 0 ? ' open' : ''}`}
            role="button"
            tabIndex={0}
            aria-label={name}
            aria-pressed={n === at}
            onClick={() => onLook(n)}
            onKeyDown={(event) => {
              if (event.key !== 'Enter' && event.key !== ' ') return;
              event.preventDefault();
              onLook(n);
            }}
          >
            <title>{name}</title>
            <rect x={place.x - plan / 2} y={place.y - plan / 2} width={plan} height={plan} rx={3} />
            <svg x={place.x - plan / 2 + 3} y={place.y - plan / 2 + 11} width={plan - 6} height={plan - 14}>
              <FigureView figure={option.plan} width={plan} plain />
            </svg>
            <text className="number-of" x={place.x - plan / 2 + 4} y={place.y - plan / 2 + 12}>
              {n + 1}
            </text>
          </g>
        );
      })}
      {placed.map((point, n) => {
        const [dx, dy] = [places[n]!.x - point.x, places[n]!.y - point.y];
        if (dx === 0 && dy === 0) return null;
        const toEdge = Math.max(0, 1 - plan / 2 / Math.max(Math.abs(dx), Math.abs(dy)));
        return (
          <g key={n} className="leader">
            <line x1={point.x} y1={point.y} x2={point.x + dx * toEdge} y2={point.y + dy * toEdge} />
            <circle cx={point.x} cy={point.y} r={3.2} />
          </g>
        );
      })}
    </svg>
  );
}

/** A scale with a tenth of room at either end, and round ticks. */
function axis(values: readonly number[], from: number, to: number) {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = Math.max(most - least, 0.02 * Math.abs(most), 1e-3) * 0.12;
  const [low, high] = [least - room, most + room];
  const step = niceStep((high - low) / 6);
  const first = Math.ceil(low / step);
  const ticks = Array.from({ length: Math.floor(high / step) - first + 1 }, (_, n) => (first + n) * step);
  return { step, ticks, at: (value: number) => from + ((value - low) / (high - low)) * (to - from) };
}

const printed = (value: number, step: number): string =>
  value.toFixed(Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));

export const titled = (aim: AimId, units: Readonly<Record<AimId, string>>): string =>
  units[aim] === '' ? texts.search.aims[aim] : `${texts.search.aims[aim]}, ${units[aim]}`;
