import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../core/document/read-document.ts';
import { sceneOf } from '../../core/scene/scene-of.ts';

const text = (sample: string): string =>
  readFileSync(new URL(`../../samples/${sample}.stillplate.json`, import.meta.url), 'utf8');
const modelOf = (raw: RawDocument) => appraise(raw, readDocument(raw), null).model;

it.each(['small', 'middle', 'inch'])('marks the holes of every bolt of %s on its tube’s faces, and none for studs and clamps', (sample) => {
  const model = modelOf(readDocumentText(text(sample)));
  const { holes } = sceneOf(model);
  const meant = model.geometry.panels.flatMap((panel) => {
    const { fixing } = panel.design;
    if (fixing.kind !== 'bolted' || fixing.into === 'welded stud' || fixing.into === 'clamp') return [];
    return panel.bolts.flatMap((bolt) => {
      const { bottom, top } = model.tubes.get(bolt.tube)!;
      const faces = panel.pressedBy === 'down' ? [[top, 1], [bottom, -1]] : [[bottom, -1], [top, 1]]; // prettier-ignore
      const through = fixing.into === 'through-bolt with sleeve';
      return faces.slice(0, through ? 2 : 1).map(([z, out]) => [bolt.x, bolt.y, z!, out!, bolt.hole / 2]);
    });
  });
  // bolts of one kind stand together in the scene: their order is no matter
  const listed = (rows: readonly (readonly number[])[]) =>
    rows.map(([x, y, z, out, r]) => [...[x!, y!, r!].map(Math.fround), Math.round(1e4 * z!) + 0, out].join(' ')).sort();
  const shown = Array.from({ length: holes.length / 5 }, (_, i) => [...holes.subarray(5 * i, 5 * i + 5)]);
  expect(listed(shown)).toEqual(listed(meant));
  if (sample !== 'inch') expect(meant.length).toBeGreaterThan(100);
}); // prettier-ignore

it('draws a strut as a bar as wide as the head of its eye, and a line as a line', () => {
  const raw = JSON.parse(text('small')) as { grid: { suspension: Record<string, unknown> } };
  const { apex: _apex, ...rest } = raw.grid.suspension;
  const strut = { ...raw, grid: { ...raw.grid, suspension: { ...rest, kind: 'strut' } } } as unknown as RawDocument;
  const model = modelOf(strut);
  const widths = sceneOf(model).ropes.map(({ role, width }) => [role, width]);
  const { eye, attachments } = model.document.grid.suspension;
  expect(widths.filter(([role]) => role === 'suspension')).toEqual(attachments.map(() => ['suspension', 2 * eye.edge.si])); // prettier-ignore
  expect(widths.filter(([role]) => role !== 'suspension').every(([, width]) => width === 0)).toBe(true);
  expect(sceneOf(modelOf(raw as unknown as RawDocument)).ropes.every(({ width }) => width === 0)).toBe(true);
});
