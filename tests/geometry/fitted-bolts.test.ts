import { expect, it } from 'vitest';
import { boltBearingPanel } from '../../core/checks/bolt-bearing-panel.ts';
import { boltTearOut } from '../../core/checks/bolt-tear-out.ts';
import { fixing, modelWith, readOf, situationOf } from '../checks/bolt-model.ts';

const [loose, fitted, oversize] = [
  modelWith(fixing({ shear: 'clearance' })),
  modelWith(fixing({ shear: 'fitted' })),
  modelWith(fixing({ shear: 'fitted', hole: 'oversize' })),
];
const boltedPanel = (model: typeof loose) => model.geometry.panels.find(({ bolts }) => bolts.length > 0)!;

it('gives a fitted M12 a hole of 12 mm (EN 1090-2, from memory), a loose one 13 mm (EN 1090-2, Table 11), and leaves an oversize hole as it is', () => {
  const holes = (model: typeof loose) => {
    const { bolts, cutouts } = boltedPanel(model);
    const drilled = cutouts.filter(({ purpose }) => purpose === 'bolt').map(({ diameter }) => diameter);
    return [...new Set([...bolts.map(({ hole }) => hole), ...drilled])];
  };
  expect([holes(loose), holes(fitted), holes(oversize)]).toEqual([[0.013], [0.012], [0.015]]);
});

it('leaves the panel the rings of steel between both holes', () => {
  const { bolts, area } = boltedPanel(loose);
  expect(boltedPanel(fitted).area - area).toBeCloseTo(
    ((bolts.length * Math.PI) / 4) * (0.012 ** 2 - 0.013 ** 2) * -1,
    12,
  );
});

it('drills that hole into both walls of the tubes too: the rings of steel stay there', () => {
  const steel = (model: typeof loose) =>
    model.mass.parts.filter(({ kind }) => kind === 'tubes').reduce((sum, { mass }) => sum + mass, 0);
  const rings = loose.geometry.panels
    .filter(({ design }) => design.fixing.kind === 'bolted')
    .flatMap(({ bolts }) => bolts)
    .map(({ tube }) => loose.tubes.get(tube)!)
    .reduce((sum, { material, section }) => sum + material.density * 2 * section.nominalWall, 0);
  expect(steel(fitted) - steel(loose)).toBeCloseTo((rings * Math.PI * (0.013 ** 2 - 0.012 ** 2)) / 4, 9);
});

it('is the hole that bearing and tear-out read', () => {
  for (const check of [boltBearingPanel, boltTearOut])
    expect(
      [loose, fitted].map((model) => readOf(check, 'd_0', model, 'A1', situationOf(model, 'service', 'up'))),
    ).toEqual([0.013, 0.012]);
});
