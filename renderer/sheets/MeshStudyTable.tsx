import type { MeshStudy } from '../../core/plate/mesh-study.ts';
import { printedUnit, quantityText, significant, type UnitSystem } from '../../core/quantity/format-quantity.ts';
import { studyTable } from '../../core/plate/results/whole-tables.ts';
import { texts } from '../texts.ts';
import { TableSaver } from './TableSaver.tsx';

const t = texts.whole;
const columns = { deflection: ['mm', t.deflection], bolt: ['kN', t.bolt], weld: ['kN/m', t.weld] } as const;

/** How deflection, bolts, welds and stresses settle as cells shrink. */
export function MeshStudyTable({ study, stale, units }: { study: MeshStudy; stale: boolean; units: UnitSystem }) {
  const text = (si: number, unit: string) => quantityText(si, printedUnit(unit, units), 4);
  const { meshes, convergence, chosen } = study;
  return (
    <section aria-label={t.study}>
      {stale && <p className="solver-loud">{t.stale}</p>}
      <table className="solver-list">
        <caption>{t.study}</caption>
        <thead>
          <tr>
            <th scope="col">{t.cell}</th>
            <th scope="col" className="number">{t.unknowns}</th>
            {convergence.map(({ quantity }) => (
              <th key={quantity} scope="col" className="number">{columns[quantity][1]}</th>
            ))}
            <th scope="col" className="number">{t.stressError}</th>
          </tr>
        </thead>
        <tbody>
          {meshes.map((mesh, i) => (
            <tr key={mesh.size}>
              <th scope="row">{text(mesh.cell, 'mm')}</th>
              <td className="number">{mesh.unknowns.toLocaleString('en-GB')}</td>
              {convergence.map(({ quantity, errors }) => (
                <td key={quantity} className="number">
                  {text(mesh[quantity], columns[quantity][0])} <span className="quiet small">({significant(100 * errors[i]!, 2)} %)</span>
                </td>
              ))}
              <td className="number">{significant(100 * mesh.stressError, 2)} %</td>
            </tr>
          ))}
          <tr>
            <th scope="row">{t.extrapolated}</th>
            <td className="number">–</td>
            {convergence.map(({ quantity, extrapolated, order }) => (
              <td key={quantity} className="number">
                {text(extrapolated, columns[quantity][0])} <span className="quiet small">({t.order}: {order === null ? '–' : significant(order, 2)})</span>
              </td>
            ))}
            <td className="number">–</td>
          </tr>
        </tbody>
      </table>
      <p>{chosen === null ? t.noneChosen : t.chosen(text(chosen, 'mm'))}</p>
      <TableSaver label={t.saveStudy} name="mesh-study.csv" disabled={stale} of={{ table: studyTable(study, units) }} />
    </section>
  ); // prettier-ignore
}
