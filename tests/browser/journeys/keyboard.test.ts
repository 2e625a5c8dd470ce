import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);

/** Name of what has the focus: its label, its own name or its text. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(`(() => {
    const at = document.activeElement;
    const label = at?.labels?.[0]?.textContent;
    return (label ?? at?.getAttribute('aria-label') ?? at?.textContent ?? '').trim();
  })()`);

/** Goes on with the tabulator until the named thing has the focus; fails where it cannot be reached. */
async function tabTo(page: Page, name: string, most = 120): Promise<void> {
  for (let n = 0; n < most; n++) {
    if ((await focused(page)) === name) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`The keyboard does not reach “${name}”`);
}

it('makes a plate, changes it and makes its note without a mouse', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const keys = page.keyboard;
  await page.getByRole('button', { name: texts.start.newPlate, exact: true }).waitFor();
  await tabTo(page, texts.start.newPlate);
  await keys.press('Enter');
  await tabTo(page, texts.newPlate.labels.name);
  await keys.press('Control+a');
  await keys.type('Keyboard plate');
  await page.locator('.growing svg').waitFor();
  await tabTo(page, texts.newPlate.make);
  await keys.press('Enter');
  await page.getByText(texts.headline.decides).waitFor();
  const { id } = (await at.served.documents())[0]!;

  // The finder leads to a field, a bay and a check.
  const find = async (words: string): Promise<void> => {
    await keys.press('Control+k');
    await page.getByRole('combobox', { name: texts.finder.title }).waitFor();
    await keys.type(words);
    await page.locator('dialog').getByRole('option').first().waitFor();
    await keys.press('Enter');
    await page.getByRole('combobox', { name: texts.finder.title }).waitFor({ state: 'hidden' });
  };
  await find('thickness field panels');
  await expect.poll(() => focused(page)).toBe(texts.fields.thickness[0]);
  await keys.press('Control+a');
  await keys.type('9 mm');
  await window.kept(id, () => keys.press('Enter'));
  expect((await at.served.stored(id)).raw['designs']).toMatchObject({ bolted: { thickness: '9 mm' } });
  await find('B2 bay');
  await expect.poll(() => sheet.locator('[data-bay=B2]').getAttribute('aria-checked')).toBe('true');
  await find('bending, hung');
  await sheet.locator('.explained').first().waitFor();

  // Bays by arrows and space; undone by key.
  await keys.press('Alt+2');
  await tabTo(page, `A1: bolted`);
  await keys.press('Space');
  await keys.press('ArrowRight');
  await expect.poll(() => focused(page)).toBe('A2: bolted');
  await keys.press('Space');
  await expect.poll(() => sheet.locator('[data-bay][aria-checked=true]').count()).toBeGreaterThanOrEqual(2);
  await tabTo(page, texts.panels.openThem);
  await window.kept(id, () => keys.press('Enter'));
  const opened = (await at.served.stored(id)).raw['panels'] as object;
  expect(opened).not.toHaveProperty('A1');
  expect(opened).not.toHaveProperty('A2');
  await window.kept(id, () => keys.press('Control+z'));
  expect((await at.served.stored(id)).raw['panels']).toHaveProperty('A1');

  // The note.
  await keys.press('Alt+0');
  await tabTo(page, texts.note.make);
  await keys.press('Enter');
  await sheet.locator('.pdf-pages canvas').first().waitFor({ timeout: 240_000 });
  const download = page.waitForEvent('download');
  await tabTo(page, texts.note.save);
  await keys.press('Enter');
  expect((await download).suggestedFilename()).toMatch(/^keyboard-plate.*\.pdf$/);
  await window.close();
});
