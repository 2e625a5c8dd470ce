import { readFileSync } from 'node:fs';
import type { Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { appraise } from '../../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../../core/document/read-document.ts';
import { firstSize } from '../../../core/plate/mesh-study.ts';
import { quantityText, significant } from '../../../core/quantity/format-quantity.ts';
import { run } from '../../../electron/command/run.ts';
import { texts } from '../../../renderer/texts.ts';
import { program, withoutPicture } from '../support/program.ts';

const at = program(withoutPicture);
const t = texts.whole;
const sample = 'samples/small.stillplate.json';

/** What `stillplate solve --json` says of a loading. */
interface Line {
  readonly situation: string;
  readonly title: string;
  readonly loading: string;
  readonly variant: number;
  readonly without: string | null;
  readonly deflection: number;
  readonly dip: number;
  readonly stress: number;
  readonly moment: number;
  readonly pull: number;
  readonly shear: number;
  readonly toMain: number;
  readonly toCross: number;
  readonly steps: number;
}
interface Solution {
  readonly mesh: { readonly unknowns: number; readonly study: { readonly meshes: readonly { readonly deflection: number; readonly stressError: number }[] } | null }; // prettier-ignore
  readonly loadings: readonly Line[];
  readonly modes: { readonly air: readonly number[]; readonly water: readonly number[] };
  readonly buckling: readonly { readonly factor: number | null }[];
}

const raw = readDocumentText(readFileSync(sample, 'utf8'));
const option = 'heavy-10'; // the sample's chosen one, with which the window opens
const { model } = appraise(raw, readDocument(raw), option);
/** The mesh that the window begins with. */
const mesh = ['--size', `${1000 * firstSize(model)} mm`];

async function solved(args: readonly string[]): Promise<Solution> {
  const said: string[] = [];
  await run(['solve', sample, '--option', option, ...args, '--json'], { out: (text) => said.push(text), err: (text) => said.push(text), folder: process.cwd(), input: () => Promise.resolve('') }); // prettier-ignore
  return JSON.parse(said.join('\n')) as Solution;
}

const sizeOf = (text: string): string => text.replace(/^[−+-]/, '');
const printed = (si: number, unit: string): string => quantityText(Math.abs(si), unit, 3);

/** The numbers of the sheet as they stand, each under its title, without sign. */
async function numbersOf(sheet: Locator): Promise<ReadonlyMap<string, string>> {
  const rows = await sheet.locator('.solver-numbers tbody tr').all();
  return new Map(
    await Promise.all(
      rows.map(async (row) => [(await row.locator('th').innerText()).trim(), sizeOf((await row.locator('td').first().innerText()).trim())] as const), // prettier-ignore
    ),
  );
}

/** Goes through the loadings of the set that is shown and holds each number to what the command line says of it. */
async function holds(sheet: Locator, lines: readonly Line[]): Promise<void> {
  const list = sheet.getByLabel(t.loading);
  expect(await list.locator('option').count()).toBe(lines.length);
  for (const [i, line] of lines.entries()) {
    await list.selectOption(String(i));
    const numbers = await numbersOf(sheet);
    const what = `${line.title}, ${line.loading}, ${line.without}`;
    expect(await list.locator('option').nth(i).innerText(), what).toContain(line.loading);
    expect(await sheet.locator('.solver-sentence').innerText(), what).toContain(`: ${printed(line.deflection, 'mm')} ${line.deflection < 0 ? 'down' : 'up'}`); // prettier-ignore
    const expected = {
      'Moment of a tube': printed(line.moment, 'kN*m'),
      'Dip of a panel between its tubes': printed(line.dip, 'mm'),
      'Stress of a panel (von Mises)': printed(line.stress, 'MPa'),
      'Pull of a bolt': printed(line.pull, 'kN'),
      'Shear of a bolt': printed(line.shear, 'kN'),
    };
    expect(Object.fromEntries([...numbers].filter(([title]) => title in expected)), what).toEqual(expected);
    const path = await sheet.getByRole('table', { name: t.path, exact: true }).innerText();
    for (const part of [line.toMain, line.toCross]) expect(path, what).toContain(`${significant(100 * part, 3)} %`);
  }
}

it('shows for every loading, mode and buckling shape the number that the command line gives for the same document', async () => {
  const { loadings, modes, buckling } = await solved([...mesh, '--modes', '--buckling']);
  const window = await at.open();
  const { sheet } = window;
  await window.openSample('small');
  await window.open('whole');
  await sheet.locator('[data-solved="now"]').getByText(`${t.sets.contact}.`).waitFor();
  expect(loadings.length).toBeGreaterThan(1);
  await holds(sheet, loadings);
  await sheet.getByRole('button', { name: t.wishes['natural modes'] }).click();
  await sheet.getByRole('button', { name: t.wishes.buckling }).click();
  const gives = sheet.getByRole('region', { name: t.motionKinds.buckling });
  await gives.waitFor();
  const swings = sheet.getByRole('region', { name: t.motionKinds.modes });
  expect(await swings.locator('td.number').allInnerTexts()).toEqual([...modes.air, ...modes.water].map((f) => `${significant(f, 3)} Hz`)); // prettier-ignore
  // the command line tells the lowest of each loading
  const lowest = await gives.locator('tbody tr:first-child td.number').allInnerTexts();
  expect(lowest).toEqual(buckling.flatMap(({ factor }) => (factor === null ? [] : [significant(factor, 3)])));
  await window.close();
}, 600_000);
