import type { Check, Input, Step } from '../../core/checks/check.ts';
import { formulaText } from '../../core/derive/formula-text.ts';
import { readCondition, readFormula, type Condition, type Formula } from '../../core/derive/formula.ts';
import { partsOf } from '../../core/derive/parts-of.ts';
import { symbolsOf } from '../../core/derive/symbols-of.ts';
import type { Situation } from '../../core/loads/situation.ts';
import type { Safety } from '../../core/source.ts';

/** A check with one slip in it. Tests that hold the check to the outside world must notice. */
export interface Mutant {
  /** What was changed, for the list of survivors. */
  readonly what: string;
  readonly check: Check;
  /** Set when the slip is to read the opposite load direction: equivalent where nothing depends on it. */
  readonly flips?: { readonly input: string } | 'applies' | 'rule';
}

type Tree = Formula | Condition;

/** Every slip this tool knows, made in a check: signs, factors, units, directions, demand and capacity, min and max, < and >. */
export function mutantsOf(check: Check): readonly Mutant[] {
  return [
    { what: 'demand and capacity swapped', check: { ...check, demand: check.capacity, capacity: check.demand } },
    ...inputMutants(check),
    ...(Object.keys(check.steps) as Safety[]).flatMap((safety) => stepMutants(check, safety)),
    ...secondMutants(check),
    ...rangeMutants(check),
    ...ruleMutants(check),
  ];
}

function inputMutants(check: Check): Mutant[] {
  const flags = flagsOf(check);
  return Object.entries(check.inputs).flatMap(([symbol, input]): Mutant[] => {
    const withRead = (what: string, read: Input['read'], flips?: Mutant['flips']): Mutant => ({
      what: `input ${symbol}: ${what}`,
      check: { ...check, inputs: { ...check.inputs, [symbol]: { ...input, read } } },
      flips,
    });
    const changed =
      (change: (value: number) => number): Input['read'] =>
      (model, place, situation) => {
        const value = input.read(model, place, situation);
        return typeof value === 'number' ? change(value) : value;
      };
    const made = flags.has(symbol)
      ? [
          withRead(
            'flag turned over',
            changed((value) => (value > 0 ? 0 : 1)),
          ),
        ]
      : input.unit === '1'
        ? [
            withRead(
              'read × 1.1',
              changed((value) => value * 1.1),
            ),
          ]
        : [
            withRead(
              'read in a unit a thousand times too large',
              changed((value) => value * 1000),
            ),
          ];
    if (input.read.length > 2)
      made.push(
        withRead(
          'read for the opposite direction',
          (model, place, situation) => input.read(model, place, turned(situation)),
          { input: symbol },
        ),
      );
    return made;
  });
}

const turned = (situation: Situation): Situation => ({
  ...situation,
  direction: situation.direction === 'up' ? 'down' : 'up',
});

function stepMutants(check: Check, safety: Safety): Mutant[] {
  const steps = check.steps[safety] ?? [];
  const names = namesOf(check);
  const flags = flagsOf(check);
  return steps.flatMap((step, i) =>
    changedSteps(step, names, flags).map(({ what, step: changed }) => ({
      what: `${safety}, ${what}`,
      check: {
        ...check,
        steps: { ...check.steps, [safety]: [...steps.slice(0, i), ...changed, ...steps.slice(i + 1)] },
      },
    })),
  );
}

function secondMutants(check: Check): Mutant[] {
  const { second } = check;
  const names = namesOf(check);
  const flags = flagsOf(check);
  const steps = second.steps.flatMap((step, i) =>
    changedSteps(step, names, flags).map(({ what, step: changed }) => ({
      what: `second opinion, ${what}`,
      check: {
        ...check,
        second: { ...second, steps: [...second.steps.slice(0, i), ...changed, ...second.steps.slice(i + 1)] },
      },
    })),
  );
  return [
    {
      what: 'second opinion: high and low swapped',
      check: { ...check, second: { ...second, low: second.high, high: second.low } },
    },
    ...steps,
  ];
}

function rangeMutants(check: Check): Mutant[] {
  const range = check.range ?? [];
  const names = namesOf(check);
  const flags = flagsOf(check);
  return range.flatMap((part, i) => {
    const others = [...range.slice(0, i), ...range.slice(i + 1)];
    const left: Mutant = { what: `range “${part.holds}” left out`, check: { ...check, range: others } };
    const changed = variants(readCondition(part.holds, names), flags).map(({ what, tree }) => ({
      what: `range “${part.holds}”: ${what}`,
      check: { ...check, range: [...range.slice(0, i), { ...part, holds: formulaText(tree) }, ...range.slice(i + 1)] },
    }));
    return [left, ...changed];
  });
}

function ruleMutants(check: Check): Mutant[] {
  const { applies, rule } = check;
  const made: Mutant[] = [];
  if (applies.length > 0) made.push({ what: 'applies everywhere', check: { ...check, applies: () => true } });
  made.push({ what: 'applies nowhere', check: { ...check, applies: () => 'nowhere' } });
  if (applies.length > 2)
    made.push({
      what: 'applies in the opposite direction',
      check: { ...check, applies: (model, place, situation) => applies(model, place, turned(situation)) },
      flips: 'applies',
    });
  if (rule) {
    made.push({ what: 'rule left out', check: { ...check, rule: undefined } });
    made.push({ what: 'rule broken everywhere', check: { ...check, rule: () => 'broken' } });
    if (rule.length > 2)
      made.push({
        what: 'rule asked for the opposite direction',
        check: { ...check, rule: (model, place, situation) => rule(model, place, turned(situation)) },
        flips: 'rule',
      });
  }
  return made;
}

/** A step with one slip. A kernel's value is changed by a step put behind it under its own symbol. */
function changedSteps(
  step: Step,
  names: ReadonlySet<string>,
  flags: ReadonlySet<string>,
): { what: string; step: Step[] }[] {
  if ('kernel' in step) {
    const raw = `${step.symbol}_raw`;
    const behind: Step = { symbol: step.symbol, expression: `1.1 * ${raw}`, unit: step.unit, meaning: step.meaning };
    return [{ what: `${step.symbol}: ${step.kernel} × 1.1`, step: [{ ...step, symbol: raw }, behind] }];
  }
  return variants(readFormula(step.expression, names), flags).map(({ what, tree }) => ({
    what: `${step.symbol} = ${step.expression}: ${what}`,
    step: [{ ...step, expression: formulaText(tree) }],
  }));
}

/** Every tree that differs from this one by one slip. */
function variants<T extends Tree>(tree: T, flags: ReadonlySet<string>): { what: string; tree: T }[] {
  const here = slips(tree, flags).map(({ what, tree: changed }) => ({ what, tree: changed as T }));
  if (isFlagTest(tree, flags)) return here;
  const parts = partsOf(tree);
  const deeper = parts.flatMap((part, i) =>
    variants(part, flags).map(({ what, tree: changed }) => ({ what, tree: withPart(tree, i, changed) as T })),
  );
  return [...here, ...deeper];
}

function slips(f: Tree, flags: ReadonlySet<string>): { what: string; tree: Tree }[] {
  const text = formulaText(f);
  switch (f.kind) {
    case 'number':
      return f.value === 0 ? [] : [{ what: `${text} × 1.1`, tree: { kind: 'number', value: f.value * 1.1 } }];
    case 'symbol':
      return isFactor(f.name) ? [{ what: `${text} left out`, tree: { kind: 'number', value: 1 } }] : [];
    case 'minus':
      return [{ what: `sign of ${text} flipped`, tree: f.of }];
    case 'binary':
      if (f.operator === '+' || f.operator === '-')
        return [{ what: `sign in ${text} flipped`, tree: { ...f, operator: f.operator === '+' ? '-' : '+' } }];
      return [];
    case 'call':
      if (f.name === 'min' || f.name === 'max')
        return [{ what: `${f.name} swapped in ${text}`, tree: { ...f, name: f.name === 'min' ? 'max' : 'min' } }];
      return [];
    case 'compare':
      if (f.operator === '==') return [{ what: `${text} turned over`, tree: { kind: 'not', of: f } }];
      if (isFlagTest(f, flags)) return [{ what: `${text} turned over`, tree: { kind: 'not', of: f } }];
      return [
        {
          what: `${text} turned over`,
          tree: { ...f, operator: ({ '<': '>', '<=': '>=', '>': '<', '>=': '<=' } as const)[f.operator] },
        },
      ];
    case 'logic':
      return [
        { what: `${f.operator} swapped in ${text}`, tree: { ...f, operator: f.operator === 'and' ? 'or' : 'and' } },
      ];
    case 'not':
    case 'pi':
    case 'choice':
      return [];
  }
}

/** Partial and safety factors by the trade's letters; a formula without one is unsafe by that much. */
const isFactor = (name: string): boolean => /^(gamma|Omega|phi)_/.test(name);

function withPart(f: Tree, i: number, part: Tree): Tree {
  switch (f.kind) {
    case 'minus':
      return { ...f, of: part as Formula };
    case 'not':
      return { ...f, of: part as Condition };
    case 'binary':
    case 'compare':
      return i === 0 ? { ...f, left: part as Formula } : { ...f, right: part as Formula };
    case 'logic':
      return i === 0 ? { ...f, left: part as Condition } : { ...f, right: part as Condition };
    case 'call':
      return { ...f, arguments: f.arguments.map((argument, j) => (j === i ? (part as Formula) : argument)) };
    case 'choice':
      return i === 0
        ? { ...f, when: part as Condition }
        : i === 1
          ? { ...f, then: part as Formula }
          : { ...f, otherwise: part as Formula };
    default:
      throw new Error(`${formulaText(f)} has no parts`);
  }
}

/** All names a formula of the check may use. */
const namesOf = (check: Check): ReadonlySet<string> =>
  new Set([...Object.keys(check.inputs), ...allSteps(check).map(({ symbol }) => symbol)]);

const allSteps = (check: Check): Step[] => [...Object.values(check.steps).flat(), ...check.second.steps];

/** Pure numbers that say which of two things is so: by their meaning, or because they are only ever compared. Their size says nothing. */
function flagsOf(check: Check): ReadonlySet<string> {
  const names = namesOf(check);
  const valued = new Set<string>();
  const compared = new Set<string>();
  const visit = (f: Tree, into: Set<string>): void => {
    if (f.kind === 'symbol') into.add(f.name);
    const bare = f.kind === 'compare' && [f.left, f.right].every(({ kind }) => kind === 'symbol' || kind === 'number');
    for (const part of partsOf(f)) visit(part, bare ? compared : valued);
  };
  for (const step of allSteps(check)) {
    if ('kernel' in step) for (const argument of step.arguments) valued.add(argument);
    else visit(readFormula(step.expression, names), valued);
  }
  for (const { holds } of check.range ?? []) visit(readCondition(holds, names), compared);
  const told = Object.keys(check.inputs).filter((name) => /\(1\).*\(0\)/.test(check.inputs[name]!.meaning));
  return new Set([...told, ...[...compared].filter((name) => !valued.has(name) && check.inputs[name]?.unit === '1')]);
}

const isFlagTest = (f: Tree, flags: ReadonlySet<string>): boolean =>
  f.kind === 'compare' && [...symbolsOf(f)].every((name) => flags.has(name));
