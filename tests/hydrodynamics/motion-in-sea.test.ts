import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { motionInSea } from '../../core/hydrodynamics/motion-in-sea.ts';
import { motionSection } from '../../core/note/motion-section.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { printIn } from '../../core/print-in.ts';

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
  expect(JSON.stringify(section)).toMatch(/Cannot be judged: the sea is not stated/);
  expect(motionSection(model, printIn('metric')).blocks.filter(({ kind }) => kind === 'figure')).toHaveLength(2);
});
