import type { Catalogue } from './catalogue/catalogue.ts';
import type { DesignBasis } from './catalogue/design-basis.ts';
import type { PlateDocument } from './document/schema.ts';
import type { Bay, Field, Geometry, Panel, Tube } from './geometry/geometry.ts';
import type { SolvedForces } from './loads/solved-forces.ts';
import type { LoadReport } from './loads/situation.ts';
import type { MassReport } from './mass/mass-report.ts';

/** One option of a document with all that is derived from it: what checks read. */
export interface Model {
  readonly document: PlateDocument;
  readonly basis: DesignBasis;
  readonly catalogue: Catalogue;
  readonly geometry: Geometry;
  readonly mass: MassReport;
  readonly loads: LoadReport;
  /** Fields, panels, tubes and bays by id. */
  readonly fields: ReadonlyMap<string, Field>;
  readonly panels: ReadonlyMap<string, Panel>;
  readonly tubes: ReadonlyMap<string, Tube>;
  readonly bays: ReadonlyMap<string, Bay>;
  /** Forces of the whole plate's solution; why they cannot be had, where checks ask for them; null where none does. */
  readonly solved: SolvedForces | { readonly missing: string } | null;
}
