import { describe, expect, it } from 'vitest';
import { fixingForces } from '../../../core/plate/results/fixing-forces.ts';
import { worstFixings } from '../../../core/plate/results/worst-fixings.ts';
import type { ReadyPlate, SolvedLoading } from '../../../core/plate/solve-plate.ts';
import { tieForce } from '../../../core/solve/structure/tie.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';

/** Force up, N, and moments about x and y that the panel's load and inertia bring, about the origin. */
function loadOn({ structure, masses }: ReadyPlate, panel: number, { applied, answer }: SolvedLoading): number[] {
  const own = new Set(structure.panels[panel]!.nodes);
  const sum = [0, 0, 0];
  const add = (n: number, up: number): void => {
    sum[0]! += up;
    sum[1]! += up * structure.coordinates[3 * n + 1]!;
    sum[2]! -= up * structure.coordinates[3 * n]!;
  };
  for (const n of own) if (n >= 0) add(n, applied[6 * n + 2]!);
  const [, , az, ax, ay] = answer.acceleration as unknown as [number, number, number, number, number];
  for (const { node, mass } of masses)
    if (own.has(node))
      add(node, -mass * (az + ax * structure.coordinates[3 * node + 1]! - ay * structure.coordinates[3 * node]!));
  return sum;
}

describe.each(['service-down', 'service-up'])('the small sample under %s', (situation) => {
  const plate = ready(sampleModel('small'), 0.15);
  const solved = solvedLoading(plate, situation);
  const forces = fixingForces(plate, solved);
  const { structure, model } = plate;

  it('bolts and contact hold each panel: their pull, less what presses, is its pressure on its area', () => {
    expect(solved.answer.settled).toBe(true);
    structure.panels.forEach(({ id }, k) => {
      const [up] = loadOn(plate, k, solved);
      const held = forces.bolts.reduce((sum, bolt) => (bolt.panel === id ? sum + bolt.pull : sum), 0);
      const pressed = forces.contacts.reduce((sum, c) => (c.panel === id ? sum + c.force : sum), 0);
      expect(Math.abs(up!)).toBeGreaterThan(100);
      // a topside panel: pulls hold it down, contact holds it up
      expect(Math.abs(held - pressed - up!)).toBeLessThan(1e-6 * Math.abs(up!));
      const { pressures } = solved.situation.loadings[0]!;
      const pressure = model.loads.plate.fields.reduce((sum, { panel, area }, i) => (panel.id === id ? sum + pressures[i]! * area : sum), 0); // prettier-ignore
      const inertia = -solved.answer.acceleration[2]! * model.panels.get(id)!.material.density * model.panels.get(id)!.thickness * ((structure.panels[k]!.xs.at(-1)! - structure.panels[k]!.xs[0]!) * (structure.panels[k]!.ys.at(-1)! - structure.panels[k]!.ys[0]!)); // prettier-ignore
      expect(Math.abs(up! - pressure - inertia)).toBeLessThan(1e-6 * Math.abs(up!));
    });
  });

  it('so do their moments about x and y, with what bolts carry in bending', () => {
    const { pressing, u } = solved.answer;
    structure.panels.forEach((panel, k) => {
      // shears act in one plane and balance each other there: no moment
      let [, x, y] = loadOn(plate, k, solved) as [number, number, number];
      const scale = Math.abs(x) + Math.abs(y);
      for (const bolt of forces.bolts) {
        if (bolt.panel !== panel.id) continue;
        x -= bolt.pull * bolt.y;
        y += bolt.pull * bolt.x;
      }
      for (let i = panel.ties[0]; i < panel.ties[1]; i++) {
        const { mx, my } = tieForce(structure.ties[i]!, u);
        x += mx;
        y += my;
      }
      for (let i = panel.contacts[0]; i < panel.contacts[1]; i++) {
        const [n] = structure.contacts[i]!.nodes;
        x += pressing[i]! * structure.coordinates[3 * n + 1]!;
        y -= pressing[i]! * structure.coordinates[3 * n]!;
      }
      expect(Math.abs(x)).toBeLessThan(1e-6 * scale);
      expect(Math.abs(y)).toBeLessThan(1e-6 * scale);
    });
  });

  it('names the largest of each kind, and the load case that the worst of several comes from', () => {
    const { pull, shear, contact, weld } = forces.largest;
    expect(pull!.pull).toBe(Math.max(...forces.bolts.map((bolt) => bolt.pull)));
    expect(shear!.shear).toBe(Math.max(...forces.bolts.map((bolt) => bolt.shear)));
    expect(contact!.force).toBe(Math.max(...forces.contacts.map((c) => c.force)));
    expect(weld).toBeNull();
    expect(model.panels.get(pull!.panel)!.bolts.map(({ id }) => id)).toContain(pull!.id);
    const half = { ...forces, largest: { ...forces.largest, pull: { ...pull!, pull: pull!.pull / 2 } } };
    const worst = worstFixings([
      { solved: { ...solved, variant: 7 }, forces: half },
      { solved, forces },
    ]);
    expect(worst.pull).toEqual({ force: pull, situation, loading: solved.loading, variant: 0 });
    expect(worst.weld).toBeNull();
  });
});

it('the supports’ vertical forces carry the whole plate, and a leaning leg pulls more than its vertical part', () => {
  const plate = ready(sampleModel('small'), 0.2);
  const solved = solvedLoading(plate, 'service-down');
  const { supports, largest } = fixingForces(plate, solved);
  const down = solved.applied.reduce((sum, value, i) => (i % 6 === 2 ? sum - value : sum), 0);
  expect(supports.reduce((sum, { vertical }) => sum + vertical, 0) / down).toBeCloseTo(1, 9);
  for (const { vertical, along, inPlan, state } of supports) {
    expect(state).toBe('carries');
    expect(along).toBeGreaterThan(vertical);
    expect(along).toBeCloseTo(Math.hypot(vertical, ...inPlan), 6);
  }
  expect(largest.support!.along).toBe(Math.max(...supports.map(({ along }) => along)));
  const slack = fixingForces(plate, solvedLoading(plate, 'service-up')).supports;
  expect(slack.map(({ state, vertical }) => [state, vertical])).toEqual(slack.map(() => ['slack', 0]));
});

describe('a welded panel pulled off its tubes', () => {
  const model = sampleModel('small', (raw) => {
    (raw as { panels: unknown }).panels = { A2: 'welded-4' };
  });
  const plate = ready(model, 0.1);
  const solved = solvedLoading(plate, 'service-up');
  const { welds, bolts, contacts } = fixingForces(plate, solved);

  it('hangs on its welds: force per length times length, less contact, is its load', () => {
    expect(bolts).toHaveLength(0);
    const [up] = loadOn(plate, 0, solved);
    const pull = welds.reduce((sum, weld) => sum + weld.pull * weld.length, 0);
    const pressed = contacts.reduce((sum, { force }) => sum + force, 0);
    expect(up).toBeGreaterThan(0);
    expect((pull - pressed) / up!).toBeCloseTo(1, 6);
  });

  it('has runs as long as the document’s, and shears that leave no force in its plane', () => {
    const runs = new Map<string, number>();
    for (const { id, length } of welds) runs.set(id, (runs.get(id) ?? 0) + length);
    for (const { side, length } of model.geometry.panels[0]!.weldRuns)
      expect(runs.get(`A2 ${side}`)! / length).toBeCloseTo(1, 6);
    const most = Math.max(...welds.map(({ resultant, length }) => resultant * length));
    let [x, y] = [0, 0];
    for (const { id, along, across, length } of welds) {
      const onMain = id.includes('main');
      x += (onMain ? along : across) * length;
      y += (onMain ? across : along) * length;
    }
    expect(Math.abs(x)).toBeLessThan(1e-6 * most);
    expect(Math.abs(y)).toBeLessThan(1e-6 * most);
  });
});
