import type { Page } from 'playwright-core';
import { stageOf, type SheetName } from '../../renderer/state/stages.ts';
import { texts } from '../../renderer/texts.ts';
import type { Measure } from './measure.ts';

/**
 * The longest task on the interface thread while a field is edited, a search runs, the plate is solved, a note is made
 * and a long record is added. `page` shows the document; `record` is the path of the record: content that the test
 * hands over would be read in by the page's own thread.
 */
export async function longestTask(page: Page, record: string): Promise<Measure> {
  await page.evaluate(`window.tasks = [];
    new PerformanceObserver((list) => { for (const { duration } of list.getEntries()) window.tasks.push(duration); }).observe({ type: 'longtask' }); undefined`);
  const told: string[] = [];
  let longest = 0;
  for (const [what, act] of Object.entries(acts(page, record))) {
    await page.evaluate('window.tasks.splice(0)');
    await act();
    await page.waitForTimeout(3000);
    const ms = Math.max(0, ...(await page.evaluate<number[]>('window.tasks')));
    told.push(`${what} ${ms.toFixed(0)}`);
    longest = Math.max(longest, ms);
  }
  return {
    name: `longest task of the interface thread, ms: ${told.join(', ')}`,
    ratio: longest,
    goal: 50,
    met: longest <= 50,
  };
}

/**
 * What is done in the window, by name. The page is asked by short scripts of our own: the driver's search by role works
 * out the name of every button on the interface thread itself, tens of milliseconds, and would be measured instead.
 */
function acts(page: Page, record: string): Readonly<Record<string, () => Promise<void>>> {
  const until = async (isSo: string): Promise<void> => {
    while (!(await page.evaluate<boolean>(isSo))) await page.waitForTimeout(100);
  };
  /** A click as a task of its own, at the first button of `place` that reads `name`. */
  const press = (place: string, name: string): Promise<void> => {
    const button = `[...document.querySelectorAll(${JSON.stringify(`${place} button`)})].find((one) => one.textContent.trim() === ${JSON.stringify(name)})`;
    return until(`Boolean(${button})`).then(() => page.evaluate(`setTimeout(() => ${button}.click()); undefined`));
  };
  const openSheet = async (sheet: SheetName): Promise<void> => {
    await press('', texts.stages[stageOf(sheet)]);
    await press('', texts.sheets[sheet]);
    await page.waitForTimeout(500);
  };
  const reads = (place: string, text: string) =>
    until(`[...document.querySelectorAll(${JSON.stringify(place)})].some((one) => one.textContent.includes(${JSON.stringify(text)}))`); // prettier-ignore
  return {
    'an edit': async () => {
      await openSheet('panels');
      const label = JSON.stringify(texts.fields.thickness[0]);
      await page.evaluate(`[...document.querySelectorAll('.sheet label')].find((one) => one.textContent.includes(${label})).control.select(); undefined`); // prettier-ignore
      await page.keyboard.type('8.5 mm');
      await page.keyboard.press('Enter');
    },
    'a search': async () => {
      await openSheet('search');
      await press('.sheet', texts.search.start);
      await page.waitForTimeout(8000);
      // a quick machine is done by then
      await page.evaluate(`[...document.querySelectorAll('.sheet button')].find((one) => one.textContent.trim() === ${JSON.stringify(texts.search.stop)})?.click(); undefined`); // prettier-ignore
    },
    'a solve': async () => {
      await openSheet('whole');
      await reads('[data-solved="now"]', `${texts.whole.sets.contact}.`);
    },
    'a note with its pages drawn': async () => {
      await openSheet('note');
      await press('.sheet', texts.note.make);
      await until(`document.querySelector('.pdf-pages canvas') !== null`);
    },
    'a record of a million rows': async () => {
      await openSheet('tank');
      const chooser = page.waitForEvent('filechooser');
      await press('.sheet', texts.tank.add);
      await (await chooser).setFiles(record);
      await reads('.sheet', 'Added mass and drag of this record');
    },
  };
}
