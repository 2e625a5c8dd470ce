import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sampleNames } from '../../../renderer/start/sample-names.ts';
import { texts } from '../../../renderer/texts.ts';
import { ran } from '../../command/ran.ts';
import { readPdf } from '../../host/read-pdf.ts';
import { program } from '../support/program.ts';
import { bytesOf } from '../support/workbench.ts';

const at = program();
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stillplate-note-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

it('leads from a first visit to a note on disk that says what the command line says of the same document', async () => {
  const window = await at.open();
  const { page, sheet } = window;

  // First visit: what this is for, and the samples drawn as plans.
  await expect.poll(() => page.locator('.cards svg').count()).toBe(sampleNames.length);
  expect(await page.getByText(texts.start.lead).isVisible()).toBe(true);
  expect(await page.getByText(texts.start.noRecent).isVisible()).toBe(true);

  // A new plate: the plan follows each answer.
  await page.getByRole('button', { name: texts.start.newPlate, exact: true }).click();
  const { labels } = texts.newPlate;
  const plan = page.locator('.growing');
  const answers = [
    ['name', 'Fathom trial plate'],
    ['length', '4.2 m'],
    ['width', '2.6 m'],
    ['mainTubes', '4'],
    ['crossTubes', '6'],
    ['section', 'SHS 100x100x6.3 hot'],
    ['depth', '28 m'],
    ['force', '9 kN'],
  ] as const;
  await plan.locator('svg').waitFor();
  for (const [field, answer] of answers) {
    const before = await plan.innerHTML();
    await page.getByLabel(labels[field], { exact: true }).fill(answer);
    if (
      field === 'length' ||
      field === 'width' ||
      field === 'mainTubes' ||
      field === 'crossTubes' ||
      field === 'section'
    )
      await expect.poll(() => plan.innerHTML()).not.toBe(before);
  }
  await expect.poll(() => plan.innerText()).toMatch(/4 main, 6 cross/);
  await expect.poll(() => plan.innerText()).toMatch(/4\.20? m × 2\.60? m/);
  await page.getByRole('button', { name: texts.newPlate.make }).click();
  await page.getByText(texts.headline.decides).waitFor();
  const [line] = await at.served.documents();
  expect(line!.name).toBe('Fathom trial plate');
  const { id } = line!;

  // Panels: bays by dragging across them and by a typed range, opened and closed.
  await window.open('panels');
  const bay = (name: string): Locator => sheet.locator(`[data-bay="${name}"]`);
  const panels = async (): Promise<Record<string, string>> =>
    (await at.served.stored(id)).raw['panels'] as Record<string, string>;
  expect(Object.keys(await panels())).toHaveLength(15);
  await bay('A1').hover();
  await page.mouse.down();
  await bay('B2').hover();
  await page.mouse.up();
  await sheet.getByText(texts.panels.chosen(4)).waitFor();
  await window.kept(id, () => sheet.getByRole('button', { name: texts.panels.openThem, exact: true }).click());
  expect(Object.keys(await panels()).filter((name) => /^[AB][12]$/.test(name))).toEqual([]);
  await sheet.getByPlaceholder(texts.panels.range).fill('A1, A2:B2');
  await sheet.getByText(texts.panels.chosen(3)).waitFor();
  await window.kept(id, () => sheet.getByLabel(texts.panels.close).selectOption('bolted'));
  expect(Object.keys(await panels()).sort()).toHaveLength(14);
  expect((await panels())['A2']).toBe('bolted');
  await expect.poll(() => bay('B1').getAttribute('class')).not.toContain('closed');

  // Bolted against welded: the option duplicated, then changed.
  await window.open('options');
  await window.kept(id, () => sheet.getByRole('button', { name: texts.options.duplicate }).click());
  const strip = page.getByRole('navigation', { name: texts.sheets.options });
  const madeOf = async () => ((await at.served.stored(id)).raw['options'] as { id: string; title: string }[]).at(-1)!;
  const shown = strip.locator('[aria-current=true]');
  await expect.poll(async () => (await shown.innerText()).includes((await madeOf()).title)).toBe(true);
  await window.open('fixings');
  const headline = page.locator('.headline dl');
  const bolted = await headline.innerText();
  await window.kept(id, () => sheet.getByRole('button', { name: texts.fixings.welded, exact: true }).click());
  await expect.poll(() => headline.innerText()).not.toBe(bolted);
  const { raw, hash } = await at.served.stored(id);
  const options = raw['options'] as { id: string; title: string; changes: { designs?: Record<string, unknown> } }[];
  const made = options.at(-1)!;
  expect(made.changes.designs).toMatchObject({ bolted: { fixing: { kind: 'welded' } } });
  expect(raw['designs']).toMatchObject({ bolted: { fixing: { kind: 'bolted' } } });

  // Compared: every option has its column, and the plot its point.
  await window.open('options');
  await expect.poll(() => sheet.locator('table').first().innerText()).toContain(made.title);
  expect(await shown.innerText()).toContain(made.title);

  // The note of the option that is shown, read in the window, then saved.
  await window.open('note');
  await sheet.getByRole('button', { name: texts.note.make }).click();
  await sheet.locator('.pdf-pages canvas').first().waitFor({ timeout: 240_000 });
  const download = page.waitForEvent('download');
  await sheet.getByRole('button', { name: texts.note.save }).click();
  const pdf = join(folder, 'note.pdf');
  await writeFile(pdf, await bytesOf((await download).createReadStream()));
  expect((await download).suggestedFilename()).toMatch(/^fathom-trial-plate-.*\.pdf$/);
  await expect.poll(() => sheet.locator('.pdf-pages canvas').count()).toBeGreaterThan(3);
  // The text of the shown pages is there to be found and selected; pages out of sight are not drawn.
  const shownText = sheet.locator('.pdf-text').first();
  await expect.poll(() => shownText.innerText()).toContain('Fathom trial plate');
  await sheet.locator('.pdf-page[data-drawn]').first().waitFor();
  expect(await sheet.locator('.pdf-page').last().getAttribute('data-drawn')).toBeNull();
  await expect.poll(() => darkest(page)).toBeLessThan(60);
  const [page1, text1] = await Promise.all([sheet.locator('.pdf-page').first().boundingBox(), shownText.locator('span').first().boundingBox()]); // prettier-ignore
  expect(text1!.y).toBeGreaterThanOrEqual(page1!.y);
  expect(text1!.x + text1!.width).toBeLessThanOrEqual(page1!.x + page1!.width);

  // The same document by the command line.
  const file = join(folder, 'plate.stillplate');
  // Saved by the window: the very bytes that its note carries.
  await page.keyboard.press('Control+s');
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: texts.history.saveFile }).click();
  const bytes = Buffer.concat(await bytesOf((await saved).createReadStream()));
  await page.locator('dialog').getByRole('button', { name: texts.dialog.close, exact: true }).click();
  await writeFile(file, bytes);
  const checked = await ran(['check', file, '--option', made.id, '--json']);
  const result = JSON.parse(checked.out) as {
    documentHash: string;
    governing: Record<string, { title: string; utilisation: number | null }>;
  };
  expect(result.documentHash).toBe(hash);
  const read = readPdf(await readFile(pdf));
  expect(Buffer.from(read.attachments.get('document.stillplate.json')!).equals(bytes)).toBe(true);
  const printed = read.pages.join('\n');
  expect(printed).toContain(made.title);
  expect(printed.replace(/\s+/g, '')).toContain(hash);
  const judged = Object.values(result.governing).filter(({ utilisation }) => utilisation !== null);
  expect(judged.length).toBeGreaterThan(0);
  for (const { title, utilisation } of judged) {
    expect(printed).toContain(title);
    expect(printed).toContain(utilisation!.toFixed(2));
  }
  await window.close();
});

/** Darkest red of the first page, which is drawn from another thread, 0 to 255. */
const darkest = (page: Page): Promise<number> =>
  page.evaluate<number>(`(() => {
    const copy = new OffscreenCanvas(600, 800).getContext('2d');
    copy.drawImage(document.querySelector('.pdf-pages canvas'), 0, 0, 600, 800);
    const { data } = copy.getImageData(0, 0, 600, 800);
    return data.reduce((least, value, n) => (n % 4 === 0 && data[n + 3] > 0 ? Math.min(least, value) : least), 255);
  })()`);
