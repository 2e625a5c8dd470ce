import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { Refusal } from '../refusal.ts';
import { meshStudy, type MeshStudy } from './mesh-study.ts';
import { retold } from '../solve/drained.ts';
import { beamEndForces } from '../solve/elements/beam-forces.ts';
import type { SolverSession } from '../solve/sparse/solver-session.ts';
import { jointForce } from '../solve/structure/tie.ts';
import type { JointEnd } from './mesh/joint-stiffness.ts';
import { fixingRows, rowPulls, type FixingRow } from './fixing-rows.ts';
import { unzipping, type Unzipping, type UseOfFixing } from './unzipping.ts';
import { readyPlate, solveLoading, type ReadyPlate, type SolvedLoading } from './solve-plate.ts';

export interface SolveRequest {
  /** Widest cell, m; by the mesh study where none is given. */
  readonly size?: number;
  readonly stage: SolvedLoading['stage'];
  /** `service`: the stated force down and up. `all`: every load case that has its data. `checks`: also both ends of a cycle of
   *  service without load factors, which fatigue counts from. */
  readonly cases: 'service' | 'all' | 'checks';
  /** Also with each leg lost; `true`: and with the worst bolt row, panel and joint; `all`: with every one of them in turn;
   *  `cases`: with every row of bolts and panel, as far as load cases are made for their loss. */
  readonly losses: boolean | 'legs' | 'all' | 'cases';
  /** Hears each loading as soon as it is solved. */
  readonly each?: (on: ReadyPlate, solved: SolvedLoading) => void;
  /** Follows the loss of each row that is lost to its end: what a fixing carries, over its resistance. */
  readonly use?: UseOfFixing;
  /** The load cases are solved in this session instead of the one that all plates share. */
  readonly session?: SolverSession;
}

export interface SolveProgress {
  readonly done: number;
  readonly of: number;
  readonly what: string;
}

/** What is taken away, and what the plate does without it. */
export interface LostPart {
  readonly kind: 'bolt row' | 'weld side' | 'panel' | 'joint';
  readonly id: string;
  readonly why: string;
  readonly plate: ReadyPlate;
  readonly solved: readonly SolvedLoading[];
  /** A panel that moves freely without it, and how; nothing is solved then. Null where all is held. */
  readonly free: { readonly panel: string; readonly how: string } | null;
  /** Where the loss of a row leads, if that was asked for. */
  readonly unzipping: Unzipping | null;
  /** The same loss at both ends of the joints’ stiffness; empty where no range is stated, or a panel is free. */
  readonly jointEnds: readonly (JointEndSolved & Pick<LostPart, 'unzipping'>)[];
}

/** The same load cases with the joints of tubes at one end of their stated range. */
export interface JointEndSolved {
  readonly end: 'low' | 'high';
  readonly plate: ReadyPlate;
  readonly solved: readonly SolvedLoading[];
}

export interface SolvedCases {
  readonly plate: ReadyPlate;
  readonly study: MeshStudy | null;
  readonly solved: readonly SolvedLoading[];
  /** Both ends of the joints' stiffness, each in the order of `solved`; empty where no range is stated. */
  readonly jointEnds: readonly JointEndSolved[];
  readonly losses: readonly LostPart[];
}

/** One solved loading as it is shown, with its like at both ends of the joints' stiffness. */
export interface ShownLoading {
  readonly plate: ReadyPlate;
  readonly solved: SolvedLoading;
  readonly lost: LostPart | null;
  /** The load case; where a joint or a side of weld is lost under the loads that the loss of a row brings, it says so. */
  readonly title: string;
  readonly joints: readonly { readonly end: JointEndSolved['end']; readonly plate: ReadyPlate; readonly solved: SolvedLoading }[]; // prettier-ignore
}

/** All that was solved in the order in which it is shown: the whole plate, then with each part lost. */
export const everySolved = ({ plate, solved, jointEnds, losses }: SolvedCases): ShownLoading[] => {
  const atEnds = (ends: readonly JointEndSolved[], i: number): ShownLoading['joints'] =>
    ends.map((end) => ({ end: end.end, plate: end.plate, solved: end.solved[i]! }));
  return [
    ...solved.map((one, i) => ({ plate, solved: one, lost: null, title: one.situation.title, joints: atEnds(jointEnds, i) })),
    ...losses.flatMap((lost) =>
      lost.solved.map((one, i) => ({ plate: lost.plate, solved: one, lost, title: titleOf(one.situation, lost), joints: atEnds(lost.jointEnds, i) })),
    ),
  ]; // prettier-ignore
};

/** The case of a lost bolt row lends its loads to every other loss that has no case of its own. */
const titleOf = ({ loadCase, title }: Situation, { kind }: LostPart): string =>
  loadCase === 'lost bolt row' && kind !== 'bolt row' ? title.replace('bolt row', kind) : title;

/**
 * Solves the load cases of a model as one structure. Yields what it is about to do, so that a caller may stop it there.
 * Each loading (both spreads of the pressure) on each variant of supports is solved by itself. Losses: of all rows of
 * bolts (or sides of weld) the one that carries most in service, of all panels the one with the largest share, of all
 * joints the one that hands over most; the loads are those of the accidental cases. Where the joints' stiffness has a range,
 * all of it is solved at both of its ends as well; what carries most is found at the stated stiffness.
 */
export function* solveCases(model: Model, request: SolveRequest): Generator<SolveProgress, SolvedCases> {
  const { situations, swing } = model.loads;
  const canBeSolved = (s: Situation): boolean => s.supports !== null && s.loadings.length > 0;
  const judged = situations.filter(canBeSolved);
  const cycle = request.cases === 'checks' ? [swing.up, swing.down].filter(canBeSolved) : [];
  const whole = judged.filter(
    (s) => !lossCases.has(s.loadCase) && (request.cases !== 'service' || s.loadCase === 'service'),
  );
  const legs = request.losses ? judged.filter((s) => s.loadCase === 'lost leg') : [];
  const work = [...whole, ...cycle, ...legs];
  const count = work.reduce((sum, s) => sum + s.loadings.length * s.present.length, 0);
  let done = 0;
  const ends = model.document.grid.joints?.range ? (['low', 'high'] as const) : [];
  const total =
    count * (1 + ends.length) +
    (request.losses && request.losses !== 'legs' ? 12 * (1 + ends.length) : 0) +
    (request.size === undefined ? 2 : 0);
  const still = (what: string): SolveProgress => ({ done, of: Math.max(total, done), what });
  const progress = (what: string): SolveProgress => ({ done: done++, of: Math.max(total, done), what });

  let study: MeshStudy | null = null;
  if (request.size === undefined) {
    study = yield* retold(meshStudy(model), progress);
  }
  const size = request.size ?? study!.chosen ?? study!.meshes.at(-1)!.size;
  const session = request.session ? { session: request.session } : {};
  const plate = readyPlate(model, { size, ...session });

  function* allOf(
    on: ReadyPlate,
    of: readonly Situation[],
    loadings?: (s: Situation) => readonly number[],
  ): Generator<SolveProgress, SolvedLoading[]> {
    const solved: SolvedLoading[] = [];
    // the contact that one loading settles in is where the next of its direction begins
    const settled = new Map<Situation['direction'], Uint8Array>();
    for (const situation of of)
      for (const loading of loadings?.(situation) ?? situation.loadings.keys())
        for (const variant of situation.present.keys()) {
          const what = `${situation.title}, ${situation.loadings[loading]!.name}`;
          yield progress(what);
          const start = request.stage === 'contact' ? settled.get(situation.direction) : undefined;
          const solving = solveLoading(on, situation, { loading, variant, stage: request.stage, ...(start ? { start } : {}) }); // prettier-ignore
          const one = yield* retold(solving, (k) => still(`${what}: contact, step ${k + 1}`));
          solved.push(one);
          request.each?.(on, one);
          settled.set(situation.direction, one.answer.closed);
        }
    return solved;
  }

  /** A panel that a lost row sets free is told of, not solved, where the checks ask. */
  function* heldOrFree(
    on: ReadyPlate,
    { cases, loadings, row }: ToLose,
  ): Generator<SolveProgress, Pick<LostPart, 'solved' | 'free'>> {
    try {
      return { solved: yield* allOf(on, cases, loadings), free: null };
    } catch (error) {
      if (!(error instanceof Refusal) || !row || request.losses !== 'cases') throw error;
      return { solved: [], free: { panel: row.panel, how: error.message } };
    }
  }

  /** What the plate does without a part, with its joints as stiff as stated or at one end of their range. */
  function* lostAt(
    part: ToLose,
    joints: JointEnd,
  ): Generator<SolveProgress, Pick<LostPart, 'plate' | 'solved' | 'free' | 'unzipping'>> {
    const on = readyPlate(model, { size, without: part.without, joints, ...session });
    const found = yield* heldOrFree(on, part);
    let followed: Unzipping | null = null;
    if (part.row && request.use && found.free === null) {
      const following = unzipping(model, { size, start: part.row, cases: part.cases, use: request.use, stage: request.stage, joints }); // prettier-ignore
      followed = yield* retold(following, (what) => still(`${part.kind} ${part.id} lost: ${what}`));
    }
    return { plate: on, ...found, unzipping: followed };
  }

  const solved = yield* allOf(plate, work);
  const jointEnds: JointEndSolved[] = [];
  for (const end of ends) {
    const on = readyPlate(model, { size, joints: end, ...session });
    jointEnds.push({ end, plate: on, solved: yield* allOf(on, work) });
  }
  const losses: LostPart[] = [];
  if (request.losses && request.losses !== 'legs') {
    const service = solved.filter(({ situation }) => situation.loadCase === 'service' && !cycle.includes(situation));
    const parts = partsToLose(plate, service, request.losses);
    for (const part of parts) {
      const { kind, id, why } = part;
      const { plate: on, solved: own, free, unzipping: followed } = yield* lostAt(part, 'stated');
      const atEnds: LostPart['jointEnds'][number][] = [];
      for (const end of free ? [] : ends) atEnds.push({ end, ...(yield* lostAt(part, end)) });
      losses.push({ kind, id, why, plate: on, solved: own, free, unzipping: followed, jointEnds: atEnds });
    }
  }
  return { plate, study, solved, jointEnds, losses };
}

const lossCases: ReadonlySet<Situation['loadCase']> = new Set(['lost bolt row', 'lost panel', 'lost leg']);

interface ToLose extends Pick<LostPart, 'kind' | 'id' | 'why'> {
  readonly without: ReadonlySet<string>;
  readonly cases: readonly Situation[];
  readonly loadings?: (situation: Situation) => readonly number[];
  readonly row?: FixingRow;
}

function partsToLose(plate: ReadyPlate, service: readonly SolvedLoading[], losses: SolveRequest['losses']): ToLose[] {
  const byCase = losses === 'cases';
  const all = losses === 'all' || byCase;
  const { model } = plate;
  const { situations } = model.loads;
  const of = (loadCase: Situation['loadCase']): Situation[] =>
    situations.filter((s) => s.loadCase === loadCase && s.supports !== null && s.loadings.length > 0);
  const asIs = byCase || of('lost bolt row').length > 0 ? of('lost bolt row') : of('service');
  const parts: ToLose[] = [];

  const pulls = rowPulls(plate, service);
  const rows = fixingRows(model).filter(({ id, kind }) => pulls.has(id) && (!byCase || kind === 'bolt row'));
  const worst = rows.reduce<FixingRow | null>((best, row) => (!best || pulls.get(row.id)! > pulls.get(best.id)! ? row : best), null); // prettier-ignore
  for (const row of all ? rows : worst ? [worst] : [])
    parts.push({ kind: row.kind, id: row.id, why: row === worst ? `carries most of all ${row.kind === 'bolt row' ? 'rows of bolts' : 'sides of weld'} in service` : 'each in turn', without: new Set(row.parts), cases: asIs, row }); // prettier-ignore

  const lost = of('lost panel');
  const byLoad = [...new Set(lost[0]?.loadings.flatMap((one) => (one.lost === null ? [] : [one.lost])) ?? [])];
  const [largest] = byLoad;
  const others = losses === 'all' ? model.geometry.panels.map(({ id }) => id).filter((id) => !byLoad.includes(id)) : [];
  for (const panel of [...(all ? byLoad : byLoad.slice(0, 1)), ...others])
    parts.push({
      kind: 'panel',
      id: panel,
      why: panel === largest ? 'takes the largest share of the force' : 'each in turn',
      without: new Set([panel]),
      // a panel whose loss no case of loads is made for is lost with its own load
      ...(byLoad.includes(panel)
        ? {
            cases: lost,
            loadings: (s: Situation) => [...s.loadings.keys()].filter((k) => s.loadings[k]!.lost === panel),
          }
        : { cases: asIs }),
    });

  if (byCase) return parts;
  const joint = worstJoint(plate, service);
  for (const id of all ? model.geometry.crossings.map((c) => c.id) : joint ? [joint] : [])
    parts.push({ kind: 'joint', id, why: id === joint ? 'hands over the largest shear in service' : 'each in turn', without: new Set([id]), cases: asIs }); // prettier-ignore
  return parts;
}

/** The crossing at which a cross tube's end forces hand over most: shear upright, as the change of it across the joint. */
function worstJoint(plate: ReadyPlate, service: readonly SolvedLoading[]): string | null {
  const { structure, model, beams } = plate;
  let [most, worst] = [0, null as string | null];
  for (const { id, main, cross } of model.geometry.crossings) {
    const tube = structure.tubes.findIndex((t) => t.id === cross);
    const at = model.tubes.get(main)!.at;
    const node =
      structure.tubes[tube]!.nodes[[...structure.tubes[tube]!.stations].findIndex((s) => Math.abs(s - at) < 1e-6)];
    const [first, last] = structure.tubes[tube]!.beams;
    const sprung = structure.joints?.filter((joint) => joint.id === id) ?? [];
    for (const { answer } of service) {
      let sum = sprung.reduce((all, joint) => all + jointForce(joint, answer.u).z, 0);
      for (let i = first; i < last; i++) {
        const { nodes } = structure.beams[i]!;
        if (sprung.length > 0 || !nodes.includes(node!)) continue;
        const own = Float64Array.from(nodes.flatMap((n) => [...answer.u.subarray(6 * n, 6 * n + 6)]));
        const { start, end } = beamEndForces(beams[i]!, own);
        sum += nodes[0] === node ? -start.Vz : end.Vz;
      }
      if (Math.abs(sum) > most) [most, worst] = [Math.abs(sum), id];
    }
  }
  return worst;
}
