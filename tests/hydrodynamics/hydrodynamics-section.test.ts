import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { hydrodynamicsOf } from '../../core/hydrodynamics/hydrodynamics-of.ts';
import { motionInSea } from '../../core/hydrodynamics/motion-in-sea.ts';
import { longTerm } from '../../core/hydrodynamics/sea-extremes.ts';
import { scatterField } from '../../core/hydrodynamics/sea-files.ts';
import { throughSea } from '../../core/hydrodynamics/through-sea.ts';
import { seaSpectrum } from '../../core/water/waves/sea-spectrum.ts';
import { seaAtPlate } from '../../core/hydrodynamics/sea-at-plate.ts';
import { hydrodynamicsSection } from '../../core/note/hydrodynamics-section.ts';
import { printIn } from '../../core/print-in.ts';

const small = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument;
const modelOf = (hydrodynamics: unknown) => {
  const raw = { ...small, hydrodynamics } as RawDocument;
  return appraise(raw, readDocument(raw), null).model;
};
const print = printIn('metric');

describe('the sea at the plate', () => {
  it('has at the very surface the significant height stated, and in deep water exp(−kz) of it for one period (linear theory)', () => {
    const document = { water: { depth: { si: 1e-6, typed: '' } }, hydrodynamics: { sea: { significantHeight: { si: 2, typed: '' }, peakPeriod: { si: 8, typed: '' }, peakedness: 3.3, source: 'x' } } }; // prettier-ignore
    const at = seaAtPlate(document as never)!;
    expect(at.significantHeight).toBeCloseTo(2, 4);
    const k = (2 * Math.PI) ** 2 / 64 / 9.80665;
    for (const [depth, part] of at.decay) expect(part).toBeCloseTo(Math.exp(-k * depth), 9);
  });
});

describe('the section on hydrodynamics', () => {
  const model = modelOf(small.hydrodynamics);
  const found = hydrodynamicsOf(model);

  it('never goes above the solid plate, and gains over the open grid', () => {
    const { quantities } = found.report;
    expect(quantities['addedMass.heave']!.value).toBeLessThan(quantities['addedMass.solid']!.value * 1.001);
    expect(found.open!.closed.addedMass).toBeGreaterThan(found.open!.bare.addedMass);
    expect(found.curve).toHaveLength(7);
    // gaps choke as the motion grows
    found.curve.reduce((before, now) => (expect(now.addedMass).toBeGreaterThan(before.addedMass * 0.99), now));
  });

  it('has its curve at the stated motion within the two lattices’ difference of the table', () => {
    const stated = found.curve[4]!;
    expect(Math.abs(stated.addedMass / found.report.quantities['addedMass.heave']!.value - 1)).toBeLessThan(0.1);
  });

  it('prints each number finite, with its ranges, figures and the caution on coefficients', () => {
    const section = hydrodynamicsSection(model, print);
    const text = JSON.stringify(section);
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(text).toContain('factor of two or more without tests');
    expect(section.blocks.filter(({ kind }) => kind === 'figure')).toHaveLength(3);
  });

  it('says what is not stated, and judges no drag without a motion', () => {
    const text = JSON.stringify(hydrodynamicsSection(modelOf({}), print));
    expect(text).toMatch(/motion: not stated.*sea: not stated.*bed: not stated.*growth: not stated/s);
    expect(text).not.toContain('Peak force');
    expect(JSON.stringify(hydrodynamicsSection(modelOf(undefined), print))).toContain('are not reckoned');
  });

  it('gives the force in each way that the motion is told, the storm’s and the long run’s largest waves', () => {
    const scatter = scatterField('Hs/Tp,5,7\n1,30,10\n2,5,20\n', 'table.csv');
    const made = modelOf({
      ...(small.hydrodynamics as object),
      wave: { height: '2 m', period: '7 s', source: 'x' },
      scatter,
    });
    const text = JSON.stringify(hydrodynamicsSection(made, print));
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    for (const words of ['stated motion', 'regular wave', 'Exceeded once in 50 years', 'table.csv', 'held still'])
      expect(text).toContain(words);
    const long = longTerm(made.document)!;
    // 65 states: (30 + 10) · 1 m + (5 + 20) · 2 m
    expect(long.meanHeight).toBeCloseTo(90 / 65, 12);
    expect(long.height.surface).toBeGreaterThan(2 * 1.8);
    expect(long.height.plate).toBeLessThan(long.height.surface);
  });

  it('moves a plate through the water in a storm as a simulation of the same float and link does', () => {
    const raw = JSON.parse(readFileSync('samples/tested.stillplate.json', 'utf8')) as RawDocument;
    const { model: tested } = appraise(raw, readDocument(raw), null);
    const sea = motionInSea(tested);
    if ('missing' in sea) throw new Error(sea.missing);
    const { addedMass, dragArea, stepped, countFrom } = sea;
    const same = [0.01, 5].map((amplitude) => ({ amplitude, addedMass, drag: dragArea }));
    const stated = tested.document.hydrodynamics!.sea!;
    const through = throughSea(tested, { S: seaSpectrum(stated), peakPeriod: stated.peakPeriod.si }, same, 1);
    if ('missing' in through) throw new Error(through.missing);
    const { rise } = through;
    const plate = stepped.plate.subarray(countFrom);
    const mean = plate.reduce((sum, z) => sum + z, 0) / plate.length;
    const deviation = Math.sqrt(plate.reduce((sum, z) => sum + (z - mean) ** 2, 0) / plate.length);
    // The water at the plate moves 0.05 m beside the plate's own motion; one history of twenty minutes scatters by some 5 %.
    expect(Math.abs(rise.sigma / deviation - 1)).toBeLessThan(0.25);
  });
});
