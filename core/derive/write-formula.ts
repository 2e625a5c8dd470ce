import type { Condition, Formula, FunctionName } from './formula.ts';

/** How one language spells what the two of ours spell differently. Operands come as formulas; `writtenPart` writes them. */
export interface Dialect {
  readonly symbol: (name: string) => string;
  readonly pi: string;
  readonly power: (base: Formula, exponent: Formula) => Written;
  readonly call: (name: FunctionName, args: readonly Formula[]) => string;
  readonly quotient: (left: Formula, right: Formula) => string;
  readonly compare: (operator: string, left: Formula, right: Formula) => string;
  readonly and: string;
  readonly or: string;
  readonly not: string;
}

/** Text and how tightly its outermost operation binds. */
export interface Written {
  readonly text: string;
  readonly level: number;
}

export const level = {
  choice: 0,
  or: 1,
  and: 2,
  compare: 4,
  sum: 5,
  product: 6,
  minus: 7,
  power: 8,
  whole: 9,
} as const;

/** A formula as a line of text in a dialect, with the brackets that keep the order of its operations and no other. */
export const writeFormula = (f: Formula | Condition, dialect: Dialect): string => written(f, dialect).text;

/** The text of a part, in brackets when it binds less tightly than `least`. */
export function writtenPart(f: Formula | Condition, least: number, dialect: Dialect): string {
  const part = written(f, dialect);
  return part.level < least ? `(${part.text})` : part.text;
}

function written(f: Formula | Condition, dialect: Dialect): Written {
  const part = (g: Formula | Condition, least: number) => writtenPart(g, least, dialect);
  switch (f.kind) {
    case 'number':
      return { text: String(f.value), level: level.whole };
    case 'symbol':
      return { text: dialect.symbol(f.name), level: level.whole };
    case 'pi':
      return { text: dialect.pi, level: level.whole };
    case 'minus':
      return { text: `-${part(f.of, level.power)}`, level: level.minus };
    case 'binary': {
      if (f.operator === '^') return dialect.power(f.left, f.right);
      if (f.operator === '/') return { text: dialect.quotient(f.left, f.right), level: level.product };
      const own = f.operator === '+' || f.operator === '-' ? level.sum : level.product;
      return { text: `${part(f.left, own)} ${f.operator} ${part(f.right, own + 1)}`, level: own };
    }
    case 'call':
      return { text: dialect.call(f.name, f.arguments), level: level.whole };
    case 'choice':
      return {
        text: `${part(f.when, level.or)} ? ${part(f.then, level.or)} : ${part(f.otherwise, level.choice)}`,
        level: level.choice,
      };
    case 'compare':
      return { text: dialect.compare(f.operator, f.left, f.right), level: level.compare };
    case 'logic': {
      const own = level[f.operator];
      return { text: `${part(f.left, own)} ${dialect[f.operator]} ${part(f.right, own + 1)}`, level: own };
    }
    case 'not':
      return { text: `${dialect.not}(${part(f.of, level.choice)})`, level: level.whole };
  }
}
