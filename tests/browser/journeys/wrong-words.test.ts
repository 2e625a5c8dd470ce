import type { Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);

const wrong = ['10 kg', '-1 mm', 'NaN', '', '1e400', 'ton'] as const;
const sheets = ['grid', 'panels', 'fixings', 'loads', 'strength', 'note'] as const;
/** Every field that is typed into, of every sheet; not the search boxes beside them. */
const typedInto = '.field input[type=text], .field textarea, .table-field td input[type=text]';

/**
 * Six wrong words go through every field in turn: each field gets one of them, the next field the next, and the rounds
 * shift by one, so that every field meets every word at night and one in six on an ordinary day.
 */
const rounds = process.env.STILLPLATE_NIGHT ? wrong.length : 1;

for (let round = 0; round < rounds; round++)
  it(`says what is wrong beside every field, keeps it and the last good numbers, and undo brings all back (round ${round + 1})`, async () => {
    const window = await at.open();
    const { page, sheet } = window;
    const id = await window.openSample('inch');
    const before = await at.served.stored(id);
    const deciding = await window.deciding();
    const undo = page.getByRole('button', { name: texts.headline.undo, exact: true });
    let tried = 0;
    const silent: string[] = [];
    const problems: string[] = [];
    for (const name of sheets) {
      await window.open(name);
      await sheet.locator('.field').first().waitFor();
      for (const closed of await sheet.locator('details:not([open]) > summary').all())
        if (await closed.isVisible()) await closed.click();
      const count = await sheet.locator(typedInto).count();
      for (let n = 0; n < count; n++) {
        const field = sheet.locator(typedInto).nth(n);
        const held = await field.inputValue();
        const word = wrong[(tried + round) % wrong.length]!;
        if (held === word) continue;
        tried++;
        const place = `${name}: ${await labelOf(field)}, “${word}”`;
        // Kept as typed, whatever it is; an emptied field may show what then stands in its place.
        await window.kept(id, async () => {
          await field.fill(word);
          await field.blur();
        });
        if (word !== '') expect(await field.inputValue(), place).toBe(word);
        // The numbers are marked as of before exactly where the field is wrong; then they are the last good ones.
        const isStale = async () => (await page.getByText(texts.headline.stale).count()) > 0;
        const isWrong = async () => (await field.getAttribute('aria-invalid')) === 'true';
        await told(place, problems, async () => (await isStale()) === (await isWrong()));
        if (await isWrong()) {
          expect(await window.deciding(), place).toBe(deciding);
          // What is wrong, and how to mend it.
          const fault = await faultOf(field);
          if (!/^.{8,}\. .{8,}$/s.test(fault)) problems.push(`${place} says only “${fault}”`);
        } else silent.push(place);
        if (word !== 'NaN')
          expect(await page.locator('body').innerText(), place).not.toMatch(/\bNaN\b|Infinity|undefined/);
        await window.kept(id, () => undo.click());
        expect((await at.served.stored(id)).hash, place).toBe(before.hash);
        await expect.poll(() => field.inputValue()).toBe(held);
      }
    }
    expect(problems).toEqual([]);
    expect(tried).toBeGreaterThan(80);
    console.info(`${tried} fields; words that are right where they stand: ${silent.join(' | ')}`);
    expect(await window.deciding()).toBe(deciding);
    await window.close();
  }, 900_000);

/** Waits until something is so, three seconds at most; else it is a problem of this place. */
async function told(place: string, problems: string[], isSo: () => Promise<boolean>): Promise<void> {
  const end = Date.now() + 3000;
  while (Date.now() < end) if (await isSo()) return;
  problems.push(`${place} is not said at the field`);
}

const labelOf = async (field: Locator): Promise<string> =>
  (await field.getAttribute('aria-label')) ??
  (await field.evaluate(
    (input) => (input as unknown as { labels: { textContent: string }[] }).labels[0]?.textContent ?? '?',
  ));

/** What is said beside a field, or below the row of a table's cell. */
const faultOf = async (field: Locator): Promise<string> =>
  (await field.evaluate((input) => {
    const { document } = globalThis as unknown as { document: { getElementById(id: string): { innerText: string } | null } };
    const said = (input as unknown as { getAttribute(name: string): string | null }).getAttribute('aria-describedby');
    return said === null ? null : (document.getElementById(said)?.innerText ?? null);
  })) || (await field.locator('xpath=ancestor::div[contains(@class,"field")][1]//p[@class="fault"]').innerText()); // prettier-ignore
