import { expect, it } from 'vitest';
import { supportSets } from '../../core/loads/support-set.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { loadedPlate } from './loaded-plate.ts';
import { fourCorners, hungBy } from './plates.ts';

const setsOf = (...changes: unknown[]) => {
  const document = demoDocument(...changes);
  return supportSets(document, loadedPlate(document).geometry);
};

it('lets a leaning leg act where its line, followed down from the hole, meets the tube’s axis (statics)', () => {
  const { suspension } = setsOf(hungBy('bridle', fourCorners, '4 m'));
  // the eye's hole stands 90 mm above the tube, the axis lies 75 mm below its top; apex over the middle at (1.65, 1.3)
  const arm = 0.09 + 0.075;
  const [first] = suspension.items;
  expect(first!.lean[0]).toBeCloseTo(1.65 / 4, 12);
  expect(first!.lean[1]).toBeCloseTo(1.3 / 4, 12);
  expect(first!.place.x).toBeCloseTo((-arm * 1.65) / 4, 12); // further out than the eye
  expect(first!.place.y).toBeCloseTo((-arm * 1.3) / 4, 12);
});

it('takes the pull in plan along the tube under the eye and along the nearest that crosses it', () => {
  const { suspension } = setsOf(hungBy('bridle', [...fourCorners.slice(0, 2), { id: 'S3', x: '1.3 m', y: '2.6 m' }]));
  const { mainTubes, crossTubes } = loadedPlate(demoDocument()).geometry;
  const name = (i: number) => [...mainTubes, ...crossTubes][i]!.id;
  expect(suspension.items.map(({ thrust }) => thrust.map(name).join(' '))).toEqual(['A 1', 'A 4', 'C 2']);
  expect(suspension.items.map(({ place }) => place.crossing)).toEqual(['A/1', 'A/4', null]);
});

it('hangs lines and struts upright; only a strut works both ways', () => {
  for (const [kind, oneWay] of [['line', true], ['strut', false]] as const) {
    const { suspension, padEyes, deck } = setsOf(hungBy(kind, kind === 'line' ? fourCorners.slice(0, 1) : fourCorners));
    expect(suspension.oneWay).toBe(oneWay);
    for (const { lean, place } of suspension.items) expect([...lean, place.x, place.y].every(Number.isFinite) && lean[0] === 0).toBe(true);
    expect([padEyes, deck]).toEqual([null, null]);
  } // prettier-ignore
});
