import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';
import type { Workbench } from '../support/workbench.ts';

const at = program(withoutPicture);

const undo = (window: Workbench) => window.page.getByRole('button', { name: texts.headline.undo, exact: true });
const redo = (window: Workbench) => window.page.getByRole('button', { name: texts.headline.redo, exact: true });

it('goes back to the start and forth to the end by undo and redo, hash by hash', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small');
  const hashes = [(await at.served.stored(id)).hash];
  const steps: (() => Promise<unknown>)[] = [
    () => window.open('panels').then(() => window.type(texts.fields.thickness[0], '7 mm')),
    () => window.type(texts.fields.thickness[0], '7 kg'),
    () => window.type(texts.fields.thickness[0], '9 mm'),
    () => sheet.locator('[data-bay]').first().click().then(() => sheet.getByRole('button', { name: texts.panels.openThem, exact: true }).click()), // prettier-ignore
    () => sheet.getByRole('button', { name: texts.panels.newDesign }).click(),
    () => window.open('options').then(() => sheet.getByRole('button', { name: texts.options.duplicate }).click()),
    () => window.open('loads').then(() => window.type(texts.fields.depth[0], '19 m')),
    () => window.open('note').then(() => window.type(texts.fields.name[0], 'Skerry, second thoughts')),
  ];
  for (const step of steps) {
    await window.kept(id, step);
    hashes.push((await at.served.stored(id)).hash);
  }
  expect(new Set(hashes).size).toBe(hashes.length);
  for (let n = steps.length - 1; n >= 0; n--) {
    await window.kept(id, () => undo(window).click());
    expect((await at.served.stored(id)).hash).toBe(hashes[n]);
  }
  expect(await window.hash()).toBe(hashes[0]);
  expect(await undo(window).isDisabled()).toBe(true);
  // The keyboard goes forth where the mouse went back.
  for (let n = 1; n <= steps.length; n++) {
    await window.kept(id, () => page.keyboard.press(n % 2 === 0 ? 'Control+y' : 'Control+Shift+z'));
    expect((await at.served.stored(id)).hash).toBe(hashes[n]);
  }
  expect(await window.hash()).toBe(hashes.at(-1));
  expect(await redo(window).isDisabled()).toBe(true);
  await window.close();
});

it('finds every acknowledged edit after the page was loaded anew, and after closing without saving', async () => {
  const window = await at.open();
  const { page } = window;
  const id = await window.openSample('small', 'it stands');
  await window.open('loads');
  for (const depth of ['23 m', '24 m', '25 kg', '26 m'])
    await window.kept(id, () => window.type(texts.fields.depth[0], depth));
  const { hash } = await at.served.stored(id);

  expect(await window.hash()).toBe(hash);

  // Loaded anew in the middle of typing: the page is where it was, and what was typed is an edit like any other.
  await window.field(texts.fields.wavePeriod[0]).fill('8.');
  await page.reload();
  await expect.poll(() => window.field(texts.fields.wavePeriod[0]).inputValue()).toBe('8.');
  expect((await at.served.stored(id)).raw['loads']).toMatchObject({ service: { wavePeriod: '8.' } });
  // It has no unit, so nothing is judged before it is taken back.
  await window.kept(id, () => undo(window).click());
  await page.getByText(texts.headline.decides).waitFor();
  expect((await at.served.stored(id)).hash).toBe(hash);
  expect(await window.hash()).toBe(hash);
  // The steps before are there too.
  await window.kept(id, () => undo(window).click());
  expect((await at.served.stored(id)).raw['water']).toMatchObject({ depth: '25 kg' });
  await window.kept(id, () => redo(window).click());

  // What is typed is handed over when its sheet is left, by mouse or by key, and when the document is closed.
  await window.open('loads');
  await window.field(texts.fields.wavePeriod[0]).fill('8.2 s');
  await window.kept(id, () => page.keyboard.press('Alt+1'));
  expect((await at.served.stored(id)).raw['loads']).toMatchObject({ service: { wavePeriod: '8.2 s' } });
  await window.open('loads');
  await window.field(texts.fields.depth[0]).fill('27 m');
  await window.allPlates();
  const last = await at.served.stored(id);
  expect(last.raw['water']).toMatchObject({ depth: '27 m' });
  await page.locator('.recent').getByRole('button', { name: 'Tern Skerry' }).first().click();
  await page.getByText(texts.headline.decides).waitFor();
  expect(await window.hash()).toBe(last.hash);
  await window.close();
});

it('starts the engine again after it broke, and opens the document at its last edit', async () => {
  const broken = 'the engine was broken on purpose';
  const window = await at.open(new RegExp(broken));
  const { page } = window;
  const id = await window.openSample('small');
  await window.open('loads');
  await window.kept(id, () => window.type(texts.fields.depth[0], '33 m'));
  const { hash } = await at.served.stored(id);
  const [worker] = page.workers();
  await worker!.evaluate(`setTimeout(() => { throw new Error('${broken}'); }) && null`);
  await page.locator('.notice.loud', { hasText: broken }).waitFor();
  await expect.poll(() => window.field(texts.fields.depth[0]).inputValue()).toBe('33 m');
  await window.kept(id, () => window.type(texts.fields.depth[0], '34 m'));
  await window.kept(id, () => undo(window).click());
  expect((await at.served.stored(id)).hash).toBe(hash);
  expect(await window.hash()).toBe(hash);
  await window.close();
});
