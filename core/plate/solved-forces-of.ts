import type { Panel } from '../geometry/geometry.ts';
import type { HollowSection } from '../catalogue/rows.ts';
import {
  solvedKey,
  type SituationForces,
  type SolvedCrossing,
  type SolvedForces,
  type SolvedLeg,
  type SolvedPanel,
  type SolvedTube,
  type SolvedWeld,
} from '../loads/solved-forces.ts';
import type { Model } from '../model.ts';
import { refusal } from '../refusal.ts';
import { retold } from '../solve/drained.ts';
import { shellStress } from '../solve/elements/shell-stress.ts';
import type { SolverSession } from '../solve/sparse/solver-session.ts';
import { panelBuckling } from './buckling-of-panels.ts';
import { firstSize } from './mesh-study.ts';
import { balanceReport } from './results/balance-report.ts';
import { deflections } from './results/deflections.ts';
import { errorEstimate } from './results/error-estimate.ts';
import { fixingForces, type WeldForce } from './results/fixing-forces.ts';
import { panelStress, type PanelStress } from './results/panel-stress.ts';
import { tubeForces, type TubeForces } from './results/tube-forces.ts';
import { solveCases, type LostPart, type SolveProgress } from './solve-cases.ts';
import type { ReadyPlate, SolvedLoading } from './solve-plate.ts';

/**
 * Solves every load case of a model that has its data, each loading on each set of supports with contact settled, and gives
 * the largest forces of each, and of both ends of a cycle of service: what the checks take from the whole plate. The mesh is the document's, or the first of a mesh
 * study. Each leg is lost in turn, and where the document asks for it each row of bolts and each panel. Refuses a mesh of
 * more than `mostCells` cells. Yields what it is about to do.
 *
 * Buckling is looked for once a situation, under the loading that presses a panel hardest, and only where a strip as long as
 * the panel, hinged at its ends, would buckle within `bucklingWithin` times it: every panel is held better than that strip.
 */
export function* solvedForcesOf(model: Model, session?: SolverSession): Generator<SolveProgress, SolvedForces> {
  return yield* retold(solvedInTurn(model, session), ({ done, of, what }) => ({ done, of, what }));
}

/** Forces of a situation of which every loading is solved. Buckling is looked for at the end of all: until then it stands as
 *  if there were none, so that these forces ask no more of a plate than those that come out. */
export interface KnownSituation {
  readonly id: string;
  readonly forces: SituationForces;
}

/** The same in the same order, telling each situation as soon as it is known: who needs no more may leave. */
export function* solvedInTurn(
  model: Model,
  session?: SolverSession,
): Generator<SolveProgress & { readonly known?: KnownSituation }, SolvedForces> {
  const size = meshOf(model);
  const losses = model.document.forces?.losses ? 'cases' : 'legs';
  const situations = new Map<string, SituationForces>();
  const pressed = new Map<string, { readonly by: number; readonly on: ReadyPlate; readonly solved: SolvedLoading }>();
  let mesh: SolvedForces['mesh'] = { size, unknowns: 0, stressError: 0, residual: 0 };
  // where joints may be as stiff as a range says, each end of it is solved, and the larger of each force is taken
  const plates = model.document.grid.joints?.range ? 3 : 1;
  const waiting: { readonly on: ReadyPlate; readonly one: SolvedLoading }[] = [];
  const each = (on: ReadyPlate, one: SolvedLoading) => void waiting.push({ on, one });
  const solving = solveCases(model, {
    stage: 'contact',
    cases: 'checks',
    losses,
    size,
    each,
    ...(session ? { session } : {}),
  });
  let progress = { done: 0, of: 0 };
  let lost: readonly LostPart[] = [];
  for (let step = solving.next(); ; step = solving.next()) {
    if (step.done) {
      mesh = { ...mesh, unknowns: 2 * step.value.plate.structure.coordinates.length - 6 };
      lost = step.value.losses;
    } else progress = step.value;
    for (const { on, one } of waiting.splice(0)) {
      const { id, title, loadings, present, loadCase } = one.situation;
      yield { ...progress, what: `${title}, ${one.loading}: forces` };
      const stresses = panelStress(on, one);
      const own = forcesOf(on, one, stresses);
      const before = situations.get(id);
      const forces = before ? larger(before, own) : own;
      situations.set(id, forces);
      const by = pressedBy(model, stresses);
      if (by > (pressed.get(id)?.by ?? 0)) pressed.set(id, { by, on, solved: one });
      mesh = {
        ...mesh,
        stressError: Math.max(mesh.stressError, errorEstimate(on, one).clear),
        residual: Math.max(mesh.residual, balanceReport(on, one).residual),
      };
      // with parts lost in turn a situation is known at the end of all
      const inTurn = loadCase === 'lost bolt row' || loadCase === 'lost panel';
      if (!inTurn && forces.loadings === loadings.length * present.length * plates)
        yield { ...progress, what: `${title}: checks`, known: { id, forces } };
    }
    if (step.done) break;
    yield step.value;
  }
  for (const [id, { by, on, solved: one }] of pressed)
    if (by > 1 / bucklingWithin) situations.set(id, { ...situations.get(id)!, buckling: yield* bucklingOf(on, one) });
  for (const { id: row, free } of lost)
    for (const { id } of free ? model.loads.situations.filter(({ loadCase }) => loadCase === 'lost bolt row') : []) {
      const known = situations.get(id) ?? nothing;
      situations.set(id, { ...known, free: { ...known.free, [free!.panel]: `panel ${free!.panel} without ${row}: ${free!.how}` } }); // prettier-ignore
    }
  return {
    key: solvedKey(model.document),
    mesh,
    situations: Object.fromEntries(situations),
  };
}

/** A case of which nothing could be solved. */
const nothing: SituationForces = { loadings: 0, settled: true, tubes: {}, panels: {}, free: {}, crossings: {}, legs: {}, buckling: null }; // prettier-ignore

/** Factors beyond this are not looked for: there a plate yields first. */
const bucklingWithin = 100;

/** Largest membrane compression of any panel clear of hot places, over the Euler stress π² E/(12 (1 - ν²)) (t/L)² of a strip
 *  as long as the panel. */
function pressedBy(model: Model, panels: readonly PanelStress[]): number {
  return panels.reduce((most, { id, forces, hot, thickness }) => {
    const { outline: { x0, x1, y0, y1 }, material: { youngModulus: E, poisson: nu } } = model.panels.get(id)!; // prettier-ignore
    const euler = (Math.PI ** 2 * E * (thickness / Math.max(x1 - x0, y1 - y0)) ** 2) / (12 * (1 - nu * nu));
    return hot.reduce((own, isHot, i) => {
      if (isHot) return own;
      const { least } = shellStress(forces.subarray(6 * i, 6 * i + 6), thickness, 'middle');
      return Math.max(own, -least / euler);
    }, most);
  }, 0);
}

/** More would take hours and gigabytes. */
const mostCells = 300_000;

/** Widest cell, m, that a model's forces are solved with. Refuses one that would never end. */
export function meshOf(model: Model): number {
  const { geometry } = model;
  const size = model.document.forces?.mesh?.si ?? firstSize(model);
  const cells = geometry.panels.reduce((sum, { outline: { x0, x1, y0, y1 } }) => sum + ((x1 - x0) * (y1 - y0)) / size ** 2, 0); // prettier-ignore
  if (cells > mostCells)
    throw refusal({
      what: `A mesh with cells of ${(1e3 * size).toPrecision(3)} mm has about ${Math.round(cells / 1e3)} thousand of them`,
      where: { path: 'forces.mesh' },
      mend: `Take wider cells: up to ${mostCells / 1e3} thousand are solved.`,
    });
  return size;
}

function* bucklingOf(plate: ReadyPlate, solved: SolvedLoading): Generator<SolveProgress, SituationForces['buckling']> {
  const what = `${solved.situation.title}, ${solved.loading}: buckling, solve`;
  const finding = panelBuckling(plate, solved, { count: 1 });
  const { modes, within, converged } = yield* retold(finding, (k) => ({ done: 0, of: 0, what: `${what} ${k}` }));
  const [lowest] = modes;
  if (!converged) return null;
  return lowest ? { factor: lowest.factor, within, part: lowest.most.id } : { factor: within, within, part: '' };
}

function forcesOf(plate: ReadyPlate, solved: SolvedLoading, stresses: readonly PanelStress[]): SituationForces {
  const { model } = plate;
  const tubes = tubeForces(plate, solved);
  const { bolts, welds, supports } = fixingForces(plate, solved);
  const dips = new Map(deflections(plate, solved).panels.map(({ id, dip }) => [id, dip && Math.abs(dip.rise)]));
  const panels = stresses.map((stress): [string, SolvedPanel] => {
    const own = bolts.filter(({ panel }) => panel === stress.id);
    const most = (of: (bolt: (typeof own)[number]) => number) =>
      own.reduce<{ force: number; bolt: string } | null>((best, bolt) => (!best || of(bolt) > best.force ? { force: Math.max(of(bolt), 0), bolt: bolt.id } : best), null); // prettier-ignore
    return [
      stress.id,
      {
        pull: most(({ pull }) => pull),
        shear: most(({ shear }) => shear),
        weld: worstWeld(model, model.panels.get(stress.id)!, welds.filter(({ panel }) => panel === stress.id)),
        stress: stress.largest?.stress.vonMises ?? null,
        membrane: membraneOf(stress),
        dip: dips.get(stress.id) ?? null,
      },
    ];
  }); // prettier-ignore
  return {
    loadings: 1,
    buckling: { factor: bucklingWithin, within: bucklingWithin, part: '' },
    settled: solved.answer.settled,
    free: {},
    tubes: Object.fromEntries(tubes.map((tube) => [tube.id, tubeOf(tube, model.tubes.get(tube.id)!.section)])),
    panels: Object.fromEntries(panels),
    crossings: Object.fromEntries(model.geometry.crossings.map(({ id, main, cross }) => [id, crossingOf(model, tubes, main, cross)])), // prettier-ignore
    legs: Object.fromEntries(supports.map(({ id, along, vertical, inPlan: [x, y] }) => [id, { along: Math.abs(along), upright: Math.abs(vertical), x: Math.abs(x), y: Math.abs(y) }])), // prettier-ignore
  };
}

type Section = Pick<HollowSection, 'shape' | 'elasticY' | 'elasticZ' | 'shearAreaY' | 'shearAreaZ'>;

/** Bending in plan counted as so much upright bending as brings the same stress, elastic; shear sideways by its area. */
const bending = ({ shape, elasticY, elasticZ }: Section, My: number, Mz: number): number =>
  shape === 'round' ? Math.hypot(My, Mz) : Math.abs(My) + (Math.abs(Mz) * elasticY) / elasticZ;
const shearing = ({ shape, shearAreaY, shearAreaZ }: Section, Vy: number, Vz: number): number =>
  shape === 'round' ? Math.hypot(Vy, Vz) : Math.abs(Vz) + (Math.abs(Vy) * shearAreaZ) / shearAreaY;

function tubeOf({ at, My, Mz, Vy, Vz, largest: { T, N, rise } }: TubeForces, section: HollowSection): SolvedTube {
  let [M, V] = [0, 0];
  for (let i = 0; i < at.length; i++) {
    M = Math.max(M, bending(section, My[i]!, Mz[i]!));
    V = Math.max(V, shearing(section, Vy[i]!, Vz[i]!));
  }
  return { M, V, T: Math.abs(T.value), N: Math.abs(N.value), rise: Math.abs(rise.value) };
}

/** Forces of both tubes at the stations nearest to where their axes cross. */
function crossingOf(model: Model, tubes: readonly TubeForces[], main: string, cross: string): SolvedCrossing {
  const at = (id: string, place: number) => {
    const tube = tubes.find((t) => t.id === id)!;
    const { section } = model.tubes.get(id)!;
    const away = tube.at.map((s) => Math.abs(s - place));
    const nearest = away.reduce((low, value) => Math.min(low, value), Infinity);
    const found = { M: 0, V: 0, N: 0 };
    away.forEach((value, i) => {
      if (value > nearest + 1e-6) return;
      found.M = Math.max(found.M, bending(section, tube.My[i]!, tube.Mz[i]!));
      found.V = Math.max(found.V, shearing(section, tube.Vy[i]!, tube.Vz[i]!));
      found.N = Math.max(found.N, Math.abs(tube.N[i]!));
    });
    return found;
  };
  const brace = at(cross, model.tubes.get(main)!.at);
  const chord = at(main, model.tubes.get(cross)!.at);
  return { M_1: brace.M, V_1: brace.V, N_1: brace.N, M_0: chord.M, N_0: chord.N };
}

/** The point whose force and opening moment bring most on the throat a, as resultant + 6 m/a. */
function worstWeld({ tubes }: Model, { outline: { x0, x1, y0, y1 }, design: { fixing } }: Panel, welds: readonly WeldForce[]): SolvedWeld | null {
  const [first, ...others] = welds;
  if (!first || fixing.kind !== 'welded') return null;
  const use = ({ resultant, opening }: WeldForce): number => resultant + (6 * Math.abs(opening)) / fixing.throat.si;
  const worst = others.reduce((most, weld) => (use(weld) > use(most) ? weld : most), first);
  const { id, tube, x, y, along, across, pull, opening } = worst;
  const towards = tubes.get(tube)!.set === 'main' ? Math.sign((y0 + y1) / 2 - y) : Math.sign((x0 + x1) / 2 - x);
  return { side: id, along: Math.abs(along), across: towards * across, pull, opening: Math.abs(opening), use: use(worst) };
} // prettier-ignore

function membraneOf({ forces, hot, thickness }: PanelStress): number | null {
  let most: number | null = null;
  hot.forEach((isHot, i) => {
    if (isHot) return;
    const { vonMises } = shellStress(forces.subarray(6 * i, 6 * i + 6), thickness, 'middle');
    most = Math.max(most ?? 0, vonMises);
  });
  return most;
}

/** The larger of each force of two loadings of one situation. */
export function larger(a: SituationForces, b: SituationForces): SituationForces {
  return {
    loadings: a.loadings + b.loadings,
    settled: a.settled && b.settled,
    free: { ...a.free, ...b.free },
    tubes: merged(a.tubes, b.tubes, (p, q): SolvedTube => largest(p, q)),
    crossings: merged(a.crossings, b.crossings, (p, q): SolvedCrossing => largest(p, q)),
    legs: merged(a.legs, b.legs, (p, q): SolvedLeg => largest(p, q)),
    panels: merged(a.panels, b.panels, (p, q): SolvedPanel => ({
      pull: greater(p.pull, q.pull, ({ force }) => force),
      shear: greater(p.shear, q.shear, ({ force }) => force),
      weld: greater(p.weld, q.weld, (weld) => weld.use),
      stress: greater(p.stress, q.stress, (σ) => σ),
      membrane: greater(p.membrane, q.membrane, (σ) => σ),
      dip: greater(p.dip, q.dip, (w) => w),
    })),
    buckling: a.buckling && b.buckling && (b.buckling.factor < a.buckling.factor ? b.buckling : a.buckling),
  };
} // prettier-ignore

const greater = <T>(a: T | null, b: T | null, of: (value: T) => number): T | null =>
  a === null ? b : b === null || of(a) >= of(b) ? a : b;

const largest = <T extends { readonly [K in keyof T]: number }>(a: T, b: T): T =>
  Object.fromEntries(Object.keys(a).map((key) => [key, Math.max(a[key as keyof T], b[key as keyof T])])) as T;

const merged = <T>(
  a: Readonly<Record<string, T>>,
  b: Readonly<Record<string, T>>,
  join: (p: T, q: T) => T,
): Record<string, T> =>
  Object.fromEntries(
    [...new Set([...Object.keys(a), ...Object.keys(b)])].map((id) => [id, a[id] && b[id] ? join(a[id], b[id]) : (a[id] ?? b[id])!]), // prettier-ignore
  );
