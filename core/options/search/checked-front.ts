import { appraise, type Appraisal } from '../../appraise.ts';
import { catalogueWith } from '../../catalogue/catalogue.ts';
import { applyEdit, type RawOption } from '../../document/edit.ts';
import { readDocument, type RawDocument } from '../../document/read-document.ts';
import { userRows } from '../../document/user-rows.ts';
import type { SolvedForces } from '../../loads/solved-forces.ts';
import type { SolveProgress } from '../../plate/solve-cases.ts';
import { Refusal } from '../../refusal.ts';
import { drained } from '../../solve/drained.ts';
import { aimIds, asSmall, isWaterAim, plainAims, sameAim, type AimId } from './aims.ts';
import { foundOption, type Digits } from './option-document.ts';
import { handRow, openOf, stopOf, useOf, worstStop, type Stop } from './judge.ts';
import { broken, refusedBySolver } from './judged-option.ts';
import type { Found, Problem } from './search.ts';

/** An option of the front as it is shown: appraised in full, as if it had been written by hand. */
export interface ShownOption {
  readonly digits: Digits;
  readonly option: RawOption;
  readonly appraisal: Appraisal;
  /** Every aim that can be had, whether the search aimed at it or not; SI. */
  readonly aims: Readonly<Partial<Record<AimId, number>>>;
  /** Checks set aside that it fails, by title. */
  readonly aside: readonly string[];
  /** What stops the next thinner plate, zone by zone. */
  readonly thinner: readonly Thinner[];
}

/** "Why not thinner?": the next thinner stock plate in a zone, all else the same. */
export interface Thinner {
  readonly zone: string;
  readonly thickness: string;
  /** Every check that it fails, at its gravest place; where plates are solved and it fails by hand already, those that it fails by
   *  hand. None: thinner would pass, and was not among what was searched. */
  readonly stops: readonly Stop[];
}

/**
 * The front, lightest (first aim) first, each option appraised from its written form. Throws where the appraisal and the
 * search do not agree: that would be a fault of ours, and no such option may be shown.
 */
export const checkedFront = (raw: RawDocument, problem: Problem, front: readonly Found[]): readonly ShownOption[] =>
  inOrder(raw, front).map(({ found, id }) => drained(shownOption(raw, problem, found, id)));

/** The front, lightest (first aim) first, each with the id that its option is to have. */
export const inOrder = (raw: RawDocument, front: readonly Found[]): readonly { found: Found; id: string }[] =>
  [...front]
    .sort((a, b) => firstDifference(a.aims, b.aims) || firstDifference(a.digits, b.digits))
    .map((found, at) => ({ found, id: freeId(raw, `found-${at + 1}`) }));

/** One found option, appraised in full; tells what it solves. */
export function* shownOption(
  raw: RawDocument,
  problem: Problem,
  found: Found,
  id: string,
): Generator<SolveProgress, ShownOption> {
  const { space, zones } = problem;
  const { option, appraisal, aims, stops } = yield* appraised(raw, problem, found.digits, id);
  const again = space.aims.map((aim) => asSmall(aim, aims[aim]!));
  const open = openOf(appraisal.rows, problem.aside);
  if (
    stops.length > 0 ||
    open.join() !== found.open.join() ||
    again.some((value, k) => Math.abs(value - found.aims[k]!) > sameAim * Math.abs(value))
  )
    throw new Error(
      `The search and the full appraisal do not agree on ${option.title}: ${stops.map(({ check }) => check).join(', ') || [...again, ...open].join(' ')}`,
    );
  const failing = appraisal.rows.filter(({ verdict }) => verdict === 'fails').map(({ title }) => title);
  const thinner: Thinner[] = [];
  for (const zone of zones.keys()) {
    const one = yield* thinnerIn(raw, problem, found.digits, zone);
    if (one) thinner.push(one);
  }
  return {
    digits: found.digits,
    option,
    appraisal,
    aims,
    aside: [...new Set(failing)],
    thinner,
  };
}

/**
 * Appraises an option of the space from its written form, with every aim that can be had and all that stops it. Where the document takes
 * forces from the whole plate as well, the plate is solved; not where `unlessByHand` and it is stopped by hand already.
 */
export function* appraised(
  raw: RawDocument,
  problem: Problem,
  digits: Digits,
  id: string,
  {
    change = (option) => option,
    unlessByHand = false,
  }: { readonly change?: (option: RawOption) => RawOption; readonly unlessByHand?: boolean } = {},
): Generator<SolveProgress, AppraisedOption> {
  const { space, zones, solver } = problem;
  const option = change(foundOption(zones, digits, space.from, id));
  const laid = applyEdit(raw, { kind: 'addOption', option });
  if (!solver) return withAims(problem, option, appraise(laid, readDocument(laid), id));
  const document = readDocument(laid);
  // The plate is not solved yet: each row that takes its forces has its hand's side, no more.
  const unsolved = appraise(laid, document, id);
  const byHand = unsolved.rows.flatMap((row) => handRow(row, unsolved.model.document) ?? []);
  const first = withAims(problem, option, { ...unsolved, rows: byHand });
  if (unlessByHand && first.stops.length > 0) return first;
  let solved: SolvedForces;
  try {
    solved = yield* solver.solve(unsolved.model);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...first, stops: [refusedBySolver(error), ...first.stops] };
  }
  return withAims(problem, option, appraise(laid, document, id, solved));
}

/** An option of the space as it is written, appraised. */
export interface AppraisedOption extends Pick<ShownOption, 'option' | 'appraisal' | 'aims'> {
  /** Gravest place of each check that stops it, a limit that it breaks before them. */
  readonly stops: readonly Stop[];
}

function withAims(problem: Problem, option: RawOption, appraisal: Appraisal): AppraisedOption {
  const { space, aside } = problem;
  const { model, rows } = appraisal;
  const plain = plainAims(model.geometry, model.mass, model.document.rates);
  const use = useOf(rows, aside);
  const limit = broken(space.limits, model.geometry, plain.mass, appraisal.quantities['cost.heaviestPanel']!.value);
  const gain = problem.water?.gainOf(model.geometry);
  const valueOf = (aim: AimId): number | undefined => {
    if (isWaterAim(aim)) return space.aims.includes(aim) ? gain?.[aim] : undefined;
    if (aim === 'use') return use;
    return aim === 'cost' && !model.document.rates ? undefined : plain[aim];
  };
  const aims = Object.fromEntries(
    aimIds.flatMap((aim) => {
      const value = valueOf(aim);
      return value === undefined ? [] : [[aim, value]];
    }),
  ) as Partial<Record<AimId, number>>;
  const byCheck = new Map<string, (typeof rows)[number][]>();
  for (const row of rows) byCheck.set(row.id, [...(byCheck.get(row.id) ?? []), row]);
  const stops = [...byCheck.values()].flatMap((own) => {
    const worst = worstStop(own, { aside, judged: space.judged });
    return worst ? [stopOf(worst)] : [];
  });
  return { option, appraisal, aims, stops: limit ? [limit, ...stops] : stops };
}

/** What stops the next thinner plate in stock in one zone; null where the zone is open or nothing thinner is kept. */
function* thinnerIn(
  raw: RawDocument,
  problem: Problem,
  digits: Digits,
  zone: number,
): Generator<SolveProgress, Thinner | null> {
  const choices = problem.zones[zone]!;
  const design = choices.designOf(digits[zone]!);
  if (!design) return null;
  const series = problem.base.units === 'inch' ? 'inch' : 'metric';
  const stock = catalogueWith(userRows(problem.base)).stockPlates.filter(
    (plate) => plate.series === series && plate.thickness < design.thickness.si * (1 - 1e-3),
  );
  const next = stock.reduce<(typeof stock)[number] | null>(
    (most, plate) => (!most || plate.thickness > most.thickness ? plate : most),
    null,
  );
  if (!next) return null;
  const thickness = next.id;
  const change = (option: RawOption): RawOption => {
    const name = Object.keys(option.changes['designs'] as object).find((key) => key.endsWith(`-${zone + 1}`))!;
    return {
      ...option,
      changes: {
        ...option.changes,
        designs: {
          ...(option.changes['designs'] as object),
          [name]: { ...(option.changes['designs'] as Record<string, object>)[name], thickness },
        },
      },
    };
  };
  const { stops } = yield* appraised(raw, problem, digits, freeId(raw, 'thinner'), { change, unlessByHand: true });
  return { zone: choices.zone.name, thickness, stops };
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, k) => value !== b[k]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}

/** An id that no option of the document has. */
function freeId(raw: RawDocument, wanted: string): string {
  const taken = new Set(((raw['options'] as readonly { id: string }[] | undefined) ?? []).map(({ id }) => id));
  for (let n = 0; ; n++) {
    const id = n === 0 ? wanted : `${wanted}-${n}`;
    if (!taken.has(id)) return id;
  }
}
