import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import type { added } from './added-check.ts';

// The blocks of DEVELOPERS.md, “How to add a check”, put where they say that they belong, in a copy of the core.
const copy = mkdtempSync(join(tmpdir(), 'stillplate-added-'));
afterAll(() => rmSync(copy, { recursive: true }));

const chapter = /## How to add a check\n(.*?)\n## /s.exec(readFileSync('DEVELOPERS.md', 'utf8'))![1]!;
const blocks = new Map([...chapter.matchAll(/```ts (\S+)\n(.*?)```/gs)].map(([, file, text]) => [file!, text!]));
const of = (start: string): readonly [file: string, text: string] =>
  [...blocks].find(([file]) => file.startsWith(start))!;
const index = 'core/checks/index.ts';
const [file, text] = [...blocks].find(([name]) => name.startsWith('core/checks/') && name !== index)!;
const [test] = of('tests/checks/');
const id = /\/([^/]+)\.ts$/.exec(file)![1]!;

for (const part of [
  'core',
  'build/generate',
  'build/generate.mjs',
  'build/run-typescript.mjs',
  'build/wasm',
  'tests/checks',
  'tests/handbook',
  'package.json',
  'tsconfig.json',
])
  // prettier-ignore
  cpSync(part, join(copy, part), { recursive: true });
symlinkSync(resolve('node_modules'), join(copy, 'node_modules'));
for (const each of [file, test]) writeFileSync(join(copy, each), blocks.get(each)!);
// A list takes its import at the top and its line at the end.
for (const [list, lines] of [of(index), of('core/selfcheck/published/')]) {
  const [wanted, entry] = lines.trimEnd().split('\n') as [string, string];
  const listed = readFileSync(list, 'utf8');
  writeFileSync(
    join(copy, list),
    `${wanted}\n${listed.replace(/\n\];( \/\/ prettier-ignore)?\s*$/, `\n${entry}\n];\n`)}`,
  );
}
execFileSync(process.execPath, ['build/generate.mjs'], { cwd: copy });

// The test of the text registers itself here, and runs as it is printed.
await import(/* @vite-ignore */ join(copy, test));

it('DEVELOPERS.md: the check of its text is evaluated, dimension-checked, bounded and printed', async () => {
  const { runTypeScript } = (await import(pathToFileURL(join(copy, 'build/run-typescript.mjs')).href)) as { runTypeScript: (entry: string) => Promise<{ added: typeof added }> }; // prettier-ignore
  const { rows, findings, printed, theory, outside } = (await runTypeScript('tests/handbook/added-check.ts')).added(id, 'samples/small.stillplate.json'); // prettier-ignore
  expect(rows.length).toBeGreaterThan(1);
  for (const { utilisation, verdict } of rows) {
    expect(['passes', 'fails']).toContain(verdict);
    expect(utilisation).toBeGreaterThan(0);
  }
  expect(findings).toEqual([]);
  expect(outside.map(({ unit, verdict }) => [unit, verdict])).toEqual([['Hz', 'as expected']]);
  const said = JSON.stringify([printed, theory]);
  for (const [, meaning] of text.matchAll(/(?:meaning|title): '([^']+)'/g)) expect(said).toContain(meaning);
});

it('the steps stand in the order of the work', () => {
  expect([...blocks.keys()].map((name) => name.replace(id, '<id>'))).toEqual(['core/checks/<id>.ts', 'core/checks/index.ts', 'tests/checks/<id>.test.ts', 'core/selfcheck/published/panels.ts']); // prettier-ignore
});
