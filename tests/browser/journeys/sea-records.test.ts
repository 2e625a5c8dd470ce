import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);
const t = texts.sea;
/** For looking at the pages; nothing is written without it. */
const pictures = process.env['STILLPLATE_PICTURES'];

it('takes a deployment from its two files to how still the plate was, accepted and kept', async () => {
  const window = await at.open();
  const { page, sheet } = window;
  const id = await window.openSample('small', 'it stands');
  await window.open('sea');
  const look = async (name: string): Promise<void> => {
    if (pictures) await page.screenshot({ path: `${pictures}/${name}.png` });
  };
  const choose = async (button: string, file: string): Promise<void> => {
    const chooser = page.waitForEvent('filechooser');
    await sheet.getByRole('button', { name: button }).click();
    await window.kept(id, async () => (await chooser).setFiles(file));
  };
  await look('sea-empty');
  await choose(t.add, 'samples/sea-closed.csv');
  await sheet.getByText('How still the plate was').waitFor();
  for (const [field, typed] of [['accelerationNoise', '0.01 m/s^2'], ['strokeNoise', '4 mm'], ['pressureNoise', '120 Pa'], ['seaClock', '20 ms'], ['seaPlateDepth', '34 m'], ['seaBed', '62 m'], ['seaDensity', '1027 kg/m^3']] as const)
    await window.kept(id, () => window.type(texts.fields[field][0], typed)); // prettier-ignore
  await choose(t.addSecond, 'samples/sea-closed-plate.csv');
  await sheet.getByText('Each way that the sensors allow;').waitFor();
  await look('sea-reduced');
  await window.kept(id, () => sheet.getByRole('button', { name: texts.tank.accept }).click());
  await sheet.getByText(texts.tank.isAccepted).waitFor();

  const { raw } = await at.served.stored(id);
  const [kept] = (raw['tests'] as { sea: { result: { ways: readonly object[]; significant: { low: string; high: string } } }[] }).sea; // prettier-ignore
  const truth = JSON.parse(await readFile('samples/sea-deployments.truth.json', 'utf8')) as { deployments: { closed: { plateSignificant: number } } }; // prettier-ignore
  expect(kept!.result.ways).toHaveLength(2);
  expect(Number.parseFloat(kept!.result.significant.low)).toBeLessThan(1.03 * truth.deployments.closed.plateSignificant); // prettier-ignore
  expect(Number.parseFloat(kept!.result.significant.high)).toBeGreaterThan(0.97 * truth.deployments.closed.plateSignificant); // prettier-ignore

  // a setting that changes afterwards says so
  await window.kept(id, () => window.type(texts.fields.seaClock[0], '50 ms'));
  await sheet.getByText(t.isOld).waitFor();
  if (pictures)
    for (const [width, height] of [[1440, 900], [1024, 700]] as const) {
      await page.setViewportSize({ width, height });
      for (let k = 0; k < 7; k++) {
        await page.waitForTimeout(300);
        await look(`sea-${width}-${k}`);
        await page.mouse.move(width - 200, height / 2);
        await page.mouse.wheel(0, 0.7 * height);
      }
    } // prettier-ignore
  await window.close();
});
