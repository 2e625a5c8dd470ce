import { expect, it } from 'vitest';
import { startingDocument } from '../../core/document/starting-document.ts';
import { createEngine } from '../../core/engine/engine.ts';

it('tells the lives of all details as the note does, and anew after an edit of how they are inspected', () => {
  const engine = createEngine({ tell: () => undefined, later: () => undefined });
  engine.open({ text: JSON.stringify({ ...startingDocument('metric'), fatigue: undefined }), journal: [] });
  const said = () => JSON.stringify(engine.fatigue({ option: null }));
  expect(said()).toMatch(/must be 10(\.0)? times the life wanted: no access/);
  const edit = (path: readonly [string, ...string[]], value: string) =>
    engine.edit({ edit: { kind: 'setField', option: null, path, value } });
  edit(['fatigue', 'access'], 'under water');
  edit(['fatigue', 'consequence'], 'limited');
  expect(said()).toMatch(/must be 2(\.00)? times the life wanted: inspected under water, limited consequence/);
  engine.undo(null);
  expect(said()).toMatch(/inspected under water, substantial consequence, taken where the document does not say/);
});
