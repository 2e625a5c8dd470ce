import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { boltTension } from '../../core/checks/bolt-tension.ts';
import { tubeStressInputs } from '../../core/checks/fatigue-tube-stress.ts';
import { tubeBending } from '../../core/checks/tube-bending.ts';
import { tubeShear } from '../../core/checks/tube-shear.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { solvedKey, type SituationForces } from '../../core/loads/solved-forces.ts';
import type { Model } from '../../core/model.ts';
import { larger, solvedForcesOf } from '../../core/plate/solved-forces-of.ts';
import { drained } from '../../core/solve/drained.ts';
import { demoDocument } from '../geometry/demo-document.ts';

/** Four tubes held at their crossings, which lie close together: the arms outside are cantilevers, whatever is stiff. */
const arms = {
  grid: {
    arrangement: 'stacked',
    mainTubes: { count: 2, spacing: '0.8 m', overhang: '2 m' },
    crossTubes: { count: 2, spacing: '0.6 m', overhang: '1.5 m' },
    suspension: {
      kind: 'strut',
      apex: null,
      attachments: [
        { id: 'S1', x: '0 m', y: '0 m' },
        { id: 'S2', x: '0.6 m', y: '0 m' },
        { id: 'S3', x: '0 m', y: '0.8 m' },
        { id: 'S4', x: '0.6 m', y: '0.8 m' },
      ],
    },
  },
  panels: { A1: null, A3: null, B1: null, B3: null },
};

describe('a plate whose arms are statically determinate', () => {
  const document = demoDocument(arms);
  const model = modelOf(document);
  const forces = drained(solvedForcesOf(model));
  const both = modelOf(document, forces);

  it('has the same moment and shear at the root of its arms by hand and by the solver (statics: to nine digits)', () => {
    for (const check of [tubeBending, tubeShear]) {
      const { rows } = checkRows(check, both);
      const service = rows.filter(({ loadCase }) => loadCase === 'service');
      expect(service.length).toBe(8);
      for (const { both: sides, place } of service) {
        expect(sides!.hand.demand!, place).toBeGreaterThan(0);
        expect(sides!.solver.demand! / sides!.hand.demand!, `${check.id} ${place}`).toBeCloseTo(1, 9);
        expect(sides!.solver.utilisation! / sides!.hand.utilisation!, place).toBeCloseTo(1, 9);
      }
    }
  });

  it('hangs from four legs that carry a quarter each (symmetry)', () => {
    const { legs } = forces.situations['service-down']!;
    const { force } = model.loads.situations.find(({ id }) => id === 'service-down')!;
    for (const id of ['S1', 'S2', 'S3', 'S4']) expect((4 * legs[id]!.along) / Math.abs(force)).toBeCloseTo(1, 9);
  });

  it('hangs from two of the legs that are left when one is lost, half on each (statics: its middle is between them)', () => {
    const lost = model.loads.situations.find(({ id }) => id === 'lost-leg-down')!;
    const { loadings, legs } = forces.situations['lost-leg-down']!;
    expect(loadings).toBe(lost.loadings.length * 4);
    for (const id of ['S1', 'S2', 'S3', 'S4']) expect((2 * legs[id]!.along) / Math.abs(lost.force)).toBeCloseTo(1, 9);
  });

  it('gives fatigue the same stress of the tubes as by hand at both ends of a cycle (statics: to nine digits)', () => {
    for (const [symbol, input] of Object.entries(tubeStressInputs))
      for (const id of both.tubes.keys()) {
        const hand = input.read(model, id, model.loads.swing.up) as number;
        const read = input.read(both, id, both.loads.swing.up) as number;
        expect(read, `${symbol} ${id}`).toBeGreaterThanOrEqual(hand);
        if (symbol.startsWith('M')) expect(read / hand, `${symbol} ${id}`).toBeCloseTo(1, 9);
      }
  });

  it('balances, needs no mesh of panels, and says which plate it is of', () => {
    expect(forces.mesh.residual).toBeLessThan(1e-12);
    expect(forces.mesh.stressError).toBe(0);
    expect(forces.key).toBe(solvedKey(document));
  });
});

describe('a plate with bolted panels', () => {
  const document = demoDocument({ forces: { from: 'hand and solver', mesh: '200 mm' } });
  const model = modelOf(document);
  const forces = drained(solvedForcesOf(model));

  it('gives every case that has its data and both ends of a cycle, each loading on each set of supports, but those with a bolt row or a panel lost', () => {
    const byHandAlone = new Set(['lost bolt row', 'lost panel']);
    const { situations, swing } = model.loads;
    const judged = situations.filter(({ loadCase, missing }) => !missing && !byHandAlone.has(loadCase));
    const wanted = [...judged, swing.up, swing.down];
    expect(wanted.map(({ loadCase }) => loadCase)).toContain('lost leg');
    expect(Object.keys(forces.situations).sort()).toEqual(wanted.map(({ id }) => id).sort());
    for (const { id, loadings, present } of wanted)
      expect(forces.situations[id]!.loadings, id).toBe(loadings.length * present.length);
  });

  it('names the worst bolts of each panel, its stress and its dip, and takes plain JSON there and back', () => {
    const { panels } = forces.situations['service-up']!;
    expect(Object.keys(panels).sort()).toEqual(['A1', 'A3', 'B1', 'B3']);
    for (const [id, { pull, shear, weld, stress, membrane, dip }] of Object.entries(panels)) {
      const bolts = model.panels.get(id)!.bolts.map((bolt) => bolt.id);
      expect(bolts).toContain(pull!.bolt);
      expect(bolts).toContain(shear!.bolt);
      expect(weld).toBeNull();
      // hung on its bolts: the worst carries its even share of the panel's force or more (equilibrium)
      const { panelForces } = model.loads.situations.find((s) => s.id === 'service-up')!;
      expect(pull!.force).toBeGreaterThan(Math.abs(panelForces.get(id)!) / bolts.length);
      expect(stress!).toBeGreaterThan(membrane!);
      expect(dip!).toBeGreaterThan(0);
    }
    expect(JSON.parse(JSON.stringify(forces))).toEqual(forces);
  });

  it('takes the larger of two loadings, whichever way round', () => {
    const [a, b] = ['service-up', 'service-down'].map((id) => forces.situations[id]!) as [
      SituationForces,
      SituationForces,
    ];
    const most = larger(a, b);
    expect(larger(b, a)).toEqual({ ...most, buckling: expect.anything() as unknown });
    for (const tube in most.tubes) expect(most.tubes[tube]!.M).toBe(Math.max(a.tubes[tube]!.M, b.tubes[tube]!.M));
    expect(most.panels.A1!.pull!.force).toBe(Math.max(a.panels.A1!.pull!.force, b.panels.A1!.pull!.force));
    expect(most.buckling!.factor).toBe(Math.min(a.buckling!.factor, b.buckling!.factor));
    expect(larger(a, { ...b, settled: false }).settled).toBe(false);
  });

  it('tells of a mesh that is too coarse for the stresses', () => {
    expect(forces.mesh.size).toBe(0.2);
    expect(forces.mesh.stressError).toBeGreaterThan(0.02);
  });
});

describe('a plate with each bolt row and each panel lost in turn', () => {
  const document = demoDocument({ forces: { from: 'hand and solver', mesh: '200 mm', losses: true } });
  const model = modelOf(document);
  const forces = drained(solvedForcesOf(model));
  const whole = drained(solvedForcesOf(modelOf(demoDocument({ forces: { from: 'hand and solver', mesh: '200 mm' } }))));
  const lostOnes = (loadCase: string) => model.loads.situations.filter((s) => s.loadCase === loadCase);

  it('solves every loading of those cases, rows each with all of them and panels with their own', () => {
    const rows = new Set(model.geometry.panels.flatMap(({ id, bolts }) => bolts.map(({ side }) => `${id} ${side}`)));
    expect(rows.size).toBe(16);
    for (const { id, loadings, present } of lostOnes('lost bolt row'))
      expect(forces.situations[id]!.loadings).toBe(rows.size * loadings.length * present.length);
    for (const { id, loadings, present } of lostOnes('lost panel'))
      expect(forces.situations[id]!.loadings).toBe(loadings.length * present.length);
    for (const id in whole.situations) expect(forces.situations[id]).toEqual(whole.situations[id]);
  });

  it('lays what a lost row carried on the bolts that are left: the worst carries their even share or more (equilibrium)', () => {
    for (const { id, panelForces } of lostOnes('lost bolt row').filter(({ direction }) => direction === 'up'))
      for (const { id: panel, bolts } of model.geometry.panels) {
        const inRow = Math.min(...[...new Set(bolts.map(({ side }) => side))].map((side) => bolts.filter((bolt) => bolt.side === side).length)); // prettier-ignore
        const left = bolts.length - inRow;
        expect(forces.situations[id]!.panels[panel]!.pull!.force).toBeGreaterThan(Math.abs(panelForces.get(panel)!) / left); // prettier-ignore
      }
  });

  it('judges bolts and panels in those cases by both, where without them they are judged by hand alone', () => {
    const bothOf = (given: Model) =>
      checkRows(boltTension, given).rows.filter(({ loadCase, both }) => loadCase === 'lost bolt row' && both !== null);
    expect(bothOf(modelOf(document, forces)).length).toBeGreaterThan(0);
    expect(bothOf(modelOf(demoDocument({ forces: { from: 'hand and solver', mesh: '200 mm' } }), whole))).toEqual([]);
  });
});

describe('forces and the plate that they are of', () => {
  it('are of one plate however its quantities are typed and whatever it is called, and of another once it changes', () => {
    const key = (...changes: unknown[]) => solvedKey(demoDocument(...changes));
    const own = key();
    expect(key({ designs: { deck: { thickness: '0.01 m' } } })).toBe(own);
    expect(key({ project: { name: 'Another name' }, units: 'inch' })).toBe(own);
    expect(key({ forces: { from: 'hand and solver', choose: [{ check: 'bolt-tension', take: 'hand', reason: 'x' }] } })).toBe(own);
    const { designs, panels, ...rest } = demoDocument();
    const renamed = Object.fromEntries(Object.entries(designs).map(([name, design]) => [`${name}-2`, design]));
    const placed = Object.fromEntries(Object.entries(panels).map(([bays, name]) => [bays, `${name}-2`]));
    expect(solvedKey({ ...rest, designs: { ...renamed, spare: Object.values(designs)[0]! }, panels: placed })).toBe(own);
    expect(key({ designs: { deck: { thickness: '11 mm' } } })).not.toBe(own);
    expect(key({ loads: { service: { force: '61 kN' } } })).not.toBe(own);
    expect(key({ basis: { table: 'AISC 360 ASD' } })).not.toBe(own);
    expect(key({ forces: { mesh: '50 mm' } })).not.toBe(own);
    expect(key({ forces: { losses: true } })).not.toBe(own);
  });

  it('refuses a mesh that would never end, and says how wide is wide enough', () => {
    const fine = modelOf(demoDocument({ forces: { mesh: '1 mm' } }));
    expect(() => drained(solvedForcesOf(fine))).toThrow(/thousand of them.*Take wider cells/);
  });
}); // prettier-ignore

it('covers both ends of what joints may give: no force is smaller than at either end, and some are larger than in between', () => {
  const stated = (factor: number) => ({
    stiffness: 'stated',
    inPlane: `${2000 * factor} kN*m/rad`,
    outOfPlane: `${50 * factor} kN*m/rad`,
    source: 'invented',
  });
  const forcesWith = (joints: object) =>
    drained(solvedForcesOf(modelOf(demoDocument({ grid: { joints }, panels: arms.panels })))).situations[
      'service-down'
    ]!.tubes;
  const ranged = forcesWith({ ...stated(1), range: { low: 0.1, high: 10, source: 'invented' } });
  let beyond = 0;
  for (const factor of [0.1, 1, 10])
    for (const [id, { M, T }] of Object.entries(forcesWith(stated(factor)))) {
      expect(ranged[id]!.M).toBeGreaterThanOrEqual(M * (1 - 1e-9));
      expect(ranged[id]!.T).toBeGreaterThanOrEqual(T * (1 - 1e-9));
      if (factor === 1 && ranged[id]!.M > 1.01 * M) beyond++;
    }
  expect(beyond).toBeGreaterThan(0);
}, 60_000);

it('covers them with a bolt row or a panel lost too: no force is smaller than at either end', () => {
  const joints = (factor: number) => ({
    stiffness: 'stated',
    inPlane: `${2000 * factor} kN*m/rad`,
    outOfPlane: `${50 * factor} kN*m/rad`,
    source: 'invented',
  });
  const cases = ['lost-bolt-row-up', 'lost-panel-up'];
  const forcesWith = (own: object) => {
    const document = demoDocument({ grid: { joints: own }, panels: { A1: null, A3: null, B1: null }, forces: { from: 'hand and solver', mesh: '200 mm', losses: true } }); // prettier-ignore
    const { situations } = drained(solvedForcesOf(modelOf(document)));
    return cases.map((id) => situations[id]!);
  };
  const ranged = forcesWith({ ...joints(1), range: { low: 0.1, high: 10, source: 'invented' } });
  let beyond = 0;
  for (const factor of [0.1, 1, 10])
    forcesWith(joints(factor)).forEach(({ loadings, tubes, panels }, i) => {
      const all = ranged[i]!;
      expect(all.loadings).toBe(3 * loadings);
      for (const [id, { M, T }] of Object.entries(tubes)) {
        expect(all.tubes[id]!.M).toBeGreaterThanOrEqual(M * (1 - 1e-9));
        expect(all.tubes[id]!.T).toBeGreaterThanOrEqual(T * (1 - 1e-9));
        if (factor === 1 && all.tubes[id]!.M > 1.01 * M) beyond++;
      }
      for (const [id, { pull }] of Object.entries(panels))
        expect(all.panels[id]!.pull?.force ?? 0).toBeGreaterThanOrEqual((pull?.force ?? 0) * (1 - 1e-9));
    });
  expect(beyond).toBeGreaterThan(0);
}, 120_000);
