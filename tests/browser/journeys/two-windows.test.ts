import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program } from '../support/program.ts';

const at = program();

it('shows an edit of one window in the other, and keeps both documents where both edited at once', async () => {
  const first = await at.open();
  const id = await first.openSample('small', 'it stands');
  await first.open('loads');
  const second = await at.open();
  await second.page.locator('.recent button.name').first().click();
  await second.page.getByText(texts.headline.decides).waitFor();
  await second.open('loads');
  const [depth] = texts.fields.depth;

  // One edits, the other sees it.
  await first.kept(id, () => first.type(depth, '21 m'));
  await expect.poll(() => second.field(depth).inputValue()).toBe('21 m');
  await second.kept(id, () => second.type(depth, '22 m'));
  await expect.poll(() => first.field(depth).inputValue()).toBe('22 m');
  // A step back in one undoes what the other did last.
  await first.kept(id, () => first.page.getByRole('button', { name: texts.headline.undo, exact: true }).click());
  await expect.poll(() => second.field(depth).inputValue()).toBe('21 m');

  // A revision of one puts the journal away; a step back in the other is then an edit of its own.
  await first.page.keyboard.press('Control+s');
  await first.page.getByLabel(texts.history.remark).fill('as agreed');
  await first.page.getByRole('button', { name: texts.history.make, exact: true }).click();
  await first.page.getByText(texts.history.revision(1)).waitFor();
  await first.page.locator('dialog').getByRole('button', { name: texts.dialog.close, exact: true }).click();
  await second.kept(id, () => second.page.getByRole('button', { name: texts.headline.undo, exact: true }).click());
  const agreed = (await at.served.stored(id)).hash;
  await expect.poll(() => first.hash()).toBe(agreed);

  // Both at once: the second window's message is held back until the first's edit is on the disk.
  await second.page.route(
    '**/call/appendEdits',
    async (route) => {
      await first.kept(id, () => first.type(depth, '31 m'));
      await route.continue();
    },
    { times: 1 },
  );
  await second.type(depth, '41 m');
  const question = second.page.getByRole('alertdialog', { name: texts.notices.conflict(1) });
  await question.waitFor();
  // What is typed meanwhile is not lost either.
  await second.type(texts.fields.wavePeriod[0], '7.5 s');
  await question.getByRole('button', { name: texts.notices.keepBoth }).click();
  await expect.poll(async () => (await at.served.documents()).length).toBe(2);
  await question.waitFor({ state: 'hidden' });
  const theirs = (await at.served.stored(id)).raw;
  const other = (await at.served.documents()).find((line) => line.id !== id)!;
  const mine = (await at.served.stored(other.id)).raw;
  expect(theirs['water']).toMatchObject({ depth: '31 m' });
  expect(mine['water']).toMatchObject({ depth: '41 m' });
  expect(mine['loads']).toMatchObject({ service: { wavePeriod: '7.5 s' } });
  expect(other.name).toContain('(mine)');
  // Each window goes on with its own.
  await second.kept(other.id, () => second.type(depth, '42 m'));
  expect(await first.field(depth).inputValue()).toBe('31 m');
  expect((await at.served.documents()).map(({ name }) => name).sort()[1]).toContain('(mine)');
  await first.close();
  await second.close();
});
