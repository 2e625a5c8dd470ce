import { designBasis } from '../../core/catalogue/design-basis.ts';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import type { PlateDocument } from '../../core/document/schema.ts';
import { userRows } from '../../core/document/user-rows.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import { loadReport } from '../../core/loads/load-report.ts';
import type { Situation } from '../../core/loads/situation.ts';
import { massReport } from '../../core/mass/mass-report-of.ts';

/** A document with all that its load report stands on. */
export function loadedPlate(document: PlateDocument) {
  const basis = designBasis(document.basis.table, document.basis.overrides);
  const catalogue = catalogueWith(userRows(document));
  const geometry = geometryOf(document, catalogue);
  const mass = massReport(document, geometry, catalogue);
  const report = loadReport(document, basis, geometry, mass);
  const situation = (id: string): Situation => {
    const found = report.situations.find((s) => s.id === id);
    if (!found) throw new Error(`no situation ${id}: ${report.situations.map((s) => s.id).join(', ')}`);
    return found;
  };
  return { document, basis, geometry, mass, report, situation };
}
