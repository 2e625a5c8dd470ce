import { describe, expect, it } from 'vitest';
import { fixingForces } from '../../../core/plate/results/fixing-forces.ts';
import { loadPath } from '../../../core/plate/results/load-path.ts';
import { partKinds } from '../../../core/plate/results/work-of-parts.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';

describe.each(['service-down', 'service-up', 'lift-in-air-down'])('the load of %s', (situation) => {
  const plate = ready(sampleModel('small'), 0.2);
  const solved = solvedLoading(plate, situation);
  const path = loadPath(plate, solved);
  const { toMainTubes, toCrossTubes, byInertia, tubes, energy, onPanels, onTubes } = path;

  it('is accounted for: what reaches tubes and what inertia takes is all that is on the panels', () => {
    const gross = Math.abs(onPanels) + Math.abs(onTubes);
    expect(toMainTubes.all + toCrossTubes.all + byInertia).toBeCloseTo(Math.abs(onPanels) / gross, 6);
    expect(Math.abs(tubes)).toBeCloseTo(Math.abs(onTubes) / gross, 9);
    for (const to of [toMainTubes, toCrossTubes]) expect(to.contact + to.bolts + to.welds).toBeCloseTo(to.all, 12);
  });

  it('goes by the forces that bolts and contact tell', () => {
    const { bolts, contacts } = fixingForces(plate, solved);
    const gross = Math.abs(onPanels) + Math.abs(onTubes);
    const pulls = bolts.reduce((sum, { pull }) => sum + pull, 0);
    const presses = contacts.reduce((sum, { force }) => sum + force, 0);
    // topside panels: a pull draws their tubes up
    const way = onPanels < 0 ? -1 : 1;
    expect(((toMainTubes.bolts + toCrossTubes.bolts) * gross) / (way * pulls)).toBeCloseTo(1, 9);
    expect(((toMainTubes.contact + toCrossTubes.contact) * gross) / (-way * presses)).toBeCloseTo(1, 9);
  });

  it('stores work in every kind of part that there is (no welds, rigid joints), and half of the load’s work in all', () => {
    expect(partKinds.reduce((sum, kind) => sum + energy[kind], 0)).toBeCloseTo(1, 12);
    for (const kind of partKinds)
      expect(energy[kind]).toBeGreaterThanOrEqual(kind === 'welds' || kind === 'joints' ? 0 : 1e-9);
  });
});
