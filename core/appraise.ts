import { catalogueWith } from './catalogue/catalogue.ts';
import { designBasis, overrideFindings } from './catalogue/design-basis.ts';
import { checkRows } from './checks/evaluate-check.ts';
import { graver, isKeptRule, type CheckRow } from './checks/check-row.ts';
import { checks } from './checks/index.ts';
import { documentOfOption, type BayPlan } from './document/option.ts';
import { builtAs } from './durability/as-built.ts';
import { durabilityFindings } from './durability/durability-findings.ts';
import { valueAt } from './document/edit.ts';
import { documentHash } from './document/document-hash.ts';
import type { RawDocument } from './document/read-document.ts';
import type { PlateDocument } from './document/schema.ts';
import { stockFindings } from './document/stock-findings.ts';
import { userRowFindings, userRows } from './document/user-rows.ts';
import { swingFindings } from './checks/swing-findings.ts';
import type { Finding } from './finding.ts';
import { bayPlan } from './geometry/bay-plan.ts';
import { geometryOf, gridOf } from './geometry/geometry-of.ts';
import { forceFindings } from './hydrodynamics/force-findings.ts';
import { testedFindings } from './hydrodynamics/tested-water.ts';
import { solvedKey, type SolvedForces } from './loads/solved-forces.ts';
import { loadReport } from './loads/load-report.ts';
import { limitStates, type LimitStateSummary } from './limit-states.ts';
import { massReport } from './mass/mass-report-of.ts';
import type { Model } from './model.ts';
import { solvedFindings } from './checks/solved-findings.ts';
import { quantitiesOf, type Quantities } from './quantities.ts';

/** The whole result for one option: what the window, the command line, the note and `verify` show. */
export interface Appraisal {
  readonly model: Model;
  readonly optionId: string | null;
  readonly optionTitle: string;
  readonly documentHash: string;
  readonly quantities: Quantities;
  readonly rows: readonly CheckRow[];
  /** Gravest row of each limit state. */
  readonly governing: Readonly<Record<string, CheckRow>>;
  readonly limitStates: readonly LimitStateSummary[];
  readonly findings: readonly Finding[];
}

/**
 * Appraises a document under one option (`null`: as it stands): pure, the only entry to the engine.
 * `solved`: forces of the whole plate, made by `solvedForcesOf`; given, they are judged with beside those by hand, whatever
 * the document asks. Where it asks for them and they are not given, or are of another plate, its rows cannot be judged.
 * Refuses a document that cannot be built; what can be built but not judged comes back as rows and findings.
 */
export function appraise(
  raw: RawDocument,
  document: PlateDocument,
  optionId: string | null,
  solved?: SolvedForces,
): Appraisal {
  const resolved = documentOfOption(raw, document, optionId, planOf);
  const model = modelOf(builtAs(resolved.document, optionId), solvedFor(resolved.document, solved));
  const judged = checks.map((check) => checkRows(check, model));
  const rows = judged.flatMap(({ rows }) => rows);
  const governing = governingRows(rows);
  return {
    model,
    optionId,
    optionTitle:
      optionId === null
        ? 'The document as it stands'
        : (document.options.find((o) => o.id === optionId)?.title ?? optionId),
    documentHash: documentHash(raw),
    quantities: quantitiesOf(model, rows),
    rows,
    governing,
    limitStates: limitStates(model, rows),
    findings: [
      ...resolved.findings,
      ...overrideFindings(model.document),
      ...userRowFindings(model.document),
      ...stockFindings(model.document, model.catalogue),
      ...model.geometry.findings,
      ...model.mass.findings,
      ...model.loads.findings,
      ...swingFindings(model),
      ...durabilityFindings(model),
      ...testedFindings(model),
      ...forceFindings(model),
      ...solvedFindings(model, rows),
      ...judged.flatMap(({ findings }) => findings),
    ],
  };
}

/** The gravest row of each limit state. */
function governingRows(rows: readonly CheckRow[]): Record<string, CheckRow> {
  const governing: Record<string, CheckRow> = {};
  for (const row of rows) {
    if (isKeptRule(row)) continue;
    const leader = governing[row.limitState];
    if (!leader || graver(row, leader) < 0) governing[row.limitState] = row;
  }
  return governing;
}

/** Why there are no forces of the whole plate where a document asks for them and none are given. */
export const notSolvedYet = 'the plate is not solved yet as one structure';

/** True where an option's document has its checks take forces from the whole plate as well. */
export const asksSolver = (document: Pick<PlateDocument, 'forces'> | RawDocument): boolean =>
  valueAt(document, ['forces', 'from']) === 'hand and solver';

function solvedFor(document: PlateDocument, solved: SolvedForces | undefined): Model['solved'] {
  if (!solved) return asksSolver(document) ? { missing: notSolvedYet } : null;
  return solved.key === solvedKey(document)
    ? solved
    : { missing: 'the plate was solved as it stood before a change, and not since' };
}

/** A document (one option of it) with geometry, mass and loads derived. */
export function modelOf(
  document: PlateDocument,
  solved: Model['solved'] = null,
  catalogue = catalogueWith(userRows(document)),
): Model {
  const geometry = geometryOf(document, catalogue);
  return modelWith(document, { catalogue, geometry, mass: massReport(document, geometry, catalogue) }, solved);
}

/** The same of geometry and mass that are derived already. */
export function modelWith(
  document: PlateDocument,
  { catalogue, geometry, mass }: Pick<Model, 'catalogue' | 'geometry' | 'mass'>,
  solved: Model['solved'] = null,
): Model {
  const basis = designBasis(document.basis.table, document.basis.overrides);
  const byId = <T extends { readonly id: string }>(items: readonly T[]) =>
    new Map(items.map((item) => [item.id, item]));
  return {
    document,
    basis,
    catalogue,
    geometry,
    mass,
    loads: loadReport(document, basis, geometry, mass),
    fields: new Map(geometry.panels.flatMap((panel) => panel.fields.map((field) => [field.bay, field]))),
    panels: byId(geometry.panels),
    tubes: byId([...geometry.mainTubes, ...geometry.crossTubes]),
    bays: byId(geometry.bays),
    solved,
  };
}

/** The bays between a document's tubes, as its options ask for them. */
export function planOf(document: PlateDocument): BayPlan {
  return bayPlan(gridOf(document, catalogueWith(userRows(document))).bays);
}
