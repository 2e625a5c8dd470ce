import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { hydrodynamicsOf } from '../../core/hydrodynamics/hydrodynamics-of.ts';
import { motionInWave } from '../../core/hydrodynamics/motion-in-wave.ts';
import { costOfRates } from '../../core/options/cost-of-rates.ts';
import { countedWork } from '../../core/options/counted-work.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { waterGainRows } from '../../core/options/water-gain-rows.ts';
import { waterGains } from '../../core/options/water-gains.ts';
import { printIn } from '../../core/print-in.ts';
import { localGravity } from '../../core/water/sea-water.ts';
import { waveMotion } from '../../core/water/waves/dispersion.ts';

const small = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument & {
  hydrodynamics: Record<string, unknown>;
};
const system = { stiffness: '20 kN/m', damping: '2 kN s/m', link: 'strut', source: 'made for this test' };
const modelWith = (more: object, option: string | null = null) => {
  const raw = { ...small, ...more } as RawDocument;
  return modelOfOption(raw, readDocument(raw), option);
};
const withSystem = (changed: object = {}) => ({ hydrodynamics: { ...small.hydrodynamics, system: { ...system, ...changed } } }); // prettier-ignore

describe('what options gain in the water', () => {
  it('shares one solution between options that only differ in thickness', () => {
    expect(hydrodynamicsOf(modelWith({}, 'heavy-10'))).toBe(hydrodynamicsOf(modelWith({})));
  });

  it('gains less added mass and less reaction with the middle bay open, each within its range', () => {
    const [closed, open] = [waterGains(modelWith({})), waterGains(modelWith({}, 'middle-open'))];
    for (const name of ['addedMass', 'dragCoefficient', 'dragArea', 'atMotion'] as const) {
      const [a, b] = [closed[name], open[name]];
      if ('missing' in a || 'missing' in b) throw new Error(`${name} is missing`);
      for (const { low, best, high } of [a, b]) expect([low <= best, best <= high]).toEqual([true, true]);
      if (name === 'addedMass' || name === 'atMotion') expect(b.best).toBeLessThan(a.best);
    }
  });

  it('counts a gain for each kg and for each unit of the user’s own rates, and says which rates are missing', () => {
    const rates = { currency: 'crowns', source: 'made for this test', labourPerHour: 60, platePerKg: 3, cutPerMetre: 4, perHole: 2, perBolt: 5, recoatPerHole: 1, minutesToPlacePanel: 20, minutesToFitBolt: 3, minutesToRemoveBolt: 3, removals: 0 }; // prettier-ignore
    const model = modelWith({ rates });
    const { gained, perKg, perCost } = waterGains(model);
    if ('missing' in gained || 'missing' in perKg || 'missing' in perCost) throw new Error('a gain is missing');
    const steel = model.mass.parts.filter(({ kind }) => kind === 'panels' || kind === 'fasteners');
    expect(perKg.addedMass * steel.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(gained.addedMass, 6);
    expect(perCost.addedMass * costOfRates(countedWork(model.geometry), model.document.rates).total!).toBeCloseTo(gained.addedMass, 6); // prettier-ignore
    expect(waterGains(modelWith({ rates: { currency: 'crowns', source: 'x' } })).perCost).toHaveProperty('missing', expect.stringContaining('platePerKg')); // prettier-ignore
    expect(waterGains(modelWith({})).perCost).toEqual({ missing: 'no rates are stated' });
  });

  it('pays on the hook: a bay closed lifts more, in a lower sea; nothing is told where no lift is described', () => {
    const [closed, open] = [waterGains(modelWith({})).lift, waterGains(modelWith({}, 'middle-open')).lift];
    if ('missing' in closed || 'missing' in open) throw new Error('the lift is missing');
    expect(closed.hook).toBeGreaterThan(open.hook);
    expect(closed.allowedHeight).toBeLessThan(open.allowedHeight);
    expect(waterGains(modelWith({ recovery: undefined })).lift).toEqual({ missing: 'no lift is described' });
  });

  it('pulls at its line in service at least with the weight in water and the force stated, as statics has it', () => {
    const model = modelWith({});
    const { line } = waterGains(model);
    if ('missing' in line) throw new Error('the line is missing');
    expect(line.pull).toBeGreaterThanOrEqual(
      0.999 * (model.mass.submergedWeight.flooded + model.loads.swing.amplitude),
    );
  });

  it('says what is missing where the motion is not stated, and prints no number that is none', () => {
    const gains = waterGains(modelWith({ hydrodynamics: {} }));
    expect(gains.dragArea).toHaveProperty('missing');
    const text = JSON.stringify(waterGainRows(gains, printIn('metric'), null));
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
    expect(JSON.stringify(waterGainRows(waterGains(modelWith({})), printIn('inch'), null))).toContain('ft²/lb');
  });
});

describe('the plate in a wave of the stated sea', () => {
  const inWave = (changed: object, deeper = 0) => {
    const model = modelWith(withSystem(changed));
    const { curve, report } = hydrodynamicsOf(model);
    const found = motionInWave(model, curve, report.quantities['drag.referenceArea']!.value, { deeper });
    if ('missing' in found) throw new Error(found.missing);
    return { ...found, model };
  };

  it('stands still under a link so stiff that nothing moves it: the motion through the water is then the wave’s own', () => {
    const { plate, through, model } = inWave({ stiffness: '1000 MN/m' });
    const { sea, bed } = model.document.hydrodynamics!;
    const { rise } = waveMotion(sea!.significantHeight.si / 2, (2 * Math.PI) / sea!.peakPeriod.si, bed!.si, -model.document.water.depth.si, localGravity(model.document)); // prettier-ignore
    expect(plate).toBeLessThan(1e-3 * rise);
    expect(through / rise).toBeCloseTo(1, 3);
  });

  it('has added mass and drag of the very motion that comes out, and pulls less when it hangs deeper', () => {
    const { through, addedMass, model, pull } = inWave({ stiffness: '1000 MN/m' });
    const { curve } = hydrodynamicsOf(model);
    const k = curve.findIndex(({ amplitude }) => amplitude > through);
    const [a, b] = [curve[k - 1]!, curve[k]!];
    const part = (through - a.amplitude) / (b.amplitude - a.amplitude);
    expect(addedMass).toBeCloseTo(a.addedMass + part * (b.addedMass - a.addedMass), 6);
    expect(inWave({ stiffness: '1000 MN/m' }, 3).pull).toBeLessThan(pull);
  });

  it('says that float and take-off are not stated where they are not', () =>
    expect(waterGains(modelWith({})).atWave).toEqual({ missing: 'float and power take-off are not stated' }));
});
