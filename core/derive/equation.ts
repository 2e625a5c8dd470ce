import type { Box } from './box.ts';
import type { Condition, Formula, FunctionName } from './formula.ts';
import { numberBox } from './number-box.ts';
import { symbolBox } from './symbol-box.ts';
import { startsWithMinus, thinSpace, tightness, tightnessOf } from './tightness.ts';

/** A formula as it is set in print, in its symbols, with the brackets it needs and no other. */
export const equationOf = (f: Formula | Condition): Box => substituted(f, symbolBox);

/**
 * The same with each symbol replaced by what `print` gives for it, usually its number with a unit. A negative number,
 * or one with a unit that is raised to a power, is bracketed.
 *
 * In `cases`, `when` is the bare condition (no "if") and in the last row the text "otherwise".
 */
export function substituted(f: Formula | Condition, print: (symbol: string) => Box): Box {
  const set = (g: Formula | Condition): Box => {
    switch (g.kind) {
      case 'number':
        return numberBox(String(g.value));
      case 'symbol':
        return print(g.name);
      case 'pi':
        return { kind: 'symbol', text: 'π' };
      case 'minus':
        return row([{ kind: 'text', text: '−' }, behind(set(g.of), tightness.product)]);
      case 'call':
        return call(g.name, g.arguments.map(set));
      case 'choice':
        return { kind: 'cases', rows: rowsOf(g, set) };
      case 'compare':
        return joined(set(g.left), signs[g.operator], set(g.right));
      case 'logic':
        return joined(
          bracketed(set(g.left), tightness[g.operator]),
          g.operator,
          bracketed(set(g.right), tightness[g.operator]),
        );
      case 'not':
        return row([{ kind: 'text', text: 'not' }, round(set(g.of))]);
      case 'binary':
        return binary(g.operator, set(g.left), set(g.right));
    }
  };
  return set(f);
}

const signs = { '+': '+', '-': '−', '<': '<', '<=': '≤', '>': '>', '>=': '≥', '==': '=' } as const;

function binary(operator: '+' | '-' | '*' | '/' | '^', left: Box, right: Box): Box {
  switch (operator) {
    case '+':
      return joined(bracketed(left, tightness.sum), signs[operator], behind(right, tightness.sum));
    case '-':
      return joined(bracketed(left, tightness.sum), signs[operator], behind(right, tightness.product));
    case '*':
      return product(bracketed(left, tightness.product), behind(right, tightness.product));
    case '/':
      return { kind: 'fraction', over: left, under: right };
    case '^':
      return power(left, right);
  }
}

/** Letters stand side by side; where a number or bracket follows, or a unit precedes, a dot keeps the two apart. */
function product(left: Box, right: Box): Box {
  const letters = /^(symbol|root)$/.test(firstOf(right).kind) && lastOf(left).kind !== 'text';
  return letters ? row([left, thinSpace, right]) : joined(left, '·', right);
}

function firstOf(box: Box): Box {
  if (box.kind === 'row') return box.boxes[0] ? firstOf(box.boxes[0]) : box;
  if (box.kind === 'fraction') return firstOf(box.over);
  return box.kind === 'script' ? firstOf(box.base) : box;
}

const lastOf = (box: Box): Box => (box.kind === 'row' ? (box.boxes.at(-1) ?? box) : box);

function power(base: Box, sup: Box): Box {
  if (base.kind === 'script' && !base.sup) return { ...base, sup };
  return { kind: 'script', base: bracketed(base, tightness.whole), sup };
}

function call(name: FunctionName, args: readonly Box[]): Box {
  const [first] = args;
  if (name === 'sqrt' && first) return { kind: 'root', body: first };
  if (name === 'cbrt' && first) return power(first, { kind: 'fraction', over: numberBox('1'), under: numberBox('3') });
  if (name === 'abs' && first) return { kind: 'bracket', body: first, shape: 'bar' };
  return row([functionWords[name] ?? { kind: 'text', text: name }, round(list(args))]);
}

const functionWords: Readonly<Partial<Record<FunctionName, Box>>> = {
  log: { kind: 'text', text: 'ln' },
  log10: { kind: 'script', base: { kind: 'text', text: 'log' }, sub: { kind: 'text', text: '10' } },
  asin: { kind: 'text', text: 'arcsin' },
  acos: { kind: 'text', text: 'arccos' },
  atan: { kind: 'text', text: 'arctan' },
};

type Rows = Extract<Box, { kind: 'cases' }>['rows'];

/** A choice within the last branch of a choice goes on in the same brace. */
function rowsOf(
  { when, then, otherwise }: Extract<Formula, { kind: 'choice' }>,
  set: (f: Formula | Condition) => Box,
): Rows {
  const rest: Rows =
    otherwise.kind === 'choice'
      ? rowsOf(otherwise, set)
      : [{ value: set(otherwise), when: { kind: 'text', text: 'otherwise' } }];
  return [{ value: set(then), when: set(when) }, ...rest];
}

/** Boxes with a comma between. */
const list = (boxes: readonly Box[]): Box =>
  row(boxes.flatMap((box, i) => (i ? [{ kind: 'operator', text: ',' }, box] : [box])));

/** Boxes side by side; a row within a row has no meaning of its own. */
function row(boxes: readonly Box[]): Box {
  const flat = boxes.flatMap((box) => (box.kind === 'row' ? box.boxes : [box]));
  return flat.length === 1 ? flat[0]! : { kind: 'row', boxes: flat };
}

const joined = (left: Box, operator: string, right: Box): Box =>
  row([left, { kind: 'operator', text: operator }, right]);
const round = (body: Box): Box => ({ kind: 'bracket', body, shape: 'round' });
const bracketed = (box: Box, least: number): Box => (tightnessOf(box) < least ? round(box) : box);
/** What stands behind an operator must not begin with a minus. */
const behind = (box: Box, least: number): Box => (tightnessOf(box) < least || startsWithMinus(box) ? round(box) : box);
