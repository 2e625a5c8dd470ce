import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { overrideFindings } from '../../core/catalogue/design-basis.ts';
import { suspensionSlack } from '../../core/checks/suspension-slack.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';

const withService = (service: unknown, ...changes: unknown[]) => demoModel({ loads: { service } }, ...changes);
const water = { includes: ['inertia', 'drag'] };

it('holds the upward force without its factor against 0.9 of the least weight in water (DNV-RP-N103, slack sling criterion, from memory)', () => {
  for (const safety of ['partial factors', 'allowable stress'] as const) {
    const given = { F: 13.5e3, gamma_F: 1.35, W: 12e3, i_W: 0, k_slack: 0.9 };
    const { F_up, W_Rd } = valuesGiven(suspensionSlack, safety, given);
    expect([F_up, W_Rd]).toEqual([expect.closeTo(10e3, 6), expect.closeTo(10.8e3, 6)]);
    expect(valuesGiven(suspensionSlack, safety, { ...given, i_W: 1 }).W_Rd).toBe(0);
  }
  for (const table of ['EN 1993', 'AISC 360 ASD'])
    expect(reads(suspensionSlack, 'k_slack', demoModel({ basis: { table } }), 'suspension')).toBe(0.9);
});

it('lies between the weights with every tube sealed and the most missing, and with every tube flooded (Archimedes)', () => {
  const { W_low, W_high } = valuesGiven(suspensionSlack, 'partial factors', {
    W_sealed: 2e3,
    W_flooded: 13e3,
    W_off: 3e3,
  });
  expect([W_low, W_high]).toEqual([-1e3, 13e3]);
});

it('bounds what may be missing by parts and boxes, worked by hand', () => {
  const model = demoModel({
    panels: { A3: null, B1: null, B3: null },
    protection: { coating: { thickness: '300 um', dryDensity: '1500 kg/m^3' }, lossPerFace: { panel: '0.4 mm' } },
    mass: { tolerance: -0.02 },
  });
  const part = (kind: string) => model.mass.parts.filter((p) => p.kind === kind);
  const both = [...part('welds'), ...part('coating'), ...part('tolerance')];
  expect(new Set(both.map(({ kind }) => kind)).size).toBe(3);
  const parts = both.reduce((sum, { mass, volume }) => sum + Math.abs(mass) + 1026 * Math.abs(volume), 0);
  // 3 tubes of 3.45 m and 4 of 2.45 m between the outer ones’ faces, 150 mm square; one panel of 1.07 m × 1.27 m
  const boxes = 7850 * 0.6 * (3 * 3.45 + 4 * 2.45) * (0.0005 + 0.0002);
  const panels = 7850 * 1.07 * 1.27 * 0.0008;
  const W_off = reads(suspensionSlack, 'W_off', model, 'suspension');
  expect(W_off / (9.80665 * (parts + boxes + panels))).toBeCloseTo(1, 9);
  // what is taken off in truth stays below it
  expect(model.mass.submergedWeight.asBuilt - model.mass.least.water.weight).toBeLessThan(W_off);
  expect(model.mass.submergedWeight.asBuilt - model.mass.least.water.weight).toBeGreaterThan(0);
});

it('fails from 0.9 of the least weight on, and a looser part is a finding (k_slack)', () => {
  const W = withService(water).mass.least.water.weight;
  const verdict = (part: number, ...changes: unknown[]) =>
    checkRows(suspensionSlack, withService({ ...water, force: `${part * W} N` }, ...changes)).rows.find(
      ({ verdict }) => verdict !== 'not applicable',
    )!.verdict;
  expect([verdict(0.89), verdict(0.91)]).toEqual(['passes', 'fails']);
  const overrides = (value: number) => ({ basis: { overrides: [{ factor: 'k_slack', value, reason: 'client' }] } });
  expect(verdict(0.91, overrides(1))).toBe('passes');
  const ids = (value: number) => overrideFindings(demoDocument(overrides(value))).map(({ id }) => id);
  expect([ids(1), ids(0.8)]).toEqual([['factor-above-table'], []]);
});

it('takes half of a range as holding no weight, though the document names it: as the loads do', () => {
  const i_W = (measure: string) =>
    reads(suspensionSlack, 'i_W', withService({ includes: ['weight', 'drag'], measure }), 'suspension');
  expect([i_W('amplitude'), i_W('range')]).toEqual([1, 0]);
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
  const { flooded, sealed } = model.mass.submergedWeight;
  expect(['W', 'W_flooded', 'W_sealed'].map((symbol) => reads(suspensionSlack, symbol, model, 'suspension'))).toEqual([
    model.mass.least.water.weight,
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
