import { expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { fastenersOn } from '../../core/mass/fastener-bodies.ts';
import { demoModel } from '../checks/model-of.ts';

it('weighs a clamp as a bar of the bolt’s diameter round the tube, two legs with nut and washer, nothing drilled (worked by hand)', () => {
  const clamp = { designs: { deck: { fixing: { into: 'clamp', edgeDistance: '80 mm' } } } };
  const model = demoModel(clamp);
  const catalogue = catalogueWith();
  const bodies = model.geometry.panels.flatMap((each) => fastenersOn(each, model.tubes, catalogue));
  const panel = model.geometry.panels[0]!;
  expect(bodies.every(({ kind }) => kind === 'fasteners')).toBe(true);
  const bolt = panel.bolts.find(({ side }) => side === 'mainLow')!;
  const tube = model.tubes.get(bolt.tube)!;
  const row = catalogue.bolt('M12');
  const nut = (Math.sqrt(3) / 2) * row.headAcrossFlats ** 2 - (Math.PI / 4) * (12e-3 - 0.649519 * 1.75e-3) ** 2;
  const washer = (Math.PI / 4) * (row.washerOuter ** 2 - row.washerInner ** 2) * row.washerThickness;
  const leg = tube.section.height + 6e-3 + panel.thickness + row.washerThickness + row.nutHeight + 3.5e-3;
  const bar = (Math.PI / 4) * 12e-3 ** 2 * (2 * leg + 2 * Math.abs(bolt.y - tube.at));
  const body = bodies.find(({ centre }) => centre[0] === bolt.x && centre[1] === bolt.y)!;
  expect(body.volume).toBeCloseTo(bar + 2 * (nut * row.nutHeight + washer), 9);
  expect(body.inBore!.volume).toBe(0);
});
