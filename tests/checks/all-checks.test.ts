import { all, create } from 'mathjs';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Check, Step } from '../../core/checks/check.ts';
import { stepsOf } from '../../core/checks/evaluate-check.ts';
import { formsOf } from '../../core/checks/forms-of.ts';
import { compiled } from '../../core/checks/generated.ts';
import { checks } from '../../core/checks/index.ts';
import { kernelRegistry } from '../../core/checks/kernels.ts';
import { boxText } from '../../core/derive/box-text.ts';
import { checkDimensions, requireConsistent } from '../../core/derive/dimensions.ts';
import { substituted } from '../../core/derive/equation.ts';
import { evaluateCondition, evaluateFormula } from '../../core/derive/evaluate.ts';
import { formulaText } from '../../core/derive/formula-text.ts';
import { readCondition, readFormula, type Condition, type Formula } from '../../core/derive/formula.ts';
import { numberBox } from '../../core/derive/number-box.ts';
import { symbolsOf } from '../../core/derive/symbols-of.ts';
import { unitReading } from '../../core/quantity/units.ts';
import { Refusal } from '../../core/refusal.ts';
import type { Safety } from '../../core/source.ts';
import { seeded } from '../geometry/seeded.ts';

const folder = new URL('../../core/checks/', import.meta.url);

it('lists every check that has a file, once, under the name of its file', () => {
  const written = readdirSync(folder).filter((file) =>
    /: Check = \{/.test(readFileSync(new URL(file, folder), 'utf8')),
  );
  expect(checks.map(({ id }) => `${id}.ts`).sort()).toEqual(written.sort());
  expect(new Set(checks.map(({ title }) => title)).size).toBe(checks.length);
});

it('has a test of its own for every check', () => {
  const here = new URL('.', import.meta.url);
  const tests = readdirSync(here)
    .filter((file) => file.endsWith('.test.ts'))
    .map((file) => readFileSync(new URL(file, here), 'utf8'));
  expect(checks.map(({ id }) => id).filter((id) => !tests.some((text) => text.includes(`/checks/${id}.ts'`)))).toEqual(
    [],
  );
});

/** Each check, and its forms with the whole plate's forces and for bolts on listed places. */
const forms = checks.flatMap(formsOf);

describe.each(forms.map((check) => [check.id, check] as const))('%s', (_id, check) => {
  const safeties = Object.keys(check.steps) as Safety[];

  it('names its sources, for each kind of design basis that it serves', () => {
    expect(safeties.length).toBeGreaterThan(0);
    for (const safety of safeties)
      expect(
        check.source.some((source) => !source.safety || source.safety === safety),
        safety,
      ).toBe(true);
    for (const { document } of [...check.source, ...check.second.source]) expect(document.trim()).not.toBe('');
    expect(check.second.source.length).toBeGreaterThan(0);
  });

  it.each(safeties)('adds up in its dimensions, by mathjs units (%s)', (safety) => {
    const units = unitsOf(check, safety);
    const names = new Set(Object.keys(units));
    const isOf = (symbol: string, unit: string) => checkDimensions({ kind: 'symbol', name: symbol }, unit, units);
    for (const step of stepsOf(check, safety)) {
      if ('kernel' in step) {
        const kernel = kernelRegistry[step.kernel];
        expect(kernel, step.kernel).toBeDefined();
        expect(step.arguments.length, step.kernel).toBe(kernel!.argumentUnits.length);
        kernel!.argumentUnits.forEach((unit, i) => isOf(step.arguments[i]!, unit));
        isOf(step.symbol, kernel!.unit);
      } else checkDimensions(readFormula(step.expression, names), step.unit, units);
    }
    for (const { holds } of check.range ?? []) requireConsistent(readCondition(holds, names), units);
    const { of, low, high } = check.second;
    expect(
      [check.demand, check.capacity, of, low, high].filter((symbol) => symbol !== undefined && !names.has(symbol)),
    ).toEqual([]);
    isOf(check.capacity, units[check.demand]!);
    for (const bound of [low, high]) if (bound !== undefined) isOf(bound, units[of]!);
    expect(low ?? high, 'a second opinion has a bound').toBeDefined();
  });

  it.each(safeties)('uses every input that it asks for (%s)', (safety) => {
    const used = new Set([check.demand, check.capacity]);
    const names = new Set(Object.keys(unitsOf(check, safety)));
    for (const step of stepsOf(check, safety))
      for (const symbol of 'kernel' in step ? step.arguments : symbolsOf(readFormula(step.expression, names)))
        used.add(symbol);
    for (const { holds } of check.range ?? [])
      for (const symbol of symbolsOf(readCondition(holds, names))) used.add(symbol);
    expect(inputsOf(check, safety).filter((symbol) => !used.has(symbol))).toEqual([]);
  });

  it.each(safeties)(
    'gives the same bits from the generated functions and from the trees, and is refused by both or none (%s)',
    (safety) => {
      const random = seeded(1);
      let finite = 0;
      for (let n = 0; n < 200; n++) {
        const inputs = randomInputs(check, safety, random);
        const generated = orRefused(() => compiled[check.id]![safety]!(inputs, standIns));
        const evaluated = orRefused(() => evaluatedSteps(check, safety, inputs));
        expect(generated).toEqual(evaluated);
        if (generated) finite++;
      }
      expect(finite).toBeGreaterThan(10);
    },
  );

  it.each(safeties)('prints lines that give the printed result when they are read again (%s)', (safety) => {
    const random = seeded(2);
    const names = new Set(Object.keys(unitsOf(check, safety)));
    let read = 0;
    for (let n = 0; n < 30; n++) {
      const values: Record<string, number> = randomInputs(check, safety, random);
      for (const step of stepsOf(check, safety)) {
        const value = orRefused(() => evaluatedStep(step, names, values));
        if (value === undefined) break;
        values[step.symbol] = value;
        if ('kernel' in step) continue;
        const formula = treeOf(step, names);
        if (n === 0) expect(readFormula(formulaText(formula), names)).toEqual(formula);
        const printed = boxText(
          substituted(branchTaken(formula, values), (symbol) => numberBox(String(values[symbol]))),
        );
        const again = math.evaluate(inMathjs(printed)) as number;
        // The print may put the factors of a product in brackets of its own: bits may differ, digits not.
        expect(
          Math.abs(again - value),
          `${step.symbol}: ${printed} is ${again}, computed ${value}`,
        ).toBeLessThanOrEqual(1e-9 * scaleOf(formula, values));
        read++;
      }
    }
    if (stepsOf(check, safety).some((step) => 'expression' in step)) expect(read).toBeGreaterThan(0);
  });
});

const math = create(all ?? {}, { relTol: 1e-14, absTol: 0 });

const inputsOf = (check: Check, safety: Safety): string[] =>
  Object.entries(check.inputs).flatMap(([symbol, { only }]) => (only && only !== safety ? [] : [symbol]));

function unitsOf(check: Check, safety: Safety): Record<string, string> {
  const inputs = inputsOf(check, safety).map((symbol) => [symbol, check.inputs[symbol]!.unit] as const);
  return Object.fromEntries([...inputs, ...stepsOf(check, safety).map(({ symbol, unit }) => [symbol, unit] as const)]);
}

/** Sizes such as a plate has, by unit; pure numbers are flags, counts and factors in turn. */
function randomInputs(check: Check, safety: Safety, random: () => number): Record<string, number> {
  const pure = [() => 0, () => 1, () => 2 + Math.floor(6 * random()), () => 0.05 + 0.45 * random(), () => 1 + random()];
  return Object.fromEntries(
    inputsOf(check, safety).map((symbol) => {
      const { unit } = check.inputs[symbol]!;
      if (unit === '1') return [symbol, pure[Math.floor(pure.length * random())]!()];
      return [symbol, 10 ** (2.5 * random()) * unitReading(unit).factor];
    }),
  );
}

/** Stands in for the kernels, which both ways call alike: a number that depends on all arguments and on their order. */
const standIns = Object.fromEntries(
  Object.keys(kernelRegistry).map((name) => [
    name,
    (...values: number[]) => values.reduce((sum, value, i) => sum + Math.abs(value) / (i + 2), name.length),
  ]),
);

function evaluatedStep(step: Step, names: ReadonlySet<string>, values: Readonly<Record<string, number>>): number {
  return 'kernel' in step
    ? standIns[step.kernel]!(...step.arguments.map((symbol) => values[symbol]!))
    : evaluateFormula(treeOf(step, names), values);
}

/** Reading a formula costs more than evaluating it a thousand times. */
const trees = new WeakMap<Step, Formula>();
function treeOf(step: Extract<Step, { expression: string }>, names: ReadonlySet<string>): Formula {
  const tree = trees.get(step) ?? readFormula(step.expression, names);
  trees.set(step, tree);
  return tree;
}

const conditions = new WeakMap<object, Condition>();
function conditionOf(part: { readonly holds: string }, names: ReadonlySet<string>): Condition {
  const condition = conditions.get(part) ?? readCondition(part.holds, names);
  conditions.set(part, condition);
  return condition;
}

/** Steps, then 1 or 0 for each condition of the range: as the generated function gives them. */
function evaluatedSteps(check: Check, safety: Safety, inputs: Readonly<Record<string, number>>): number[] {
  const values: Record<string, number> = { ...inputs };
  const names = new Set(Object.keys(unitsOf(check, safety)));
  const steps = stepsOf(check, safety).map((step) => (values[step.symbol] = evaluatedStep(step, names, values)));
  return [
    ...steps,
    ...(check.range ?? []).map((part) => (evaluateCondition(conditionOf(part, names), values) ? 1 : 0)),
  ];
}

/** The value, or undefined when it was refused; any other error is a failure. */
function orRefused<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** The formula with each choice replaced by the branch that these values take. */
function branchTaken(f: Formula, values: Readonly<Record<string, number>>): Formula {
  const taken = (g: Formula) => branchTaken(g, values);
  switch (f.kind) {
    case 'choice':
      return taken(evaluateCondition(f.when, values) ? f.then : f.otherwise);
    case 'binary':
      return { ...f, left: taken(f.left), right: taken(f.right) };
    case 'minus':
      return { ...f, of: taken(f.of) };
    case 'call':
      return { ...f, arguments: f.arguments.map(taken) };
    default:
      return f;
  }
}

/** The largest number met on the way to a formula's value: what a rounding slip is measured against. */
function scaleOf(f: Formula, values: Readonly<Record<string, number>>): number {
  const parts =
    f.kind === 'binary' && (f.operator === '+' || f.operator === '-')
      ? [f.left, f.right]
      : f.kind === 'choice'
        ? [branchTaken(f, values)]
        : [];
  return Math.max(Math.abs(evaluateFormula(f, values)), ...parts.map((part) => scaleOf(part, values)));
}

/** The signs of print as mathjs spells them; nothing is bracketed that was not. */
const inMathjs = (text: string): string =>
  text
    .replace(
      /[⁻⁰¹²³⁴-⁹]+/g,
      (run) => `^(${run.replace(/./g, (c) => (c === '⁻' ? '-' : String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))))})`,
    )
    .replace(/√([\d.]+)/g, 'sqrt($1)')
    .replaceAll('√', 'sqrt')
    .replace(/\|([^|]*)\|/g, 'abs($1)')
    .replaceAll('ln', 'log')
    .replaceAll('π', 'pi')
    .replaceAll('·', '*')
    .replaceAll('−', '-');
