import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { liftAFrame } from '../../core/checks/lift-a-frame.ts';
import { liftDrain } from '../../core/checks/lift-drain.ts';
import { liftLine } from '../../core/checks/lift-line.ts';
import { liftLoweringSpeed } from '../../core/checks/lift-lowering-speed.ts';
import { liftShackle } from '../../core/checks/lift-shackle.ts';
import { liftSlack } from '../../core/checks/lift-slack.ts';
import { liftSling } from '../../core/checks/lift-sling.ts';
import { liftWinch } from '../../core/checks/lift-winch.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import type { MergePatch } from '../../core/document/schema.ts';
import { mergePatch } from '../../core/document/merge-patch.ts';
import { liftOf } from '../../core/recovery/lift-stages.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';

const raw = readDocumentText(readFileSync('samples/middle.stillplate.json', 'utf8'));
const withLift = (lift: MergePatch = {}) =>
  modelOf(readDocument(mergePatch(raw, { recovery: { lift } }) as typeof raw));
const model = withLift();
const all = [liftAFrame, liftWinch, liftLine, liftSling, liftShackle, liftSlack, liftLoweringSpeed, liftDrain];
const rowsOf = (check: (typeof all)[number], of = model) => checkRows(check, of).rows;

it('none applies to a document that says nothing of a lift', () => {
  for (const check of all) {
    const rows = rowsOf(check, demoModel());
    expect(
      rows.map(({ verdict }) => verdict),
      check.id,
    ).toEqual(rows.map(() => 'not applicable'));
    expect(rows[0]!.reason).toMatch(/says nothing of/);
  }
});

describe('slings (0027/ND Rev 11, 7.3.1, worked by hand)', () => {
  const given = (g_m: number, g_r: number) => valuesGiven(liftSling, 'partial factors', { F_h: 1e5, k_leg: 0.288675, k_SKL: 1.25, n: 4, F_br: 2e5, g_f: 1.3, g_c: 1.3, g_w: 1, g_m, g_r, k_min: 2.3 }); // prettier-ignore
  it('has the products 2.84, 2.79, 3.38, 4.23 for wire with a steel ferrule, polyester, HMPE, other fibre', () => {
    for (const [g_m, g_r, product] of [
      [1.5, 1.12, 2.84],
      [1.65, 1, 2.79],
      [2, 1, 3.38],
      [2.5, 1, 4.23],
    ] as const)
      // prettier-ignore
      expect(Math.abs(given(g_m, g_r).k_s! - product)).toBeLessThan(0.0055);
  });
  it('is never under 2.3 times termination and wear', () => expect(given(1.2, 1.25).k_s).toBeCloseTo(2.3 * 1.25, 9));
  it('pulls four legs of 60 degrees at a skew of 1.25 with 55.22 kN under 12 t at 1.3', () =>
    expect(valuesGiven(liftSling, 'partial factors', { F_h: 1.3 * 12_000 * 9.81, k_leg: 0.288675, k_SKL: 1.25 }).F_s! / 1e3).toBeCloseTo(55.22, 2)); // prettier-ignore
  it('takes the largest hook load of the stages, and the shackle the same pull against its mark', () => {
    const lift = liftOf(model)!;
    const hook = Math.max(...lift.stages.map((stage) => stage.hook));
    const [sling, shackle] = [rowsOf(liftSling)[0]!, rowsOf(liftShackle)[0]!];
    expect(sling.demand! / hook).toBeCloseTo(1.25 * 0.29243, 4);
    expect(shackle.demand).toBe(sling.demand);
    expect(shackle.capacity).toBe(46.6e3);
  });
});

describe('stage by stage', () => {
  it('sets the same hook load against frame, winch and line, each by its own capacity', () => {
    const stage = liftOf(model)!.stages.find(({ id }) => id === 'splash-up')!;
    for (const [check, capacity] of [
      [liftAFrame, 100e3],
      [liftWinch, 90e3],
      [liftLine, 290e3 / 3],
    ] as const) {
      const row = rowsOf(check).find(({ place }) => place === 'splash-up')!;
      expect(row.demand).toBe(stage.hook);
      expect(row.capacity).toBeCloseTo(capacity, 6);
      expect(row.utilisation).toBeCloseTo(stage.hook / capacity, 9);
    }
  });

  it('fails where the line goes slack: more than 0.9 of the least weight taken off (DNV-RP-N103, from memory)', () => {
    expect(valuesGiven(liftSlack, 'partial factors', { F_st: 1e4, k_slack: 0.9 }).F_max).toBeCloseTo(9e3, 9);
    const rough = withLift({ sea: { height: '1.2 m', period: '6 s' } });
    const row = rowsOf(liftSlack, rough).find(({ place }) => place === 'splash-down')!;
    expect(row.verdict).toBe('fails');
    expect(liftOf(rough)!.stages.find(({ id }) => id === 'splash-down')!.snaps).toBe(true);
  });

  it('sinks at √(2 W / (ρ C_D A)), of which four fifths may be used', () => {
    const v = valuesGiven(liftLoweringSpeed, 'partial factors', { v_c: 0.2, v_t: 0.1, W_w: 16e3, rho: 1025, C_D: 2.5, A_p: 15, k_v: 0.8 }); // prettier-ignore
    expect(v.v).toBeCloseTo(0.3, 12);
    expect(v.v_s).toBeCloseTo(Math.sqrt(32e3 / (1025 * 2.5 * 15)), 12);
    expect(v.v_max).toBeCloseTo(0.8 * v.v_s!, 12);
    expect(rowsOf(liftLoweringSpeed, withLift({ lowering: '2 m/s' }))[0]!.verdict).toBe('fails');
  });

  it('drains by Torricelli’s law, and fails by rule without a hole', () => {
    const t = valuesGiven(liftDrain, 'partial factors', {
      A: 0.97,
      h_0: 0.1437,
      a_h: 1.4137e-3,
      C_d: 0.6,
      g: 9.80665,
    }).t!;
    expect(t).toBeCloseTo((2 * 0.97 * Math.sqrt(0.1437)) / (0.6 * 1.4137e-3 * Math.sqrt(2 * 9.80665)), 9);
    expect(rowsOf(liftDrain)[0]!.demand).toBeCloseTo(model.mass.trays[0]!.drainTime!, 6);
    const closed = modelOf(readDocument(mergePatch(raw, { designs: { underside: { holes: [] } } }) as typeof raw));
    expect(rowsOf(liftDrain, closed)[0]).toMatchObject({
      verdict: 'fails',
      reason: expect.stringMatching(/lets the water out/),
    });
  });
});
