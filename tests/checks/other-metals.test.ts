import { expect, it } from 'vitest';
import type { Check } from '../../core/checks/check.ts';
import { checks } from '../../core/checks/index.ts';
import { boltSleeve } from '../../core/checks/bolt-sleeve.ts';
import { boltSlip } from '../../core/checks/bolt-slip.ts';
import { boltThreadEngagement } from '../../core/checks/bolt-thread-engagement.ts';
import { boltWallPull } from '../../core/checks/bolt-wall-pull.ts';
import { crossingFlare } from '../../core/checks/crossing-flare.ts';
import { eyeFootPlate } from '../../core/checks/eye-foot-plate.ts';
import { eyeNetTension } from '../../core/checks/eye-net-tension.ts';
import { panelBendingFourSides } from '../../core/checks/panel-bending-four-sides.ts';
import { panelBuckling } from '../../core/checks/panel-buckling.ts';
import { weldFlare } from '../../core/checks/weld-flare.ts';
import { weldLength } from '../../core/checks/weld-length.ts';
import type { Model } from '../../core/model.ts';
import { demoModel, missingFrom, reads } from './model-of.ts';
import { welded } from './welded.ts';

const panelOf = (material: string, change: object = {}) => ({ designs: { deck: { material, ...change } } });
const tubesOf = (material: string, change: object = {}) => ({
  grid: { mainTubes: { material, ...change }, crossTubes: { material, ...change } },
});
const alloy = tubesOf('6082-T6 extruded');
const eyesOf = (material: string, change: object = {}) => ({
  grid: { suspension: { eye: { material, ...change } } },
});
const firstPlace = (check: Check, model: Model): string => check.places(model)[0]!;

it('yielding and stability of stainless steel and aluminium are divided by 1.1, of carbon steel by the basis (EN 1993-1-4, 5.1; EN 1999-1-1, Table 6.1: recommended values, from memory)', () => {
  const ofPanel = (check: Check, symbol: string, material: string) =>
    reads(check, symbol, demoModel(panelOf(material)), 'A1');
  const onPanels = checks.filter(({ id, inputs }) => /^panel-/.test(id) && (inputs.gamma_M0 || inputs.gamma_M1));
  expect(onPanels.map(({ id }) => id)).toEqual([
    'panel-bending-four-sides',
    'panel-bending-two-sides',
    'panel-bending-bolts',
    'panel-stress',
    'panel-shear',
    'panel-buckling-by-hand',
    'panel-buckling',
  ]);
  for (const check of onPanels) {
    const symbol = check.inputs.gamma_M0 ? 'gamma_M0' : 'gamma_M1';
    expect([check.id, ofPanel(check, symbol, 'S355 plate')]).toEqual([check.id, 1]);
    for (const other of ['1.4404 plate', '1.4462 plate', '5083-H111', '6082-T6 plate'])
      expect([check.id, other, ofPanel(check, symbol, other)]).toEqual([check.id, other, 1.1]);
  }
  const onEyes = checks.filter(({ id, inputs }) => /^eye-/.test(id) && inputs.gamma_M0 && inputs.f_y);
  expect(onEyes.map(({ id }) => id)).toEqual(['eye-net-tension', 'eye-tear-out', 'eye-bearing', 'eye-foot']);
  for (const check of [...onEyes, eyeFootPlate]) {
    const factor = (material: string) => {
      const model = demoModel(eyesOf(material));
      return reads(check, 'gamma_M0', model, firstPlace(eyeNetTension, model));
    };
    expect([check.id, factor('S355 plate'), factor('1.4404 plate')]).toEqual([check.id, 1, 1.1]);
  }
  // A basis that asks for more keeps it; one that asks for less is not let through.
  const basis = (value: number) => ({
    basis: { overrides: [{ factor: 'gamma_M0', value, reason: 'National Annex, invented' }] },
  });
  const withFactor = (value: number, material: string) =>
    reads(panelBendingFourSides, 'gamma_M0', demoModel(panelOf(material), basis(value)), 'A1');
  expect([withFactor(1.25, '1.4404 plate'), withFactor(1.05, '1.4404 plate')]).toEqual([1.25, 1.1]);
  expect([withFactor(1.05, 'S355 plate'), withFactor(1.25, 'S355 plate')]).toEqual([1.05, 1.25]);
  expect(panelBuckling.inputs.gamma_M1!.only).toBe('partial factors');
});

it('the walls under bolts take the factor of their own tube, in both kinds of basis', () => {
  for (const [check, symbol] of [
    [boltWallPull, 'gamma_M0'],
    [boltSleeve, 'gamma_M1'],
  ] as const) {
    const on = (material: string) => demoModel(tubesOf(material));
    const both = (model: Model) => [reads(check, symbol, model, 'A1'), reads(check, 'gamma_R', model, 'A1')];
    expect(both(on('S355H hot finished'))).toEqual([1, 1]);
    expect(both(on('6082-T6 extruded'))).toEqual([1.1, 1.1]);
    const allowable = demoModel({ basis: { table: 'AISC 360 ASD' } });
    expect(reads(check, 'gamma_R', allowable, 'A1')).toBe(1.67);
  }
});

it('slip on aluminium: tests below 200 MPa, a slip factor no larger than by what is clamped, nothing by AISC 360 (EN 1999-1-1, 8.5.9 and Table 8.6, from memory)', () => {
  const slip = (mu: number, material: string, thickness: string, ...changes: object[]) =>
    demoModel(
      panelOf(material, {
        thickness,
        fixing: { shear: 'slip-resistant', slipFactor: { value: mu, source: 'blasted' } },
      }),
      ...changes,
    );
  const why = (model: Model) => missingFrom(boltSlip, 'mu', model, 'A1');
  expect(why(slip(0.2, '5083-H111', '10 mm'))).toMatch(/tests of slip on Aluminium EN AW-5083/);
  // Walls of 8 mm are clamped with the panel.
  expect(reads(boltSlip, 'mu', slip(0.27, '6082-T6 plate', '8 mm'), 'A1')).toBe(0.27);
  expect(why(slip(0.28, '6082-T6 plate', '8 mm'))).toMatch(/16\.0 mm together .* 0\.27 at the most, and 0\.28/);
  expect(reads(boltSlip, 'mu', slip(0.33, '6082-T6 plate', '12 mm'), 'A1')).toBe(0.33);
  expect(why(slip(0.34, '6082-T6 plate', '12 mm'))).toMatch(/0\.33 at the most/);
  expect(reads(boltSlip, 'mu', slip(0.37, '6082-T6 plate', '20 mm'), 'A1')).toBe(0.37);
  expect(reads(boltSlip, 'mu', slip(0.4, '6082-T6 plate', '24 mm'), 'A1')).toBe(0.4);
  expect(why(slip(0.2, '6082-T6 plate', '3 mm'))).toMatch(/none below 12 mm/);
  expect(why(slip(0.2, '6082-T6 plate', '8 mm', { basis: { table: 'AISC 360 ASD' } }))).toMatch(/holds for steel/);
  expect(reads(boltSlip, 'mu', slip(0.5, 'S355 plate', '5 mm'), 'A1')).toBe(0.5);
});

it('a rule for steel is not lent to aluminium: flare throats, tapped pads, eyes’ foot plates; a weld run has eight throats', () => {
  expect(missingFrom(crossingFlare, 'k_f', demoModel(alloy), 'A/1')).toMatch(/one of steel.*trial weld/);
  const onCorner = welded({ metal: '5356 on 5083' }, { material: '5083-H111' });
  expect(missingFrom(weldFlare, 'k_f', demoModel(alloy, onCorner), 'A1')).toMatch(/one of steel/);
  const proved = welded(
    { metal: '5356 on 5083', cornerThroat: { value: '3 mm', source: 'trial weld 4' } },
    { material: '5083-H111' },
  );
  expect(reads(weldFlare, 'k_f', demoModel(alloy, proved), 'A1')).toBe(0.3125);
  expect(reads(weldLength, 'k_l', demoModel(alloy, onCorner), 'A1')).toBe(8);
  expect(reads(weldLength, 'k_l', demoModel(welded()), 'A1')).toBe(6);
  const pad = (material: string) =>
    demoModel(
      panelOf('S355 plate', {
        fixing: { into: 'tapped pad', pad: { material, thickness: '16 mm', width: '40 mm', throat: '4 mm' } },
      }),
    );
  expect(missingFrom(boltThreadEngagement, 'f_ud', pad('6082-T6 plate'), 'A1')).toMatch(/a rule for welds in Alum/);
  expect(reads(boltThreadEngagement, 'f_ud', pad('S355 plate'), 'A1')).toBe(470e6);
  const footPlate = { thickness: '20 mm', bolt: 'M16', class: '8.8', gauge: '100 mm', pitch: '80 mm', edge: '35 mm', end: '35 mm', pairs: 2 }; // prettier-ignore
  const foot = (material: string) => demoModel(eyesOf(material, { footPlate }));
  const place = firstPlace(eyeFootPlate, foot('S355 plate'));
  expect(missingFrom(eyeFootPlate, 'f_yf', foot('6082-T6 plate'), place)).toMatch(/a rule for eyes of Aluminium/);
  expect(reads(eyeFootPlate, 'f_yf', foot('S355 plate'), place)).toBe(345e6);
});
