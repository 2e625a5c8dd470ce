import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { hangingStability } from '../../core/checks/hanging-stability.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, missingFrom, reads, situationOf } from './model-of.ts';

const deg = Math.PI / 180;

it('takes the larger tilt, and holds it to 5 degrees (common practice, no source)', () => {
  for (const safety of ['partial factors', 'allowable stress'] as const) {
    expect(valuesGiven(hangingStability, safety, { phi_air: 2 * deg, phi_water: 3 * deg }).phi).toBe(3 * deg);
    expect(valuesGiven(hangingStability, safety, { phi_air: 4 * deg, phi_water: 3 * deg }).phi).toBe(4 * deg);
    expect(valuesGiven(hangingStability, safety, { phi_open: 2 * deg, phi_lim: 5 * deg }).k_open).toBeCloseTo(0.4, 12);
  }
  expect(reads(hangingStability, 'phi_lim', demoModel(), 'suspension') / deg).toBeCloseTo(5, 12);
});

it('bounds the tilt in air by the offset of the centre of mass under the point of hang: 100 mm at 1 m is 5.71 degrees (statics)', () => {
  expect(valuesGiven(hangingStability, 'partial factors', { e: 0.1, h_G: 1 }).phi_high! / deg).toBeCloseTo(5.71, 2);
});

it('reads tilt, offset and height of the model, and agrees with the statics of its mass', () => {
  // One panel left: the centre of mass moves towards it, the bridle stays over the middle.
  const model = demoModel({ panels: { A3: null, B1: null, B3: null } });
  const { hanging, centre } = model.mass;
  const read = (symbol: string) => reads(hangingStability, symbol, model, 'suspension');
  expect(read('h_G')).toBe(hanging.heightAboveMass);
  expect(read('e')).toBeCloseTo(Math.hypot(centre[0] - 1.65, centre[1] - 1.3), 9);
  expect(read('e')).toBeGreaterThan(0.01);
  expect(read('phi_air')).toBeCloseTo(Math.atan(read('e') / read('h_G')), 9);
  expect(read('phi_water')).toBeGreaterThan(0);
  expect(read('phi_open')).toBe(hanging.worstOpenBay!.tilt);
  expect(checkRows(hangingStability, model)).toMatchObject({
    findings: [],
    rows: [{ verdict: 'passes', situation: null }],
  });
});

it('finds a tilt in air above that of the offset, and none below it: two struts leave a line to turn about (statics)', () => {
  const { mass, ...rest } = demoModel({
    panels: { A3: null, B1: null, B3: null },
    grid: {
      suspension: {
        kind: 'strut',
        apex: null,
        attachments: [
          { id: 'S1', x: '0 m', y: '1.3 m' },
          { id: 'S2', x: '3.3 m', y: '1.3 m' },
        ],
        eye: { height: '600 mm' },
      },
    },
  });
  const air = (tilt: number) => {
    const model = {
      ...rest,
      mass: { ...mass, hanging: { ...mass.hanging, tilt: { ...mass.hanging.tilt, air: [tilt, 0] as const } } },
    };
    return checkRows(hangingStability, model).findings.map(({ id }) => id);
  };
  const { hanging, centre } = mass;
  const offset = Math.atan2(Math.hypot(centre[0] - 1.65, centre[1] - 1.3), hanging.heightAboveMass);
  expect(hanging.free).toBe('about a line');
  expect(hanging.tilt.air[0]).toBeLessThan(0.99 * offset);
  expect(checkRows(hangingStability, { ...rest, mass }).findings).toEqual([]);
  expect([air(0.99 * offset), air(1.01 * offset)]).toEqual([[], ['second-opinion']]);
});

it('says for information what the tilt stays at where no panel can be lost', () => {
  const bare = demoModel({ panels: { A1: null, A3: null, B1: null, B3: null } });
  expect(reads(hangingStability, 'phi_open', bare, 'suspension')).toBe(
    reads(hangingStability, 'phi_water', bare, 'suspension'),
  );
});

it('fails by rule when the point of hang is below the centre of mass', () => {
  const model = demoModel();
  expect(hangingStability.rule!(model, 'suspension', situationOf(model))).toBeUndefined();
  const { mass } = model;
  const turned = { ...model, mass: { ...mass, hanging: { ...mass.hanging, heightAboveMass: -0.1 } } };
  expect(checkRows(hangingStability, turned).rows[0]).toMatchObject({
    verdict: 'fails',
    reason: expect.stringMatching(/turns over/),
  });
});

it('cannot be judged when the plate floats, and is not asked when three attachments hold it level', () => {
  const { mass, ...rest } = demoModel();
  const floats = {
    ...rest,
    mass: { ...mass, hanging: { ...mass.hanging, tilt: { ...mass.hanging.tilt, water: null }, worstOpenBay: null } },
  };
  for (const symbol of ['phi_water', 'phi_open'])
    expect(missingFrom(hangingStability, symbol, floats, 'suspension')).toMatch(/floats/);
  const held = demoModel({
    grid: {
      suspension: {
        kind: 'strut',
        apex: null,
        attachments: [
          { id: 'S1', x: '0 m', y: '0 m' },
          { id: 'S2', x: '3.3 m', y: '0 m' },
          { id: 'S3', x: '1.1 m', y: '2.6 m' },
        ],
      },
    },
  });
  expect(hangingStability.applies(held, 'suspension', situationOf(held))).toMatch(/level/);
  expect(hangingStability.applies(demoModel(), 'suspension', situationOf(held))).toBe(true);
});
