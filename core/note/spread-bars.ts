import type { SensitivityRecord } from '../document/sensitivity-field.ts';
import { inputWords } from '../options/sensitivity/input-words.ts';
import { scaleOf, tick } from './line-plot.ts';
import type { Figure, Pen, Shape } from './note.ts';
import { useWords } from './sensitivity-words.ts';

const W = 100;
/** Of the names at the left. */
const names = 52;
const row = 6;

/** What each input does to the governing utilisation between the ends of its spread, the widest first. */
export function spreadBars({ governing, moved }: Pick<SensitivityRecord, 'governing' | 'moved'>): Figure {
  const ends = moved.flatMap(({ atLow, atHigh }) => [atLow, atHigh].filter((use) => use !== null));
  const scale = scaleOf([[governing.use, ...ends]], true);
  const x = (use: number) => (W * (use - scale.from)) / (scale.to - scale.from);
  const top = row * moved.length;
  const upright = (use: number, pen: Pen): Shape => ({ kind: 'path', rings: [[[x(use), 0], [x(use), top]]], closed: false, pen }); // prettier-ignore
  return {
    kind: 'figure',
    caption: 'Utilisation of the check that governs, each input by itself from end to end of its spread; the coloured upright line is as the document stands, the dark one 1', // prettier-ignore
    alt: `Ranked bars: ${moved.map(({ input, atLow, atHigh }) => `${inputWords[input]} ${useWords(atLow)} to ${useWords(atHigh)}`).join('; ')}`,
    shapes: [
      ...scale.ticks.map((use) => upright(use, Math.abs(use - 1) < 1e-9 ? 'outline' : 'hidden')),
      ...scale.ticks.map((use): Shape => ({ kind: 'label', at: [x(use), -4.5], text: tick(use, scale.step), size: 7, anchor: 'middle' })), // prettier-ignore
      ...moved.flatMap(({ input, atLow, atHigh }, n): Shape[] => {
        const known = [atLow, atHigh, governing.use].filter((use) => use !== null);
        const from = x(Math.min(...known));
        const to = Math.max(x(Math.max(...known)), from + 0.3);
        const base = top - row * (n + 1) + 1.5;
        const isOpen = atLow === null || atHigh === null;
        return [
          { kind: 'label', at: [-2, base + 0.6], text: inputWords[input], size: 7, anchor: 'end' },
          { kind: 'path', rings: [[[from, base], [to, base], [to, base + 3], [from, base + 3]]], closed: true, pen: isOpen ? 'hidden' : 'none', fill: isOpen ? 'none' : 'accent' },
        ]; // prettier-ignore
      }),
      upright(governing.use, 'accent'),
      { kind: 'path', rings: [[[0, 0], [W, 0]]], closed: false, pen: 'thin' },
    ], // prettier-ignore
    box: { x: -names, y: -7, width: names + W + 4, height: top + 8 },
    widthShare: 1,
  };
}
