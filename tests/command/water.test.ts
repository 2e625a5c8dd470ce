import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

describe('stillplate water', () => {
  it('takes a plan without a document, thin and at zero amplitude: 2:1 has 0.757 (DNV-RP-C205, appendix D, from memory)', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'plan.json'), '{ "rectangles": [[0, 0, 20, 10]], "density": 1025 }');
      const { code, out } = await ran(['water', '--plan', 'plan.json', '--cells', '40', '--json'], folder);
      const json = JSON.parse(out);
      expect(code).toBe(0);
      expect(json.schema).toBe('stillplate-water/1');
      // 10 x 20 m carries 1,218,659 kg (panel method, derived for this project).
      expect(Math.abs(json.quantities['addedMass.heave'].value / 1_218_659 - 1)).toBeLessThan(0.003);
      expect(json.quantities['addedMass.heave'].unit).toBe('kg');
      expect(json.quantities['addedMass.ratio'].value).toBeCloseTo(1, 9);
    }));

  it('refuses a plan that is none, with exit code 2', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'plan.json'), '{ "rectangles": [[0, 0, 20, 0]], "density": 1025 }');
      const { code, err } = await ran(['water', '--plan', 'plan.json'], folder);
      expect(code).toBe(2);
      expect(err).toMatch(/rectangles\.0: A rectangle .* has no area/);
      expect((await ran(['water', '--plan', 'none.json'], folder)).err).toMatch(/plan cannot be read/);
    }));

  it('refuses what a plan by itself has no use for, and says that no bay is left to close', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'plan.json'), '{ "rectangles": [[0, 0, 20, 10]], "density": 1025 }');
      const { code, err } = await ran(['water', '--plan', 'plan.json', '--bed', '30m', '--order'], folder);
      expect(code).toBe(2);
      expect(err).toMatch(/no use for --bed, --order/);
      const { out } = await ran(['water', 'samples/small.stillplate.json', '--cells', '16', '--order', '--json']);
      expect(JSON.parse(out).unjudged).toContainEqual({ id: 'order', reason: 'no bay of this option is left open to be closed' }); // prettier-ignore
    }));

  it('takes motion, bed and growth of the document where the options are left out, and the options before them', async () => {
    const asked = async (...words: string[]) => JSON.parse((await ran(['water', 'samples/small.stillplate.json', '--cells', '24', '--json', ...words])).out).quantities; // prettier-ignore
    const { hydrodynamics: stated } = JSON.parse(await readFile('samples/small.stillplate.json', 'utf8'));
    const [plain, same, clean] = [
      await asked(),
      await asked('--amplitude', stated.motion.amplitude.replace(' ', ''), '--period', stated.motion.period.replace(' ', ''), '--bed', stated.bed.replace(' ', '')), // prettier-ignore
      await asked('--growth', '0', '--amplitude', '0m'),
    ];
    const figures = (of: object) => Object.entries(of).map(([id, { value, low, high }]) => [id, value, low, high]);
    expect(figures(same)).toEqual(figures(plain));
    expect(plain['growth.thickness'].value).toBeGreaterThan(0);
    expect(clean['growth.thickness']).toBeUndefined();
    expect(clean['drag.kc']?.value ?? 0).toBe(0);
    expect(plain['drag.kc'].value).toBeGreaterThan(0);
  });

  it('gives a document’s plate its parts, wave and range', async () => {
    const { code, out } = await ran(['water', 'samples/small.stillplate.json', '--option', 'base', '--amplitude', '0.3m', '--period', '7s', '--wave-height', '2m', '--bed', '60m', '--cells', '40', '--json']); // prettier-ignore
    expect(code).toBe(0);
    const { quantities } = JSON.parse(out);
    for (const id of [
      'addedMass.heave',
      'addedMass.solid',
      'addedMass.ratio',
      'drag.coefficient',
      'drag.referenceArea',
      'drag.area',
      'drag.kc',
      'water.density',
      'wave.motionAtPlate',
      'force.peak',
      'panel.A1.shareOfInertia',
      'panel.A1.shareOfDrag',
    ])
      // prettier-ignore
      expect(Number.isFinite(quantities[id]?.value), id).toBe(true);
    expect(quantities['addedMass.ratio'].value).toBeLessThan(1);
    expect(quantities['panel.A2.shareOfInertia'].value).toBeGreaterThan(quantities['panel.A2.shareOfArea'].value);
  });

  it('gives the largest force in a wave, a storm and a record, beside the stated motion’s', () =>
    inFolder(async (folder) => {
      // 0.25 m and 6 s as the document states them, read twenty times a second for ten minutes.
      const rows = Array.from({ length: 12_000 }, (_, i) => `${(i * 0.05).toFixed(2)},${(0.25 * Math.sin((2 * Math.PI * i * 0.05) / 6)).toFixed(6)}`); // prettier-ignore
      await writeFile(join(folder, 'motion.csv'), `time (s),heave (m)\n${rows.join('\n')}\n`);
      const { out } = await ran(['water', join(process.cwd(), 'samples/small.stillplate.json'), '--record', 'motion.csv', '--wave-height', '2m', '--cells', '24', '--json'], folder); // prettier-ignore
      const { quantities } = JSON.parse(out);
      expect(Math.abs(quantities['force.record.peak'].value / quantities['force.motion.peak'].value - 1)).toBeLessThan(0.005); // prettier-ignore
      expect(quantities['force.record.amplitude'].value).toBeCloseTo(0.25, 3);
      for (const way of ['motion', 'record', 'wave', 'sea']) {
        const { value, low, high } = quantities[`force.${way}.peak`];
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
      }
      // Of N Rayleigh waves: H / Hs = √(ln N / 2) (Longuet-Higgins 1952).
      const waves = quantities['storm.surface.waves'].value;
      expect(quantities['storm.surface.mostProbable'].value / 1.6).toBeCloseTo(Math.sqrt(Math.log(waves) / 2), 6);
    }));
});
