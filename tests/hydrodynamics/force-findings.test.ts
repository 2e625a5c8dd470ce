import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { forceFindings } from '../../core/hydrodynamics/force-findings.ts';
import { statedForces } from '../../core/hydrodynamics/water-forces.ts';
import { hydrodynamicsSection } from '../../core/note/hydrodynamics-section.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { printIn } from '../../core/print-in.ts';

const small = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument & {
  loads: { service: Record<string, unknown> };
  hydrodynamics: Record<string, unknown>;
};
const rawWith = (service: object, hydrodynamics: object = {}): RawDocument =>
  ({
    ...small,
    loads: { ...small.loads, service: { ...small.loads.service, ...service } },
    hydrodynamics: { ...small.hydrodynamics, ...hydrodynamics },
  }) as RawDocument;
const modelWith = (service: object, hydrodynamics: object = {}) => {
  const raw = rawWith(service, hydrodynamics);
  return modelOfOption(raw, readDocument(raw), null);
};
const moving = (amplitude: string, period: string) => ({ motion: { amplitude, period, source: 'x' } });

describe('the service force beside what the water presses with in the stated motion', () => {
  it('is told where it is less, as a finding of the document, with a force that is no less than the thin solid plate’s inertia (DNV-RP-C205, appendix D, from memory)', () => {
    const raw = rawWith({ force: '0.4 kN', measure: 'amplitude' });
    const { findings, model } = appraise(raw, readDocument(raw), null);
    const found = findings.filter(({ id }) => id === 'water-above-service');
    expect(found).toHaveLength(1);
    expect(found[0]!.place).toBe('loads.service.force');
    expect(found[0]!.text).toMatch(/stated motion.*by theory.*the loads take 0\.400 kN each way/);
    const [{ best }] = statedForces(model) as [ReturnType<typeof statedForces>[number]];
    // by hand: 0.749 ρ (π/4) a² b (2π/6 s)² 0.25 m with a = 1.125 m, b = 2.165 m, ρ = 1026 kg/m³; gaps take a little, tubes' height and growth add
    const inertia = 0.749 * 1026 * (Math.PI / 4) * 1.125 ** 2 * 2.165 * (Math.PI / 3) ** 2 * 0.25;
    expect(best.inertia).toBeGreaterThan(inertia);
    expect(best.inertia).toBeLessThan(1.3 * inertia);
  });

  it('is half of a range, and not compared where it is a mean or holds no water', () => {
    expect(forceFindings(modelWith({ force: '1 kN', measure: 'range' }))).toHaveLength(1);
    expect(forceFindings(modelWith({ force: '1 kN', measure: 'amplitude' }))).toEqual([]);
    expect(forceFindings(modelWith({ force: '0.1 kN', level: 'mean' }))).toEqual([]);
    expect(forceFindings(modelWith({ force: '0.1 kN', includes: ['current'] }))).toEqual([]);
  });

  it('is held against inertia alone where it is said to hold nothing else', () => {
    const of = (force: string) => forceFindings(modelWith({ force, measure: 'amplitude', includes: ['inertia'] }));
    const [{ best }] = statedForces(modelWith({})) as [ReturnType<typeof statedForces>[number]];
    expect(of(`${(best.inertia * 1.01).toFixed(1)} N`)).toEqual([]);
    expect(of(`${(best.inertia * 0.99).toFixed(1)} N`)[0]!.text).toContain('of inertia alone');
    expect(best.peak).toBeGreaterThan(1.05 * best.inertia);
  });

  it('is told exactly where the force with the largest coefficients is above it, however far: nothing is left out to be quick', () => {
    for (const [amplitude, period] of [
      ['0.02 m', '4 s'],
      ['0.1 m', '3 s'],
      ['0.5 m', '9 s'],
      ['1.5 m', '8 s'],
    ] as const) {
      const motion = moving(amplitude, period);
      const [{ high, best }] = statedForces(modelWith({}, motion)) as [ReturnType<typeof statedForces>[number]];
      for (const times of [0.5, 0.97, 1.03, 1.5, 3, 10]) {
        const model = modelWith({ force: `${times * high} N`, measure: 'amplitude' }, motion);
        const found = forceFindings(model);
        expect(found).toHaveLength(times < 1 ? 1 : 0);
        if (times < 1 && times * high > best.peak) expect(found[0]!.text).toContain('below the high end');
      }
    }
  });

  it('has its place in the note too: loud where the loads take less, with half of a range', () => {
    const model = modelWith({ force: '1 kN', measure: 'range' });
    const { blocks } = hydrodynamicsSection(model, printIn('metric'));
    const loud = JSON.stringify(blocks.filter((block) => block.kind === 'list' && block.tone === 'loud'));
    expect(loud).toContain('a range: 0.500 kN each way');
    expect(loud).toContain('raise the service force');
  });
});
