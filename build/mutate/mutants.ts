import type { Check, Input, Step } from '../../core/checks/check.ts';
import { kernels } from '../../core/checks/kernels.ts';
import { formulaText } from '../../core/derive/formula-text.ts';
import { readCondition, readFormula, type Condition, type Formula } from '../../core/derive/formula.ts';
import { partsOf } from '../../core/derive/parts-of.ts';
import { symbolsOf } from '../../core/derive/symbols-of.ts';
import type { Situation } from '../../core/loads/situation.ts';
import { recompiled } from './recompiled.ts';

/** One slip in the data of the checks. Tests that hold a check to the outside world must notice. */
export interface Mutant {
  /** What was changed, for the list of survivors. */
  readonly what: string;
  /** The checks that have the changed thing: an input or a step may be shared. */
  readonly checks: readonly Check[];
  /** Puts the slip in place, in memory, and gives the way back. */
  readonly apply: () => () => void;
  /** Set when the slip is to read the opposite load direction: what it answers before and after. No slip where nothing depends on it. */
  readonly flips?: (...at: Parameters<Input['read']>) => readonly [before: unknown, after: unknown];
  /** Set for a slip in the size of an input: how often tests read it, and how often the slip changed what they got. */
  readonly readings?: { asked: number; changed: number };
  /** Set when that is asked of `applies`, which answers everywhere; all else is asked where the check applies. */
  readonly ofApplies?: true;
}

type Tree = Formula | Condition;

/** Every slip this tool knows: signs, factors, units, directions, demand and capacity, min and max, < and >. */
export function mutantsOf(checks: readonly Check[]): readonly Mutant[] {
  const seen = new Set<object>();
  const unseen = (item: object) => !seen.has(item) && seen.add(item);
  return checks.flatMap((check): Mutant[] => [
    ...wholeMutants(check),
    ...Object.entries(check.inputs).flatMap(([symbol, input]) =>
      unseen(input) ? inputMutants(checks, check, symbol, input) : [],
    ),
    ...allSteps(check).flatMap((step) => {
      // Both design bases may get the same line from one place in the source.
      const twins = allSteps(check).filter((other) => sameLine(step, other) && unseen(other));
      return twins.length > 0 ? stepMutants(checks, check, step, twins) : [];
    }),
    ...(check.range ?? []).flatMap((part) => (unseen(part) ? rangeMutants(checks, check, part) : [])),
  ]);
}

/** A slip that lays `changes` on a thing which these checks have, and on its twins. */
function slip<T extends object>(
  what: string,
  checks: readonly Check[],
  thing: T,
  changes: Partial<T>,
  twins: readonly T[] = [thing],
): Mutant {
  const apply = () => {
    const before = twins.map((twin) => ({ ...twin }));
    for (const twin of twins) Object.assign(twin, changes);
    const back = recompiled(checks);
    return () => {
      twins.forEach((twin, i) => Object.assign(twin, before[i]));
      back();
    };
  };
  return { what, checks, apply };
}

function wholeMutants(check: Check): Mutant[] {
  const { demand, capacity, second, applies, rule } = check;
  const made = [
    slip('demand and capacity swapped', [check], check, { demand: capacity, capacity: demand }),
    slip('second opinion: high and low swapped', [check], second, { low: second.high, high: second.low }),
    slip('applies nowhere', [check], check, { applies: () => 'nowhere' }),
  ];
  if (applies.length > 0) made.push(slip('applies everywhere', [check], check, { applies: () => true }));
  if (applies.length > 2)
    made.push(
      directionSlip(applies, (changed) => ({
        ...slip('applies in the opposite direction', [check], check, { applies: changed }),
        ofApplies: true as const,
      })),
    );
  if (!rule) return made;
  made.push(
    slip('rule left out', [check], check, { rule: () => undefined }),
    slip('rule broken everywhere', [check], check, { rule: () => 'broken' }),
  );
  if (rule.length > 2)
    made.push(
      directionSlip(rule, (changed) =>
        slip('rule asked for the opposite direction', [check], check, { rule: changed }),
      ),
    );
  return made;
}

type At = Parameters<Input['read']>;

function directionSlip<T>(read: (...at: At) => T, make: (changed: (...at: At) => T) => Mutant): Mutant {
  const changed = (...[model, place, situation]: At) => read(model, place, turned(situation));
  return { ...make(changed), flips: (...at) => [read(...at), changed(...at)] };
}

const turned = (situation: Situation): Situation => ({
  ...situation,
  direction: situation.direction === 'up' ? 'down' : 'up',
});

function inputMutants(checks: readonly Check[], first: Check, symbol: string, input: Input): Mutant[] {
  const owners = checks.filter(({ inputs }) => Object.values(inputs).includes(input));
  const { read } = input;
  const withRead = (what: string, changed: Input['read']) =>
    slip(`input ${symbol}: ${what}`, owners, input, { read: changed });
  const sized = (what: string, change: (value: number) => number): Mutant => {
    const readings = { asked: 0, changed: 0 };
    const changed: Input['read'] = (model, place, situation) => {
      const value = read(model, place, situation);
      readings.asked += 1;
      if (typeof value !== 'number') return value;
      if (change(value) !== value) readings.changed += 1;
      return change(value);
    };
    return { ...withRead(what, changed), readings };
  };
  const made = [
    flagsOf(first).has(symbol)
      ? sized('flag turned over', (value) => (value > 0 ? 0 : 1))
      : input.unit === '1'
        ? sized('read × 1.1', (value) => value * 1.1)
        : sized('read in a unit a thousand times too large', (value) => value * 1000),
  ];
  if (read.length > 2)
    made.push(directionSlip(read, (opposite) => withRead('read for the opposite direction', opposite)));
  return made;
}

const sameLine = (a: Step, b: Step): boolean => JSON.stringify(a) === JSON.stringify(b);

function stepMutants(checks: readonly Check[], first: Check, step: Step, twins: readonly Step[]): Mutant[] {
  const owners = checks.filter((check) => allSteps(check).includes(step));
  if ('kernel' in step) {
    const { kernel } = step;
    const slipped = `${kernel} × 1.1`;
    (kernels as Record<string, (typeof kernels)[string]>)[slipped] = (...values) => 1.1 * kernels[kernel]!(...values);
    return [slip(`${step.symbol}: ${slipped}`, owners, step, { kernel: slipped }, twins)];
  }
  return variants(readFormula(step.expression, namesOf(first)), flagsOf(first)).map(({ what, tree }) =>
    slip(`${step.symbol} = ${step.expression}: ${what}`, owners, step, { expression: formulaText(tree) }, twins),
  );
}

function rangeMutants(checks: readonly Check[], first: Check, part: { readonly holds: string }): Mutant[] {
  const owners = checks.filter(({ range }) => range?.some((other) => other === part));
  const changed = variants(readCondition(part.holds, namesOf(first)), flagsOf(first)).map(({ what, tree }) =>
    slip(`range “${part.holds}”: ${what}`, owners, part, { holds: formulaText(tree) }),
  );
  return [slip(`range “${part.holds}” left out`, owners, part, { holds: '0 < 1' }), ...changed];
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
