import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { closingGains } from '../../core/hydrodynamics/closing-gains.ts';
import { closingSection } from '../../core/note/closing-section.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { printIn } from '../../core/print-in.ts';

const small = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument & {
  hydrodynamics: Record<string, unknown>;
};
const modelWith = (more: object, option: string | null = null) => {
  const raw = { ...small, ...more } as RawDocument;
  return modelOfOption(raw, readDocument(raw), option);
};
const print = printIn('metric');
const textOf = (model: Parameters<typeof closingSection>[0]) => JSON.stringify(closingSection(model, print));

describe('one bay closed after the other', () => {
  const { steps, exact } = closingGains(modelWith({}));

  it('never loses added mass at zero amplitude by closing a bay, in the greedy order and in the exact one', () => {
    for (const list of [steps.map(({ still }) => still), exact!.map(({ addedMass }) => addedMass)])
      list.reduce((before, now) => (expect(now).toBeGreaterThan(before), now));
    steps.forEach(({ still }, k) => expect(exact![k]!.addedMass).toBeGreaterThanOrEqual(still * (1 - 1e-9)));
  });

  it('has more added mass in motion than at rest, for gaps choke (Molin 2001), and no more than all closed within a lattice’s tenth', () => {
    for (const { still, moved } of steps) expect(moved!.addedMass).toBeGreaterThan(still);
    const most = steps.at(-1)!.moved!.addedMass;
    for (const { moved } of steps) expect(moved!.addedMass).toBeLessThanOrEqual(1.1 * most);
  });

  it('prints the order, a dot at the bays of this option, and what the bed leaves no room for', () => {
    const text = textOf(modelWith({}, 'middle-open'));
    expect(text).toContain(steps.at(-1)!.closed.join(', '));
    expect(text).toContain('one bay more closed');
    expect(text).toContain('10.0 m deeper');
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    const shallow = textOf(modelWith({ hydrodynamics: { ...small.hydrodynamics, bed: '30 m' } }));
    expect(shallow).toContain('There is no room for 10.0 m more depth above the bed.');
    expect(shallow).toContain('The last 2 bays of the order left open');
  });

  it('has nothing to say without a motion', () =>
    expect(closingSection(modelWith({ hydrodynamics: {} }), print)).toBeNull());
});
