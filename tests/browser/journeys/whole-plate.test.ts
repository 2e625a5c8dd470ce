import type { AxeResults } from 'axe-core';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program } from '../support/program.ts';
import { textOf } from '../support/workbench.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const at = program();
const t = texts.whole;

it('solves the whole plate beside the hand values, again after an edit, draws its shape and saves its tables', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small');
  await window.open('whole');
  const now = sheet.locator('[data-solved="now"]');
  // Linear comes first; contact takes its place.
  await now.getByText(`${t.sets.linear}.`).waitFor();
  await now.getByText(`${t.sets.contact}.`).waitFor();
  const numbers = sheet.locator('.solver-numbers');
  const before = await numbers.innerText();
  expect(before).toMatch(/Moment of a tube/);
  expect(before).not.toMatch(/NaN|Infinity/);
  await page.evaluate(axe);
  const { violations } = (await page.evaluate(`axe.run('.sheet')`)) as AxeResults;
  expect(violations.map(({ id: rule, nodes }) => `${rule}: ${nodes[0]?.html}`)).toEqual([]);

  const canvas = page.locator('.plate-scene canvas');
  const plain = await canvas.screenshot();
  await sheet.getByRole('checkbox', { name: t.shape }).check();
  await page
    .getByRole('region', { name: texts.scene.bent.shape })
    .getByText(/Drawn larger by \d/)
    .waitFor();
  await expect.poll(async () => (await canvas.screenshot()).equals(plain)).toBe(false);
  await look('shape');

  await window.open('panels');
  await window.kept(id, () => window.type(texts.fields.thickness[0], '14 mm'));
  await window.open('whole');
  await now.getByText(`${t.sets.contact}.`).waitFor();
  await expect.poll(() => numbers.innerText()).not.toBe(before);

  const download = page.waitForEvent('download');
  await sheet.getByRole('button', { name: t.save }).click();
  const csv = await textOf((await download).createReadStream());
  expect(csv).toMatch(/^nodes\.csv\r\n/);
  for (const name of ['tubes', 'panels', 'supports']) expect(csv).toContain(`\r\n${name}.csv\r\n`);
  expect(csv).not.toMatch(/NaN|Infinity|undefined/);
  await window.close();

  async function look(name: string): Promise<void> {
    const folder = process.env['STILLPLATE_LOOK'];
    if (!folder) return;
    for (const [width, height] of [[1440, 900], [1024, 700]] as const) {
      await page.setViewportSize({ width, height });
      await page.waitForTimeout(1500);
      await page.screenshot({ path: `${folder}/${name}-${width}.png` });
    }
    await page.setViewportSize({ width: 1440, height: 900 });
  } // prettier-ignore
}, 600_000);
