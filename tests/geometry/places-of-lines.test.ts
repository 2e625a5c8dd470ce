import { expect, it } from 'vitest';
import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { geometryOf } from '../../core/geometry/geometry-of.ts';
import { placesOfLines } from '../../core/geometry/places-of-lines.ts';
import { demoDocument } from './demo-document.ts';

const catalogue = catalogueWith();

it.each([[{}], [{ units: 'inch' }]])('lists the bolts that stand in lines, so that the list puts them where they were (%o)', (change) => {
  const document = demoDocument(change);
  const places = placesOfLines(document, catalogue, 'deck')!;
  const [was] = geometryOf(document, catalogue).panels;
  const [is] = geometryOf(demoDocument(change, { designs: { deck: { fixing: { places, pitch: null, edgeDistance: null } } } }), catalogue).panels;
  expect(is!.bolts.length).toBe(was!.bolts.length);
  // As typed: to half a micrometre, or half a ten-thousandth of an inch.
  is!.bolts.forEach(({ x, y }, i) => expect(Math.hypot(x - was!.bolts[i]!.x, y - was!.bolts[i]!.y)).toBeLessThan(2e-6));
  expect(places.slice(0, 2)).toEqual(
    'units' in change ? [{ x: '1.1811 in', y: '1.1811 in', from: 'low x, low y' }, expect.anything()]
      : [{ x: '30 mm', y: '30 mm', from: 'low x, low y' }, { x: '30 mm', y: '202.857 mm', from: 'low x, low y' }],
  );
}); // prettier-ignore

it('has nothing to list for a design that no panel has', () =>
  expect(placesOfLines(demoDocument({ panels: { A1: null, A3: null, B1: null, B3: null } }), catalogue, 'deck')).toBeNull()); // prettier-ignore
