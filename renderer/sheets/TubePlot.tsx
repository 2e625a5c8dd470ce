import { useState } from 'react';
import type { TubeCourse } from '../../core/engine/solver-view.ts';
import { printedUnit, quantityText, type UnitSystem } from '../../core/quantity/format-quantity.ts';
import { texts } from '../texts.ts';

const t = texts.whole;
const courses = [
  { of: 'moment', title: t.moment, unit: 'kN*m' },
  { of: 'shear', title: t.shearForce, unit: 'kN' },
  { of: 'rise', title: t.rise, unit: 'mm' },
] as const;
const [width, height] = [480, 84];

/** Moment, shear and rise along a tube, drawn, with the same numbers as a table. */
export function TubePlot({ tubes, units }: { tubes: readonly TubeCourse[]; units: UnitSystem }) {
  const [chosen, choose] = useState<string | null>(null);
  const tube = tubes.find(({ id }) => id === chosen) ?? tubes[0];
  if (!tube) return null;
  const text = (si: number, unit: string) => quantityText(si, printedUnit(unit, units), 3);
  return (
    <section aria-label={t.along} className="tube-plot">
      <h3>{t.along}</h3>
      <label>
        {t.tube}{' '}
        <select value={tube.id} onChange={({ target }) => choose(target.value)}>
          {tubes.map(({ id }) => (
            <option key={id}>{id}</option>
          ))}
        </select>
      </label>
      {courses.map(({ of, title, unit }) => {
        const low = tube[of].reduce((a, b) => Math.min(a, b), 0);
        const high = tube[of].reduce((a, b) => Math.max(a, b), 0);
        const said = `${title}: ${text(low, unit)} to ${text(high, unit)}`;
        return (
          <figure key={of}>
            <figcaption>{said}</figcaption>
            <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={`${tube.id}, ${said}`}>
              <path className="area" d={drawn(tube.at, tube[of], low, high, true)} />
              <path className="course" d={drawn(tube.at, tube[of], low, high, false)} />
              <path className="axis" d={`M0 ${across(0, low, high)}H${width}`} />
            </svg>
          </figure>
        );
      })}
      <details>
        <summary>{t.numbersOf(tube.id)}</summary>
        <table className="solver-list">
          <thead>
            <tr>
              <th scope="col">{t.at}</th>
              {courses.map(({ of, title }) => (
                <th key={of} scope="col" className="number">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {[...tube.at].map((at, i) => (
              <tr key={i}>
                <th scope="row">{text(at, 'mm')}</th>
                {courses.map(({ of, unit }) => (
                  <td key={of} className="number">
                    {text(tube[of][i]!, unit)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}

/** Height at which a value is drawn; a course that is nought all along lies in the middle. */
const across = (value: number, low: number, high: number): number =>
  high === low ? height / 2 : 4 + ((height - 8) * (high - value)) / (high - low);

function drawn(at: Float64Array, values: Float64Array, low: number, high: number, closed: boolean): string {
  const [start, end] = [at[0]!, at.at(-1)!];
  const x = (s: number) => ((width * (s - start)) / (end - start)).toFixed(1);
  const line = [...at].map((s, i) => `${x(s)} ${across(values[i]!, low, high).toFixed(1)}`).join('L');
  const zero = across(0, low, high).toFixed(1);
  return closed ? `M0 ${zero}L${line}L${width} ${zero}Z` : `M${line}`;
}
