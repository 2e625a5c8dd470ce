import { create, parseDependencies, type FactoryFunctionMap, type MathNode } from 'mathjs/number';
import type {
  ConditionalNode,
  ConstantNode,
  FunctionNode,
  ParenthesisNode,
  RelationalNode,
  SymbolNode,
} from 'mathjs/number';
import { refusal } from '../refusal.ts';

/**
 * A formula as a tree: the one thing that is computed, traced and printed. Brackets are gone; the shape of the
 * tree keeps the order of the operations. Numbers are finite and not negative (a sign is a `minus`).
 */
export type Formula =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'symbol'; readonly name: string }
  | { readonly kind: 'pi' }
  | { readonly kind: 'minus'; readonly of: Formula }
  | { readonly kind: 'binary'; readonly operator: Arithmetic; readonly left: Formula; readonly right: Formula }
  | { readonly kind: 'call'; readonly name: FunctionName; readonly arguments: readonly Formula[] }
  | { readonly kind: 'choice'; readonly when: Condition; readonly then: Formula; readonly otherwise: Formula };

/** A statement about formulas that is true or false. */
export type Condition =
  | { readonly kind: 'compare'; readonly operator: Comparison; readonly left: Formula; readonly right: Formula }
  | { readonly kind: 'logic'; readonly operator: 'and' | 'or'; readonly left: Condition; readonly right: Condition }
  | { readonly kind: 'not'; readonly of: Condition };

export type Arithmetic = '+' | '-' | '*' | '/' | '^';
export type Comparison = '<' | '<=' | '>' | '>=' | '==';
export type FunctionName = keyof typeof functions;

/** The functions a formula may call, with how many arguments each takes. `log` is the natural logarithm. */
export const functions = {
  ...{ sqrt: 1, cbrt: 1, abs: 1, exp: 1, log: 1, log10: 1 },
  ...{ sin: 1, cos: 1, tan: 1, asin: 1, acos: 1, atan: 1, atan2: 2 },
  ...{ min: 'two or more', max: 'two or more' },
} as const;

/**
 * Reads a formula in mathjs words. Only numbers, declared names, `pi`, + − * / ^, the functions above and
 * `condition ? a : b` are let through: mathjs would read an undeclared N, t or e silently as newton, tonne or 2.718.
 * Refuses everything else, naming it, the expression, and what is known.
 */
export function readFormula(expression: string, names: ReadonlySet<string>): Formula {
  return new Reader(expression, names).formula(parsed(expression));
}

/** Reads a condition such as `0 < d and d <= 0.8 * D`; refuses what is not true or false. */
export function readCondition(expression: string, names: ReadonlySet<string>): Condition {
  return new Reader(expression, names).condition(parsed(expression));
}

const { parse } = create({ parseDependencies } as FactoryFunctionMap);

function parsed(expression: string): MathNode {
  if (expression.trim() === '') throw refused(expression, 'is empty', 'Write a formula');
  if (expression.includes('#'))
    throw refused(expression, 'has a comment (#)', 'Put words into the meaning of the step');
  try {
    return parse(expression);
  } catch (error) {
    const reason = error instanceof SyntaxError ? error.message : 'it is no arithmetic expression';
    throw refused(expression, `cannot be read: ${reason}`, 'Correct the expression');
  }
}

const refused = (expression: string, why: string, mend: string) =>
  refusal({ what: `The formula “${expression}” ${why}`, where: { expression }, mend });

const arithmetic: Readonly<Record<string, Arithmetic>> = {
  add: '+',
  subtract: '-',
  multiply: '*',
  divide: '/',
  pow: '^',
};
const comparisons: Readonly<Record<string, Comparison>> = {
  ...{ smaller: '<', smallerEq: '<=', larger: '>', largerEq: '>=', equal: '==' },
};
const grammar = 'Use numbers, declared names, pi, + - * / ^, known functions and condition ? a : b';

/** mathjs types a node's operator by its class parameters; we look at any operator, so only at these fields. */
interface Operator {
  readonly op: string;
  readonly fn: string;
  readonly args: readonly MathNode[];
  readonly implicit: boolean;
  readonly isPercentage?: boolean;
}

class Reader {
  readonly expression: string;
  readonly names: ReadonlySet<string>;
  constructor(expression: string, names: ReadonlySet<string>) {
    this.expression = expression;
    this.names = names;
  }

  formula(node: MathNode): Formula {
    switch (node.type) {
      case 'ParenthesisNode':
        return this.formula((node as ParenthesisNode).content);
      case 'ConstantNode':
        return this.number((node as ConstantNode).value);
      case 'SymbolNode':
        return this.symbol((node as SymbolNode).name);
      case 'FunctionNode':
        return this.call(node as FunctionNode<MathNode & { name?: string }>);
      case 'ConditionalNode': {
        const { condition, trueExpr, falseExpr } = node as ConditionalNode;
        return {
          kind: 'choice',
          when: this.condition(condition),
          then: this.formula(trueExpr),
          otherwise: this.formula(falseExpr),
        };
      }
      case 'OperatorNode':
        return this.operation(this.operator(node));
      default:
        throw this.refused(`has “${node.toString()}”, which is no number`, grammar);
    }
  }

  condition(node: MathNode): Condition {
    if (node.type === 'ParenthesisNode') return this.condition((node as ParenthesisNode).content);
    if (node.type === 'RelationalNode') return this.chain(node as RelationalNode);
    if (node.type === 'OperatorNode') {
      const { fn, args } = this.operator(node);
      const [left, right] = args;
      const operator = comparisons[fn];
      if (left && right && operator)
        return { kind: 'compare', operator, left: this.formula(left), right: this.formula(right) };
      if (left && right && (fn === 'and' || fn === 'or'))
        return { kind: 'logic', operator: fn, left: this.condition(left), right: this.condition(right) };
      if (left && fn === 'not') return { kind: 'not', of: this.condition(left) };
    }
    throw this.refused(
      `asks whether “${node.toString()}”, which is neither true nor false`,
      'Compare with < <= > >= or ==, join with and, or, not',
    );
  }

  /** a < b < c is a < b and b < c. */
  private chain({ conditionals, params }: RelationalNode): Condition {
    return conditionals
      .map((fn, i): Condition => {
        const operator = comparisons[fn];
        if (!operator) throw this.refused(`compares with “${fn}”`, 'Compare with < <= > >= or ==');
        return { kind: 'compare', operator, left: this.formula(params[i]!), right: this.formula(params[i + 1]!) };
      })
      .reduce((left, right) => ({ kind: 'logic', operator: 'and', left, right }));
  }

  private number(value: unknown): Formula {
    if (typeof value !== 'number' || !Number.isFinite(value))
      throw this.refused(`has “${String(value)}”, which is no finite number`, grammar);
    return { kind: 'number', value };
  }

  private symbol(name: string): Formula {
    const declared = this.names.has(name);
    if (declared && (name === 'pi' || Object.hasOwn(functions, name)))
      throw this.refused(
        `uses “${name}” as a declared name, which is reserved`,
        `Rename the quantity, for example ${name}_1`,
      );
    if (declared && !/^[A-Za-z]\w*$/.test(name))
      throw this.refused(
        `uses the declared name “${name}”`,
        'Write names with Latin letters, digits and _, beginning with a letter',
      );
    if (name === 'pi') return { kind: 'pi' };
    if (!declared) {
      const known = [...this.names].join(', ') || 'none';
      throw this.refused(
        `uses “${name}”, which is not declared`,
        `Declare ${name}, or use one of the known names: ${known}`,
      );
    }
    return { kind: 'symbol', name };
  }

  private call(node: FunctionNode<MathNode & { name?: string }>): Formula {
    const name = node.fn.type === 'SymbolNode' ? (node.fn.name ?? '') : node.fn.toString();
    if (!Object.hasOwn(functions, name))
      throw this.refused(
        `calls “${name}”, which is no known function`,
        `Use ${Object.keys(functions).join(', ')}; a product needs *`,
      );
    const count = functions[name as FunctionName];
    if (typeof count === 'number' ? node.args.length !== count : node.args.length < 2)
      throw this.refused(`gives ${name} ${node.args.length} arguments`, `${name} takes ${count}`);
    return { kind: 'call', name: name as FunctionName, arguments: node.args.map((argument) => this.formula(argument)) };
  }

  private operation({ op, fn, args }: Operator): Formula {
    const [left, right] = args;
    if (left && fn === 'unaryMinus') return { kind: 'minus', of: this.formula(left) };
    const operator = arithmetic[fn];
    if (left && right && operator)
      return { kind: 'binary', operator, left: this.formula(left), right: this.formula(right) };
    throw this.refused(`uses “${op}” where a number is needed`, grammar);
  }

  private operator(node: MathNode): Operator {
    const operator = node as unknown as Operator;
    if (operator.implicit)
      throw this.refused(
        `has “${node.toString()}” without a sign between`,
        'Write each product with *; units belong to the inputs',
      );
    if (operator.isPercentage) throw this.refused('uses %', 'Write the factor as a number');
    return operator;
  }

  private refused(why: string, mend: string) {
    return refused(this.expression, why, mend);
  }
}
