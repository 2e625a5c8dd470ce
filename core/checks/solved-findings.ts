import type { CheckRow } from './check-row.ts';
import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import { formatQuantity, printedUnit } from '../quantity/format-quantity.ts';

/** Error of the panels' stresses beyond which a mesh is told of, as a part of them. */
const meshTarget = 0.02;

/** What must be seen of the whole plate's solution that the checks take forces from: a coarse mesh, choices that choose nothing. */
export function solvedFindings({ document, solved }: Model, rows: readonly CheckRow[]): readonly Finding[] {
  if (solved === null || 'missing' in solved) return [];
  const findings: Finding[] = [];
  const { stressError, size } = solved.mesh;
  if (stressError > meshTarget) {
    const { number, unit } = formatQuantity(size, printedUnit('mm', document.units));
    findings.push({
      id: 'solver-mesh',
      place: 'plate',
      text: `The whole plate is solved with cells up to ${number} ${unit}: its panels’ stresses are off by about ${(100 * stressError).toFixed(1)} %, more than ${100 * meshTarget} %.`,
      mend: 'Give narrower cells; a mesh study says which are narrow enough.',
    });
  }
  const made = rows.filter(({ both }) => both !== null);
  for (const { check, place } of document.forces?.choose ?? [])
    if (!made.some((row) => row.id === check && (!place || row.place === place)))
      findings.push({
        id: 'choice-of-nothing',
        place: place || 'plate',
        text: `A demand is chosen for “${check}”${place ? ` at “${place}”` : ''}, but no check of that name has two demands there.`,
        mend: 'Correct the names of check and place, or take the choice out.',
      });
  return findings;
}
