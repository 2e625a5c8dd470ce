import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { readDocument } from '../../core/document/read-document.ts';
import type { Model } from '../../core/model.ts';
import { meshStudy, meshTarget } from '../../core/plate/mesh-study.ts';
import { plateStructure } from '../../core/plate/mesh/plate-structure.ts';
import { deflections } from '../../core/plate/results/deflections.ts';
import { fixingForces } from '../../core/plate/results/fixing-forces.ts';
import { tubeForces } from '../../core/plate/results/tube-forces.ts';
import { solveCases, type SolvedCases } from '../../core/plate/solve-cases.ts';
import { readyPlate, solveLoading, type SolvedLoading } from '../../core/plate/solve-plate.ts';

const raw = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as SmallDocument;
interface SmallDocument {
  designs: { 'bolted-5': { thickness: string; fixing: { shear: string } } };
}
type Changes = (document: SmallDocument) => void;
const modelWith = (change: Changes = () => undefined): Model => {
  const copy = structuredClone(raw);
  change(copy);
  return modelOf(readDocument({ ...copy }));
};
const run = <T>(steps: Generator<unknown, T>): T => {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};
const size = 0.09;
const solved = (model: Model, id: string, loading = 0, start?: Uint8Array): SolvedLoading =>
  run(
    solveLoading(
      readyPlate(model, { size }),
      model.loads.situations.find((s) => s.id === id)!,
      {
        loading,
        variant: 0,
        stage: 'contact',
        ...(start ? { start } : {}),
      },
    ),
  );

describe('the plate as one structure', () => {
  const model = modelWith();
  const plate = readyPlate(model, { size });
  const service = run(solveCases(model, { size, stage: 'contact', cases: 'service', losses: false }));

  it('has a node at every bolt, and every bolt on the tube that the geometry says', () => {
    const { structure } = plate;
    const bolts = model.geometry.panels.flatMap((panel) => panel.bolts);
    expect(structure.ties).toHaveLength(bolts.length);
    for (const bolt of bolts) {
      const tie = structure.ties.find(({ id }) => id === bolt.id)!;
      const at = [0, 1].map((k) => structure.coordinates[3 * tie.nodes[0] + k]!);
      expect(Math.hypot(at[0]! - bolt.x, at[1]! - bolt.y)).toBeLessThan(1e-9);
      expect(structure.tubes[tie.tube]!.id).toBe(bolt.tube);
      // both points are one place, where the faces meet
      const ends = tie.nodes.map((n, e) => [0, 1, 2].map((k) => structure.coordinates[3 * n + k]! + tie.offsets[e]![k]!)); // prettier-ignore
      expect(Math.hypot(...ends[0]!.map((x, k) => x - ends[1]![k]!))).toBeLessThan(1e-9);
    }
  });
  it('carries exactly the load of the case: supports of service equal the hand’s, without its skew factor', () => {
    for (const { situation, answer } of service.solved) {
      if (situation.direction !== 'down') continue;
      const hand = [...situation.attachmentForces.values()];
      // four legs: the hand loads each diagonal with 1.25 of its share (0027/ND, 5.6.12)
      answer.forces.forEach((force, i) => expect(force).toBeCloseTo(hand[i]! / 1.25, 6));
      expect(answer.residual).toBeLessThan(1e-14);
      expect(answer.held).toBeLessThan(1e-7);
    }
  });
  it('lifts out what has grown on the plate, as the loads by hand do: slings pull its weight in air too (equilibrium)', () => {
    const { situation, answer, applied } = solved(model, 'lift-out-down');
    const { growth } = model.mass;
    const times = -situation.balance.terms.find(({ name }) => name.startsWith('Marine growth'))!.force;
    // load factor and dynamic factor on the growth's own weight
    expect(times / (9.80665 * growth!.mass)).toBeGreaterThan(1.2);
    const onPlate = applied.reduce((sum, f, i) => (i % 6 === 2 ? sum + f : sum), 0);
    expect(onPlate).toBeCloseTo(situation.force, 6);
    expect(answer.forces.reduce((sum, f) => sum + f, 0)).toBeCloseTo(-situation.force, 5);
    const clean = modelWith((document) => delete (document as { hydrodynamics?: unknown }).hydrodynamics);
    const without = clean.loads.situations.find(({ id }) => id === 'lift-out-down')!;
    expect(situation.force - without.force).toBeLessThan(-0.9 * times);
  });
  it('is balanced by its inertia when the legs go slack, at the acceleration that the hand finds', () => {
    const up = service.solved.find(({ situation }) => situation.direction === 'up')!;
    expect([...up.answer.forces]).toEqual([0, 0, 0, 0]);
    expect(up.answer.acceleration[2]).toBeCloseTo(up.situation.balance.acceleration, 8);
  });
  it('settles contact: nothing closed pulls, nothing open overlaps, whatever set it begins with', () => {
    const begun = service.solved.find(({ situation }) => situation.direction === 'down')!;
    expect(begun.answer.settled).toBe(true);
    const { contacts } = plate.structure;
    for (const start of [new Uint8Array(contacts.length), Uint8Array.from(contacts, (_, i) => i % 2)]) {
      const other = solved(model, 'service-down', 0, start);
      expect(other.answer.settled).toBe(true);
      expect([...other.answer.closed]).toEqual([...begun.answer.closed]);
    }
    begun.answer.pressing.forEach((force) => expect(force).toBeGreaterThanOrEqual(-1e-6));
  });
  it('moves less with thicker panels, in work: stiffness that is added never adds compliance', () => {
    const work = ({ answer, applied }: SolvedLoading): number =>
      applied.reduce((sum, f, i) => sum + f * answer.u[i]!, 0);
    const thicker = modelWith((d) => (d.designs['bolted-5'].thickness = '6 mm'));
    const [thin, thick] = [readyPlate(model, { size }), readyPlate(thicker, { size })];
    // the same loads on both: those of the thin one
    const situation = model.loads.situations.find((s) => s.id === 'service-down')!;
    const of = (on: typeof thin): SolvedLoading =>
      run(solveLoading({ ...on, model }, situation, { loading: 0, variant: 0, stage: 'contact' }));
    expect(Math.abs(work(of(thick)))).toBeLessThan(Math.abs(work(of(thin))));
  });
  it('takes load off the tubes with slip-resistant bolts, and less with bolts that slip', () => {
    const clearance = modelWith((d) => {
      d.designs['bolted-5'].fixing.shear = 'clearance';
    });
    const moment = (of: Model): number => {
      const on = readyPlate(of, { size });
      const answer = run(solveLoading(on, of.loads.situations.find((s) => s.id === 'service-down')!, { loading: 0, variant: 0, stage: 'contact' })); // prettier-ignore
      return Math.max(...tubeForces(on, answer).map(({ largest }) => Math.abs(largest.My.value)));
    };
    const hand = Math.max(...[...model.loads.situations[0]!.tubes.values()].map((t) => t.moment));
    expect(moment(clearance)).toBeGreaterThan(moment(model) * 1.05);
    // the hand carries all load on the tubes, and its legs unevenly
    expect(moment(clearance)).toBeLessThan(hand);
    expect(moment(clearance)).toBeGreaterThan(0.7 * hand);
  });
});

describe('what is lost', () => {
  const model = modelWith();
  const cases: SolvedCases = run(solveCases(model, { size, stage: 'contact', cases: 'service', losses: true }));
  it('is a row of bolts, a panel and a joint, and each leg in turn', () => {
    expect(cases.losses.map(({ kind }) => kind)).toEqual(['bolt row', 'panel', 'joint']);
    const legs = cases.solved.filter(({ situation }) => situation.loadCase === 'lost leg');
    expect(new Set(legs.map(({ variant }) => variant))).toEqual(new Set([0, 1, 2, 3]));
    for (const { answer, variant } of legs) expect(answer.forces[variant]).toBe(0);
  });
  it('leaves its bolts out, and the panel sags more there', () => {
    const row = cases.losses.find(({ kind }) => kind === 'bolt row')!;
    expect(row.plate.structure.ties.length).toBeLessThan(cases.plate.structure.ties.length);
    const up = row.solved.find(({ situation }) => situation.direction === 'up')!;
    const whole = solved(model, 'service-up');
    const dip = (on: typeof cases.plate, of: SolvedLoading): number =>
      Math.max(...deflections(on, of).panels.map(({ dip: d }) => Math.abs(d?.rise ?? 0)));
    expect(dip(row.plate, up) / up.situation.loadFactor).toBeGreaterThan(dip(cases.plate, whole) / whole.situation.loadFactor); // prettier-ignore
    expect(fixingForces(row.plate, up).bolts.every(({ pull }) => Number.isFinite(pull))).toBe(true);
  });
  it('parts a cross tube from its main tube at a lost joint', () => {
    const [crossing] = model.geometry.crossings;
    const without = plateStructure(model, { size, levels: 'as built', without: new Set([crossing!.id]) });
    const tube = (id: string) => without.tubes.find((t) => t.id === id)!;
    const ofMain = new Set(tube(crossing!.main).nodes);
    expect([...tube(crossing!.cross).nodes].filter((n) => ofMain.has(n))).toEqual([]);
  });
});

it('the mesh study ends within its target, and its errors shrink', () => {
  const study = run(meshStudy(modelWith()));
  expect(study.chosen).not.toBeNull();
  expect(study.meshes.at(-1)!.stressError).toBeLessThan(meshTarget);
  for (const { errors } of study.convergence) expect(errors.at(-1)!).toBeLessThanOrEqual(errors[0]!);
});
