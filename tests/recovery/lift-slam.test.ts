import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../core/appraise.ts';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { liftSlam } from '../../core/checks/panel-slam.ts';
import { panelBendingFourSides } from '../../core/checks/panel-bending-four-sides.ts';
import { mergePatch } from '../../core/document/merge-patch.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import type { MergePatch } from '../../core/document/schema.ts';
import { allowedHeight, liftOf, openLiftOf } from '../../core/recovery/lift-stages.ts';
import { recoveryReport } from '../../core/recovery/recovery-report.ts';
import { tipMotion } from '../../core/recovery/tip-motion.ts';
import { waveAtDepth } from '../../core/recovery/wave-zone.ts';

const raw = readDocumentText(readFileSync('samples/middle.stillplate.json', 'utf8'));
const withChange = (change: MergePatch) => modelOf(readDocument(mergePatch(raw, change) as typeof raw));
const model = withChange({});

describe('slam of the lift’s stages on panels', () => {
  const lift = liftOf(model)!;
  const down = lift.stages.find(({ id }) => id === 'splash-down')!;

  it('is ½ ρ C_s v² at the speed of hoist, tip and wave together (DNV-RP-N103, 4.3, from memory)', () => {
    const { Hs, Tz } = lift.sea;
    const lowering = model.document.recovery!.lift!.lowering.si;
    const relative = lowering + Math.hypot(tipMotion(lift.load.fields, Hs, Tz).speed, waveAtDepth(Hs, Tz, 0).speed);
    expect(down.slam!.speed).toBeCloseTo(relative, 12);
    expect(down.slam!.pressure).toBeCloseTo(0.5 * lift.load.density * lift.load.slamCoefficient * relative ** 2, 6);
    expect(lift.slamProved).toBeCloseTo(0.5 * model.mass.waterDensity * 5 * 0.7 ** 2, 6);
    expect(openLiftOf(model)!.slamProved).toBeNull();
  });

  it('bounds the sea: at the allowed height the slam is what panels are proved for, or another limit came first', () => {
    const slow = withChange({ loads: { crossing: { speed: '0.4 m/s' } } });
    const held = liftOf(slow)!;
    const height = allowedHeight(held, 9, ({ id }) => id === 'splash-down');
    const worst = held.at({ Hs: height, Tz: 9 }).find(({ id }) => id === 'splash-down')!.slam!.pressure;
    expect(worst / held.slamProved!).toBeGreaterThan(0.99);
    expect(worst / held.slamProved!).toBeLessThanOrEqual(1);
    expect(height).toBeLessThan(allowedHeight(lift, 9, ({ id }) => id === 'splash-down'));
  });

  it('is told where it is more than panels and fixings are proved for', () => {
    const ids = (change: MergePatch) => recoveryReport(withChange(change))!.findings.map(({ id }) => id);
    expect(ids({})).not.toContain('slam-beyond-proof');
    expect(ids({ loads: { crossing: { speed: '0.3 m/s' } } })).toContain('slam-beyond-proof');
  });

  it('gives each panel its force and its gravest row under that load', () => {
    const { rows } = checkRows(panelBendingFourSides, model);
    const found = liftSlam(model, rows)!;
    expect(found.panels.map(({ panel }) => panel)).toEqual(model.geometry.panels.map(({ id }) => id));
    for (const { panel, area, force, gravest } of found.panels) {
      expect(force).toBeCloseTo(found.worst.slam!.pressure * area, 6);
      expect(gravest!.loadCase).toBe('crossing the surface');
      expect(model.panels.get(panel)!.bays).toContain(gravest!.place);
    }
  });
});
