import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { readDocument } from '../../core/document/read-document.ts';
import type { Model } from '../../core/model.ts';
import { boltPreload, boltShare, clampedStiffness } from '../../core/plate/mesh/bolt-preload.ts';
import { boltRanges } from '../../core/plate/results/bolt-ranges.ts';
import { balanceReport } from '../../core/plate/results/balance-report.ts';
import { fixingForces, type FixingForces } from '../../core/plate/results/fixing-forces.ts';
import { readyPlate, solveLoading } from '../../core/plate/solve-plate.ts';
import { drained } from '../../core/solve/drained.ts';

interface Raw {
  designs: Record<string, { fixing: Record<string, unknown> }>;
}
const modelWith = (preload?: object): Model => {
  const raw = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as Raw;
  if (preload) raw.designs['bolted-5']!.fixing['preload'] = { ...preload, source: 'assumed for this test' };
  return modelOf(readDocument({ ...raw }));
};
const forcesOf = (model: Model, id: string): FixingForces & { residual: number; settled: boolean } => {
  const plate = readyPlate(model, { size: 0.2 });
  const situation = model.loads.situations.find((s) => s.id === id)!;
  const solved = drained(solveLoading(plate, situation, { loading: 0, variant: 0, stage: 'contact' }));
  return {
    ...fixingForces(plate, solved),
    residual: balanceReport(plate, solved).residual,
    settled: solved.answer.settled,
  };
};

describe('stiffness of what a bolt clamps', () => {
  it('is that of two cones of 30° from washers of 1.5 d, their area summed up in slices (Shigley, from memory)', () => {
    for (const [l, d] of [[0.01, 0.012], [0.03, 0.016], [0.1, 0.012]] as const) {
      const n = 20000;
      let give = 0;
      for (let i = 0; i < n; i++) {
        const x = ((i + 0.5) * (l / 2)) / n;
        const wide = 1.5 * d + 2 * 0.5774 * x;
        give += (2 * (l / 2 / n)) / (210e9 * (Math.PI / 4) * (wide ** 2 - d ** 2));
      }
      expect(clampedStiffness(l, d, 210e9) * give).toBeCloseTo(1, 6);
    }
  }); // prettier-ignore
});

describe('preloaded bolts in the whole plate', () => {
  const force = 40e3;
  const model = modelWith({ force: '40 kN' });
  const { fixing } = model.geometry.panels[0]!.design;
  if (fixing.kind !== 'bolted') throw new Error('the sample is bolted');
  const [row, grade] = [model.catalogue.bolt(fixing.bolt), model.catalogue.boltClass(fixing.class)];
  const [down, up] = ['service-down', 'service-up'].map((id) => forcesOf(model, id)) as [ReturnType<typeof forcesOf>, ReturnType<typeof forcesOf>]; // prettier-ignore
  const loose = ['service-down', 'service-up'].map((id) => forcesOf(modelWith(), id));

  it('are in balance: what draws panel and tube together also presses them', () => {
    for (const one of [down, up]) {
      expect(one.settled).toBe(true);
      expect(one.residual).toBeLessThan(1e-9);
      for (const { preload } of one.bolts) expect(preload).toBe(force);
    }
  });
  it('take of a load on the joint the part k_b/(k_b + k_m), as long as the faces press', () => {
    const { geometry } = model;
    let held = 0;
    for (const { tube, inBolt, pull, parted } of [...down.bolts, ...up.bolts]) {
      if (parted) continue;
      held++;
      const { section, material } = model.tubes.get(tube)!;
      const [panel] = geometry.panels;
      const grip = panel!.thickness + (fixing.into === 'through-bolt with sleeve' ? section.height : section.wall);
      expect((inBolt - force) / pull).toBeCloseTo(boltShare(grip, row, material.youngModulus), 6);
    }
    expect(held).toBeGreaterThan(0);
  });
  it('feel less of a load that turns round than bolts without preload', () => {
    const most = (of: readonly FixingForces[]) => Math.max(...boltRanges(of.map(({ bolts }) => bolts)).map(({ range }) => range)); // prettier-ignore
    expect(most([down, up])).toBeLessThan(0.5 * most(loose));
    expect(most([down, up])).toBeGreaterThan(0);
  });
  it('carry all of the load once a small preload is overcome', () => {
    const weak = forcesOf(modelWith({ force: '10 N' }), 'service-up');
    const parted = weak.bolts.filter((bolt) => bolt.parted);
    expect(parted.length).toBeGreaterThan(0);
    for (const { inBolt, pull } of parted) expect(inBolt).toBe(pull);
  });
  it('are preloaded by a force or by a part of their strength: 0.7 f_ub A_s (EN 1993-1-8:2005, 3.6.1(2))', () => {
    const by = boltPreload({ ...fixing, preload: { ofStrength: 0.7, source: 'x' } }, row, grade);
    expect(by).toBeCloseTo(0.7 * grade.ultimate * row.tensileArea, 6);
    expect(() => modelWith({})).toThrow(/no value/);
    expect(() => modelWith({ force: '1 kN', ofStrength: 0.7 })).toThrow(/given twice/);
  });
});
