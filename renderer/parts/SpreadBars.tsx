import type { Sensitivity } from '../../core/options/sensitivity/sensitivity.ts';
import { niceStep } from '../scene/nice-step.ts';
import { texts } from '../texts.ts';
import './comparison.css';

const width = 600;
const row = 44;
const margin = { left: 12, right: 16, top: 8, bottom: 40 };

/** What each input does to the governing utilisation between the ends of its spread, the widest first. */
export function SpreadBars({ found: { governing, moved } }: { found: Sensitivity }) {
  const t = texts.sensitivity;
  const all = moved.flatMap(({ atLow, atHigh }) => [atLow, atHigh].filter((use) => use !== null));
  const [least, most] = [Math.min(governing.use, ...all), Math.max(governing.use, ...all)];
  const room = Math.max(most - least, 0.02) * 0.15;
  const [low, high] = [Math.max(0, least - room), most + room];
  const x = (use: number) => margin.left + ((use - low) / (high - low)) * (width - margin.left - margin.right);
  const step = niceStep((high - low) / 6);
  const first = Math.ceil(low / step);
  const ticks = Array.from({ length: Math.floor(high / step) - first + 1 }, (_, n) => (first + n) * step);
  const bottom = margin.top + row * moved.length;
  const digits = Math.max(2, -Math.floor(Math.log10(step)));
  return (
    <svg
      className="comparison-plot spread-bars"
      viewBox={`0 0 ${width} ${bottom + margin.bottom}`}
      role="img"
      aria-label={t.bars}
    >
      {' '}
      {/* prettier-ignore */}
      {ticks.map((use) => (
        <g key={use}>
          <line
            className={Math.abs(use - 1) < 1e-9 ? 'limit' : 'grid-line'}
            x1={x(use)}
            x2={x(use)}
            y1={margin.top}
            y2={bottom}
          />{' '}
          {/* prettier-ignore */}
          <text x={x(use)} y={bottom + 16} textAnchor="middle">
            {use.toFixed(digits)}
          </text>
        </g>
      ))}
      <text className="axis" x={width - margin.right} y={bottom + 34} textAnchor="end">
        {t.axis}
      </text>
      {moved.map(({ input, low: from, high: to, atLow, atHigh }, n) => {
        const top = margin.top + n * row;
        const ends = [atLow, atHigh, governing.use].filter((use) => use !== null);
        const open = atLow === null || atHigh === null;
        return (
          <g key={input}>
            <text x={margin.left} y={top + 15}>
              {t.line(t.inputs[input], from, to, atLow, atHigh)}
            </text>
            <rect
              className={open ? 'bar open' : 'bar'}
              x={x(Math.min(...ends))}
              width={Math.max(1, x(Math.max(...ends)) - x(Math.min(...ends)))}
              y={top + 21}
              height={14}
            />{' '}
            {/* prettier-ignore */}
          </g>
        );
      })}
      <line className="nominal" x1={x(governing.use)} x2={x(governing.use)} y1={margin.top} y2={bottom} />
    </svg>
  );
}
