import { expect, it } from 'vitest';
import { sceneTexts } from '../../../renderer/scene/scene-texts.ts';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);

it('works without WebGL, and says in place of the picture what is missing', async () => {
  const window = await at.open();
  const { page } = window;
  const id = await window.openSample('small');
  await page.getByText(sceneTexts.noPicture).waitFor();
  await page.getByText(sceneTexts.noPictureMend).waitFor();
  await window.open('panels');
  const mass = page.locator('.headline dl');
  const before = await mass.innerText();
  await window.kept(id, () => window.type(texts.fields.thickness[0], '9 mm'));
  await expect.poll(() => mass.innerText()).not.toBe(before);
  expect(await window.hash()).toBe((await at.served.stored(id)).hash);
  // The parts of the plate are there as text.
  const parts = page.locator('.scene-parts');
  await parts.getByRole('button', { name: /^Panels \d/ }).click();
  await expect.poll(() => parts.innerText()).toMatch(/A1/);
  await window.close();
});
