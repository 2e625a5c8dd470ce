import { readFile, writeFile } from 'node:fs/promises';
import type { Check } from '../../core/checks/check.ts';
import { formsOf } from '../../core/checks/forms-of.ts';
import { checks } from '../../core/checks/index.ts';
import { readCondition, readFormula } from '../../core/derive/formula.ts';
import type { Safety } from '../../core/source.ts';
import { functionSource, type StepSource } from '../../core/derive/generate.ts';

const target = 'core/checks/generated.ts';

/** Writes the plain functions of all checks; with `check`, only says whether the file is up to date. Gives the exit code. */
export async function generate({ check }: { check: boolean }): Promise<number> {
  const source = generatedSource(checks.flatMap(formsOf));
  const old = await readFile(target, 'utf8').catch(() => '');
  if (old === source) return 0;
  if (check) {
    console.error(`${target} is stale: run npm run generate.`);
    return 1;
  }
  await writeFile(target, source);
  console.log(`Wrote ${target}: ${checks.length} checks.`);
  return 0;
}

function generatedSource(all: readonly Check[]): string {
  const functions: string[] = [];
  const entries: string[] = [];
  for (const check of all) {
    const safeties = Object.keys(check.steps) as Safety[];
    const members = safeties.map((safety) => {
      const name = `${camel(check.id)}_${camel(safety.replace(' ', '-'))}`;
      functions.push(functionSource(name, inputsOf(check, safety), stepSources(check, safety)));
      return `${JSON.stringify(safety)}: ${name} as Run`;
    });
    entries.push(`  ${JSON.stringify(check.id)}: { ${members.join(', ')} },`);
  }
  return [
    '// Made by `npm run generate` from the expressions in core/checks; do not edit.',
    "import { finite } from '../derive/finite.ts';",
    '',
    'type Run = (v: Readonly<Record<string, number>>, k: Readonly<Record<string, (...values: number[]) => number>>) => number[];',
    '',
    ...functions,
    'export const compiled: Readonly<Record<string, Readonly<Record<string, Run>>>> = {',
    ...entries,
    '};',
    '',
  ].join('\n');
}

const inputsOf = (check: Check, safety: Safety): string[] =>
  Object.entries(check.inputs)
    .filter(([, input]) => !input.only || input.only === safety)
    .map(([symbol]) => symbol);

/** Own steps, those of the second opinion, then the conditions of the range, in the order that evaluate-check reads them. */
function stepSources(check: Check, safety: Safety): StepSource[] {
  const names = new Set(inputsOf(check, safety));
  const sources: StepSource[] = [];
  for (const step of [...(check.steps[safety] ?? []), ...check.second.steps]) {
    sources.push('kernel' in step ? step : { symbol: step.symbol, formula: readFormula(step.expression, names) });
    names.add(step.symbol);
  }
  check.range?.forEach(({ holds }, i) => sources.push({ symbol: `range${i}`, formula: readCondition(holds, names) }));
  return sources;
}

const camel = (text: string) => text.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
