import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import { refusal } from '../refusal.ts';
import { shellForces } from '../solve/elements/shell-recovery.ts';
import { eliminate } from '../solve/eliminate.ts';
import { cellPlaces } from './results/cell-forces.ts';
import { activeSupports } from './results/active-supports.ts';
import { deflections, type PanelDeflection } from './results/deflections.ts';
import { shellRecoveries } from '../solve/structure/shell-recoveries.ts';
import { factoriser, type ReadyPlate, type SolvedLoading } from './solve-plate.ts';
import type { MakeKernels } from '../solve/sparse/front-kernels.ts';
import {
  contactElement,
  contactFaults,
  contactForce,
  contactLoads,
  opening,
  withContact,
} from '../solve/structure/contact.ts';
import type { ElementStiffness } from '../solve/structure/element-stiffness.ts';
import type { Factorise } from '../solve/structure/factorise.ts';
import { heldStructure, type HeldAnswer } from '../solve/structure/held-structure.ts';
import type { StructureAnswer } from '../solve/structure/solve-structure.ts';
import { holdFreedoms } from '../solve/structure/hold-freedoms.ts';
import { largeForces, largeNewton, linearForces, type LargeAnswer } from '../solve/structure/large-newton.ts';
import { gathered, panelPart, type PanelPart } from './large-part.ts';
import { pointMotion } from '../solve/structure/point-force.ts';
import type { Structure, SupportPart } from '../solve/structure/structure.ts';

/** A panel that was solved again with what its deflection stretches. */
export interface LargePanel {
  readonly id: string;
  /** Deflection from its tubes' motion over its thickness, before and after; null where it was not balanced. */
  readonly linear: number;
  readonly large: number | null;
  /** All of its load was balanced; otherwise the part that was, and what stopped it. */
  readonly converged: boolean;
  readonly reached: number;
  readonly stopped: LargeAnswer['stopped'];
  readonly steps: number;
  readonly iterations: number;
  /** Forces per width in its cells, as `cellForces` gives them: Nx Ny Nxy Mx My Mxy at five places of each cell. */
  readonly cells: Float64Array;
}

export interface LargePlate {
  /** Empty where no panel deflects so far that it matters: the linear answer then stands as it was. */
  readonly panels: readonly LargePanel[];
  /** The loading with those panels in place, for all that reads displacements: deflections, tubes, bolts, contact. Membrane
   *  forces of these panels are in `cells`; taken from displacements alone they would lack the stretch. */
  readonly solved: SolvedLoading;
  /** What loads the whole from outside, 6N: the loading, supports and inertia. */
  readonly outer: Float64Array;
  /** Tilt of each such panel as a rigid motion, 6N: no slope of it (zero elsewhere). */
  readonly flat: Float64Array;
  readonly deflections: readonly PanelDeflection[];
  /** Every panel is in balance, and all of them with the tubes. */
  readonly converged: boolean;
  readonly rounds: number;
  /** Largest force that is left over at a freedom, over the largest load on one. */
  readonly unbalanced: number;
  readonly findings: readonly Finding[];
  readonly cautions: readonly string[];
}

/** Over the thickness: beyond it a plate stretches noticeably. Common practice; Timoshenko & Woinowsky-Krieger, Theory of
 *  Plates and Shells, 2nd ed., art. 13, from memory. */
export const smallDeflection = 0.5;
const mostRounds = 30;
/** Of the largest load on a node: what may be left over at one. */
const balanced = 1e-6;

/**
 * Solves the panels again that dip by more than half their thickness, each by Newton's method with von Kármán's strain, its
 * contact opening and closing as it goes. Their tubes are the structure's own: with u the motion of the whole and v that of
 * such a panel on the tubes as they are,
 *    F(v) = f on the panel,      K u = f + Σ (K_p v - F_p(v)) on the whole,
 * turn by turn, until nothing is left over at any node. Edges move as far as tubes and bolts let them, and the pull of the
 * stretched panel bends the tubes. K is factored once. Yields after each panel.
 * `beyond`: dip over thickness from which a panel is chosen; `most`: rounds after which it is given up, and said so.
 */
export function* largePanels(
  plate: ReadyPlate,
  solved: SolvedLoading,
  { beyond = smallDeflection, most = mostRounds, kernels }: { readonly beyond?: number; readonly most?: number; readonly kernels?: MakeKernels } = {},
): Generator<number, LargePlate> {
  const { structure } = plate;
  if (solved.stage !== 'contact')
    throw refusal({ what: 'Large deflection needs contact that has settled', mend: 'Solve the loading with contact first' });
  const before = deflections(plate, solved).panels;
  const chosen = before.flatMap(({ dipOverThickness }, panel) => (dipOverThickness > beyond ? [panel] : []));
  const cautions = [
    'Slopes stay small beside one, and steel is elastic: stresses are to be held against yield. A panel’s stretch counts on bolts that have no slip to give: holes with play let the edges in first.',
    'Tubes and welds are linear.',
  ];
  if (chosen.length === 0)
    return { panels: [], solved, outer: solved.answer.loads, flat: new Float64Array(solved.answer.u.length), deflections: before, converged: true, rounds: 0, unbalanced: 0, findings: [], cautions };

  const { closed } = solved.answer;
  const { parts: supports, present } = activeSupports(plate, solved);
  const whole = linearPlate(plate, solved, { supports, present }, new Set(chosen), factoriser(kernels));
  const parts = chosen.map((panel) => {
    const part = panelPart(structure, panel);
    return { part, linear: linearElements(plate, part, closed), factorise: factoriser(kernels) };
  });
  const thickness = (panel: number): number => structure.shells[structure.panels[panel]!.shells[0]]!.thickness;
  const dips = chosen.map((panel) => before[panel]!.dip!.rise);
  const scale = solved.answer.loads.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  let answer = whole.asSolved;
  let [u, flat] = [answer.u, new Float64Array(answer.u.length)];
  let found: LargeAnswer[] = [];
  let [rounds, unbalanced] = [0, Infinity];
  while (rounds < most) {
    rounds++;
    const near = found;
    const correction = new Float64Array(u.length);
    found = [];
    [u, flat] = [answer.u.slice(), new Float64Array(u.length)];
    for (const [k, { part, linear, factorise }] of parts.entries()) {
      const tilt = tiltOf(structure, part, answer.u);
      const own = largeNewton(part, {
        f: gathered(part, answer.outer),
        given: gathered(part, answer.u),
        flat: tilt,
        steps: Math.min(16, Math.max(1, Math.ceil(Math.abs(dips[k]!) / thickness(part.panel) / 2))),
        ...(near[k] ? { near: near[k].u } : {}),
        factorise,
      });
      found.push(own);
      addCorrection(correction, part, linear, own.u, tilt);
      for (let i = 0; i < 6 * part.own; i++) {
        const at = 6 * part.nodes[Math.floor(i / 6)]! + (i % 6);
        flat[at] = tilt[i]!;
        if (own.converged) u[at] = own.u[i]!;
      }
      yield rounds;
    }
    if (found.some(({ converged }) => !converged)) break;
    unbalanced = whole.unbalanced(u, answer.outer, correction) / scale;
    if (unbalanced <= balanced) break;
    answer = whole.solve(correction);
  }

  const state = contactState(structure, closed, new Set(chosen), u);
  const resting = unbalanced <= balanced;
  const converged = resting && found.every((own) => own.converged);
  const gaps = contactLoads(structure, state.closed);
  const asLarge: SolvedLoading = {
    ...solved,
    answer: {
      ...solved.answer,
      ...answer.held,
      ...state,
      u,
      loads: answer.outer.map((value, i) => value + gaps[i]!),
      settled: converged && state.faults === 0,
      residual: unbalanced,
    },
  };
  const after = deflections(plate, asLarge).panels;
  const panels = chosen.map((panel, k): LargePanel => {
    const { u: own, converged, reached, stopped, steps, iterations } = found[k]!;
    return {
      id: before[panel]!.id,
      linear: before[panel]!.dipOverThickness,
      large: converged ? after[panel]!.dipOverThickness : null,
      converged,
      reached,
      stopped,
      steps,
      iterations,
      cells: largeCells(structure, parts[k]!.part, own, gathered(parts[k]!.part, flat)),
    };
  });
  return {
    panels,
    solved: asLarge,
    outer: answer.outer,
    flat,
    deflections: after,
    converged,
    rounds,
    unbalanced,
    findings: findingsOf(solved, panels, { resting, unbalanced, rounds, others: state.faults }),
    cautions,
  };
} // prettier-ignore

/** The whole with all panels linear and contact as it settled, ready for corrections. Gaps and preload of the chosen panels'
 *  contact are not in its loads: each brings its own. */
function linearPlate(
  { structure, elements, masses }: ReadyPlate,
  solved: SolvedLoading,
  { supports, present }: { readonly supports: readonly SupportPart[]; readonly present: readonly number[] },
  chosen: ReadonlySet<number>,
  factorise: Factorise,
) {
  const { coordinates, contacts } = structure;
  const { closed, u, loads } = solved.answer;
  const all = withContact(elements, structure, closed);
  const held = holdFreedoms(structure);
  const factor = factorise({ coordinates, elements: all, held });
  const byOthers = contacts.map(({ panel }, i) => (closed[i] && !chosen.has(panel) ? 1 : 0));
  const gaps = contactLoads(structure, Uint8Array.from(byOthers));
  const allGaps = contactLoads(structure, closed);
  return {
    asSolved: { u, held: solved.answer, outer: loads.map((value, i) => value - allGaps[i]!) } as Whole,
    /** Largest force left over, N or N·m, at a freedom where the motion is not just said to be nil. */
    unbalanced: (motion: Float64Array, outer: Float64Array, correction: Float64Array): number =>
      linearForces(coordinates, all, motion).reduce(
        (most, value, i) =>
          held[i] === 1 ? most : Math.max(most, Math.abs(value - outer[i]! - gaps[i]! - correction[i]!)),
        0,
      ),
    solve: (correction: Float64Array): Whole => {
      const own = gaps.map((value, i) => value + correction[i]!);
      const answer = heldStructure(
        { coordinates, masses, solve: (f) => factor.solve(f) },
        solved.applied.map((value, i) => value + own[i]!),
        supports,
        present,
        solved.situation.supports!.oneWay,
      );
      return { u: answer.u, held: answer, outer: answer.loads.map((value, i) => value - own[i]!) };
    },
  };
}

/** Motion of the whole, how it is held, and what loads it from outside: loading, supports and inertia, 6N. */
interface Whole {
  readonly u: Float64Array;
  readonly held: HeldAnswer;
  readonly outer: Float64Array;
}

/** K_p of a panel's shells and closed contact over the part's own nodes. What fastens it is linear in both and cancels. */
function linearElements(
  { structure, elements }: ReadyPlate,
  { shells, contacts, panel }: PanelPart,
  closed: Uint8Array,
): ElementStiffness[] {
  const mesh = structure.panels[panel]!;
  const first = structure.beams.length + mesh.shells[0];
  return [
    ...shells.map(({ nodes }, e) => ({ nodes, stiffness: elements[first + e]!.stiffness })),
    ...contacts.filter((_, i) => closed[mesh.contacts[0] + i]).map(contactElement),
  ];
}

/** K_p v - F_p(v) of one panel's shells and contact, on the whole's freedoms. */
function addCorrection(
  correction: Float64Array,
  part: PanelPart,
  linear: readonly ElementStiffness[],
  v: Float64Array,
  flat: Float64Array,
): void {
  const { force } = largeForces({ ...part, ties: [] }, v, flat);
  linearForces(part.coordinates, linear, v).forEach((value, i) => {
    correction[6 * part.nodes[Math.floor(i / 6)]! + (i % 6)]! += value - force[i]!;
  });
}

/** The tilt of the tubes' walls under a panel as a rigid motion of its own nodes: w = a + b x + c y by least squares. */
function tiltOf({ ties, contacts, panels, coordinates }: Structure, part: PanelPart, u: Float64Array): Float64Array {
  const mesh = panels[part.panel]!;
  const walls = [
    ...ties.slice(...mesh.ties).map(({ nodes, offsets }) => ({ node: nodes[1], offset: offsets[1] })),
    ...contacts.slice(...mesh.contacts).map(({ nodes, offset }) => ({ node: nodes[1], offset })),
  ];
  const rows = [0, 1, 2].map(() => new Float64Array(4));
  const [x0, y0] = [mesh.xs[0]!, mesh.ys[0]!];
  for (const { node, offset } of walls) {
    const terms = [1, coordinates[3 * node]! + offset[0] - x0, coordinates[3 * node + 1]! + offset[1] - y0];
    const w = pointMotion(u, node, offset)[2];
    terms.forEach((term, i) => {
      terms.forEach((other, j) => (rows[i]![j]! += term * other));
      rows[i]![3]! += term * w;
    });
  }
  const [a, b, c] = eliminate(rows) as unknown as [number, number, number];
  const flat = new Float64Array(6 * part.nodes.length);
  for (let n = 0; n < part.own; n++) {
    flat[6 * n + 2] = a + b * (part.coordinates[3 * n]! - x0) + c * (part.coordinates[3 * n + 1]! - y0);
    flat[6 * n + 3] = c;
    flat[6 * n + 4] = -b;
  }
  return flat;
}

/** Forces in a panel's cells: membrane forces with the stretch, moments by the motion as in small deflection. */
function largeCells(structure: Structure, part: PanelPart, v: Float64Array, flat: Float64Array): Float64Array {
  const recoveries = shellRecoveries(structure);
  const [first] = structure.panels[part.panel]!.shells;
  const out = new Float64Array(6 * cellPlaces * part.shells.length);
  part.shells.forEach(({ nodes, shell }, e) => {
    const own = new Float64Array(24);
    nodes.forEach((n, a) => {
      for (let k = 0; k < 6; k++) own[6 * a + k] = v[6 * n + k]! - flat[6 * n + k]!;
    });
    const forces = shellForces(recoveries[first + e]!, structure.shells[first + e]!.thickness, own);
    const N = shell.membraneForces(own);
    for (let place = 0; place < cellPlaces; place++) forces.set(N.subarray(3 * place, 3 * place + 3), 6 * place);
    out.set(forces, 6 * cellPlaces * e);
  });
  return out;
}

/** Contact with these panels in place: theirs closed where faces meet, the others' as it was; what that leaves wrong. */
function contactState(
  structure: Structure,
  before: Uint8Array,
  chosen: ReadonlySet<number>,
  u: Float64Array,
): Pick<StructureAnswer, 'closed' | 'pressing' | 'faults'> {
  const closed = before.map((value, i) => {
    const part = structure.contacts[i]!;
    return chosen.has(part.panel) ? (opening(part, u) < 0 ? 1 : 0) : value;
  });
  const { pulling, overlapping } = contactFaults(structure, closed, u);
  const pressing = Float64Array.from(structure.contacts, (part, i) => (closed[i] ? contactForce(part, u) : 0));
  return { closed, pressing, faults: pulling.length + overlapping.length };
}

function findingsOf(
  { situation }: SolvedLoading,
  panels: readonly LargePanel[],
  { resting, rounds, unbalanced, others }: { readonly resting: boolean; readonly rounds: number; readonly unbalanced: number; readonly others: number },
): Finding[] {
  const findings = panels
    .filter(({ converged }) => !converged)
    .map(({ id, reached, stopped }): Finding => ({
      id: 'large-deflection-not-converged',
      place: id,
      text: `${situation.title}: panel ${id} could be balanced for ${significant(100 * reached, 3)} % of its load; then ${stopped === 'tangent' ? 'it lost its stiffness, as where a panel snaps through or wrinkles' : 'Newton’s method did not settle'}.`,
      mend: 'Take a thicker panel or more fastenings, or a finer mesh.',
    }));
  if (findings.length === 0 && !resting)
    findings.push({
      id: 'large-deflection-not-converged',
      place: situation.id,
      text: `${situation.title}: after ${rounds} rounds panels and tubes were still out of balance by ${significant(100 * unbalanced, 2)} % of the largest load on a node.`,
      mend: 'Take thicker panels; what is shown is not in balance.',
    });
  if (others > 0)
    findings.push({
      id: 'contact-moved',
      place: situation.id,
      text: `${situation.title}: with large deflection ${others} ${others === 1 ? 'point' : 'points'} of contact of the other panels would open or close; they were left as they were.`,
      mend: 'Let fewer panels be left out: solve all of them with large deflection.',
    });
  return findings;
} // prettier-ignore
