import { appraise, asksSolver, type Appraisal } from '../appraise.ts';
import type { CheckRow } from '../checks/check-row.ts';
import { graver, isKeptRule } from '../checks/check-row.ts';
import { applyEdit, laidRaw, type Json, type RawOption } from '../document/edit.ts';
import { readDocument, type RawDocument } from '../document/read-document.ts';
import type { PlateDocument, Rates } from '../document/schema.ts';
import type { SolvedForces } from '../loads/solved-forces.ts';
import { costOfRates, type Cost, type CountedWork } from './cost-of-rates.ts';
import { countedWork } from './counted-work.ts';
import { oppositeFixing } from './opposite-fixing.ts';

export type FixingKind = 'bolted' | 'welded';

/** One of the two: the chosen option with every panel fixed so, all else equal, appraised in full. */
export interface FixedSo {
  readonly kind: FixingKind;
  readonly appraisal: Appraisal;
  readonly work: CountedWork;
  readonly cost: Cost;
  /** Gravest check of the fixings and panels under strength, and of fatigue; null where there is none. */
  readonly strength: CheckRow | null;
  readonly fatigue: CheckRow | null;
  /** Life at which the gravest fatigue check uses up its damage, s: the design life over its utilisation. Null where none has a number. */
  readonly fatigueLife: number | null;
  readonly fails: readonly string[];
  readonly unjudged: readonly string[];
}

/** A rate, or the life, at which the two cost the same, or a fatigue verdict turns; all else as it is. */
export interface TurningPoint {
  readonly what: string;
  readonly unit: 'rate' | 's';
  readonly now: number;
  readonly turnsAt: number;
}

export interface BoltedAgainstWelded {
  readonly from: string | null;
  readonly bolted: FixedSo;
  readonly welded: FixedSo;
  /** How the fixing that is not there was made up. */
  readonly said: readonly string[];
  readonly rates: Rates | undefined;
  readonly turns: readonly TurningPoint[];
}

/** Solves the whole plate of an option, where that is wanted. */
type ForcesOf = (raw: RawDocument, document: PlateDocument, option: string) => SolvedForces | undefined;

/**
 * The chosen option bolted and welded, with everything else equal. The fixing that is not there comes from `oppositeFixing`.
 * Where the document asks for the whole plate's forces and nobody solves both (`forcesOf`), both are judged by hand, and it is said.
 */
export function boltedAgainstWelded(raw: RawDocument, from: string | null, forcesOf?: ForcesOf): BoltedAgainstWelded {
  const laid = laidRaw(raw, from);
  const document = readDocument(laid);
  const used = [...new Set(Object.values(document.panels))];
  const said: string[] = [];
  const byHand = !forcesOf && asksSolver(document);
  const given = byHand ? Object.fromEntries(Object.entries(raw).filter(([field]) => field !== 'forces')) : raw;
  const as = (kind: FixingKind): FixedSo => {
    const designs: Record<string, Json> = {};
    for (const name of used) {
      const design = document.designs[name]!;
      if (design.fixing.kind === kind) continue;
      const derived = oppositeFixing(document, design);
      for (const words of derived.said) if (!said.includes(`${name}: ${words}`)) said.push(`${name}: ${words}`);
      // A merge patch must take away what only the other kind has.
      const own = (laid['designs'] as Record<string, { fixing: Record<string, unknown> }>)[name]!.fixing;
      const gone = Object.fromEntries(Object.keys(own).map((key) => [key, null]));
      designs[name] = { fixing: { ...gone, ...derived.fixing } as Json };
    }
    const id = freeId(raw);
    const option: RawOption = {
      id,
      title: kind === 'bolted' ? 'Bolted' : 'Welded',
      base: from,
      changes: { designs },
    };
    const added = applyEdit(given, { kind: 'addOption', option });
    const read = readDocument(added);
    return fixedSo(kind, appraise(added, read, id, forcesOf?.(added, read, id)), document.rates);
  };
  const [bolted, welded] = [as('bolted'), as('welded')];
  if (byHand) said.push('Both are judged with forces by hand, alike: the whole plate is not solved for either here, though the document asks for it (“compare --bolted-welded” on the command line solves both)'); // prettier-ignore
  return { from, bolted, welded, said, rates: document.rates, turns: turnsOf(bolted, welded, document.rates) };
}

function fixedSo(kind: FixingKind, appraisal: Appraisal, rates: Rates | undefined): FixedSo {
  const { model, rows } = appraisal;
  const gravest = (of: (row: CheckRow) => boolean): CheckRow | null =>
    [...rows].filter((row) => row.verdict !== 'not applicable' && !isKeptRule(row) && of(row)).sort(graver)[0] ?? null;
  // What the two do not share: panels and their fixings. Tubes, crossings and eyes are the same in both but for weight.
  const ofPanel = (row: CheckRow) => /^(panel|bolt|weld)-|^fatigue-(weld|plate|bolt)/.test(row.id);
  const fatigue = gravest((row) => row.limitState === 'fatigue' && ofPanel(row));
  const largest = rows.reduce(
    (most, row) =>
      row.limitState === 'fatigue' && ofPanel(row) && row.utilisation !== null ? Math.max(most, row.utilisation) : most,
    0,
  );
  const work = countedWork(model.geometry);
  const titles = (verdict: CheckRow['verdict']) => [
    ...new Set(rows.filter((row) => row.verdict === verdict && ofPanel(row)).map(({ title }) => title)),
  ];
  return {
    kind,
    appraisal,
    work,
    cost: costOfRates(work, rates),
    strength: gravest((row) => row.limitState === 'strength' && ofPanel(row)),
    fatigue,
    // Damage grows in step with the years, so the life that uses it up is the design life over the utilisation.
    fatigueLife: largest > 0 ? model.document.basis.life.si / largest : null,
    fails: titles('fails'),
    unjudged: titles('cannot be judged'),
  };
}

const varied = ['labourPerHour', 'platePerKg', 'cutPerMetre', 'perHole', 'perBolt', 'weldPerMetre', 'recoatPerMetre', 'recoatPerHole', 'minutesToFitBolt', 'minutesToRemoveBolt', 'minutesToWeldMetre', 'minutesToCutMetre', 'vesselPerHour', 'removals'] as const; // prettier-ignore

/**
 * What would turn the decision round. The difference of the two costs is linear in each rate by itself, so it is solved
 * exactly from two values of it; a rate that would have to be negative turns nothing. A fatigue verdict turns at its life.
 */
export function turnsOf(
  bolted: Pick<FixedSo, 'work' | 'fatigueLife' | 'appraisal'>,
  welded: Pick<FixedSo, 'work' | 'fatigueLife'>,
  rates: Rates | undefined,
): readonly TurningPoint[] {
  const life = bolted.appraisal.model.document.basis.life.si;
  const lives = ([['bolted', bolted], ['welded', welded]] as const).flatMap(([kind, { fatigueLife }]): TurningPoint[] =>
    fatigueLife === null ? [] : [{ what: `life that the ${kind} panels’ gravest fatigue detail lasts`, unit: 's', now: life, turnsAt: fatigueLife }],
  ); // prettier-ignore
  if (!rates) return lives;
  const difference = (changed: Rates): number | null => {
    const [b, w] = [costOfRates(bolted.work, changed).total, costOfRates(welded.work, changed).total];
    return b === null || w === null ? null : b - w;
  };
  const turning = varied.flatMap((name): TurningPoint[] => {
    const now = rates[name];
    if (now === undefined) return [];
    const [atZero, atOne] = [difference({ ...rates, [name]: 0 }), difference({ ...rates, [name]: 1 })];
    if (atZero === null || atOne === null || atOne === atZero) return [];
    const turnsAt = -atZero / (atOne - atZero);
    return turnsAt >= 0 && Number.isFinite(turnsAt) ? [{ what: name, unit: 'rate', now, turnsAt }] : [];
  });
  return [...turning, ...lives];
}

function freeId(raw: RawDocument): string {
  const taken = new Set(((raw['options'] as readonly { id: string }[] | undefined) ?? []).map(({ id }) => id));
  let id = 'other-fixing';
  for (let n = 1; taken.has(id); n++) id = `other-fixing-${n}`;
  return id;
}
