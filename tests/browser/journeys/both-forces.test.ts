import { expect, it } from 'vitest';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);
const t = texts.strength;
const [fieldForces] = texts.fields.forcesFrom;

it('judges with the whole plate’s forces once they are there, and takes the smaller of two demands with a reason', async () => {
  const window = await at.open();
  const { sheet } = window;
  const id = await window.openSample('small');
  await window.open('strength');
  expect(await sheet.locator('.both-sides').count()).toBe(0);

  // verdicts wait until the solver has answered
  await window.kept(id, () => sheet.getByLabel(fieldForces, { exact: true }).selectOption('hand and solver').then(() => undefined)); // prettier-ignore
  await sheet.locator('.solver-waits').waitFor();
  expect(await sheet.locator('.solver-waits').innerText()).toMatch(/Verdicts wait: the plate is not solved yet/);
  // a coarse mesh is enough to see how the window goes about it
  await window.kept(id, () => window.type(texts.fields.forcesMesh[0], '300 mm'));
  await sheet.getByText(t.judgedByBoth(0)).waitFor({ timeout: 400_000 });

  const group = sheet.locator('.check-group').filter({ has: sheet.page().getByRole('heading', { name: /^Tube in bending/ }) }); // prettier-ignore
  await group.locator('h4 button').click();
  const line = group.locator('.check-line').first();
  expect(await line.locator('.both-sides').innerText()).toMatch(/By hand \S+ kN·m \(0\.\d\d\)[^]*Whole plate \S+ kN·m \(0\.\d\d\)[^]*governs: /); // prettier-ignore

  await line.getByRole('button').first().click();
  const reason = line.locator('.choose-side input');
  await reason.fill('measured on the last plate');
  await window.kept(id, () => line.getByRole('button', { name: t.takeIt }).click());
  await group.getByText(t.smallerTaken('measured on the last plate')).first().waitFor();
  await window.close();
}, 600_000);
