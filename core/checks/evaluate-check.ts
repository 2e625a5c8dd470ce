import { Refusal } from '../refusal.ts';
import { formAt } from './by-places.ts';
import { bySolution } from './by-solution.ts';
import { larger } from './larger-side.ts';
import { partLost } from './solved-inputs.ts';
import { handlingCases, type Situation } from '../loads/situation.ts';
import type { Finding } from '../finding.ts';
import type { Model } from '../model.ts';
import type { Safety } from '../source.ts';
import type { Check, Step } from './check.ts';
import { nearFrom, type CheckRow } from './check-row.ts';
import { compiled } from './generated.ts';
import { kernels } from './kernels.ts';

/** Values of a check at a place, by symbol: what the trace prints. */
export type Values = Readonly<Record<string, number>>;

/** The steps that a check computes under a kind of basis, in order: its own, then those of its second opinion. */
export function stepsOf(check: Check, safety: Safety): readonly Step[] {
  return [...(check.steps[safety] ?? []), ...check.second.steps];
}

/** Every row of a check: at each place, in each situation (or in those given). */
export function checkRows(
  check: Check,
  model: Model,
  of: readonly Situation[] = model.loads.situations,
): { readonly rows: readonly CheckRow[]; readonly findings: readonly Finding[] } {
  const rows: CheckRow[] = [];
  const findings = new Map<string, Finding>();
  const situations = check.once ? of.slice(0, 1) : of;
  for (const place of check.places(model)) {
    let idle = '';
    let made = 0;
    for (const situation of situations) {
      const applies = check.applies(model, place, situation);
      if (applies !== true) {
        idle ||= applies;
        continue;
      }
      made++;
      const { row, findings: found } = onBothSides(check, model, place, situation);
      rows.push(row);
      for (const finding of found) findings.set(`${finding.id} ${place}`, finding);
    }
    if (made === 0) rows.push({ ...blank(check, place, null), verdict: 'not applicable', reason: idle });
  }
  return { rows, findings: [...findings.values()] };
}

/** A check judged by hand and, where the document asks for it and the case was solved, with the solver's forces. */
function onBothSides(
  check: Check,
  model: Model,
  place: string,
  situation: Situation,
): { row: CheckRow; findings: readonly Finding[] } {
  const hand = judged(check, model, place, situation);
  const asked = check.solved && !check.once && partLost(model, situation) === undefined && !situation.missing;
  if (!asked || model.solved === null) return { row: hand.row, findings: hand.finding ? [hand.finding] : [] };
  const { solved } = model;
  const unjudged = (reason: string) => ({
    row: { ...blank(check, place, situation), verdict: 'cannot be judged' as const, reason },
    finding: undefined,
  });
  const forces = 'missing' in solved ? null : solved.situations[situation.id];
  const solver =
    'missing' in solved
      ? unjudged(solved.missing)
      : !forces
        ? unjudged('the whole plate was not solved in this case')
        : !forces.settled
          ? unjudged('contact between panels and tubes did not settle in the whole plate’s solution')
          : judged(bySolution(check), model, place, situation, check);
  const row = larger(hand.row, solver.row, model.document.forces?.choose ?? []);
  const smaller = row.both?.smaller;
  const chosen: Finding[] = smaller
    ? [
        {
          id: 'smaller-demand',
          place,
          text: `${check.title}: the smaller of two demands is taken, that by ${row.both.governs === 'hand' ? 'hand' : 'the whole plate’s solution'}. ${smaller}`,
          mend: 'Whoever signs must agree with the reason; without it the larger governs.',
        },
      ]
    : [];
  return {
    row,
    findings: [...(hand.finding ? [hand.finding] : []), ...(solver.finding ? [solver.finding] : []), ...chosen],
  };
}

/** `titled`: the check whose row it is, where another form of it is computed. */
function judged(
  check: Check,
  model: Model,
  place: string,
  situation: Situation,
  titled = check,
): { row: CheckRow; finding?: Finding } {
  const base = blank(titled, place, check.once ? null : situation);
  const unjudged = (reason: string) => ({ row: { ...base, verdict: 'cannot be judged' as const, reason } });
  const broken = check.rule?.(model, place, situation);
  if (!check.once && situation.missing)
    return broken ? { row: { ...base, verdict: 'fails', reason: broken } } : unjudged(situation.missing);
  const values = valuesAt(check, model, place, situation);
  if ('missing' in values)
    return broken ? { row: { ...base, verdict: 'fails', reason: broken } } : unjudged(values.missing);
  const { demand, capacity, outOfRange, secondOpinion } = values;
  const measured = { ...base, demand, capacity };
  if (broken) return { row: { ...measured, verdict: 'fails', reason: broken } };
  if (outOfRange) return { row: { ...measured, verdict: 'cannot be judged', reason: outOfRange } };
  // A capacity of zero or less with a demand on it fails; its utilisation has no number.
  const utilisation = capacity > 0 ? demand / capacity : demand > 0 ? null : 0;
  const passes = utilisation !== null && utilisation <= 1;
  const row: CheckRow = {
    ...measured,
    utilisation,
    verdict: passes ? 'passes' : 'fails',
    near: passes && utilisation >= nearFrom,
    reason: utilisation === null ? 'nothing carries it' : '',
  };
  return secondOpinion
    ? {
        row,
        finding: {
          id: titled === check ? 'second-opinion' : 'second-opinion-by-solver',
          place,
          text: `${check.title}${titled === check ? '' : ', with the whole plate’s forces'}: ${secondOpinion}`,
          mend: 'Look at both methods before relying on either.',
        },
      }
    : { row };
}

interface Evaluated {
  readonly all: Values;
  readonly demand: number;
  readonly capacity: number;
  readonly outOfRange: string;
  readonly secondOpinion: string;
}

/** Inputs read and steps computed at a place, in the form that holds there (`formAt`), or what is missing for it. The
 *  trace prints `all`. */
export function valuesAt(
  given: Check,
  model: Model,
  place: string,
  situation: Situation,
): Evaluated | { readonly missing: string } {
  const check = formAt(given, model, place);
  const { safety } = model.basis;
  const run = compiled[check.id]?.[safety];
  if (!run) return { missing: `this check has no rule under ${model.basis.title}` };
  const all: Record<string, number> = {};
  let results: readonly number[];
  try {
    for (const symbol in check.inputs) {
      const input = check.inputs[symbol]!;
      if (input.only && input.only !== safety) continue;
      const value = input.read(model, place, situation);
      if (typeof value !== 'number') return value;
      if (!Number.isFinite(value)) return { missing: `${input.meaning} is ${value}, no finite number` };
      all[symbol] = value;
    }
    results = run(all, kernels);
  } catch (error) {
    // A strength beyond its table, a kernel outside its range: said as the reason why the check cannot be judged.
    if (!(error instanceof Refusal)) throw error;
    return { missing: `${error.what}. ${error.mend}` };
  }
  let at = 0;
  for (const step of check.steps[safety] ?? []) all[step.symbol] = results[at++]!;
  for (const step of check.second.steps) all[step.symbol] = results[at++]!;
  const out = check.range?.find(() => results[at++] === 0);
  const { of, low, high, title } = check.second;
  const judgedValue = all[of]!;
  const slack = 1e-9 * Math.abs(judgedValue);
  const outside =
    (low !== undefined && judgedValue < all[low]! - slack) || (high !== undefined && judgedValue > all[high]! + slack);
  return {
    all,
    demand: all[check.demand]!,
    capacity: all[check.capacity]!,
    outOfRange: out?.otherwise ?? '',
    secondOpinion: outside ? `${of} lies outside the second opinion (${title})` : '',
  };
}

function blank(check: Check, place: string, situation: Situation | null): CheckRow {
  return {
    id: check.id,
    title: check.title,
    limitState:
      check.limitState === 'serviceability' && situation && handlingCases.has(situation.loadCase)
        ? 'handling'
        : check.limitState,
    place,
    situation: situation?.id ?? null,
    loadCase: situation?.loadCase ?? null,
    direction: situation?.direction ?? null,
    accidental: situation?.accidental ?? false,
    detailing: check.detailing ?? false,
    demand: null,
    capacity: null,
    unit: unitOf(check),
    utilisation: null,
    verdict: 'passes',
    near: false,
    reason: '',
    sources: check.source,
    both: null,
  };
}

/** Unit in which a check's demand is printed. */
export function unitOf(check: Check): string {
  const input = check.inputs[check.demand];
  if (input) return input.unit;
  for (const steps of Object.values(check.steps)) {
    const step = steps.find((s) => s.symbol === check.demand);
    if (step) return step.unit;
  }
  throw new Error(`${check.id}: demand ${check.demand} is neither an input nor a step`);
}
