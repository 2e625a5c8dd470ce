import { expect, it } from 'vitest';
import { boltHydrogen } from '../../core/checks/bolt-hydrogen.ts';
import { boltClasses } from '../../core/catalogue/bolt-classes.ts';
import { modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const protectedWith = (changes: Record<string, unknown>, cathodic = true) =>
  modelWith((d) => {
    d.protection.cathodic = cathodic;
    Object.assign(d.designs.bolted.fixing, changes);
  });
const up = situationOf(modelWith(), 'service', 'up');

it('compares the largest hardness of the class (ISO 898-1 Table 3: 8.8 335 HV) with 350 HV (DNV-RP-B401, from memory)', () => {
  const model = protectedWith({});
  expect(readOf(boltHydrogen, 'H_max', model, 'A1', up)).toBe(335);
  expect(readOf(boltHydrogen, 'H_lim', model, 'A1', up)).toBe(350);
  expect(valuesGiven(boltHydrogen, 'partial factors', { H_max: 335 }).H_Ed).toBe(335);
  expect(valuesGiven(boltHydrogen, 'allowable stress', { H_max: 336 }).H_Ed).toBe(336);
  expect(boltHydrogen.rule!(model, 'A1', up)).toBeUndefined();
});

it('fails class 10.9 under cathodic protection, unless a document limits its hardness', () => {
  const hard = protectedWith({ class: '10.9' });
  expect(boltHydrogen.applies(hard, 'A1', up)).toBe(true);
  expect(boltHydrogen.rule!(hard, 'A1', up)).toMatch(/350 HV/);
  expect(
    boltHydrogen.applies(protectedWith({ class: '10.9', hardnessLimit: 'purchase order, 340 HV' }), 'A1', up),
  ).toMatch(/purchase order, 340 HV/);
  expect(boltHydrogen.applies(protectedWith({ class: '10.9' }, false), 'A1', up)).toMatch(/no cathodic protection/);
});

it('fails a carbon steel above class 8.8 (830 MPa, ISO 898-1 Table 3) whose hardness nothing limits; a weaker one cannot be judged', () => {
  const own = (ultimate: string) =>
    modelWith((d) => {
      d.protection.cathodic = true;
      Object.assign(d, {
        catalogue: {
          boltClasses: [
            {
              id: 'yard',
              title: 'Bolts of the yard',
              family: 'carbon steel',
              yield: '600 MPa',
              ultimate,
              source: null,
            },
          ],
        },
      });
      Object.assign(d.designs.bolted.fixing, { class: 'yard' });
    });
  expect(boltHydrogen.rule!(own('900 MPa'), 'A1', up)).toMatch(/Bolts of the yard may be harder/);
  expect(boltHydrogen.rule!(own('830 MPa'), 'A1', up)).toBeUndefined();
  expect(readOf(boltHydrogen, 'H_max', own('830 MPa'), 'A1', up)).toMatch(/hardnessLimit/);
  expect(boltHydrogen.rule!(protectedWith({ class: 'A4-80' }), 'A1', up)).toBeUndefined();
});

it('cannot judge a stainless bolt, whose standard sets no hardness', () => {
  expect(readOf(boltHydrogen, 'H_max', protectedWith({ class: 'A4-70' }), 'A1', up)).toMatch(/hardnessLimit/);
});

it('never finds a class softer than its least strength says (ISO 18265 Table A.1: 800 MPa is 250 HV, from memory)', () => {
  expect(valuesGiven(boltHydrogen, 'partial factors', { H_max: 335, f_ub: 800e6, c_H: 3.2e6 }).H_least).toBeCloseTo(
    250,
    6,
  );
  for (const { hardnessMax, ultimate, id } of boltClasses)
    if (hardnessMax)
      expect(hardnessMax, id).toBeGreaterThan(
        valuesGiven(boltHydrogen, 'partial factors', { H_max: hardnessMax, f_ub: ultimate, c_H: 3.4e6 }).H_least!,
      );
});

it('reads strength and the constant of hardness, and leaves a welded panel alone', () => {
  const model = protectedWith({});
  expect(readOf(boltHydrogen, 'f_ub', model, 'A1', up)).toBe(800e6);
  expect(readOf(boltHydrogen, 'c_H', model, 'A1', up)).toBeCloseTo(3.4e6, 3);
  const welded = modelWith((d) => {
    d.protection.cathodic = true;
    Object.assign(d.panels, { A2: 'welded' });
  });
  expect(boltHydrogen.applies(welded, 'A1', up)).toBe(true);
  expect(boltHydrogen.applies(welded, 'A2', up)).toBe('the panel is welded');
  expect([boltHydrogen.demand, boltHydrogen.capacity]).toEqual(['H_Ed', 'H_lim']);
});
