import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { motionInSea } from '../../core/hydrodynamics/motion-in-sea.ts';
import { motionOverScatter } from '../../core/hydrodynamics/motion-over-scatter.ts';
import { motionSection } from '../../core/note/motion-section.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { printIn } from '../../core/print-in.ts';
import { heaveSystemOf } from '../../core/hydrodynamics/heave-system-of.ts';
import { serviceAgainstRope } from '../../core/hydrodynamics/service-against-rope.ts';
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
  expect(motionSection(model, printIn('metric')).blocks.filter(({ kind }) => kind === 'figure')).toHaveLength(4);
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
  // by time steps within what linearising the drag and ten minutes of one history leave (Borgman’s error is some percent)
  expect(Math.abs(one.states[0]!.stepped!.significant / one.states[0]!.significant - 1)).toBeLessThan(0.1);
  expect(one.stepped!.significant).toBe(one.states[0]!.stepped!.significant);
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

it('in service, springs in a row: T = 2π √(M (1/k₁ + ℓ/EA)) of the plate alone, and locked 2π √(M ℓ/EA) (closed form)', () => {
  const { system } = waters as unknown as { readonly system: { readonly float: object } };
  const { float: _float, ...hung } = system;
  const line = { axialStiffness: '500 kN', length: '20 m', source: 'x' };
  const own = middleWith({ system: { ...hung, stiffness: '10 kN/m', line } });
  const A = 20_000;
  const { out, closed, stopped, locked, length, open } = serviceAgainstRope(own, A)!;
  const made = heaveSystemOf(own, A, 0);
  if ('missing' in made) throw new Error(made.missing);
  const M = made.system.plate.mass;
  // k₁ of the power take-off: 1/10 − 1/25 of m/kN
  const soft = 1 / 10_000 - 20 / 500_000;
  out.forEach((one, i) => expect(closed[0]![i]! / (2 * Math.PI * Math.sqrt(M * (soft + one / 500_000)))).toBeCloseTo(1, 12));
  expect(out[0]).toBeCloseTo(1, 12);
  expect(out.at(-1)).toBeCloseTo(30, 12);
  stopped.forEach((one, i) => expect(one / (2 * Math.PI * Math.sqrt((M * out[i]!) / 500_000))).toBeCloseTo(1, 12));
  expect(locked.closed[0]! / (2 * Math.PI * Math.sqrt((M * length) / 500_000))).toBeCloseTo(1, 12);
  expect(open![0]!.every((period, i) => period < closed[0]![i]!)).toBe(true);
  // deeper hangs on more line: the motion in the sea is reckoned with it
  const deep = heaveSystemOf(own, A, 0, 10);
  if ('missing' in deep) throw new Error(deep.missing);
  expect(deep.system.link.stiffness).toBeCloseTo(1 / (soft + 30 / 500_000), 6);
}); // prettier-ignore

it('a float whose line grows long comes to swing by itself: √(m₁/c₁) (closed form); a line softer than the whole is refused', () => {
  const { system } = waters as unknown as { readonly system: object };
  const with_ = (line: object) => middleWith({ system: { ...system, stiffness: '1 N/m', line: { length: '20 m', source: 'x', ...line } } });
  const own = with_({ axialStiffness: '20 N' });
  const { closed } = serviceAgainstRope(own, 20_000)!;
  const made = heaveSystemOf(own, 20_000, 0);
  if ('missing' in made) throw new Error(made.missing);
  const { mass, stiffness } = made.system.float!;
  expect(closed[1]!.at(-1)! / (2 * Math.PI * Math.sqrt(mass / stiffness))).toBeCloseTo(1, 3);
  expect(() => with_({ axialStiffness: '19 N' })).toThrow(/Springs in a row|alone has/);
}); // prettier-ignore

it('half the line out makes the period on the hoist shorter by √2, but for the line’s own mass; panels make it longer', () => {
  const { out, closed, open } = hoistAgainstRope(middleWith({}))!;
  const half = out.findIndex((length) => length === out.at(-1)! / 2);
  expect(closed.at(-1)! / closed[half]!).toBeCloseTo(Math.SQRT2, 3);
  expect(closed.every((period, i) => period > open[i]!)).toBe(true);
});
