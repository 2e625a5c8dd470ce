import { describe, expect, it } from 'vitest';
import { ran } from './ran.ts';

describe('stillplate motion --document by itself', () => {
  it('tells what the sheet tells: sea, regular wave and scatter table as stated; about a metre or less is left on a choppy day (common practice, no source)', async () => {
    const { code, out } = await ran(['motion', '--document', 'samples/middle.stillplate.json', '--json']);
    expect(code).toBe(0);
    const { quantities, unjudged } = JSON.parse(out);
    const value = (id: string): number => quantities[id].value;
    expect(unjudged).toEqual([]);
    expect(value('motion.significant')).toBeGreaterThan(0.2);
    expect(value('motion.significant')).toBeLessThan(1.2);
    expect(value('wave.motion.peakToPeak')).toBeGreaterThan(value('wave.motionAtPlate'));
    expect(value('scatter.within.0.25')).toBeLessThan(value('scatter.within.1'));
  });

  it('refuses a wave on the line beside a float that is not, and a document that states none', async () => {
    const mixed = await ran(['motion', '--document', 'samples/middle.stillplate.json', '--hs', '2m']);
    expect([mixed.code, mixed.err]).toEqual([
      2,
      expect.stringMatching(/--hs stands on the line, --stiffness does not/),
    ]);
    const none = await ran(['motion', '--document', 'samples/small.stillplate.json']);
    expect([none.code, none.err]).toEqual([2, expect.stringMatching(/--stiffness is missing/)]);
  });
});
