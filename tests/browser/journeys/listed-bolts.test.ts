import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);
const t = texts.fixings;

interface Fixing {
  readonly pitch?: unknown;
  readonly places?: readonly Readonly<Record<string, string>>[];
}

it('bolts on a list: begun from the lines that are there, changed, added to, taken from, and all of it undone', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small', 'it stands');
  const fixing = async (): Promise<Fixing> =>
    ((await at.served.stored(id)).raw['designs'] as Record<string, { fixing: Fixing }>)['bolted-5']!.fixing;
  const table = sheet.getByRole('table', { name: t.places });
  const rows = table.locator('tbody tr:not(.row-faults)');
  const cell = (row: number, column: number) => rows.nth(row).locator('input').nth(column);
  const type = async (row: number, column: number, text: string) => {
    await cell(row, column).fill(text);
    await cell(row, column).press('Enter');
  };

  await window.open('fixings');
  const pitch = await window.field(texts.fields.pitch[0]).inputValue();
  await window.kept(id, () => sheet.getByRole('button', { name: t.listed, exact: true }).click());
  const begun = await fixing();
  expect(begun.pitch).toBeUndefined();
  expect(begun.places).toHaveLength(await rows.count());
  expect(begun.places!.length).toBeGreaterThan(20);
  await expect.poll(() => sheet.getByLabel(texts.fields.pitch[0], { exact: true }).count()).toBe(0);

  // The second bolt moved, one more listed, the first taken away.
  await window.kept(id, () => type(1, 1, '95 mm'));
  await window.kept(id, () => sheet.getByRole('button', { name: texts.table.add, exact: true }).click());
  await window.kept(id, () => rows.nth(0).getByRole('button').click());
  const changed = await fixing();
  expect(changed.places).toHaveLength(begun.places!.length);
  expect(changed.places![0]).toEqual({ ...begun.places![1]!, y: '95 mm' });
  expect(changed.places!.at(-1)).toEqual({ x: '25 mm', y: '25 mm', from: 'low x, low y' });

  // A place that is no length says so below its row; the last good numbers stay.
  await window.kept(id, () => type(0, 0, '3 kg'));
  await table.locator('.row-faults').getByText('a mass').first().waitFor();
  if (process.env['PLACES_PICTURES']) {
    await page.screenshot({ path: `${process.env['PLACES_PICTURES']}/wide.png` });
    await page.setViewportSize({ width: 1024, height: 700 });
    await page.screenshot({ path: `${process.env['PLACES_PICTURES']}/narrow.png` });
  }

  for (let step = 0; step < 5; step++) await window.kept(id, () => page.keyboard.press('Control+z'));
  expect(await window.field(texts.fields.pitch[0]).inputValue()).toBe(pitch);
  expect((await fixing()).places).toBeUndefined();
  await window.close();
});

it('the same in an option: its list takes the place of the pitch of its base', async () => {
  const window = await at.open();
  const id = await window.openSample('small');
  await window.open('fixings');
  await window.kept(id, () => window.sheet.getByRole('button', { name: t.listed, exact: true }).click());
  await window.sheet.getByRole('table', { name: t.places }).waitFor();
  await expect.poll(() => window.sheet.locator('.fault').count()).toBe(0);
  await window.kept(id, () => window.sheet.getByRole('button', { name: t.inLines, exact: true }).click());
  await window.field(texts.fields.pitch[0]).waitFor();
  await expect.poll(() => window.sheet.locator('.fault').count()).toBe(0);
  await window.close();
});
