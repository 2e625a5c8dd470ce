import { asksSolver, modelOf } from '../../appraise.ts';
import { catalogueWith } from '../../catalogue/catalogue.ts';
import { checks } from '../../checks/index.ts';
import { laidRaw } from '../../document/edit.ts';
import { readDocument, type RawDocument } from '../../document/read-document.ts';
import type { PlateDocument } from '../../document/schema.ts';
import { userRows } from '../../document/user-rows.ts';
import type { Geometry } from '../../geometry/geometry.ts';
import { geometryOf } from '../../geometry/geometry-of.ts';
import { meshOf } from '../../plate/solved-forces-of.ts';
import type { SolveProgress } from '../../plate/solve-cases.ts';
import { Refusal, refusal } from '../../refusal.ts';
import type { Rectangle } from '../../water/lattice/plan.ts';
import {
  asSmall,
  dominates,
  isWaterAim,
  plainAims,
  plainPart,
  requireAims,
  type PlainAims,
  type Standing,
} from './aims.ts';
import { isBeaten } from './beaten.ts';
import { zoneChoices, type ZoneChoices } from './candidates.ts';
import type { Stop } from './judge.ts';
import { judgedBySolver, judgedOption, type Verdict } from './judged-option.ts';
import { optionDocument, type Digits } from './option-document.ts';
import { optionPlates, type OptionPlate } from './option-plate.ts';
import { optionSolver, type OptionSolver } from './option-solver.ts';
import type { SearchSpace } from './search-space.ts';
import { waterAims, type WaterAims, type WaterGain } from './water-aims.ts';

/** An option that passes and that no other found so far puts aside; aims in the order of the space's, SI. */
export interface Found extends Standing {
  readonly digits: Digits;
}

/** Where a search stands: plain data, so that it can be put away and taken up again. */
export interface SearchState {
  /** Next place: for each zone but the last its candidate in the order of the first aim, for the last its column; null when all is done. */
  readonly next: readonly number[] | null;
  /** How many of the column at that place are decided already: only where plates are solved, each of which takes long. */
  readonly within: number;
  readonly front: readonly Found[];
  /** Options decided so far, one way or another. */
  readonly decided: number;
  /** Judged by checks. */
  readonly judged: number;
  /** Of these solved as a whole plate, because they hold by forces by hand; and what is being done about the one at hand. */
  readonly solved: number;
  readonly solving: SolveProgress | null;
  readonly passing: number;
  /** Put aside because one found is as good in all, leaves no other check open, and is better in some: by their aims alone, or by the utilisation of the checks made so far. */
  readonly beaten: number;
  /** What stopped the others: check (or limit) to how many. */
  readonly stopped: Readonly<Record<string, { readonly title: string; readonly count: number }>>;
  /** Stops that bar a candidate wherever the other zones' panels lie the same in plan, by both: see `Verdict`. */
  readonly bars: Readonly<Record<string, Pick<Stop, 'check' | 'title'>>>;
  /** Order in which checks are made: those that stopped an option come to the front. */
  readonly order: readonly number[];
  /** No option that is not decided yet has less of the first aim than this; null when none is left. */
  readonly bound: number | null;
}

/** One piece of `of` that a space may be cut into; together they decide the whole space, each by itself. */
export interface Piece {
  readonly index: number;
  readonly of: number;
}

/** A search made ready: what does not change while it runs. */
export interface Problem {
  readonly space: SearchSpace;
  readonly base: PlateDocument;
  readonly zones: readonly ZoneChoices[];
  readonly piece: Piece;
  readonly aside: ReadonlySet<string>;
  /** Options in the whole space. */
  readonly options: number;
  /** Where the water is among the aims. */
  readonly water: WaterAims | null;
  /** Where the document takes forces from the whole plate's solution as well as by hand. */
  readonly solver: OptionSolver | null;
  /** Geometry and mass of a document that differs from the base in panels and their designs. */
  readonly plateOf: (document: PlateDocument) => OptionPlate;
}

/** Reads a space. Refuses aims that cannot be had, zones that overlap, a mesh that would never end, and what the document's own rules refuse. */
export function searchProblem(raw: RawDocument, space: SearchSpace, piece: Piece = { index: 0, of: 1 }): Problem {
  const base = readDocument(laidRaw(raw, space.from));
  const solver = asksSolver(base) ? optionSolver() : null;
  if (solver) meshOf(modelOf(base));
  requireAims(space.aims, base);
  if (space.zones.length === 0)
    throw refusal({
      what: 'The search has no zone',
      where: { field: 'zones' },
      mend: 'Name at least one set of panels that is to be varied.',
    });
  const known = new Set([...checks.map(({ id }) => id), ...checks.map(({ limitState }) => limitState), 'handling']);
  for (const name of space.aside)
    if (!known.has(name))
      throw refusal({
        what: `“${name}” is neither a check nor a limit state`,
        where: { option: 'aside' },
        mend: 'Name a limit state (strength, fatigue, serviceability, stability, handling) or the id of a check.',
      });
  if (!(
    Number.isInteger(piece.of) &&
    piece.of >= 1 &&
    Number.isInteger(piece.index) &&
    piece.index >= 0 &&
    piece.index < piece.of
  ))
    throw refusal({
      what: `There is no piece ${piece.index + 1} of ${piece.of}`,
      where: { option: 'piece' },
      mend: 'Write 1/4, 2/4, 3/4 and 4/4 for a search in four pieces.',
    });
  const zones = zoneChoices(raw, space);
  const water = space.aims.some(isWaterAim) ? waterAims(base, geometryOf(base, catalogueWith(userRows(base)))) : null;
  if (water?.dragOutside && space.aims.includes('drag'))
    throw refusal({
      what: `The aim “drag” cannot be judged: ${water.dragOutside}`,
      where: { path: 'hydrodynamics.motion' },
      mend: 'State a motion within the tests, or leave the aim out.',
    });
  return {
    space,
    base,
    zones,
    piece,
    aside: new Set(space.aside),
    options: zones.reduce((product, { count }) => product * count, 1),
    water,
    solver,
    plateOf: optionPlates(base),
  };
}

/**
 * The front of best compromises: every option that passes and that none beats. Exact: zones are counted through depth
 * first, candidates in the order of the first aim. Left out with all that follows from it is what a found option beats already in the
 * least that it could still have (with the utilisation of the checks made so far, and what they left open), and a candidate that is
 * stopped by itself beside the lightest others that lie the same in plan (`isOfThePanel`); nothing else is. Where plates are solved, the graver of two demands governs, so that what fails or is beaten by hand is so without being solved. A generator: each
 * step decides a column (options that differ in the last zone's thickness alone), or does a part of a solve, and hands out its state;
 * leave it at any step and go on from that state later. Memory: the aims of each zone's candidates, what bars them, and the front,
 * however long it runs. The same input gives the same answer, cut in pieces or whole.
 */
export function* search(
  problem: Problem,
  from?: SearchState,
  by: Evaluation = evaluationOf(problem),
): Generator<SearchState, SearchState> {
  const { zones, space, piece } = problem;
  const last = zones.length - 1;
  const bare = by.plain(null);
  const starting = fresh(problem);
  const tables: (readonly (readonly number[])[])[] = [];
  /** How each candidate lies in plan: numbers of ways to lie. */
  const plans: (readonly number[])[] = [];
  const ways = new Map<string, number>();
  /** Of each zone and plan the candidate that is the lightest; null where one has the least mass and another the least weight. */
  const lightest: ReadonlyMap<number, number | null>[] = [];
  let leastWeight = bare.light.weight;
  for (let zone = 0; zone <= last; zone++) {
    const alone: Plain[] = [];
    for (let candidate = 0; candidate < zones[zone]!.count; candidate++) {
      alone.push(plainAlone(by, bare, zone, candidate));
      // Nothing is decided yet, but whoever drives the search can show that it lives, and leave it.
      if (candidate % 20 === 19) yield from ?? starting;
    }
    tables.push(alone.map((plain) => space.aims.map((aim) => plainPart(aim, plain) - plainPart(aim, bare))));
    const own = alone.map(({ plan }) => ways.get(plan) ?? ways.set(plan, ways.size).get(plan)!);
    plans.push(own);
    lightest.push(lightestOf(alone, own));
    leastWeight += alone.reduce((least, { light }) => Math.min(least, light.weight - bare.light.weight), Infinity);
  }
  const looked = new Set<string>();
  /** That of all candidates of a zone, where they lie alike. */
  const alike = plans.map((own) => (own.every((plan) => plan === own[0]) ? own[0]! : null));
  const orders = zones.map((zone, at) =>
    at === last ? columnOrder(zone, tables[at]!) : candidateOrder(zone, tables[at]!),
  );
  const leastOf = tables.map((table) => least(table));
  const sizeBelow = zones.map((_, at) => zones.slice(at + 1).reduce((product, { count }) => product * count, 1));
  const asked: { readonly key: string; readonly most: WaterGain }[] = [];
  let state = from ?? starting;

  while (state.next) {
    const at = [...state.next];
    const barred = state.within > 0 ? null : firstBarred(at);
    const beaten = state.within > 0 || barred ? null : firstBeaten(at);
    const depth = barred?.depth ?? beaten;
    if (depth !== null) {
      // Stopped in one zone, or beaten in the least it can have: with all that follows from it.
      const lost = left(at, depth);
      for (let deeper = depth + 1; deeper <= last; deeper++) at[deeper] = orders[deeper]!.length - 1;
      state = {
        ...state,
        decided: state.decided + lost,
        ...(barred ? { stopped: counted(state.stopped, barred.stop, lost) } : { beaten: state.beaten + lost }),
      };
    } else state = yield* decided(at, state);
    const next = after(at);
    state = { ...state, next, within: 0, bound: next ? boundAt(next) : null };
    yield state;
  }
  return state;

  /** Options not decided yet that begin with these places down to a depth: those of the deeper places are behind the search. */
  function left(at: readonly number[], depth: number): number {
    const column = (place: number) => columnMembers(zones[last]!, orders[last]![place]!).length;
    if (depth === last) return column(at[last]!);
    let done = 0;
    for (let zone = depth + 1; zone < last; zone++) done += at[zone]! * sizeBelow[zone]!;
    for (let place = 0; place < at[last]!; place++) done += column(place);
    return sizeBelow[depth]! - done;
  }

  /** The least plain aims of all options that begin with these places, down to a depth. */
  function lowest(at: readonly number[], depth: number): readonly number[] {
    const sums = space.aims.map((aim) => plainPart(aim, bare));
    for (let zone = 0; zone <= last; zone++) {
      const own =
        zone > depth
          ? leastOf[zone]!
          : zone === last
            ? least(rowsOf(tables[last]!, columnMembers(zones[last]!, orders[last]![at[last]!]!)))
            : tables[zone]![orders[zone]![at[zone]!]!]!;
      for (let k = 0; k < sums.length; k++) sums[k]! += own[k]!;
    }
    return sums;
  }

  /** Candidates at these places down to a depth; of a column its thinnest, for the water does not see a thickness. */
  function digitsTo(at: readonly number[], depth: number): Digits {
    return at.slice(0, depth + 1).map((place, zone) => {
      const chosen = orders[zone]![place]!;
      return zone === last ? columnMembers(zones[last]!, chosen)[0]! : chosen;
    });
  }

  /** Asked again for every option that begins alike: the last of each depth is kept. */
  function mostTo(at: readonly number[], depth: number): WaterGain {
    const digits = digitsTo(at, depth);
    const key = digits.join();
    if (asked[depth]?.key !== key) asked[depth] = { key, most: by.most(digits) };
    return asked[depth].most;
  }

  function firstBeaten(at: readonly number[]): number | null {
    for (let depth = 0; depth <= last; depth++) {
      const low = lowest(at, depth);
      // What all that follows leaves open is not known, so that only one found that leaves nothing open puts it aside.
      if (isBeaten(state.front, space.aims, { aims: low, open: [] }, () => mostTo(at, depth))) return depth;
    }
    return null;
  }

  /** What a candidate is barred under: it, and how the other zones' panels lie in plan; null where that is not decided yet. */
  function barOf(zone: number, candidate: number, at: readonly number[], depth: number): string | null {
    const others: number[] = [];
    for (let other = 0; other <= last; other++) {
      if (other === zone) continue;
      const chosen = orders[other]![at[other]!]!;
      const plan =
        other > depth
          ? alike[other]!
          : plans[other]![other === last ? columnMembers(zones[last]!, chosen)[0]! : chosen]!;
      if (plan === null) return null;
      others.push(plan);
    }
    return `${zone} ${candidate} beside ${others.join()}`;
  }

  /** Whether what stops a zone's candidate stops it beside the lightest that lies as the others do: then it does beside all. */
  function isBarred(zone: number, digits: Digits, { check: id }: Stop): boolean {
    if (!(leastWeight > 0)) return false;
    const light: number[] = [];
    for (let other = 0; other <= last; other++) {
      const own = digits[other]!;
      const candidate = other === zone ? own : (lightest[other]!.get(plans[other]![own]!) ?? null);
      if (candidate === null) return false;
      light.push(candidate);
    }
    const verdict = by.judge(light, [checks.findIndex((check) => check.id === id)], []);
    return !verdict.holds && verdict.bars?.includes(zone) === true;
  }

  /** The first depth at which a candidate is barred: of the last zone a column is looked at member by member. */
  function firstBarred(
    at: readonly number[],
  ): { readonly depth: number; readonly stop: Pick<Stop, 'check' | 'title'> } | null {
    for (let depth = 0; depth <= last; depth++)
      for (let zone = 0; zone <= Math.min(depth, last - 1); zone++) {
        const key = barOf(zone, orders[zone]![at[zone]!]!, at, depth);
        const stop = key === null ? undefined : state.bars[key];
        if (stop) return { depth, stop };
      }
    return null;
  }

  /** What the first aim can still come down to: the next at every depth, with the least of all that is deeper. */
  function boundAt(next: readonly number[]): number {
    if (space.aims[0] === 'use') return 0;
    // The water's aims do not add up over zones, so that candidates are in no order of theirs.
    if (isWaterAim(space.aims[0])) return asSmall(space.aims[0], by.most([])[space.aims[0]]);
    let bound = Infinity;
    for (let depth = 0; depth <= last; depth++) bound = Math.min(bound, lowest(next, depth)[0]!);
    // The depth of zero that follows is no less, because candidates stand in the order of the first aim; columns do by their least.
    return bound;
  }

  function after(at: readonly number[]): readonly number[] | null {
    const next = [...at];
    for (let zone = last; zone >= 0; zone--) {
      const step = zone === 0 ? piece.of : 1;
      next[zone]! += step;
      if (next[zone]! < orders[zone]!.length) return next;
      next[zone] = 0;
    }
    return null;
  }

  /** Decides one column: options that differ in the last zone's thickness alone. */
  function* decided(at: readonly number[], before: SearchState): Generator<SearchState, SearchState> {
    const prefix = at.slice(0, last).map((place, zone) => orders[zone]![place]!);
    const members = columnMembers(zones[last]!, orders[last]![at[last]!]!);
    let { front, judged, passing, beaten, order, solved, stopped, bars } = before;
    const stateAt = (within: number, solving: SolveProgress | null): SearchState => ({ ...before, within, front, judged, passing, beaten, order, stopped, bars, solved, solving }); // prettier-ignore
    for (let i = before.within; i < members.length; i++) {
      const digits = [...prefix, members[i]!];
      const barred = digits.map((own, zone) => bars[barOf(zone, own, at, last)!]).find((stop) => stop !== undefined);
      if (barred) {
        stopped = counted(stopped, barred, 1);
        continue;
      }
      let verdict = by.judge(digits, order, front);
      if (verdict.holds && by.solve) {
        const solving = by.solve(digits, order, front, verdict);
        let step = solving.next();
        for (; !step.done; step = solving.next())
          yield i > 0 ? stateAt(i, step.value) : { ...before, solving: step.value };
        verdict = step.value;
        solved++;
      }
      if (!verdict.holds) {
        if (verdict.plain === 'beaten') {
          beaten++;
          order = withFirst(order, verdict.governs);
        } else {
          judged++;
          stopped = counted(stopped, verdict.stop, 1);
          for (const zone of verdict.bars ?? []) {
            const key = barOf(zone, digits[zone]!, at, last)!;
            if (!looked.has(key) && !(key in bars) && isBarred(zone, digits, verdict.stop))
              bars = { ...bars, [key]: { check: verdict.stop.check, title: verdict.stop.title } };
            looked.add(key);
          }
          order = withFirst(
            order,
            order.find((check) => checks[check]!.id === verdict.stop.check),
          );
        }
        continue;
      }
      judged++;
      passing++;
      order = withFirst(order, verdict.governs);
      const found: Found = { digits, aims: verdict.aims, open: verdict.open };
      if (!front.some((other) => dominates(other, found)))
        front = [...front.filter((other) => !dominates(found, other)), found];
    }
    return { ...stateAt(0, null), decided: before.decided + members.length };
  }
}

/** An order of checks with one of them made first. */
function withFirst(order: readonly number[], check: number | null | undefined): readonly number[] {
  return check === null || check === undefined || order[0] === check
    ? order
    : [check, ...order.filter((other) => other !== check)];
}

/** What is known of an option without loads. */
export interface Plain extends PlainAims {
  /** How its panels lie in plan, their thickness, material and fixings apart. */
  readonly plan: string;
  /** Mass that moves, kg, and weight in water where it helps, N: the less of both, the more of a force inertia takes. */
  readonly light: { readonly mass: number; readonly weight: number };
}

/** How the search knows an option: what its aims are without loads, and what the checks say of it. */
export interface Evaluation {
  /** Aims with one zone's panels of a candidate and all other zones open; null: with all of them open. */
  readonly plain: (one: { readonly zone: number; readonly candidate: number } | null) => Plain;
  /** `order`: indices of the checks to make, in this order. `front`: what was found so far. */
  readonly judge: (digits: Digits, order: readonly number[], front: readonly Found[]) => Verdict;
  /** Judges what holds by `judge` once more, with the whole plate's forces; `before`: its aims and open checks so far. Left out where nothing is solved. */
  readonly solve?: (
    digits: Digits,
    order: readonly number[],
    front: readonly Found[],
    before: Standing,
  ) => Generator<SolveProgress, Verdict>;
  /** What options that begin with these candidates gain in the water at most; what one gains, where all zones are given. Asked only where the water is among the aims. */
  readonly most: (begins: Digits) => WaterGain;
}

/** By the document's own geometry, mass, loads and checks. */
export function evaluationOf(problem: Problem): Evaluation {
  const reach = problem.zones.map(() => new Map<string, Rectangle>());
  return {
    plain: (one) => {
      const { geometry, aims, light } = plainOf(problem, one);
      const plan = JSON.stringify([
        geometry.panels.map(({ contour }) => contour),
        geometry.bays.map(({ openArea }) => openArea),
      ]);
      // Where a zone's panels may lie: all that is closed of it, whatever is chosen, lies within.
      if (one && problem.water)
        for (const { outline } of geometry.panels) reach[one.zone]!.set(JSON.stringify(outline), outline);
      return { ...aims, plan, light };
    },
    judge: (digits, order, front) => judgedOption(problem, digits, order, front),
    ...(problem.solver ? { solve: (...of) => judgedBySolver(problem, ...of) } : {}),
    most: (begins) => {
      const open = problem.zones.map((zone, at) => (at < begins.length ? zone : { ...zone, designOf: () => null }));
      const digits = open.map((_, at) => begins[at] ?? 0);
      const { base, water, plateOf } = problem;
      return water!.mostOf(
        plateOf(optionDocument(base, open, digits)).geometry,
        reach.slice(begins.length).flatMap((own) => [...own.values()]),
      );
    },
  };
}

/** Plain aims of the base with one zone's panels of a candidate and all other zones open; without: all zones open. */
function plainOf(
  problem: Problem,
  one: { readonly zone: number; readonly candidate: number } | null,
): { readonly geometry: Geometry; readonly aims: PlainAims; readonly light: Plain['light'] } {
  const { base, zones } = problem;
  const open = zones.map((zone) => ({ ...zone, designOf: () => null }));
  const choices = one ? open.map((zone, at) => (at === one.zone ? zones[at]! : zone)) : open;
  const document = optionDocument(
    base,
    choices,
    zones.map((_, at) => (at === one?.zone ? one.candidate : 0)),
  );
  const { geometry, mass } = problem.plateOf(document);
  const light = { mass: mass.total + mass.entrainedWater, weight: mass.least.water.weight };
  return { geometry, aims: plainAims(geometry, mass, document.rates), light };
}

/**
 * A zone's candidate with all other zones open: masses, holes and costs are sums over panels, so that a zone's part does not
 * depend on the others. A candidate that cannot be built adds nothing here and is refused when it is judged.
 */
function plainAlone(by: Evaluation, bare: Plain, zone: number, candidate: number): Plain {
  try {
    return by.plain({ zone, candidate });
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ...bare, plan: `cannot be built: ${candidate}` };
  }
}

/** Of candidates by plan: that of the least mass, where it has the least weight too. */
function lightestOf(alone: readonly Plain[], plans: readonly number[]): ReadonlyMap<number, number | null> {
  const least = (of: 'mass' | 'weight') => (a: number, b: number) =>
    alone[b]!.light[of] < alone[a]!.light[of] ? b : a;
  return new Map(
    [...new Set(plans)].map((plan) => {
      const own = [...alone.keys()].filter((candidate) => plans[candidate] === plan);
      const [mass, weight] = [own.reduce(least('mass')), own.reduce(least('weight'))];
      return [plan, alone[mass]!.light.weight <= alone[weight]!.light.weight ? mass : null];
    }),
  );
}

function counted(
  stopped: SearchState['stopped'],
  { check, title }: Pick<Stop, 'check' | 'title'>,
  by: number,
): SearchState['stopped'] {
  return { ...stopped, [check]: { title, count: (stopped[check]?.count ?? 0) + by } };
}

const rowsOf = (table: readonly (readonly number[])[], members: readonly number[]) =>
  members.map((member) => table[member]!);

const least = (rows: readonly (readonly number[])[]): readonly number[] =>
  rows[0]!.map((_, k) => rows.reduce((low, row) => Math.min(low, row[k]!), Infinity));

const candidateOrder = (zone: ZoneChoices, table: readonly (readonly number[])[]): readonly number[] =>
  Array.from({ length: zone.count }, (_, i) => i).sort((a, b) => table[a]![0]! - table[b]![0]! || a - b);

function columnOrder(zone: ZoneChoices, table: readonly (readonly number[])[]): readonly number[] {
  const low = Array.from(
    { length: zone.columns },
    (_, column) => least(rowsOf(table, columnMembers(zone, column)))[0]!,
  );
  return low.map((_, column) => column).sort((a, b) => low[a]! - low[b]! || a - b);
}

/** Candidates of a column, the thinnest first. */
function columnMembers(zone: ZoneChoices, column: number): readonly number[] {
  const first = column * zone.column;
  return Array.from({ length: Math.min(zone.column, zone.count - first) }, (_, i) => first + i);
}

function fresh({ piece, zones }: Problem): SearchState {
  const places = zones.length === 1 ? zones[0]!.columns : zones[0]!.count;
  return {
    next: piece.index < places ? [piece.index, ...zones.slice(1).map(() => 0)] : null,
    front: [],
    decided: 0,
    judged: 0,
    passing: 0,
    beaten: 0,
    solved: 0,
    within: 0,
    solving: null,
    stopped: {},
    bars: {},
    order: checks.map((_, at) => at),
    bound: null,
  };
}

/** The front of several pieces, or of any lists of found options. */
export function mergedFront(fronts: readonly (readonly Found[])[]): readonly Found[] {
  const all = fronts.flat();
  return all.filter((one) => !all.some((other) => dominates(other, one)));
}
