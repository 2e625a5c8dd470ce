import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { valueOf } from '../../../core/host/answer.ts';
import { noteLife } from '../../../core/issue/note-life.ts';
import { readRegister } from '../../../core/issue/register.ts';
import { readSignatures } from '../../../electron/host/sign/read-signatures.ts';
import { texts } from '../../../renderer/texts.ts';
import { readPdf } from '../../host/read-pdf.ts';
import { testIdentity } from '../../host/test-identity.ts';
import { timeAuthority } from '../../host/time-authority.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);
const t = texts.issue;

it('takes a note from draft to issued by three people in their roles, and signs it', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stillplate-issue-'));
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small');
  await window.open('issue');
  await sheet.getByText('NOT ISSUED', { exact: true }).waitFor();
  const takes = async (role: keyof typeof t.roles, name: string, step: keyof typeof t.steps): Promise<void> => {
    await window.field(t.role).selectOption(role);
    await window.field(t.name).fill(name);
    await window.field(t.what).selectOption(step);
    await sheet.getByRole('button', { name: t.take }).click();
  };
  const life = async () =>
    noteLife(readRegister(valueOf(await at.served.host.readRegister({ id })).text ?? '{"schema":"stillplate-register/1","events":[]}')); // prettier-ignore

  // Not before it was checked, and not by who made it.
  await takes('licensed engineer', 'Third', 'issued');
  await sheet.getByText('Nothing was issued for check yet').waitFor();
  await takes('author', 'First', 'issued for check');
  await sheet.getByText('FOR CHECK, NOT ISSUED', { exact: true }).waitFor();
  await takes('checker', 'First', 'checked');
  await sheet.getByText('is the author of this revision').waitFor();
  await takes('checker', 'Second', 'checked');
  await sheet.getByText('CHECKED, NOT ISSUED', { exact: true }).waitFor();
  await takes('licensed engineer', 'Third', 'issued');
  await sheet.getByText('ISSUED', { exact: true }).waitFor();
  expect(await life()).toMatchObject([{ state: 'issued', issued: { by: { name: 'Third' } }, checked: { by: { name: 'Second' } } }]); // prettier-ignore

  // The note of it says so, and is signed by an identity of one's own.
  const identity = join(folder, 'id.p12');
  await writeFile(identity, testIdentity());
  await sheet.getByRole('button', { name: t.thisNote }).click();
  await sheet.getByRole('button', { name: `${t.note}: note.pdf` }).waitFor();
  const chooser = page.waitForEvent('filechooser');
  await sheet.getByRole('button', { name: `${t.identity}: ${t.choose}` }).click();
  await (await chooser).setFiles(identity);
  await window.field(t.password).fill('pw');
  const authority = await timeAuthority();
  expect(await window.field(t.timeStamp).inputValue()).toBe('');
  await window.field(t.timeStamp).fill(authority.address);
  at.served.mayAsk(authority.address);
  const sealChooser = page.waitForEvent('filechooser');
  await sheet.getByRole('button', { name: `${t.seal}: ${t.choose}` }).click();
  await (await sealChooser).setFiles(resolve('build/pictures/note-check.png'));
  await sheet.getByRole('button', { name: `${t.seal}: note-check.png` }).waitFor();
  const download = page.waitForEvent('download');
  await sheet.getByRole('button', { name: t.signIt }).click();
  const signed = new Uint8Array(await readFile(await (await download).path()));
  await authority.close();
  expect(await readSignatures(signed)).toMatchObject([{ signer: 'Test rsa', faults: [], stamp: { by: 'Test time' } }]);
  expect(Buffer.from(signed).includes('/Seal Do')).toBe(true);
  expect(readPdf(signed).pages[0]).toMatch(/\bISSUED\b/);
  expect(readPdf(signed).pages[0]).not.toContain('NOT ISSUED');
  expect(await window.field(t.password).inputValue()).toBe('');

  // What comes back with a byte changed outside of its pages: every number comes out again, the signature does not stand.
  const changed = signed.slice();
  changed[Buffer.from(signed).lastIndexOf('/Creator') + 10]! ^= 1;
  await writeFile(join(folder, 'back.pdf'), changed);
  await sheet.getByRole('checkbox', { name: t.verifyAgainst }).check();
  const choice = page.waitForEvent('filechooser');
  await sheet.getByRole('button', { name: t.verifyChoose }).click();
  await (await choice).setFiles(join(folder, 'back.pdf'));
  const found = sheet.getByRole('region', { name: t.verified('back.pdf') });
  await found.getByRole('status').waitFor();
  const words = (await found.textContent()) ?? '';
  expect(words).toContain(t.differs(1));
  expect(words).toContain(t.signature('Test rsa', 'licensed engineer', false));
  expect(words).toMatch(/Time-stamped at .* UTC by Test time/);
  await rm(folder, { recursive: true });
  await window.close();
});
