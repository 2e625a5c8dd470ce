import { boltShear } from '../checks/bolt-shear.ts';
import { boltTension } from '../checks/bolt-tension.ts';
import type { Check } from '../checks/check.ts';
import { valuesAt } from '../checks/evaluate-check.ts';
import type { Model } from '../model.ts';
import { quantityText, printedUnit, significant, type UnitSystem } from '../quantity/format-quantity.ts';
import type { Situation } from '../loads/situation.ts';
import type { FieldValues } from '../scene/field.ts';
import type { Marks } from '../scene/marks.ts';
import type { PlateShape } from '../scene/plate-shape.ts';
import type { Reading } from '../scene/reading.ts';
import { balanceReport } from '../plate/results/balance-report.ts';
import { balanceWords } from '../plate/results/balance-words.ts';
import { deflections, type RiseAt } from '../plate/results/deflections.ts';
import { errorEstimate } from '../plate/results/error-estimate.ts';
import { fixingForces, type BoltForce, type ContactForce, type WeldForce } from '../plate/results/fixing-forces.ts';
import { jointSpread, type JointSpread } from '../plate/results/joint-spread.ts';
import { levelled } from '../plate/results/levelled.ts';
import { loadPath, type LoadPath } from '../plate/results/load-path.ts';
import { panelStress, type PanelStress } from '../plate/results/panel-stress.ts';
import { tubeForces } from '../plate/results/tube-forces.ts';
import type { ShownLoading } from '../plate/solve-cases.ts';
import type { ReadyPlate, SolvedLoading } from '../plate/solve-plate.ts';
import { evenStations } from './even-stations.ts';
import { fieldValues } from './field-values.ts';
import { marksOf } from './marks-of.ts';
import { shapeOf } from './shape-of.ts';

/** A number of the whole plate, with the hand's number for the same thing where there is one. SI; `unit`: of print. */
export interface BesideHand {
  readonly title: string;
  readonly unit: string;
  readonly solver: number;
  readonly hand: number | null;
  readonly place: string;
  /** What the two numbers do not have in common, or how the solver's is to be read. */
  readonly remark: string | null;
}

/** Course of a tube, ready to draw. SI; signs as in `TubeForces`. */
export interface TubeCourse {
  readonly id: string;
  readonly at: Float64Array;
  readonly moment: Float64Array;
  readonly shear: Float64Array;
  readonly rise: Float64Array;
}

/** One solved loading as the window shows it: plain data. */
export interface LoadingView {
  readonly situation: string;
  readonly title: string;
  readonly loading: string;
  readonly variant: number;
  readonly stage: SolvedLoading['stage'];
  readonly sentence: string;
  readonly settled: boolean;
  readonly contact: string;
  readonly numbers: readonly BesideHand[];
  readonly panels: readonly {
    readonly id: string;
    readonly dip: number | null;
    readonly dipOverThickness: number;
    readonly stress: number | null;
    readonly side: string;
    readonly hot: number;
  }[];
  readonly bolts: readonly BoltForce[];
  readonly welds: readonly WeldForce[];
  readonly contacts: readonly ContactForce[];
  readonly tubes: readonly TubeCourse[];
  readonly path: LoadPath;
  /** Error of the panels' stresses by their jumps, as a part: all, and clear of hot places. */
  readonly error: { readonly all: number; readonly clear: number };
  readonly balance: readonly string[];
  readonly size: number;
  readonly unknowns: number;
  /** Which way the load acts. */
  readonly direction: Situation['direction'];
  readonly shape: PlateShape;
  readonly fields: FieldValues;
  readonly marks: readonly Marks[];
  readonly readings: readonly Reading[];
  /** The same loading at both ends of the joints' stiffness; empty where no range is stated. */
  readonly joints: readonly JointSpread[];
}

/** How many of the hardest-worked bolts, welds and contacts are told; the rest is in the tables. */
const told = 12;

export function loadingView({ plate, solved, lost, title, joints }: ShownLoading, units: UnitSystem): LoadingView {
  const { situation, answer } = solved;
  const text = (si: number, unit: string): string => quantityText(si, printedUnit(unit, units), 3);
  const bend = deflections(plate, solved);
  const fixings = fixingForces(plate, solved);
  const stresses = panelStress(plate, solved);
  const tubes = tubeForces(plate, solved);
  const { all, clear } = errorEstimate(plate, solved);
  const balance = balanceReport(plate, solved);
  const u = levelled(plate, solved);
  const stations = tubes.map((tube, i) => evenStations(plate.structure, i, tube));
  const { point, rise } = bend.largest;
  const at = ({ part, id, x, y }: RiseAt['point']): string => `${part} ${id}, x ${text(x, 'mm')}, y ${text(y, 'mm')}`;
  return {
    situation: situation.id,
    title: lost ? `${title}; ${lost.kind} ${lost.id} lost: ${lost.why}` : title,
    loading: solved.loading,
    variant: solved.variant,
    stage: solved.stage,
    sentence: `The plate moves most at ${at(point)}: ${text(Math.abs(rise), 'mm')} ${rise < 0 ? 'down' : 'up'}, told from ${from[bend.from]}.`,
    settled: solved.stage === 'linear' || answer.settled,
    contact: contactWords(solved, balance.contact),
    numbers: besideHand(plate.model, situation, { bend, fixings, stresses, tubes }, at, text),
    panels: bend.panels.map(({ id, dip, dipOverThickness }, i) => {
      const { largest, hotSpots } = stresses[i]!;
      return {
        id,
        dip: dip?.rise ?? null,
        dipOverThickness,
        stress: largest?.stress.vonMises ?? null,
        side: largest?.side ?? '',
        hot: hotSpots.length,
      };
    }),
    bolts: [...fixings.bolts].sort((a, b) => Math.hypot(b.pull, b.shear) - Math.hypot(a.pull, a.shear)).slice(0, told),
    welds: [...fixings.welds].sort((a, b) => b.resultant - a.resultant).slice(0, told),
    contacts: [...fixings.contacts].sort((a, b) => b.force - a.force).slice(0, told),
    tubes: tubes.map(({ id, at: along, My, Vz, rise: up }) => ({ id, at: along, moment: My, shear: Vz, rise: up })),
    path: loadPath(plate, solved),
    error: { all, clear },
    balance: balanceWords(balance, units),
    size: plate.size,
    unknowns: 2 * plate.structure.coordinates.length,
    direction: situation.direction,
    shape: shapeOf(
      plate,
      u,
      tubes.map(({ at: along }, i) => stations[i]!.map((k) => along[k]!)),
    ),
    fields: fieldValues(stresses, tubes, stations),
    marks: marksOf(plate, solved, fixings, u),
    readings: readingsOf(plate, solved, { bend, fixings, stresses, tubes }),
    joints: joints.map((at) => jointSpread(at.end, at.plate, at.solved)),
  };
}

const from = {
  supports: 'the supports',
  'supports and mean plane': 'the supports and, for the turning that they leave free, the plate’s mean plane',
  'mean plane': 'the plate’s mean plane',
} as const;

function contactWords(
  { stage, answer }: SolvedLoading,
  { closed, points, steps }: ReturnType<typeof balanceReport>['contact'],
): string {
  if (points === 0) return 'No panel lies on a tube: no contact.';
  if (stage === 'linear')
    return `Linear: ${closed} of ${points} points of contact are taken as closed by the load’s direction; nothing has been let lift off.`;
  return answer.settled
    ? `Contact settled in ${steps} ${steps === 1 ? 'step' : 'steps'}: ${closed} of ${points} points press, none pulls.`
    : `CONTACT DID NOT SETTLE in ${steps} steps: ${answer.faults} points still pull or overlap. Do not use these numbers.`;
}

interface Found {
  readonly bend: ReturnType<typeof deflections>;
  readonly fixings: ReturnType<typeof fixingForces>;
  readonly stresses: readonly PanelStress[];
  readonly tubes: ReturnType<typeof tubeForces>;
}

function besideHand(
  model: Model,
  situation: Situation,
  { bend, fixings, stresses, tubes }: Found,
  at: (point: RiseAt['point']) => string,
  text: (si: number, unit: string) => string,
): BesideHand[] {
  const largestOf = <T>(list: readonly T[], size: (of: T) => number): T | undefined =>
    list.reduce<T | undefined>(
      (most, each) => (most === undefined || size(each) > size(most) ? each : most),
      undefined,
    );
  const moment = largestOf(tubes, ({ largest }) => Math.abs(largest.My.value));
  const axis = largestOf(bend.tubes, ({ rise }) => Math.abs(rise));
  const dip = largestOf(bend.panels, ({ dip: d }) => Math.abs(d?.rise ?? 0));
  const panel = largestOf(stresses, ({ largest }) => largest?.stress.vonMises ?? -1);
  const { pull, shear, weld, contact, support } = fixings.largest;
  const numbers: BesideHand[] = [];
  const put = (title: string, unit: string, solver: number, place: string, hand: number | null = null, remark: string | null = null): void => void numbers.push({ title, unit, solver, hand, place, remark }); // prettier-ignore
  if (axis)
    put('Deflection of a tube', 'mm', axis.rise, at(axis.point), situation.tubes.get(axis.point.id)?.deflection ?? null, 'hand: tubes alone as a grid, by size'); // prettier-ignore
  if (moment) {
    const { value, at: along } = moment.largest.My;
    put('Moment of a tube', 'kN*m', value, `${moment.id}, ${text(along, 'mm')} along`, situation.tubes.get(moment.id)?.moment ?? null, 'hand: tubes alone as a grid, by size; panels as flanges take some of it'); // prettier-ignore
  }
  if (dip?.dip) put('Dip of a panel between its tubes', 'mm', dip.dip.rise, at(dip.dip.point), null, dip.dipOverThickness > 0.5 ? `${significant(dip.dipOverThickness, 2)} of its thickness: beyond half of it, small deflection does not hold` : null); // prettier-ignore
  if (panel?.largest)
    put('Stress of a panel (von Mises)', 'MPa', panel.largest.stress.vonMises, `${panel.id}, ${panel.largest.side}, x ${text(panel.largest.x, 'mm')}, y ${text(panel.largest.y, 'mm')}`, null, panel.hotSpots.length > 0 ? `clear of ${panel.hotSpots.length} hot places at bolts and inner corners, which are judged by force` : null); // prettier-ignore
  if (pull) put('Pull of a bolt', 'kN', pull.pull, pull.id, byHand(boltTension, model, pull.panel, situation), 'hand: worst bolt of that panel by itself, prying included'); // prettier-ignore
  if (shear) put('Shear of a bolt', 'kN', shear.shear, shear.id, byHand(boltShear, model, shear.panel, situation), 'hand: worst bolt of that panel by itself, from its stretch alone'); // prettier-ignore
  if (weld) put('Force of a weld', 'kN/m', weld.resultant, weld.id);
  if (contact) put('Press of a panel on a tube', 'kN', contact.force, `${contact.panel} on ${contact.tube}`);
  if (support)
    put('Force of a support', 'kN', support.vertical, support.id, situation.attachmentForces.get(support.id) ?? null, 'hand: the worst of all loadings and supports of this case'); // prettier-ignore
  return numbers;
}

/** Largest demand that a check finds by hand in a panel's bays; null where it finds none. */
function byHand(check: Check, model: Model, panel: string, situation: Situation): number | null {
  const demands = model.panels.get(panel)!.bays.flatMap((bay) => {
    const values = valuesAt(check, model, bay, situation);
    return 'missing' in values ? [] : [values.demand];
  });
  return demands.length > 0 ? Math.max(...demands) : null;
}

/** What the solver says of each part, for the picture's legend. */
function readingsOf(plate: ReadyPlate, { situation, stage, loading }: SolvedLoading, found: Found): Reading[] {
  const { bend, fixings, stresses, tubes } = found;
  const loadCase = `${situation.title}, ${loading}; whole plate, ${stage === 'linear' ? 'linear' : 'contact settled'}`;
  const reading = (id: string, title: string, unit: string, values: readonly (readonly [string, number])[], remark: string): Reading => ({
    id: `solver-${id}`,
    title,
    unit,
    loadCase,
    values: new Map(values),
    verdicts: new Map(),
    reasons: new Map(values.map(([part]) => [part, 'the whole plate, solved'])),
    remark,
  }); // prettier-ignore
  const pressed = new Map<string, number>();
  for (const { panel, pressure } of fixings.contacts) pressed.set(panel, Math.max(pressed.get(panel) ?? 0, pressure));
  const stressOn = (side: 'top' | 'bottom'): (readonly [string, number])[] =>
    stresses.filter(({ largest }) => largest).map((panel) => [`panel:${panel.id}`, largestClear(panel, side)] as const);
  return [
    reading('deflection', 'Deflection (solved)', 'mm', [
      ...plate.structure.tubes.map(({ id }, i) => [`tube:${id}`, Math.abs(bend.tubes[i]!.rise)] as const),
      ...bend.panels.map(({ id, largest }) => [`panel:${id}`, Math.abs(largest.rise)] as const),
    ], 'Largest of each part, by size.'),
    reading('top', 'Panel stress, top (solved)', 'MPa', stressOn('top'), 'Von Mises, largest clear of bolts and inner corners.'),
    reading('bottom', 'Panel stress, bottom (solved)', 'MPa', stressOn('bottom'), 'Von Mises, largest clear of bolts and inner corners.'),
    reading('tube-stress', 'Tube stress (solved)', 'MPa', tubes.map(({ id, largest }) => [`tube:${id}`, Math.abs(largest.fibre.value)]), 'Von Mises at the far fibre, elastic.'),
    reading('tube-moment', 'Tube moment (solved)', 'kN*m', tubes.map(({ id, largest }) => [`tube:${id}`, Math.abs(largest.My.value)]), 'In the upright plane, by size.'),
    reading('bolt-pull', 'Bolt pull (solved)', 'kN', fixings.bolts.map(({ id, pull }) => [`bolt:${id}`, Math.max(pull, 0)]), 'A bolt that is not pulled shows nought.'),
    reading('contact', 'Contact pressure (solved)', 'MPa', [...pressed].map(([id, p]) => [`panel:${id}`, p]), 'Largest on any tube that the panel lies on.'),
  ].filter(({ values }) => values.size > 0); // prettier-ignore
}

/** Largest von Mises stress of one face, clear of hot places, Pa. */
function largestClear(panel: PanelStress, side: 'top' | 'bottom'): number {
  let most = 0;
  for (let k = 0; k < panel.nodes.length; k++) if (!panel.hot[k]) most = Math.max(most, panel[side][k]!);
  return most;
}
