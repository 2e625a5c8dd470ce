import { graver, sameUse, type CheckRow } from './checks/check-row.ts';
import { handlingCases } from './loads/situation.ts';
import type { Model } from './model.ts';
import { printedUnit, quantityText } from './quantity/format-quantity.ts';

/** What the first page says of one limit state. */
export interface LimitStateSummary {
  readonly name: string;
  readonly verdict: 'passes' | 'fails' | 'not judged';
  /** The gravest row, if there is one. */
  readonly row: CheckRow | null;
  /** The row of highest utilisation, which is another one when something fails by rule or cannot be judged. */
  readonly highest: CheckRow | null;
  readonly fails: number;
  readonly unjudged: number;
  readonly made: number;
  readonly remark: string;
}

const isLift = (row: CheckRow) => row.loadCase !== null && handlingCases.has(row.loadCase);

/** The row of highest utilisation, the first of equals. */
export function highestOf(rows: readonly CheckRow[]): CheckRow | null {
  let most: CheckRow | null = null;
  for (const row of rows)
    if (row.utilisation !== null && row.utilisation > (most?.utilisation ?? -1) * (1 + sameUse)) most = row;
  return most;
}

/** What is open there is told under strength already: here the highest use stands. */
const withHighest = (state: LimitStateSummary): LimitStateSummary => ({ ...state, row: state.highest });

/** Each limit state that the note's first page must name, whether or not there is a check for it. */
export function limitStates(model: Model, rows: readonly CheckRow[]): readonly LimitStateSummary[] {
  const of = (
    name: string,
    chosen: (row: CheckRow) => boolean,
    remark = '',
    none = 'no check is held for it',
  ): LimitStateSummary => {
    const made = rows.filter((row) => chosen(row) && row.verdict !== 'not applicable');
    const fails = made.filter((row) => row.verdict === 'fails').length;
    const unjudged = made.filter((row) => row.verdict === 'cannot be judged').length;
    const [row = null] = [...made].sort(graver);
    const highest = highestOf(made);
    return {
      name,
      verdict: fails > 0 ? 'fails' : unjudged > 0 || made.length === 0 ? 'not judged' : 'passes',
      row,
      highest,
      fails,
      unjudged,
      made: made.length,
      remark: made.length === 0 ? none : remark,
    };
  };
  const { lossPerFace } = model.document.protection;
  const print = (length: number) => quantityText(length, printedUnit('mm', model.document.units), 2);
  const strength = (row: CheckRow) => row.limitState === 'strength' && !row.detailing;
  const welded = model.geometry.panels.every((panel) => panel.design.fixing.kind === 'welded');
  return [
    of(
      'Yield and strength in service',
      (row) => strength(row) && !row.accidental && !isLift(row) && row.id !== 'bolt-slip',
    ),
    of('Buckling and stability', (row) => row.limitState === 'stability'),
    of('Fatigue', (row) => row.limitState === 'fatigue'),
    welded
      ? {
          name: 'Loosening',
          verdict: 'passes',
          row: null,
          highest: null,
          fails: 0,
          unjudged: 0,
          made: 0,
          remark: 'no bolts: every panel is welded',
        }
      : of('Loosening', (row) => row.id === 'bolt-slip' && !row.accidental && !isLift(row)),
    of('Lifting, crossing the surface, deck', (row) => isLift(row) && !row.accidental),
    withHighest(
      of(
        'Corroded end of life',
        (row) => strength(row) && !row.accidental,
        `Strengths are after a loss on each face of ${print(lossPerFace.panel.si)} (panels), ${print(lossPerFace.tubeOutside.si)} and ${print(lossPerFace.tubeInside.si)} (tubes, outside and inside)`,
      ),
    ),
    ...(model.document.durability?.anodes ? [of('Cathodic protection', (row) => row.limitState === 'durability')] : []),
    of('Lost bolt row, panel or leg', (row) => row.accidental),
    of('Deflection in service', (row) => row.limitState === 'serviceability' && !row.detailing),
    of('Detailing: distances, sizes, hardness', (row) => row.detailing),
    ...(model.document.recovery
      ? [of('Deployment and recovery', ({ id }) => id.startsWith('lift-') || id.startsWith('recovery-'))]
      : []),
  ];
}
