import type { CheckRow } from './check-row.ts';
import { fatigueReport } from './fatigue-report.ts';
import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import { fromUnit } from '../quantity/format-quantity.ts';
import { durabilityFindings } from '../durability/durability-findings.ts';
import { anodeBurden, type AnodeBurden } from '../durability/anode-burden.ts';
import { corrosionZones } from '../document/durability-field.ts';
import { corrosionLoss, type CorrosionZone } from '../durability/corrosion-loss.ts';
import { galvanicPairs, type GalvanicPair } from '../durability/galvanic-pairs.ts';
import { inspectionPlan, type Inspection } from './inspection-plan.ts';
import { protectedArea, type ProtectedArea } from '../durability/protected-area.ts';

/** Anodes wanted by each of the three rules, and by all. */
export interface AnodeNeed {
  /** Alloy that the life uses up, kg. */
  readonly mass: number;
  readonly byMass: number;
  readonly byFirstCurrent: number;
  readonly byLastCurrent: number;
  readonly count: number;
  readonly given: number;
}

export interface DurabilityReport {
  /** Years. */
  readonly life: number;
  /** Null where the document describes no durability. */
  readonly area: ProtectedArea | null;
  /** Null where no anodes are described, or what they need cannot be judged. */
  readonly anodes: AnodeNeed | null;
  readonly burden: AnodeBurden | null;
  /** m a face over the life: by the table for bare steel in the plate's zone and in every zone, and as the document states it. */
  readonly loss: {
    readonly tabled: number;
    readonly byZone: readonly { readonly zone: CorrosionZone; readonly loss: number }[];
    readonly panel: number;
    readonly tubeOutside: number;
  };
  readonly pairs: readonly GalvanicPair[];
  readonly plan: readonly Inspection[];
  readonly findings: readonly Finding[];
}

/** What the sea does to the plate over its life, what protects it, and what is to be looked at. */
export function durabilityReport(model: Model, rows: readonly CheckRow[]): DurabilityReport {
  const { document } = model;
  const { durability, protection } = document;
  const life = document.basis.life.si / fromUnit(1, 'year');
  const loss = {
    tabled: corrosionLoss(Math.min(life, 100), durability?.zone),
    byZone: corrosionZones.map((zone) => ({ zone, loss: corrosionLoss(Math.min(life, 100), zone) })),
    panel: protection.lossPerFace.panel.si,
    tubeOutside: protection.lossPerFace.tubeOutside.si,
  };
  return {
    life,
    area: durability ? protectedArea(model, durability) : null,
    anodes: anodeNeed(model, rows),
    burden: anodeBurden(document),
    loss,
    pairs: durability ? galvanicPairs(model, durability) : [],
    plan: inspectionPlan(model, fatigueReport(model, rows)),
    findings: durabilityFindings(model),
  };
}

function anodeNeed({ document }: Model, rows: readonly CheckRow[]): AnodeNeed | null {
  const given = document.durability?.anodes;
  const row = (id: string) => rows.find((one) => one.id === id && one.demand !== null && one.capacity !== null);
  const [mass, first, last] = [row('anode-mass'), row('anode-current-initial'), row('anode-current-final')];
  if (!given || !mass || !first || !last) return null;
  const wanted = ({ demand, capacity }: CheckRow) => (given.count * demand!) / capacity!;
  const [byMass, byFirstCurrent, byLastCurrent] = [wanted(mass), wanted(first), wanted(last)];
  // a count that is whole but for round-off is that count
  const count = Math.ceil(Math.max(byMass, byFirstCurrent, byLastCurrent) - 1e-9);
  return { mass: mass.demand!, byMass, byFirstCurrent, byLastCurrent, count, given: given.count };
}
