import { describe, expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { fatigueMends } from '../../core/checks/fatigue-mends.ts';
import { fatigueReport, spectrumOf } from '../../core/checks/fatigue-report.ts';
import { checks } from '../../core/checks/index.ts';
import { snCurve } from '../../core/fatigue/sn-curve.ts';
import type { Model } from '../../core/model.ts';
import { fatiguePicture } from '../../core/note/fatigue-picture.ts';
import { fatiguePlot } from '../../core/note/fatigue-plot.ts';
import { fatigueSection, governingOf } from '../../core/note/fatigue-section.ts';
import type { Shape } from '../../core/note/note.ts';
import { printIn } from '../../core/print-in.ts';
import { modelOf } from '../../core/appraise.ts';
import { demoModel } from '../checks/model-of.ts';
import { solvedAlike } from '../checks/solved-alike.ts';
import { demoDocument } from '../geometry/demo-document.ts';

const fatigue = checks.filter(({ limitState }) => limitState === 'fatigue');
const rowsOf = (model: Model) => fatigue.flatMap((check) => checkRows(check, model).rows);
const waves = {
  fatigue: {
    loading: {
      kind: 'weibull',
      largestRange: '120 kN',
      inCycles: 1e8,
      shape: 0.9,
      cyclesPerYear: 4e6,
      source: 'invented',
    },
    access: 'under water',
    consequence: 'substantial',
  },
};

it('has a sketch and a mend for every check of fatigue, within its box', () => {
  for (const { id, title } of fatigue) {
    expect(fatigueMends[id], id).toMatch(/\.$/);
    const { shapes, box } = fatiguePicture(id, title);
    const crack = shapes.some((shape) => shape.kind === 'path' && shape.pen === 'accent');
    expect(crack, `${id} shows its crack`).toBe(true);
    for (const [x, y] of shapes.flatMap(pointsOf)) {
      expect(x >= box.x && x <= box.x + box.width, id).toBe(true);
      expect(y >= box.y && y <= box.y + box.height, id).toBe(true);
    }
  }
  expect(Object.keys(fatigueMends).sort()).toEqual(fatigue.map(({ id }) => id).sort());
});

const pointsOf = (shape: Shape): (readonly [number, number])[] =>
  shape.kind === 'path'
    ? shape.rings.flat()
    : shape.kind === 'arrow' || shape.kind === 'dimension'
      ? [shape.from, shape.to]
      : [shape.at];

describe('the section on fatigue', () => {
  const model = demoModel(waves);
  const rows = rowsOf(model);
  const section = fatigueSection(model, rows, printIn('metric'));
  const text = JSON.stringify(section);

  it('says how the force swings, where the details are, and the factor with its reason', () => {
    expect(text).toMatch(/Weibull’s distribution of ranges, shape 0\.900, largest in/);
    expect(text).toMatch(/in seawater with cathodic protection/);
    expect(text).toMatch(/must be 3(\.00)? times the life wanted: inspected under water, substantial consequence/);
  });

  it('has a line for each detail made, the gravest first, and says what cannot be judged', () => {
    const table = section.blocks.find((block) => block.kind === 'table');
    const made = new Set(rows.filter(({ verdict }) => verdict !== 'not applicable').map(({ id }) => id));
    if (table?.kind !== 'table') throw new Error('no table');
    expect(table.rows).toHaveLength(made.size);
    expect(text).toMatch(/NOT JUDGED/);
    expect(text).toMatch(/a detail category for bolts in clearance holes/);
  });

  it('draws the governing detail over its curve, and every detail’s sketch', () => {
    const figures = section.blocks.filter((block) => block.kind === 'figure');
    expect(figures).toHaveLength(2);
    expect(JSON.stringify(figures[1])).toMatch(/S-N curve of class/);
  });

  it('says that no partial factor is mixed with the factor on life', () => {
    expect(text).toMatch(/a design fatigue factor is on life alone; no partial factor/i);
  });
});

describe('what the section is made of', () => {
  it('life is the life wanted over the damage, the needed one times the factor', () => {
    const model = demoModel(waves);
    const { details } = fatigueReport(model, rowsOf(model));
    const judged = details.filter(({ damage }) => damage !== null && damage > 0);
    expect(judged.length).toBeGreaterThan(10);
    for (const { damage, life, needed, verdict } of judged) {
      expect(life).toBeCloseTo(10 / damage!, 6); // basis.life is 10 years
      expect(needed).toBeCloseTo(30, 9);
      expect(verdict).toBe(life! >= needed * (1 - 1e-12) ? 'passes' : 'fails');
    }
  });

  it('the range that just lasts, in its place, gives the damage that the factor leaves', () => {
    const model = demoModel({ fatigue: { access: 'above water', consequence: 'limited' } });
    const governing = governingOf(fatigueReport(model, rowsOf(model)))!;
    const { S_k, N_k, m_1, m_2 } = snCurve(governing.curve!, 'protected');
    const x = governing.bearable! / S_k;
    // 4 million a year for 10 years, a factor of 1: 4·10⁷ cycles of that range
    expect((4e7 / N_k) * x ** (x > 1 ? m_1 : m_2)).toBeCloseTo(1, 6);
  });

  it('the blocks of a spectrum hold all cycles and all damage', () => {
    const blocks = spectrumOf(
      { kind: 'weibull', largest: 1, inCycles: 1e8, shape: 1, cycles: 1e8 },
      snCurve('F', 'protected'),
      150e6,
    );
    expect(blocks.reduce((sum, { cycles }) => sum + cycles, 0) / 1e8).toBeCloseTo(1, 6);
    expect(blocks.reduce((sum, { part }) => sum + part, 0)).toBeCloseTo(1, 9);
    expect(blocks).toHaveLength(10);
  });

  it('there is no plot of what is not known', () => {
    const model = demoModel();
    const unknown = fatigueReport(model, rowsOf(model)).details.find(({ damage }) => damage === null)!;
    expect(fatiguePlot(model, unknown)).toBeNull();
  });
});

it('lays forces by hand beside those that count where the plate is solved as well, and is silent where it is not', () => {
  const document = demoDocument(waves, { forces: { from: 'hand and solver' } });
  const three = modelOf(document, solvedAlike(modelOf(document), (forces) => ({
    ...forces,
    legs: Object.fromEntries(Object.entries(forces.legs).map(([id, leg]) => [id, { ...leg, along: 3 * leg.along }])),
  }))); // prettier-ignore
  const table = (model: Model) =>
    fatigueSection(model, rowsOf(model), printIn('metric')).blocks.find((block) => block.kind === 'table' && block.caption.startsWith('Forces')); // prettier-ignore
  const found = table(three);
  if (found?.kind !== 'table') throw new Error('no table of forces');
  const pulls = found.rows.filter(([detail, , what]) => /rim of its hole/.test(String(detail)) && /pull along/.test(String(what))); // prettier-ignore
  expect(pulls).toHaveLength(1);
  const [up, upCounted, down, downCounted] = pulls[0]!.slice(3).map(String);
  // a line that is slack at one end pulls with nothing by either method
  for (const [hand, counted] of [
    [up, upCounted],
    [down, downCounted],
  ] as const)
    // prettier-ignore
    if (hand === '0') expect(counted).toBe('0');
    else expect(parseFloat(counted!) / parseFloat(hand!)).toBeCloseTo(3, 1);
  expect([up, down]).not.toEqual(['0', '0']);
  expect(found.rows.some((row) => row[3] === row[4] && row[3] !== '0')).toBe(true);
  expect(table(demoModel(waves))).toBeUndefined();
});
