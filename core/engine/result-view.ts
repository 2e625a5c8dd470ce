import type { Appraisal } from '../appraise.ts';
import type { CheckRow, ForcesBy, Side } from '../checks/check-row.ts';
import { unitOf } from '../checks/evaluate-check.ts';
import { checks } from '../checks/index.ts';
import { highestOf } from '../limit-states.ts';
import { mergedFindings } from '../merged-findings.ts';
import { planFigure } from '../note/drawing-section.ts';
import type { Figure } from '../note/note.ts';
import { printIn, type Print } from '../print-in.ts';
import { placeKind, placeWords, type PlaceKind } from '../place-words.ts';
import { findingPlace, situationWords } from '../note/situation-words.ts';
import { gravest, sourceText } from '../result.ts';
import { countsFor } from '../checks/source-counts.ts';

/** What the window shows of one option: the appraisal's numbers as they are printed. Computes nothing. */
export interface ResultView {
  readonly option: string | null;
  readonly title: string;
  /** False while the document has something wrong: these numbers are as of before. */
  readonly current: boolean;
  readonly hash: string;
  readonly basis: string;
  readonly units: 'metric' | 'inch';
  readonly fails: number;
  readonly unjudged: number;
  readonly findings: readonly FindingView[];
  /** The gravest row of all, and the row of highest utilisation. */
  readonly governing: RowView | null;
  readonly highest: RowView | null;
  readonly quantities: Readonly<Record<string, QuantityView>>;
  readonly limitStates: readonly LimitStateView[];
  /** The gravest row of each check, place and direction, in the order of the note. */
  readonly rows: readonly RowView[];
  readonly loadDefinition: readonly string[];
  readonly situations: readonly SituationView[];
  readonly bays: readonly BayView[];
  readonly tubes: readonly {
    readonly id: string;
    readonly set: 'main' | 'cross';
    readonly section: string;
    readonly flooded: boolean;
    readonly words: string;
  }[];
  readonly attachments: readonly string[];
  /** Whose forces judge: by hand alone, both, or both as soon as the whole plate is solved (why it is not). */
  readonly forces: { readonly from: 'hand' | 'both' | 'waiting'; readonly why: string; readonly smaller: number };
  readonly plan: Figure;
  /** Words for every place that a row or finding names. */
  readonly places: Readonly<Record<string, string>>;
}

export interface QuantityView {
  readonly value: number;
  readonly unit: string;
  readonly title: string;
  readonly source: string;
  readonly text: string;
}

export interface RowView {
  readonly id: string;
  readonly title: string;
  readonly limitState: string;
  readonly place: string;
  readonly placeWords: string;
  readonly placeKind: PlaceKind;
  readonly situation: string | null;
  /** The load situation as the note's tables say it. */
  readonly situationWords: string | null;
  readonly loadCase: string | null;
  readonly direction: 'up' | 'down' | null;
  readonly accidental: boolean;
  readonly detailing: boolean;
  readonly demand: string;
  readonly capacity: string;
  readonly utilisation: number | null;
  readonly verdict: CheckRow['verdict'];
  readonly near: boolean;
  readonly reason: string;
  readonly sources: readonly string[];
  /** By hand and by the whole plate's solution, where the document asks for both. */
  readonly both: BothView | null;
}

export interface BothView {
  readonly hand: SideView;
  readonly solver: SideView;
  readonly governs: ForcesBy;
  /** Why the smaller is taken; empty where the larger governs. */
  readonly smaller: string;
}

export interface SideView {
  readonly demand: string;
  readonly use: string;
  readonly reason: string;
}

export interface LimitStateView {
  readonly name: string;
  readonly verdict: 'passes' | 'fails' | 'not judged';
  readonly fails: number;
  readonly unjudged: number;
  readonly made: number;
  readonly remark: string;
  readonly row: RowView | null;
  readonly highest: RowView | null;
}

export interface SituationView {
  readonly id: string;
  readonly title: string;
  readonly loadCase: string;
  readonly direction: 'up' | 'down';
  readonly accidental: boolean;
  readonly path: string;
  readonly loadFactor: number;
  readonly force: string;
  readonly terms: readonly { readonly name: string; readonly force: string }[];
  readonly residual: number;
  readonly balancedBy: string;
  readonly acceleration: string | null;
  readonly missing: string | null;
}

export interface BayView {
  readonly id: string;
  /** Clear opening, metres in plan: for the plan of bays. */
  readonly opening: { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number };
  /** Key of the panel that closes it, and its design; null for an open bay. */
  readonly panel: string | null;
  readonly design: string | null;
  readonly share: { readonly area: string; readonly shape: string; readonly flow: string | null } | null;
}

export interface FindingView {
  readonly id: string;
  readonly places: readonly string[];
  readonly text: string;
  readonly mend: string;
}

/** The view of an appraisal. */
export function resultView(appraisal: Appraisal, current = true): ResultView {
  const { model, rows, quantities, limitStates, findings } = appraisal;
  const print = printIn(model.document.units);
  const view = (row: CheckRow): RowView => rowView(row, appraisal, print);
  const count = (verdict: CheckRow['verdict']) => rows.filter((row) => row.verdict === verdict).length;
  const shown = gravest(rows);
  const merged = mergedFindings(findings);
  const highest = highestOf(rows.filter(({ detailing }) => !detailing));
  const worst =
    limitStates.find(({ verdict }) => verdict === 'fails')?.row ??
    limitStates.find(({ verdict }) => verdict === 'not judged')?.row ??
    highest;
  return {
    option: appraisal.optionId,
    title: appraisal.optionTitle,
    current,
    hash: appraisal.documentHash,
    basis: model.basis.title,
    units: model.document.units,
    fails: count('fails'),
    unjudged: count('cannot be judged'),
    findings: merged.map(({ id, places, text, mend }) => ({ id, places, text, mend })),
    governing: worst ? view(worst) : null,
    highest: highest ? view(highest) : null,
    quantities: Object.fromEntries(
      Object.entries(quantities).map(([id, quantity]) => [
        id,
        {
          ...quantity,
          text:
            id === 'ratio.open'
              ? percent(quantity.value)
              : print.quantity(quantity.value, printedIn[quantity.unit] ?? quantity.unit),
        },
      ]),
    ),
    limitStates: limitStates.map((state) => ({
      name: state.name,
      verdict: state.verdict,
      fails: state.fails,
      unjudged: state.unjudged,
      made: state.made,
      remark: state.remark,
      row: state.row && view(state.row),
      highest: state.highest && view(state.highest),
    })),
    rows: shown.filter(({ verdict }) => verdict !== 'not applicable').map(view),
    loadDefinition: model.loads.definition,
    situations: model.loads.situations.map((situation): SituationView => {
      const { balance } = situation;
      return {
        id: situation.id,
        title: situation.title,
        loadCase: situation.loadCase,
        direction: situation.direction,
        accidental: situation.accidental,
        path: situation.path,
        loadFactor: situation.loadFactor,
        force: print.quantity(situation.force, 'kN'),
        terms: balance.terms.map(({ name, force }) => ({ name, force: print.quantity(force, 'kN') })),
        residual: balance.residual,
        balancedBy: balance.by,
        acceleration: balance.acceleration === 0 ? null : print.quantity(balance.acceleration, 'm/s^2', 3),
        missing: situation.missing ?? null,
      };
    }),
    bays: model.geometry.bays.map(({ id, opening }) => {
      const panel = model.geometry.panels.find(({ bays }) => bays.includes(id));
      const share = model.loads.shares.get(id);
      return {
        id,
        opening,
        panel: panel?.id ?? null,
        design: panel?.designName ?? null,
        share: share ? { area: percent(share.area), shape: percent(share.shape), flow: share.flow && percent(share.flow.peak) } : null, // prettier-ignore
      };
    }),
    tubes: [...model.tubes.values()].map(({ id, set, section, flooded }) => ({
      id,
      set,
      section: section.title,
      flooded,
      words: placeWords(model, id),
    })),
    forces: {
      from: model.solved === null ? 'hand' : 'missing' in model.solved ? 'waiting' : 'both',
      why: model.solved && 'missing' in model.solved ? model.solved.missing : '',
      smaller: rows.filter(({ both }) => both && both.smaller !== '').length,
    },
    attachments: model.document.grid.suspension.attachments.map(({ id }) => id),
    plan: planFigure(model),
    places: Object.fromEntries(
      [...new Set([...shown.map(({ place }) => place), ...merged.flatMap(({ places }) => places)])].map((place) => [
        place,
        findingPlace(model, place),
      ]),
    ),
  };
}

/** Units of print for the SI units of quantities. */
const printedIn: Readonly<Record<string, string>> = { N: 'kN', Pa: 'MPa' };

const percent = (part: number): string => `${(part * 100).toFixed(1)} %`;

function rowView(row: CheckRow, { model }: Appraisal, print: Print): RowView {
  const check = checks.find(({ id }) => id === row.id);
  const unit = check ? unitOf(check) : row.unit;
  const text = (value: number | null) => (value === null ? '–' : print.quantity(value, unit));
  const side = ({ demand, utilisation, reason }: Side): SideView => ({
    demand: text(demand),
    use: utilisation === null ? '–' : utilisation.toFixed(2),
    reason,
  });
  return {
    id: row.id,
    title: row.title,
    limitState: row.limitState,
    place: row.place,
    placeWords: placeWords(model, row.place),
    placeKind: placeKind(model, row.place),
    situation: row.situation,
    situationWords: row.situation === null ? null : situationWords(model, row.situation),
    loadCase: row.loadCase,
    direction: row.direction,
    accidental: row.accidental,
    detailing: row.detailing,
    demand: text(row.demand),
    capacity: text(row.capacity),
    utilisation: row.utilisation,
    verdict: row.verdict,
    near: row.near,
    reason: row.reason,
    both: row.both && {
      hand: side(row.both.hand),
      solver: side(row.both.solver),
      governs: row.both.governs,
      smaller: row.both.smaller,
    },
    sources: row.sources.filter(countsFor(model)).map(sourceText),
  };
}
