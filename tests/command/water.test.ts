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

  it('takes motion, bed and growth of the document where the options are left out, and the options before them', async () => {
    const asked = async (...words: string[]) => JSON.parse((await ran(['water', 'samples/small.stillplate.json', '--cells', '24', '--json', ...words])).out).quantities; // prettier-ignore
    const { hydrodynamics: stated } = JSON.parse(await readFile('samples/small.stillplate.json', 'utf8'));
    const [plain, same, clean] = [
      await asked(),
      await asked('--amplitude', stated.motion.amplitude.replace(' ', ''), '--period', stated.motion.period.replace(' ', ''), '--bed', stated.bed.replace(' ', '')), // prettier-ignore
      await asked('--growth', '0', '--amplitude', '0m'),
    ];
    expect(same).toEqual(plain);
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
});
