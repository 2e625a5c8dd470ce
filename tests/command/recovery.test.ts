import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

const ids = ['rope.strength', 'rope.stowedVolume', 'canister.height', 'float.netBuoyancy', 'release.failsToRelease', 'release.releasesFalsely', 'lift.hookLoad', 'lift.dynamicFactor.air', 'lift.dynamicFactor.water']; // prettier-ignore

describe('stillplate recovery', () => {
  it('gives the quantities, the ways side by side and the stages, SI, and the closed grid’s load over the open one’s', async () => {
    const { code, out } = await ran(['recovery', 'samples/middle.stillplate.json', '--json']);
    const json = JSON.parse(out);
    expect(code).toBe(0);
    expect(json.schema).toBe('stillplate-result/1');
    expect(ids.filter((id) => !(json.quantities[id]?.value > 0))).toEqual([]);
    // 0027/ND Rev 11, 5.5.1: 1 + 0.25 √(100/3) for what weighs less than 3 t
    expect(json.quantities['lift.dynamicFactor.air'].value).toBeCloseTo(1 + 0.25 * Math.sqrt(100 / 3), 9);
    // β-factor model by hand: two releases, then rope and float in the chain
    const both = 0.9 ** 2 * 0.03 * 0.05 + 0.1 * Math.sqrt(0.03 * 0.05);
    expect(json.quantities['release.failsToRelease'].value).toBeCloseTo(1 - (1 - both) * 0.98 ** 2, 9);
    expect(json.lift.stages.map(({ id }: { id: string }) => id)).toEqual(expect.arrayContaining(['deck', 'overboard', 'splash-down', 'lower', 'connect', 'service', 'disconnect', 'haul', 'splash-up', 'splash-up-half', 'splash-up-drained', 'deck-again'])); // prettier-ignore
    expect(json.quantities['lift.hookLoad'].value).toBeGreaterThan(1.3 * json.quantities['lift.hookLoad.open'].value);
    for (const { hook, weight } of json.lift.stages) expect(hook).toBeGreaterThanOrEqual(weight);
  });

  it('gives an order and no number where nobody gave rates, and says so', async () => {
    const { out } = await ran(['recovery', 'samples/small.stillplate.json']);
    expect(out).toMatch(/^1\. One float released by sound\n {3}fails no number: rates are missing/m);
    expect(out).toMatch(/nobody gave/);
    expect(out).not.toMatch(/failsToRelease/);
    expect(out).toMatch(/People stand clear/);
  });

  it('refuses a document without it, and a way whose release is not there, in words', () =>
    inFolder(async (folder) => {
      const document = JSON.parse(await readFile('samples/small.stillplate.json', 'utf8'));
      document.recovery.ways[1].releases = ['R9'];
      await writeFile(join(folder, 'stray.stillplate'), JSON.stringify(document));
      const stray = await ran(['recovery', 'stray.stillplate'], folder);
      expect([stray.code, stray.err]).toEqual([2, expect.stringMatching(/“R9”, which is not among the releases.*Name one of: R1/)]); // prettier-ignore
      delete document.recovery;
      await writeFile(join(folder, 'bare.stillplate'), JSON.stringify(document));
      const bare = await ran(['recovery', 'bare.stillplate'], folder);
      expect([bare.code, bare.err]).toEqual([2, expect.stringMatching(/says nothing of recovery/)]);
    }));
});
