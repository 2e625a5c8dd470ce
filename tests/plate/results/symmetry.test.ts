import { describe, expect, it } from 'vitest';
import { deflections } from '../../../core/plate/results/deflections.ts';
import { errorEstimate } from '../../../core/plate/results/error-estimate.ts';
import { fixingForces } from '../../../core/plate/results/fixing-forces.ts';
import { panelStress } from '../../../core/plate/results/panel-stress.ts';
import { tubeForces, tubeQuantities } from '../../../core/plate/results/tube-forces.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';

/** The small sample is the same seen from either end and from either side: x = 0.96 m and y = 0.49 m are its middle lines. */
describe.each(['service-down', 'service-up'])('a symmetric plate under %s has symmetric results', (situation) => {
  const plate = ready(sampleModel('small'), 0.1);
  const solved = solvedLoading(plate, situation);
  const close = (a: number, b: number, scale: number): void => expect(Math.abs(a - b)).toBeLessThan(1e-6 * scale);

  it('tubes', () => {
    const [A, B, one, two, three, four] = tubeForces(plate, solved) as [
      ...ReturnType<typeof tubeForces>,
    ] as ReturnType<typeof tubeForces>;
    for (const [p, q] of [[A, B], [one, four], [two, three]] as const)
      for (const quantity of tubeQuantities) {
        const scale = Math.max(Math.abs(A!.largest[quantity].value), Math.abs(one!.largest[quantity].value));
        close(Math.abs(p!.largest[quantity].value), Math.abs(q!.largest[quantity].value), scale);
      }
    for (const { at, ...columns } of [A!, B!, one!])
      for (const quantity of tubeQuantities)
        columns[quantity].forEach((value) => expect(Number.isFinite(value)).toBe(true));
  }); // prettier-ignore

  it('panels, and their errors', () => {
    const [first, , last] = panelStress(plate, solved);
    close(first!.largest!.stress.vonMises, last!.largest!.stress.vonMises, first!.largest!.stress.vonMises);
    const { panels } = errorEstimate(plate, solved);
    close(panels[0]!.all, panels[2]!.all, 1);
    for (const { forces, cells, top, bottom } of [first!, last!])
      for (const values of [forces, cells, top, bottom])
        values.forEach((value) => expect(Number.isFinite(value)).toBe(true));
    const { panels: dips } = deflections(plate, solved);
    close(dips[0]!.dip!.rise, dips[2]!.dip!.rise, Math.abs(dips[0]!.dip!.rise));
  });

  it('bolts: each pulls and shears as its images in both middle lines', () => {
    const { bolts, largest } = fixingForces(plate, solved);
    let images = 0;
    for (const bolt of bolts)
      for (const [x, y] of [[1.92 - bolt.x, bolt.y], [bolt.x, 0.98 - bolt.y]] as const) {
        const image = bolts.find((other) => Math.hypot(other.x - x, other.y - y) < 1e-6);
        if (!image) continue;
        images++;
        close(bolt.pull, image.pull, largest.pull!.pull);
        close(bolt.shear, image.shear, largest.shear!.shear);
      }
    expect(images).toBe(2 * bolts.length);
  }); // prettier-ignore
});
