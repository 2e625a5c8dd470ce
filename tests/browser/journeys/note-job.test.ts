import { expect, it } from 'vitest';
import { valueOf } from '../../../core/host/answer.ts';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);

it('goes on with a note while the page is loaded anew, finds its end, and cancels one', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  await window.openSample('inch');
  await window.open('note');
  await sheet.getByRole('button', { name: texts.note.make, exact: true }).click();
  await sheet.getByRole('progressbar', { name: texts.note.progress }).waitFor();
  await expect.poll(async () => valueOf(await at.served.host.listJobs({})).length).toBe(1);
  const [job] = valueOf(await at.served.host.listJobs({}));
  const { state } = valueOf(await at.served.host.jobState({ job: job! }));
  expect(state).toBe('running');
  await page.reload();
  // The page is where it was, and finds the job that the program goes on with: nothing is made anew.
  const running = sheet.getByRole('progressbar', { name: texts.note.progress });
  const pages = sheet.locator('.pdf-pages canvas');
  await pages.first().waitFor({ timeout: 240_000 });
  expect(await running.count()).toBe(0);
  expect(valueOf(await at.served.host.listJobs({}))).toEqual([job]);
  expect(valueOf(await at.served.host.jobState({ job: job! })).state).toBe('done');
  const { bytes } = valueOf(await at.served.host.jobResult({ job: job! }));
  expect(Buffer.from(bytes.subarray(0, 5)).toString()).toBe('%PDF-');
  expect(await page.getByText(texts.note.stale).count()).toBe(0);

  // Cancelled: no pages, nothing running, and it can be made after all.
  const make = sheet.getByRole('button', { name: new RegExp(`^(${texts.note.make}|${texts.note.again})$`) });
  await make.click();
  await sheet.getByRole('button', { name: texts.note.cancel, exact: true }).click();
  await running.waitFor({ state: 'hidden' });
  // Nothing goes on behind the page: what was handed over is cancelled, or nothing was handed over.
  const left = valueOf(await at.served.host.listJobs({})).filter((each) => each !== job);
  const ends = async () =>
    Promise.all(left.map(async (each) => valueOf(await at.served.host.jobState({ job: each })).state));
  await expect.poll(ends).toEqual(left.map(() => 'cancelled'));
  expect(await make.isEnabled()).toBe(true);
  await make.click();
  await pages.first().waitFor({ timeout: 240_000 });
  await window.close();
});
