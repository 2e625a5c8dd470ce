import { fatigueSealedWall } from '../checks/fatigue-sealed-wall.ts';
import { environmentOf, historyOf } from '../checks/fatigue-history.ts';
import { spectrumOf, type FatigueDetail } from '../checks/fatigue-report.ts';
import { cycleDamage } from '../fatigue/cycle-damage.ts';
import { environmentWords, snCurve } from '../fatigue/sn-curve.ts';
import { thicknessFactor } from '../fatigue/thickness-factor.ts';
import { placeWords } from '../place-words.ts';
import type { Model } from '../model.ts';
import type { Figure, Shape } from './note.ts';

const MPa = 1e6;
/** Decades shown: cycles and MPa. */
const [n0, n1, s0, s1] = [2, 10, 0, 3];
/** A decade of stress is drawn as wide as so many of cycles. */
const tall = 1.4;
const at = (cycles: number, stress: number): readonly [number, number] => [
  Math.min(Math.max(Math.log10(cycles), n0), n1),
  tall * Math.min(Math.max(Math.log10(stress / MPa), s0), s1),
];

/**
 * The S-N curve of a detail with its spectrum: each block of the history as a step from its range to its cycles. Where
 * the steps come near the curve, the damage is done. Null where the detail or the history is not known.
 */
export function fatiguePlot(model: Model, detail: FatigueDetail, thickness = 0): Figure | null {
  const history = historyOf(model);
  const environment = environmentOf(model.document);
  if ('missing' in history || detail.curve === null || detail.range === null || environment === 'air') return null;
  // Its cycles are deployments: the force's history says nothing of them.
  if (detail.id === fatigueSealedWall.id) return null;
  const curve = snCurve(detail.curve, environment);
  const range = detail.range * (thickness > 0 ? thicknessFactor(curve, thickness) : 1);
  const blocks = spectrumOf(history, curve, range);
  const shapes: Shape[] = [
    { kind: 'path', rings: [[[n0, tall * s0], [n1, tall * s0], [n1, tall * s1], [n0, tall * s1]]], closed: true, pen: 'thin' },
  ]; // prettier-ignore
  for (let n = n0 + 1; n < n1; n++)
    shapes.push({
      kind: 'path',
      rings: [
        [
          [n, tall * s0],
          [n, tall * s1],
        ],
      ],
      closed: false,
      pen: 'hidden',
    });
  for (let s = s0 + 1; s < s1; s++)
    shapes.push({
      kind: 'path',
      rings: [
        [
          [n0, tall * s],
          [n1, tall * s],
        ],
      ],
      closed: false,
      pen: 'hidden',
    });
  const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
  for (let n = n0; n <= n1; n += 2)
    shapes.push({
      kind: 'label',
      at: [n, tall * s0 - 0.32],
      text: `10${[...String(n)].map((digit) => superscripts[Number(digit)]).join('')}`,
      size: 7,
      anchor: 'middle',
    });
  for (let s = s0; s <= s1; s++)
    shapes.push({ kind: 'label', at: [n0 - 0.1, tall * s - 0.06], text: String(10 ** s), size: 7, anchor: 'end' });
  shapes.push(
    { kind: 'label', at: [(n0 + n1) / 2, tall * s0 - 0.68], text: 'cycles', size: 7, anchor: 'middle' },
    { kind: 'label', at: [n0, tall * s1 + 0.12], text: 'stress range, MPa', size: 7, anchor: 'start' },
  );
  for (const { from, to, cycles } of blocks) {
    if (cycles < 10 ** n0 / 10) continue;
    const [right, top] = at(cycles, to * range);
    const [, bottom] = at(cycles, Math.max(from, 1e-9) * range);
    if (from === to) shapes.push({ kind: 'circle', at: [right, top], radius: 0.07, pen: 'accent', fill: 'accent' });
    else
      shapes.push({ kind: 'path', rings: [[[n0, bottom], [right, bottom], [right, top], [n0, top]]], closed: true, pen: 'thin', fill: 'accent' }); // prettier-ignore
  }
  // Few points make straight lines: ends and knee.
  const life = (stress: number) => 1 / cycleDamage(curve, stress);
  const stressAt = (cycles: number) =>
    curve.S_k * (curve.N_k / cycles) ** (1 / (cycles < curve.N_k ? curve.m_1 : curve.m_2));
  const [left, right] = [Math.max(10 ** n0, life(10 ** s1 * MPa)), Math.min(10 ** n1, life(10 ** s0 * MPa))];
  shapes.push({
    kind: 'path',
    rings: [[at(left, stressAt(left)), at(curve.N_k, curve.S_k), at(right, stressAt(right))]],
    closed: false,
    pen: 'outline',
  });
  shapes.push({
    kind: 'label',
    at: [at(left * 3, stressAt(left * 3))[0] + 0.3, at(left * 3, stressAt(left * 3))[1] + 0.12],
    text: `class ${detail.curve}`,
    size: 7,
    anchor: 'start',
  });
  const where = `${detail.title}, ${placeWords(model, detail.place)}`;
  return {
    kind: 'figure',
    caption: `${where}: S-N curve of class ${detail.curve} ${environmentWords[environment]}, and the ranges of the life in ${blocks.length === 1 ? 'one block' : `${blocks.length} blocks`}, each as far to the right as it has cycles`,
    alt: `S-N curve and spectrum: ${where}`,
    box: { x: n0 - 0.7, y: tall * s0 - 0.85, width: n1 - n0 + 1, height: tall * (s1 - s0) + 1.25 },
    widthShare: 0.7,
    shapes,
  };
}
