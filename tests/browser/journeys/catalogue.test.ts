import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);
const t = texts.catalogue;

it('a section of one’s own: made like a built-in one, changed, used by the tubes, kept for the next plate', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small', 'it stands');
  const mass = () => page.locator('.headline dl').innerText();
  const before = await mass();

  // The tubes of the sample, one millimetre thicker than any catalogue has them.
  await window.open('grid');
  const used = await window.field(texts.fields.section[0]).inputValue();
  await window.open('catalogue');
  await sheet.getByText(t.noOwn).waitFor();
  await window.field(t.find[0]).fill(used);
  await window.kept(id, () => sheet.getByRole('button', { name: t.likeOf(used), exact: true }).click());
  const own = `${used} own`;
  await expect.poll(() => page.evaluate('document.activeElement.value')).toBe(own);
  await sheet.getByText(t.noSource).waitFor();
  const wall = await window.field('Wall').inputValue();
  await window.kept(id, () => window.type('Wall', `${Number.parseFloat(wall) + 1.3} mm`));
  await window.kept(id, () => sheet.getByRole('button', { name: t.addSource }).click());
  await window.kept(id, () => window.type('Document', 'Certificate 3.1 of the yard'));
  expect(await mass()).toBe(before);

  await window.open('grid');
  await window.kept(id, () => window.type(texts.fields.section[0], own));
  await expect.poll(mass).not.toBe(before);
  const { raw } = await at.served.stored(id);
  expect(raw['catalogue']).toMatchObject({ sections: [{ id: own, wall: `${Number.parseFloat(wall) + 1.3} mm`, source: { document: 'Certificate 3.1 of the yard' } }] }); // prettier-ignore

  // Kept on this machine, another plate takes it in; forgotten, none does.
  await window.open('catalogue');
  await sheet.getByRole('button', { name: t.keep }).click();
  await page.getByText(t.keptNow(own)).waitFor();
  await sheet.getByText(t.isHere).waitFor();
  const second = await window.openSample('inch', 'it stands');
  await window.open('catalogue');
  const title = t.row(t.kinds.section, own);
  await window.kept(second, () => sheet.getByRole('button', { name: t.takeOf(title) }).click());
  expect((await at.served.stored(second)).raw['catalogue']).toEqual(raw['catalogue']);
  await sheet.getByRole('button', { name: t.dropOf(title) }).click();
  await sheet.getByText(t.noKept).waitFor();
  expect(await at.served.host.listCatalogueAdditions({})).toEqual({ ok: true, value: [] });
  await window.close();
});
