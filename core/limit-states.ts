import { graver, type CheckRow } from './checks/check-row.ts';
import type { LoadCaseName } from './loads/situation.ts';
import type { Model } from './model.ts';
import { quantityText } from './quantity/format-quantity.ts';

/** What the first page says of one limit state. */
export interface LimitStateSummary {
  readonly name: string;
  readonly verdict: 'passes' | 'fails' | 'not judged';
  /** The gravest row, if there is one. */
  readonly row: CheckRow | null;
  readonly fails: number;
  readonly unjudged: number;
  readonly made: number;
  readonly remark: string;
}

const lifting: ReadonlySet<LoadCaseName> = new Set(['crossing the surface', 'lifting out', 'lift in air', 'support on deck']);
const isLift = (row: CheckRow) => row.loadCase !== null && lifting.has(row.loadCase);

/** Each limit state that the note's first page must name, whether or not there is a check for it. */
export function limitStates(model: Model, rows: readonly CheckRow[]): readonly LimitStateSummary[] {
  const of = (name: string, chosen: (row: CheckRow) => boolean, remark = '', none = 'no check is held for it'): LimitStateSummary => {
    const made = rows.filter((row) => chosen(row) && row.verdict !== 'not applicable');
    const fails = made.filter((row) => row.verdict === 'fails').length;
    const unjudged = made.filter((row) => row.verdict === 'cannot be judged').length;
    const [row = null] = [...made].sort(graver);
    return { name, verdict: fails > 0 ? 'fails' : unjudged > 0 || made.length === 0 ? 'not judged' : 'passes', row, fails, unjudged, made: made.length, remark: made.length === 0 ? none : remark };
  };
  const { lossPerFace } = model.document.protection;
  const strength = (row: CheckRow) => row.limitState === 'strength';
  const welded = model.geometry.panels.every((panel) => panel.design.fixing.kind === 'welded');
  return [
    of('Yield and strength in service', (row) => strength(row) && !row.accidental && !isLift(row) && row.id !== 'bolt-slip'),
    of('Buckling and stability', (row) => row.limitState === 'stability'),
    of('Fatigue', (row) => row.limitState === 'fatigue'),
    welded
      ? { name: 'Loosening', verdict: 'passes', row: null, fails: 0, unjudged: 0, made: 0, remark: 'no bolts: every panel is welded' }
      : of('Loosening', (row) => row.id === 'bolt-slip' && !row.accidental && !isLift(row)),
    of('Lifting, crossing the surface, deck', (row) => isLift(row) && !row.accidental),
    of(
      'Corroded end of life',
      (row) => strength(row) && !row.accidental,
      `every strength is taken after a loss on each face of ${quantityText(lossPerFace.panel.si, 'mm', 2)} (panels) and ${quantityText(lossPerFace.tubeOutside.si, 'mm', 2)} (tubes outside); source: ${lossPerFace.source}`,
    ),
    of('Lost bolt row, panel or leg', (row) => row.accidental),
    of('Deflection in service', (row) => row.limitState === 'serviceability'),
  ];
}
