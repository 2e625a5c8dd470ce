import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { recoverySection } from '../../core/note/recovery-section.ts';
import type { Block, Figure, Table } from '../../core/note/note.ts';
import { printIn } from '../../core/print-in.ts';
import { recoveryReport } from '../../core/recovery/recovery-report.ts';

const sectionOf = (sample: string, change: (raw: Record<string, unknown>) => void = () => undefined) => {
  const raw = readDocumentText(readFileSync(`samples/${sample}.stillplate.json`, 'utf8'));
  change(raw as Record<string, unknown>);
  const { model, rows } = appraise(raw, readDocument(raw), null);
  return { model, report: recoveryReport(model), section: recoverySection(model, rows, printIn(model.document.units)) };
};
const figures = (blocks: readonly Block[]): Figure[] => blocks.filter((block) => block.kind === 'figure');
const tables = (blocks: readonly Block[]): Table[] => blocks.filter((block) => block.kind === 'table');

it('draws rigging, canister, hook loads and allowed seas with finite points inside their boxes', () => {
  for (const sample of ['small', 'middle', 'inch']) {
    const drawn = figures(sectionOf(sample).section.blocks);
    expect(drawn.length, sample).toBeGreaterThanOrEqual(4);
    for (const { box, shapes, caption } of drawn)
      for (const [x, y] of shapes.flatMap((shape) => (shape.kind === 'path' ? shape.rings.flat() : []))) {
        expect(x, caption).toBeGreaterThanOrEqual(box.x - 1e-9);
        expect(x, caption).toBeLessThanOrEqual(box.x + box.width + 1e-9);
        expect(y, caption).toBeGreaterThanOrEqual(box.y - 1e-9);
        expect(y, caption).toBeLessThanOrEqual(box.y + box.height + 1e-9);
      }
  }
});

it('has a row for every way and every stage, and each bay once among those that drain', () => {
  const { report, section } = sectionOf('middle');
  const [ways, , , stages] = tables(section.blocks);
  expect(ways!.rows).toHaveLength(report!.ways.length);
  expect(stages!.rows).toHaveLength(report!.lift!.stages.length);
  const drained = tables(section.blocks)
    .at(-1)!
    .rows.flatMap(([bays]) =>
      String(bays)
        .replace(/^bays? /, '')
        .split(', '),
    );
  expect(drained.sort()).toEqual(report!.emptied.map(({ bay }) => bay).sort());
});

it('says that nothing is judged where the document says nothing, and draws no lift where there is none', () => {
  const bare = sectionOf('small', (raw) => delete raw['recovery']);
  expect(JSON.stringify(bare.section.blocks)).toMatch(/none of it is judged/);
  const { section } = sectionOf('small', (raw) => delete (raw['recovery'] as Record<string, unknown>)['lift']);
  expect(JSON.stringify(section.blocks)).toMatch(/No lift is described/);
});
