import type { DesignBasis } from '../catalogue/design-basis.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import type { Geometry } from '../geometry/geometry.ts';
import type { MassReport } from '../mass/mass-report.ts';
import type { PlateLoads } from './plate-loads.ts';
import type { Situation } from './situation.ts';
import type { SupportSet } from './support-set.ts';
import type { Supports } from './supports.ts';
import type { FlowPhase, WaterShare } from './water-shares.ts';

export interface HeldBy {
  readonly set: SupportSet;
  readonly supports: Supports;
}

/** What every load case reads. */
export interface CaseContext {
  readonly document: PlateDocument;
  readonly basis: DesignBasis;
  readonly geometry: Geometry;
  readonly mass: MassReport;
  readonly plate: PlateLoads;
  /** Each field's share by the flow, where the document chooses it. */
  readonly flow: ReadonlyMap<string, WaterShare> | null;
  /** Phases of the cycle at which tubes and grid are solved with the flow's spread; none where it is not chosen. */
  readonly phases: readonly FlowPhase[];
  /** What bounds every phase, taken with a panel lost. */
  readonly phaseBounds: readonly FlowPhase[];
  readonly suspension: HeldBy;
  /** Pad eyes if there are any, else the suspension. */
  readonly lifting: HeldBy;
  readonly deck: HeldBy | null;
  /** The design basis' factor by name. */
  readonly factor: (name: string) => number;
  /** A force or length for a sentence, in the document's units. */
  readonly forceText: (newtons: number) => string;
  readonly lengthText: (metres: number) => string;
}

/** What a load case gives. */
export interface CaseResult {
  readonly situations: readonly Situation[];
  /** Some of them need the solution. */
  readonly findings: () => readonly Finding[];
}

export const everySupport = ({ set }: HeldBy): readonly number[] => set.items.map((_, i) => i);
