import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { handbookWords } from '../../core/handbook/texts/words.ts';
import { texts } from '../../renderer/texts.ts';
import { openBrowser } from './browser.ts';
import { serveStillplate, type Served } from './support/served.ts';
import { openWorkbench, type Workbench } from './support/workbench.ts';

// axe-core runs the machine-checkable rules of WCAG 2.2, levels A and AA; what it cannot see (order of the keyboard,
// what a name says) is below and in the journeys. It comes in by the debugger, so that the content policy stays on.
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const rules: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
  rules: { 'target-size': { enabled: true } },
  resultTypes: ['violations'],
};
/** The rules that look at colours: all that a change from light to dark can break. */
const ofColours: RunOptions = { runOnly: ['color-contrast', 'link-in-text-block'], resultTypes: ['violations'] };

let browser: Browser;
let served: Served;
let bench: Workbench;
beforeAll(async () => {
  browser = await openBrowser();
  served = await serveStillplate();
  bench = await openWorkbench(browser, served);
});
afterAll(async () => {
  await bench.close();
  await browser.close();
  await served.close();
});

/** What axe finds wrong in the page as it is now, in words. */
async function faults(page: Page, by: RunOptions): Promise<readonly string[]> {
  if (!(await page.evaluate<boolean>(`'axe' in window`))) await page.evaluate(axe);
  const { violations } = await page.evaluate<AxeResults>(`axe.run(${JSON.stringify(by)})`);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary?.replaceAll(/\s+/g, ' ')}`),
  );
}

const handbookTitles = [...['hour', 'theory', 'limits', 'glossary'].map((id) => handbookWords[id as 'hour'].title), texts.shortcuts.list]; // prettier-ignore
const sheetNames = Object.keys(texts.sheets) as (keyof typeof texts.sheets)[];

it('axe finds nothing wrong by WCAG 2.2 A and AA on every page, sheet and dialog, in the light and in the dark', async () => {
  const { page } = bench;
  const found: Record<string, readonly string[]> = {};
  const look = async (state: string): Promise<void> => {
    for (const [colorScheme, by] of [
      ['light', rules],
      ['dark', ofColours],
    ] as const) {
      await page.emulateMedia({ colorScheme });
      const of = await faults(page, by);
      if (of.length > 0) found[`${state}, ${colorScheme}`] = of;
    }
  };
  await page.locator('.card:enabled').nth(3).waitFor();
  await look('start');
  await page.getByRole('button', { name: texts.start.newPlate }).click();
  await page.locator('.growing .figure').waitFor();
  await page.getByLabel(texts.newPlate.labels.length, { exact: true }).fill('no length');
  await page.locator('.new-plate .fault').waitFor();
  await look('new plate with a fault');
  await page.getByRole('button', { name: texts.newPlate.back }).click();

  await bench.openSample('small');
  await page.locator('.options-strip [aria-current]').waitFor();
  for (const sheet of sheetNames) {
    await bench.open(sheet);
    await look(sheet);
  }
  await bench.open('panels');
  await bench.type(texts.fields.thickness[0], 'thick');
  await page.locator('.facts.stale').waitFor();
  await look('a wrong field');
  await page.getByRole('button', { name: texts.headline.undo, exact: true }).click();
  await page.locator('.facts:not(.stale)').waitFor();

  await bench.open('strength');
  await page.locator('.check-group button').first().click();
  await page.locator('.check-line button').first().click();
  await page.locator('.explained h3').waitFor();
  await look('a check in full');

  await page.getByRole('button', { name: texts.strength.theory }).click();
  await page.locator('.on-this-plate').waitFor();
  await look('theory of a check');
  for (const chapter of handbookTitles) {
    await page.locator('.handbook nav').getByRole('button', { name: chapter, exact: true }).click();
    await look(`handbook: ${chapter}`);
  }
  await page.getByLabel(texts.handbook.search).fill('bolt');
  await look('handbook: found');
  await page.getByRole('button', { name: texts.handbook.close, exact: true }).click();

  await bench.open('options');
  await page.getByRole('button', { name: texts.shell.widen }).click();
  await look('options over the whole width');
  await page.getByRole('button', { name: texts.shell.narrow }).click();

  await bench.open('note');
  await page.locator('.note-acts .primary').click();
  await page.locator('.pdf-pages canvas').first().waitFor();
  await look('pages of the note');

  for (const dialog of ['finder', 'history', 'shortcuts', 'about'] as const) {
    await page.getByRole('button', { name: texts.headline.dialogs[dialog], exact: true }).click();
    await page.locator('dialog[open]').waitFor();
    await look(dialog);
    if (dialog !== 'about') await page.keyboard.press('Escape');
  }
  await page.getByRole('button', { name: texts.about.problem }).click();
  await look('problem');
  await page.keyboard.press('Escape');
  await bench.allPlates();
  expect(found).toEqual({});
});

it('Tab reaches everything that can be used, in the order of the page, each with a ring around it', async () => {
  const { page } = bench;
  await bench.openSample('small');
  await page.locator('.options-strip [aria-current]').waitFor();
  await bench.open('panels');
  await page.locator('.sheet [role=checkbox]').first().waitFor();
  const all = await page.evaluate<number>(numberUsable);
  const reached: number[] = [];
  const bare: string[] = [];
  for (let n = 0; n < all + 5; n++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate<Focused | null>(focused);
    if (!at) continue;
    reached.push(at.number);
    if (!at.hasRing) bare.push(at.text);
  }
  expect(bare).toEqual([]);
  expect(new Set(reached).size).toBe(all);
  // Once round, from the first to the last: no order of its own anywhere.
  const first = reached.slice(reached.indexOf(0), reached.indexOf(0) + all);
  expect(first).toEqual([...first].sort((a, b) => a - b));
});

interface Focused {
  readonly number: number;
  readonly hasRing: boolean;
  readonly text: string;
}

/** Numbers everything in the page that can be used, in the page's order, and says how many there are. */
const numberUsable = `(() => {
  const usable = 'button, input, select, textarea, summary, a[href], [tabindex]';
  const all = [...document.querySelectorAll(usable)].filter(
    (element) =>
      element.tabIndex >= 0 &&
      !element.matches(':disabled') &&
      element.checkVisibility({ visibilityProperty: true }) &&
      !element.closest('details:not([open]) > :not(summary)'),
  );
  all.forEach((element, n) => element.setAttribute('data-reach', String(n)));
  document.activeElement?.blur();
  return all.length;
})()`;

/** What has the focus, and whether it shows: a ring of 2 pixels around it, or around what is drawn of it. */
const focused = `(() => {
  const element = document.activeElement;
  const number = element?.getAttribute('data-reach');
  if (!element || number == null) return null;
  const { outlineStyle, outlineWidth } = getComputedStyle(element);
  const drawn = element.querySelector('rect');
  const hasRing =
    (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) ||
    (drawn !== null && Number.parseFloat(getComputedStyle(drawn).strokeWidth) >= 3);
  return { number: Number(number), hasRing, text: element.outerHTML.slice(0, 120) };
})()`;
