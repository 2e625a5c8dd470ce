import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { sampleText, type Json } from '../../document/middle.ts';
import { plants } from '../../faults/plants.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);

it('an error planted in a copy of the sample is told in the window with its place and effect, and by its own words only', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const findings = sheet.locator('.findings');
  const limitStates = sheet.locator('.limit-states');

  await window.openSample('middle');
  await page.getByRole('button', { name: texts.headline.findings(0) }).click();
  await limitStates.waitFor();
  expect(await findings.count()).toBe(0);
  expect(await limitStates.innerText()).not.toContain(texts.verdict['cannot be judged']);

  for (const { name, plant, toldBy, place, effect } of plants) {
    const planted = JSON.parse(sampleText) as Json;
    plant(planted);
    planted['project'].name = name;
    await window.openText(JSON.stringify(planted));
    if ('finding' in toldBy) {
      await page.getByRole('button', { name: /^\d+ findings?$/ }).click();
      await expect.poll(() => findings.innerText()).toContain(effect);
      expect(await findings.innerText(), name).toContain(place);
    } else {
      await page.getByRole('button', { name: /^\d+ not judged$/ }).click();
      const row = limitStates.getByRole('row').filter({ hasText: place });
      await expect.poll(() => row.innerText()).toContain(texts.verdict['cannot be judged']);
      await expect.poll(() => sheet.innerText()).toContain(effect);
    }
  }
  await window.close();
});
