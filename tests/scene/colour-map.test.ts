import { expect, it } from 'vitest';
import { colourAt, cssColour, type Colour } from '../../renderer/scene/colour-map.ts';

/** CIE 1976 lightness of an sRGB colour, white point D65: ISO/CIE 11664-4 with IEC 61966-2-1; from memory. */
function lightness([r, g, b]: Colour): number {
  const linear = (c: number) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
  const Y = 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
  return Y > 216 / 24389 ? 116 * Math.cbrt(Y) - 16 : (24389 / 27) * Y;
}

it('ends in the published first and last colour of viridis, #440154 and #fde725', () => {
  expect([cssColour(colourAt(0, true)), cssColour(colourAt(1, true))]).toEqual(['rgb(68 1 84)', 'rgb(253 231 37)']);
});

it('grows lighter in even steps, so that it can be read without colour', () => {
  const steps = Array.from(
    { length: 100 },
    (_, i) => lightness(colourAt((i + 1) / 100, true)) - lightness(colourAt(i / 100, true)),
  );
  const mean = steps.reduce((sum, step) => sum + step, 0) / 100;
  // A map with a kink (the rainbow goes up and down) fails by far: its steps change sign.
  for (const step of steps) expect(Math.abs(step - mean)).toBeLessThan(0.5 * mean);
});

it('is turned round on light paper, and stays at its ends beyond the range', () => {
  expect(colourAt(0.3, false)).toEqual(colourAt(0.7, true));
  expect([colourAt(-1, true), colourAt(7, true)]).toEqual([colourAt(0, true), colourAt(1, true)]);
});
