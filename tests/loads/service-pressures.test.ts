import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { loadedPlate } from './loaded-plate.ts';
import { allCases, waterOnly } from './plates.ts';

it('take every load factor off, also that of the weight: bay A2 of the small sample by hand', () => {
  const raw = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
  // by hand: larger share of the water's force 0.3261 of 2600 N, and the weight in water of 0.5870 m² of 5 mm once, 196.4 N,
  // and of what a quarter of a year grows on both its faces: 100 mm in two years down to 40 m, 1325 kg/m³, so 12.5 mm, 43.0 N
  const { value } = appraise(raw, readDocument(raw), null).quantities['panel.A2.load']!;
  const weight = 0.587 * 9.80665 * (0.005 * (7850 - 1026) + 2 * 0.0125 * (1325 - 1026));
  expect(Math.abs(value - (0.3261 * 2600 + weight))).toBeLessThan(0.5);
});

it('are the pressures over the factor where one factor is all there is', () => {
  const { situation } = loadedPlate(demoDocument(waterOnly, allCases));
  for (const id of ['lift-in-air-down', 'deck-down']) {
    const { pressures, servicePressures, loadFactor } = situation(id);
    expect(loadFactor).toBeGreaterThan(1);
    for (const [bay, p] of pressures) expect(servicePressures.get(bay)! / (p / loadFactor)).toBeCloseTo(1, 12);
  }
});

it('keep the weight that helps at one, and lose it where the plate rises with its own inertia', () => {
  const of = (speed: string, ...changes: unknown[]) =>
    loadedPlate(demoDocument(waterOnly, allCases, { loads: { crossing: { speed } } }, ...changes));
  const slow = of('0.5 m/s');
  const panel = slow.geometry.panels[0]!;
  const weight = (9.80665 * 7850 * panel.thicknessEnd * panel.area) / slow.report.shares.get('A1')!.solid;
  const up = slow.situation('crossing-up');
  expect([up.balance.acceleration, up.loadFactor]).toEqual([0, 1.5]);
  // p = 1.5 s − w, p_ser = s − w, so p − 1.5 p_ser = 0.5 w
  expect((up.pressures.get('A1')! - 1.5 * up.servicePressures.get('A1')!) / (0.5 * weight)).toBeCloseTo(1, 9);
  // p = γ s − w − m (γ F − W) / M with w = m g and W = M g where nothing can be missing: only γ is left
  const lossPerFace = { panel: '0 mm', tubeOutside: '0 mm', tubeInside: '0 mm' };
  const fast = of('3 m/s', { mass: { weld: 0 }, protection: { lossPerFace } }).situation('crossing-up');
  expect(fast.balance.acceleration).toBeGreaterThan(0);
  expect(fast.pressures.get('A1')! / fast.servicePressures.get('A1')!).toBeCloseTo(1.5, 9);
});
