import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { suspensionSlack } from '../../core/checks/suspension-slack.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';

const withService = (service: unknown, ...changes: unknown[]) => demoModel({ loads: { service } }, ...changes);
const water = { includes: ['inertia', 'drag'] };

it('holds the upward force without its factor against the weight in water (equilibrium)', () => {
  for (const safety of ['partial factors', 'allowable stress'] as const) {
    const { F_up, W_Rd } = valuesGiven(suspensionSlack, safety, { F: 13.5e3, gamma_F: 1.35, W: 12e3, i_W: 0 });
    expect([F_up, W_Rd]).toEqual([expect.closeTo(10e3, 6), 12e3]);
    expect(valuesGiven(suspensionSlack, safety, { W: 12e3, i_W: 1 }).W_Rd).toBe(0);
  }
});

it('lies between the weights with every tube sealed and every tube flooded (Archimedes)', () => {
  const { W_low, W_high } = valuesGiven(suspensionSlack, 'partial factors', {
    W: 12e3,
    W_sealed: 2e3,
    W_flooded: 13e3,
    i_W: 0,
  });
  expect([W_low, W_high]).toEqual([2e3, 13e3]);
  const net = valuesGiven(suspensionSlack, 'partial factors', { W: 1, W_sealed: 2e3, W_flooded: 13e3, i_W: 1 });
  expect([net.W_low, net.W_high]).toEqual([0, 0]);
});

it('fails when the water lifts more than the plate weighs, passes when it lifts less', () => {
  const verdict = (force: string) =>
    checkRows(suspensionSlack, withService({ ...water, force })).rows.find(
      ({ verdict }) => verdict !== 'not applicable',
    )!.verdict;
  expect([verdict('60 kN'), verdict('1 kN')]).toEqual(['fails', 'passes']);
});

it('fails when the force is net of the weight already and still upward', () => {
  const [row] = checkRows(
    suspensionSlack,
    withService({ force: '1 kN', includes: ['weight', 'inertia', 'drag'] }),
  ).rows;
  expect(row).toMatchObject({ verdict: 'fails', capacity: 0 });
});

it('reads force, factor and weights; asks only the upward force of service on what cannot push', () => {
  const model = withService(water);
  const up = situationOf(model, 'service-up');
  expect(reads(suspensionSlack, 'F', model, 'suspension', up)).toBeCloseTo(81e3, 6);
  expect(reads(suspensionSlack, 'gamma_F', model, 'suspension', up)).toBe(1.35);
  const { asBuilt, flooded, sealed } = model.mass.submergedWeight;
  expect(['W', 'W_flooded', 'W_sealed'].map((symbol) => reads(suspensionSlack, symbol, model, 'suspension'))).toEqual([
    asBuilt,
    flooded,
    sealed,
  ]);
  expect(reads(suspensionSlack, 'i_W', model, 'suspension')).toBe(0);
  expect(suspensionSlack.places(model)).toEqual(['suspension']);
  expect(suspensionSlack.applies(model, 'suspension', up)).toBe(true);
  for (const id of ['service-down', 'lost-panel-up', 'crossing-up'])
    expect(suspensionSlack.applies(model, 'suspension', situationOf(model, id))).toMatch(/lifts/);
  const strut = demoModel({ grid: { suspension: { kind: 'strut', apex: null } } });
  expect(suspensionSlack.applies(strut, 'suspension', situationOf(strut, 'service-up'))).toMatch(/strut/);
});
