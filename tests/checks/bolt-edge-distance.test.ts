import { expect, it } from 'vitest';
import { boltEdgeDistance } from '../../core/checks/bolt-edge-distance.ts';
import { fixing, modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const service = situationOf(modelWith(), 'service', 'up');

it('EN 1993-1-8 Table 3.3: 1.2 d0, 21.6 mm for a hole of 18 mm', () => {
  const { e_req, e_low, e_high } = valuesGiven(boltEdgeDistance, 'partial factors', { d_0: 0.018, k_e: 1.2 });
  expect(e_req! * 1e3).toBeCloseTo(21.6, 9);
  expect([e_low! * 1e3, e_high! * 1e3]).toEqual([9, 36]);
  expect([boltEdgeDistance.demand, boltEdgeDistance.capacity]).toEqual(['e_req', 'e_1']);
});

it.each([
  ['M16', 22],
  ['M20', 26],
  ['M24', 30],
  ['M30', 38],
])('AISC 360 Table J3.4M, %s: %i mm, 2 or 3 mm more in an oversize hole', (bolt, mm) => {
  const model = modelWith(fixing({ bolt, hole: 'normal', edgeDistance: '60 mm' }));
  expect(readOf(boltEdgeDistance, 'e_min', model, 'A1', service)).toBeCloseTo(mm / 1000, 9);
  expect(readOf(boltEdgeDistance, 'C_2', model, 'A1', service)).toBe(0);
  const oversize = modelWith(fixing({ bolt, hole: 'oversize', edgeDistance: '60 mm' }));
  expect(readOf(boltEdgeDistance, 'C_2', oversize, 'A1', service)).toBeCloseTo(
    Number(bolt.slice(1)) > 22 ? 0.003 : 0.002,
    9,
  );
  expect(valuesGiven(boltEdgeDistance, 'allowable stress', { e_min: mm / 1000, C_2: 0.002 }).e_req! * 1e3).toBeCloseTo(
    mm + 2,
    9,
  );
});

it('AISC 360 Table J3.4 in inches: 3/4 in for a bolt of 1/2 in; says which sizes the table leaves out', () => {
  const inch = modelWith(() => {}, 'inch');
  expect(readOf(boltEdgeDistance, 'e_min', inch, 'A1', service)).toBeCloseTo(0.75 * 0.0254, 9);
  expect(readOf(boltEdgeDistance, 'C_2', modelWith(fixing({ hole: 'oversize' }), 'inch'), 'A1', service)).toBeCloseTo(
    0.0254 / 16,
    9,
  );
  expect(readOf(boltEdgeDistance, 'e_min', modelWith(), 'A1', service)).toMatch(/does not list/);
});

it('does not apply to a welded panel', () => {
  const model = modelWith((d) => Object.assign(d.panels, { A2: 'welded' }));
  const up = situationOf(model, 'service', 'up');
  expect(boltEdgeDistance.applies(model, 'A1', up)).toBe(true);
  expect(boltEdgeDistance.applies(model, 'A2', up)).toBe('the panel is welded');
});
