import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stageOf, type SheetName } from '../renderer/state/stages.ts';
import { texts } from '../renderer/texts.ts';
import { openBrowserInFull } from '../tests/browser/browser.ts';

/** Takes README's pictures of the window at a local address: the start page, the plate at work, a check opened, options. */
export async function windowPictures(root: string): Promise<readonly string[]> {
  const data = await mkdtemp(join(tmpdir(), 'stillplate-pictures-'));
  const program = spawn(process.execPath, [join(root, 'build/bundled/desktop/serve.mjs')], {
    env: { ...process.env, STILLPLATE_DATA: data },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const browser = await openBrowserInFull();
  try {
    const [said] = (await once(program.stdout, 'data')) as [Buffer];
    const address = /http:\S+/.exec(said.toString())![0];
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
    page.setDefaultTimeout(120_000);
    const made: string[] = [];
    const picture = async (name: string): Promise<void> => {
      await page.waitForTimeout(1500);
      await page.screenshot({ path: join(root, 'build/pictures', `${name}.png`) });
      made.push(`${name}.png`);
    };
    const sheet = async (name: SheetName) => {
      await page.getByRole('button', { name: texts.stages[stageOf(name)], exact: true }).click();
      await page.getByRole('button', { name: texts.sheets[name], exact: true }).first().click();
    };

    await page.goto(address);
    await page.locator('.cards button:not([disabled])').nth(3).waitFor();
    await picture('window-start');
    await page.locator('.cards button').nth(1).click();
    await page.getByText(texts.headline.decides).waitFor();
    await page.locator('.options-strip button').nth(3).waitFor();
    await sheet('panels');
    await picture('window-panels');
    await sheet('fixings');
    await page.locator('.check-line button').first().click();
    await page.locator('.explained math').first().waitFor();
    await page.locator('.explained').first().scrollIntoViewIfNeeded();
    await picture('window-check');
    await sheet('whole');
    await page.locator('[data-solved="now"]').getByText(`${texts.whole.sets.contact}.`).waitFor();
    await page.getByRole('checkbox', { name: texts.whole.shape }).check();
    // the check that was opened turned the picture to its place
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: texts.scene.views.fit, exact: true }).click();
    await page.mouse.move(700, 840);
    await picture('window-whole');
    await sheet('options');
    await page.locator('.comparison-plot').first().waitFor();
    await picture('window-options');
    return made;
  } finally {
    await browser.close();
    const gone = once(program, 'exit');
    program.kill('SIGTERM');
    await gone;
    await rm(data, { recursive: true, force: true });
  }
}
