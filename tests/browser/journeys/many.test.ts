import { expect, it } from 'vitest';
import { newPlate } from '../../../core/engine/new-plate.ts';
import { valueOf } from '../../../core/host/answer.ts';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);

/** An invented plate with one panel on each of its bays. */
const plate = (name: string, mainTubes: number, crossTubes: number): string =>
  JSON.stringify(
    newPlate({
      name,
      units: 'metric',
      length: `${crossTubes * 0.6} m`,
      width: `${mainTubes * 0.6} m`,
      mainTubes,
      crossTubes,
      section: 'SHS 100x100x6.3 hot',
      depth: '30 m',
      force: '12 kN',
    }),
  );

it('lists 50 documents and opens the one that is asked for', async () => {
  for (let n = 1; n <= 50; n++) {
    const name = `Sounding plate ${String(n).padStart(2, '0')}`;
    valueOf(await at.served.host.createDocument({ name, text: plate(name, 2, 3), file: null }));
  }
  const window = await at.open();
  const { page } = window;
  const plates = page.locator('.recent button.name');
  const all = page.getByRole('button', { name: texts.start.showAll(50), exact: true });
  await all.click();
  await expect.poll(() => plates.count()).toBe(50);
  await page.getByRole('button', { name: 'Sounding plate 17', exact: true }).click();
  await page.getByText(texts.headline.decides).waitFor();
  expect(await page.locator('.headline h1').innerText()).toBe('Sounding plate 17');
  const { id } = (await at.served.documents()).find(({ name }) => name === 'Sounding plate 17')!;
  await window.open('note');
  await window.kept(id, () => window.type(texts.fields.name[0], 'Sounding plate 17, renamed'));
  await window.allPlates();
  // The list shows the name that it has now, the one changed last first.
  await expect.poll(() => plates.first().innerText()).toBe('Sounding plate 17, renamed');
  await all.click();
  expect(await plates.count()).toBe(50);
  await window.close();
});
