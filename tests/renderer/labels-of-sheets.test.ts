import { expect, it } from 'vitest';
import { labelsOfSheets } from '../../renderer/shell/labels-of-sheets.ts';
import { texts } from '../../renderer/texts.ts';

it('every field of the texts stands on a sheet, so that the finder leads to it', () => {
  const found = new Set(Object.values(labelsOfSheets).flat());
  const labels = [...Object.values(texts.fields), texts.hydrodynamics.bed, texts.motionLeft.stiffness].map(([label]) => label); // prettier-ignore
  expect(labels.filter((label) => !found.has(label))).toEqual([]);
});
