import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { valueOf } from '../../../core/host/answer.ts';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);
const t = texts.tank;
/** For looking at the pages; nothing is written without it. */
const pictures = process.env['STILLPLATE_PICTURES'];

it('takes a record from its file to a result that is accepted and used, and keeps the file as it came', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small', 'it stands');
  await window.open('tank');
  const look = async (name: string): Promise<void> => {
    if (pictures) await page.screenshot({ path: `${pictures}/${name}.png` });
  };
  await look('empty');
  const chooser = page.waitForEvent('filechooser');
  await sheet.getByRole('button', { name: t.add }).click();
  await (await chooser).setFiles('samples/tank-closed.csv');
  await sheet.getByText('Added mass and drag of this record').waitFor();
  await sheet.getByText(t.notAccepted).waitFor();
  await look('reduced');

  // what hung in the tank was another plate than this one
  for (const [field, typed] of [['testMass', '1460 kg'], ['testVolume', '0.186 m^3'], ['testArea', '8.4 m^2'], ['testDensity', '1024 kg/m^3'], ['testWaterInside', '']] as const)
    await window.kept(id, () => window.type(texts.fields[field][0], typed)); // prettier-ignore
  await window.kept(id, () => sheet.getByRole('button', { name: t.accept }).click());
  await sheet.getByText(t.isAccepted).waitFor();
  await window.kept(id, () => sheet.getByRole('button', { name: t.use('tank-closed') }).click());
  await look('accepted');

  const { raw, hash } = await at.served.stored(id);
  expect(await window.hash()).toBe(hash);
  const [test] = (raw['tests'] as { tank: { record: { hash: string }; result: { addedMass: { value: string } } }[] }).tank; // prettier-ignore
  const truth = JSON.parse(await readFile('samples/tank.truth.json', 'utf8')) as { records: { closed: { addedMass: number } } }; // prettier-ignore
  expect(Number.parseFloat(test!.result.addedMass.value) / truth.records.closed.addedMass).toBeCloseTo(1, 1);
  expect(raw['testUsed']).toEqual({ test: 'test 1', reason: t.reasonToBeStated });

  const file = await readFile('samples/tank-closed.csv');
  expect(test!.record.hash).toBe(createHash('sha256').update(file).digest('hex'));
  const kept = valueOf(await at.served.host.readRecord({ hash: test!.record.hash }));
  expect(Buffer.from(kept.bytes).equals(file)).toBe(true);

  // a setting that changes afterwards puts the accepted result out of use, aloud
  await window.kept(id, () => window.type(texts.fields.rigMass[0], '30 kg'));
  await sheet.getByText(t.isOld).waitFor();
  await window.close();
});
