import { expect, it } from 'vitest';
import { readDocument } from '../../../core/document/read-document.ts';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program([...withoutPicture]);
const t = texts.search;
const label = (name: keyof typeof texts.fields) => texts.fields[name][0];

it('leads from what may vary to an option of the document and a record for the note', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small');
  await window.open('search');
  await window.kept(id, () => window.type(label('searchThickness'), '5 mm; 6 mm; 8 mm'));
  await window.kept(id, () => window.type(label('searchMaterial'), 'S355 plate; S275 plate'));
  await window.kept(id, () => sheet.getByLabel(t.limitStates.fatigue, { exact: true }).click());
  await window.kept(id, () => sheet.getByLabel(t.limitStates.stability, { exact: true }).click());
  await sheet.getByRole('button', { name: t.start, exact: true }).click();

  const list = sheet.getByRole('table', { name: t.list });
  await list.waitFor();
  const found = await list.locator('tbody tr').count();
  expect(found).toBeGreaterThan(0);
  expect(await sheet.locator('.comparison-plot .point').count()).toBe(found);

  // One click makes what was found an option, and the headline is about it.
  const title = await list.locator('tbody button').first().textContent();
  await window.kept(id, () => sheet.getByRole('button', { name: t.take, exact: true }).click());
  await window.kept(id, () => sheet.getByRole('button', { name: t.keep, exact: true }).click());
  const { raw } = await at.served.stored(id);
  const document = readDocument(raw);
  expect(document.options.at(-1)!.title).toBe(title);
  expect(document.search!.record!.found).toHaveLength(found);
  await expect.poll(() => page.locator('.options-strip').textContent()).toContain(title!.slice(0, 12));

  // What was found is of the plate as it was: another lists, and it says so.
  await window.kept(id, () => window.type(label('searchThickness'), '6 mm; 8 mm'));
  await sheet.getByText(t.stale).waitFor();
  await window.close();
});

it('shows what stated spreads do to the margin, each by itself and all at once, and keeps it for the note', async () => {
  const { sensitivity: s } = texts;
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small');
  await window.open('search');
  const part = sheet.locator('.sensitivity');
  const start = part.getByRole('button', { name: s.start, exact: true });
  expect(await start.isDisabled()).toBe(true);
  await window.kept(id, () => part.getByRole('button', { name: texts.table.add, exact: true }).click());
  await window.kept(id, () => window.type(s.points, '8'));
  await start.click();
  await part.getByRole('button', { name: s.stop, exact: true }).click();
  await start.click();

  const keep = part.getByRole('button', { name: s.keep, exact: true });
  await keep.waitFor();
  expect(await part.locator('figure svg').count()).toBe(2);
  expect(await part.textContent()).toContain('16 states');
  await window.kept(id, () => keep.click());
  const { record } = readDocument((await at.served.stored(id)).raw).sensitivity!;
  expect(record!.moved.map(({ input }) => input)).toEqual(['force']);
  expect(await keep.isDisabled()).toBe(false);

  // What is kept is shown when the document is opened again, and said to be of before once another spread is stated.
  await page.reload();
  await window.open('search');
  await keep.waitFor();
  await window.kept(id, () => window.type(s.points, '16'));
  await part.getByText(s.stale).waitFor();
  await window.close();
});
