import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// Web Content Accessibility Guidelines 2.2: 1.4.3 asks for 4.5:1 between text and its ground, 1.4.11 for 3:1 between
// the edge of a control (or what carries a meaning) and what is beside it.
const text = 4.5;
const edge = 3;

const css = readFileSync(new URL('../../renderer/styles/tokens.css', import.meta.url), 'utf8');
const at = css.indexOf('@media (prefers-color-scheme: dark)');
const light = tokensOf(css.slice(0, at));
const dark = new Map([...light, ...tokensOf(css.slice(at))]);

/** Which colour stands on which ground, and how far apart they must be. */
const pairs: readonly (readonly [colour: string, grounds: readonly string[], least: number])[] = [
  ['ink', ['paper', 'sheet', 'sunken', 'accent-soft', 'fail-soft', 'warn-soft'], text],
  ['quiet', ['paper', 'sheet', 'sunken', 'accent-soft', 'fail-soft', 'warn-soft'], text],
  ['accent', ['paper', 'sheet', 'sunken', 'accent-soft'], text],
  ['accent-ink', ['accent'], text],
  ['fail', ['paper', 'sheet', 'sunken', 'fail-soft', 'accent-soft'], text],
  ['warn', ['paper', 'sheet', 'sunken', 'warn-soft', 'accent-soft'], text],
  ['line-strong', ['paper', 'sheet'], edge],
  ['focus', ['paper', 'sheet', 'sunken', 'accent-soft', 'fail-soft', 'warn-soft'], edge],
];

describe.each([
  ['light', light],
  ['dark', dark],
] as const)('%s', (_name, tokens) => {
  it.each(pairs.flatMap(([colour, grounds, least]) => grounds.map((ground) => [colour, ground, least] as const)))(
    '%s on %s stands off by %d:1 at least, WCAG 2.2',
    (colour, ground, least) => {
      expect(contrast(tokens.get(colour)!, tokens.get(ground)!)).toBeGreaterThanOrEqual(least);
    },
  );
});

it('every colour of the light has one of the dark, and no colour goes unheld', () => {
  const colours = [...light].filter(([, value]) => value.startsWith('#')).map(([name]) => name);
  expect(colours.filter((name) => !tokensOf(css.slice(at)).has(name))).toEqual([]);
  const held = new Set(pairs.flatMap(([colour, grounds]) => [colour, ...grounds]));
  // Lines that part rows carry no meaning: what they part is told by space as well.
  expect(colours.filter((name) => !held.has(name))).toEqual(['line']);
});

it('computes the contrast as the guidelines do: black on white 21:1, and #777 on white 4.48:1 as W3C’s understanding of 1.4.3 says', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

function tokensOf(block: string): Map<string, string> {
  return new Map([...block.matchAll(/--([a-z-]+):\s*([^;]+);/g)].map(([, name, value]) => [name!, value!.trim()]));
}

/** (L1 + 0.05) / (L2 + 0.05), the lighter first. Source: WCAG 2.2, "contrast ratio". */
function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** Relative luminance of an sRGB colour #rrggbb. Source: WCAG 2.2, "relative luminance". */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((n) => {
    const part = Number.parseInt(hex.slice(n, n + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
