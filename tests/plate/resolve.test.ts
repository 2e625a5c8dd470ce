import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { readDocument } from '../../core/document/read-document.ts';
import { readyPlate } from '../../core/plate/solve-plate.ts';
import { factorise } from '../../core/solve/sparse/factorise.ts';
import { plainKernels } from '../../core/solve/sparse/plain-kernels.ts';
import { solverSession, type SolverSession } from '../../core/solve/sparse/solver-session.ts';
import type { StiffnessSystem } from '../../core/solve/sparse/stiffness-system.ts';
import { energyDifference, someForces } from '../solve/sparse/systems.ts';
import { firstContactStep, type SystemInParts } from './first-contact-step.ts';

interface Design {
  thickness: string;
  side: string;
  overlap: { onMain: string; onCross: string };
  fixing: { pitch: string };
}
interface SmallDocument {
  designs: Record<string, Design>;
  panels: Record<string, string>;
}
const raw = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as SmallDocument;

/** The middle panel gets a design of its own, so that one panel can be changed. */
function withOwn(change: (own: Design, all: SmallDocument) => void = () => undefined): SmallDocument {
  const copy = structuredClone(raw);
  copy.designs['own'] = structuredClone(copy.designs['bolted-5']!);
  copy.panels['A2'] = 'own';
  change(copy.designs['own'], copy);
  return copy;
}

function wholeOf(document: SmallDocument, without?: ReadonlySet<string>): SystemInParts {
  const model = modelOf(readDocument({ ...document }));
  const plate = readyPlate(model, { size: 0.16, ...(without ? { without } : {}) });
  const situation = model.loads.situations.find(({ loadCase }) => loadCase === 'service')!;
  return firstContactStep(plate, situation);
}

/** Loads that balance themselves are not needed here: the six held freedoms carry what is left. */
const solvedBy = (session: SolverSession, { system, parts }: SystemInParts): Float64Array =>
  session.factorise(system, parts).solve(someForces(system));

/** Forces at the nodes of each element. */
const forcesOf = ({ elements }: StiffnessSystem, u: Float64Array): Float64Array[] =>
  elements.map(({ nodes, stiffness }) => {
    const own = nodes.flatMap((node) => [0, 1, 2, 3, 4, 5].map((k) => u[6 * node + k]!));
    return Float64Array.from(own, (_, i) => own.reduce((sum, x, j) => sum + stiffness[i * own.length + j]! * x, 0));
  });

const edits: readonly (readonly [string, SmallDocument, ReadonlySet<string>])[] = [
  ['one panel’s thickness', withOwn((own) => (own.thickness = '6 mm')), new Set()],
  ['a shared design’s thickness', withOwn((_, all) => (all.designs['bolted-5']!.thickness = '8 mm')), new Set()],
  ['one panel’s bolt pattern', withOwn((own) => (own.fixing.pitch = '60 mm')), new Set()],
  ['one panel’s overlap', withOwn((own) => (own.overlap.onCross = '40 mm')), new Set()],
  ['one panel’s side', withOwn((own) => (own.side = 'underside')), new Set()],
  ['one panel welded', withOwn((_, all) => (all.panels['A2'] = 'welded-4')), new Set()],
  ['a panel lost', withOwn(), new Set(['A2'])],
  ['a joint lost', withOwn(), new Set(['A/2'])],
];

describe('a plate solved again after an edit', () => {
  const session = solverSession();
  const before = wholeOf(withOwn());
  solvedBy(session, before);

  it.each(edits)('gives the answer of a full solve: %s', (_title, document, without) => {
    const whole = wholeOf(document, without);
    const { system } = whole;
    const f = someForces(system);
    const u = solvedBy(session, whole);
    const full = factorise(system);
    const v = full.solve(f);
    for (const answer of [u, v]) expect(full.residual(answer, f)).toBeLessThan(1e-14);
    expect(energyDifference(system, u, v)).toBeLessThan(Math.max(1e-10, 100 * 2 ** -52 * full.conditionEstimate));
    const [ours, theirs] = [forcesOf(system, u), forcesOf(system, v)];
    const most = theirs.reduce((largest, own) => own.reduce((m, x) => Math.max(m, Math.abs(x)), largest), 0);
    const apart = theirs.reduce((d, own, e) => own.reduce((m, x, i) => Math.max(m, Math.abs(x - ours[e]![i]!)), d), 0);
    expect(apart).toBeLessThan(1e-6 * most);
  });

  it.each(edits)('gives the bits of a session that begins with it: %s', (_title, document, without) => {
    const whole = wholeOf(document, without);
    expect(solvedBy(session, whole)).toEqual(solvedBy(solverSession(), whole));
  });

  it('gives the same bits in plain TypeScript', () => {
    expect(solvedBy(solverSession(plainKernels), before)).toEqual(solvedBy(session, before));
  });

  it('eliminates a panel again that is changed, and no other; nothing when it is changed back', () => {
    const own = solverSession();
    solvedBy(own, before);
    const first = own.done.eliminated;
    const orders = own.done.ordered;
    solvedBy(own, wholeOf(edits[0]![1]));
    expect(own.done.eliminated - first).toBe(1);
    const done = own.done.flopsDone;
    solvedBy(own, before);
    expect(own.done.eliminated - first).toBe(1);
    expect(own.done.flopsDone - done).toBeLessThan(own.done.flops / own.done.factorisations);
    // Mid-planes move with the thickness; the order of elimination is of the levels alone, and serves all of them.
    solvedBy(own, wholeOf(edits[1]![1]));
    expect(own.done.ordered).toBe(orders);
  });

  it('refuses to solve with what a later system of its session has taken the place of', () => {
    const own = solverSession();
    const made = own.factorise(before.system, before.parts);
    own.factorise(wholeOf(edits[0]![1]).system, before.parts);
    expect(() => made.solve(someForces(before.system))).toThrow(/later system/);
  });

  it('tells a free motion as the whole does', () => {
    const { system, parts } = before;
    const free = { ...system, held: new Uint8Array(system.held.length) };
    expect(() => solverSession().factorise(free, parts)).toThrow(/Nothing holds freedom/);
  });
});
