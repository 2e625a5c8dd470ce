import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { motionInSea } from '../../core/hydrodynamics/motion-in-sea.ts';
import { motionOverScatter } from '../../core/hydrodynamics/motion-over-scatter.ts';
import { motionSection } from '../../core/note/motion-section.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { printIn } from '../../core/print-in.ts';
import { hoistAgainstRope } from '../../core/recovery/hoist-against-rope.ts';

const raw = readDocumentText(readFileSync('samples/tested.stillplate.json', 'utf8'));
const model = modelOfOption(raw, readDocument(raw), null);

it('the motion left over takes the test that the design uses, balances its energy, and time steps and spectra agree', () => {
  const found = motionInSea(model);
  if ('missing' in found) throw new Error(found.missing);
  const { quantities, stepped, from, addedMass } = found;
  expect(from).toBe('the test that the design uses');
  expect(addedMass / (64 * 440)).toBeCloseTo(1027 / 999, 1);
  const { energy } = stepped;
  expect((energy.float + energy.link + energy.plate + energy.stored) / energy.in).toBeCloseTo(1, 3);
  // twenty minutes of one history scatter by some percent about the spectrum's answer, and linearising adds its own
  const ratio = quantities['motion.significant']!.value / quantities['motion.linearised.significant']!.value;
  expect(Math.abs(ratio - 1)).toBeLessThan(0.15);
  expect(quantities['motion.significant']!.value).toBeLessThan(quantities['motion.float.significant']!.value);
});

it('the section says what would have to be stated', () => {
  const { sea: _sea, ...rest } = raw['hydrodynamics'] as { readonly sea: object };
  const without = { ...raw, hydrodynamics: rest };
  const section = motionSection(modelOfOption(without, readDocument(without), null), printIn('metric'));
  expect(JSON.stringify(section)).toMatch(/Cannot be judged in a sea: the sea is not stated/);
  expect(motionSection(model, printIn('metric')).blocks.filter(({ kind }) => kind === 'figure')).toHaveLength(3);
});

const middle = readDocumentText(readFileSync('samples/middle.stillplate.json', 'utf8'));
const waters = middle['hydrodynamics'] as {
  readonly sea: { readonly significantHeight: string; readonly peakPeriod: string };
};
const middleWith = (more: object) => {
  const changed = { ...middle, hydrodynamics: { ...waters, ...more } };
  return modelOfOption(changed, readDocument(changed), null);
};

it('takes added mass and drag of theory at the sine that loses as much as the motion that comes out', () => {
  const found = motionInSea(middleWith({}));
  if ('missing' in found) throw new Error(found.missing);
  expect(found.from).toBe('theory');
  // the plate's own motion, the water's beside it left out: (3π/8) √(8/π) = 1.88 of a deviation, a quarter of the significant value
  const byMotion = (1.88 * found.quantities['motion.linearised.significant']!.value) / 4;
  expect(Math.abs(found.amplitude / byMotion - 1)).toBeLessThan(0.15);
});

it('a scatter table of one state gives what that sea gives by spectra; with a calmer one, the mean lies between', () => {
  const { significantHeight: height, peakPeriod: period } = waters.sea;
  const table = (states: readonly object[]) => ({ scatter: { period: 'peak', states, peakedness: 1, source: 'x' } });
  const one = motionOverScatter(middleWith(table([{ height, period, count: 3 }])));
  const sea = motionInSea(middleWith({}));
  if (!one || 'missing' in one || 'missing' in sea) throw new Error('missing');
  const alone = sea.quantities['motion.linearised.significant']!.value;
  expect(Math.abs(one.states[0]!.significant / alone - 1)).toBeLessThan(0.01);
  const two = motionOverScatter(middleWith(table([{ height, period, count: 3 }, { height: '0.5 m', period: '5 s', count: 1 }]))); // prettier-ignore
  if (!two || 'missing' in two) throw new Error('missing');
  expect(two.states[1]!.significant).toBeLessThan(two.states[0]!.significant);
  expect(two.mean.significant).toBeCloseTo(0.75 * two.states[0]!.significant + 0.25 * two.states[1]!.significant, 12);
});

it('prints the regular wave, the scatter table and the hoist against the line that is out, whichever of them is stated', () => {
  const { sea: _sea, ...rest } = waters;
  const changed = { ...middle, hydrodynamics: rest };
  const text = JSON.stringify(motionSection(modelOfOption(changed, readDocument(changed), null), printIn('metric')));
  expect(text).not.toMatch(/NaN|Infinity|undefined/);
  for (const words of ['Cannot be judged in a sea', 'In the regular wave of 3 m and 8 s', 'Over the scatter table', 'on the hoist line'])
    expect(text).toContain(words);
}); // prettier-ignore

it('half the line out makes the period on the hoist shorter by √2, but for the line’s own mass; panels make it longer', () => {
  const { out, closed, open } = hoistAgainstRope(middleWith({}))!;
  const half = out.findIndex((length) => length === out.at(-1)! / 2);
  expect(closed.at(-1)! / closed[half]!).toBeCloseTo(Math.SQRT2, 3);
  expect(closed.every((period, i) => period > open[i]!)).toBe(true);
});
