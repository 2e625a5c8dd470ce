import fc from 'fast-check';
import type { Condition, Formula } from '../../core/derive/formula.ts';

/** Names that clash: constants and units of mathjs, words of JavaScript, names with parts. */
export const names = ['a', 'e', 'i', 'E', 'N', 't', 'new', 'v', 'k', 'F_t_Rd', 'gamma_M2'] as const;
export const known: ReadonlySet<string> = new Set(names);

export const values = fc.record(
  Object.fromEntries(
    names.map((name) => [
      name,
      fc.oneof(fc.double({ min: -1e3, max: 1e3, noNaN: true }), fc.constantFrom(0, 1, -1, 2)),
    ]),
  ),
) as fc.Arbitrary<Record<string, number>>;

const leaf: fc.Arbitrary<Formula> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...names).map((name): Formula => ({ kind: 'symbol', name })) },
  {
    weight: 2,
    arbitrary: fc
      .oneof(fc.nat(5), fc.double({ min: 0, max: 1e12, noNaN: true }))
      .map((n): Formula => ({ kind: 'number', value: Math.abs(n) })),
  },
  { weight: 1, arbitrary: fc.constant<Formula>({ kind: 'pi' }) },
);

const trees = fc.letrec<{ formula: Formula; condition: Condition }>((tie) => {
  const formula = tie('formula');
  const condition = tie('condition');
  const one = fc.constantFrom('sqrt', 'abs', 'exp', 'log', 'log10', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan');
  return {
    formula: fc.oneof(
      { maxDepth: 5, depthSize: 'medium' },
      leaf,
      fc.record({ kind: fc.constant('minus'), of: formula }),
      fc.record({
        kind: fc.constant('binary'),
        operator: fc.constantFrom('+', '-', '*', '/', '^'),
        left: formula,
        right: formula,
      }),
      fc.record({
        kind: fc.constant('binary'),
        operator: fc.constantFrom('+', '-', '*', '/'),
        left: formula,
        right: formula,
      }),
      fc.record({ kind: fc.constant('call'), name: one, arguments: fc.tuple(formula) }),
      fc.record({ kind: fc.constant('call'), name: fc.constant('atan2'), arguments: fc.tuple(formula, formula) }),
      fc.record({
        kind: fc.constant('call'),
        name: fc.constantFrom('min', 'max'),
        arguments: fc.array(formula, { minLength: 2, maxLength: 4 }),
      }),
      fc.record({ kind: fc.constant('choice'), when: condition, then: formula, otherwise: formula }),
    ),
    condition: fc.oneof(
      { maxDepth: 3 },
      fc.record({
        kind: fc.constant('compare'),
        operator: fc.constantFrom('<', '<=', '>', '>=', '=='),
        left: formula,
        right: formula,
      }),
      fc.record({
        kind: fc.constant('logic'),
        operator: fc.constantFrom('and', 'or'),
        left: condition,
        right: condition,
      }),
      fc.record({ kind: fc.constant('not'), of: condition }),
    ),
  };
});

/** Any formula over `names`, all kinds of node and all functions but cbrt. */
export const { formula: anyFormula, condition: anyCondition } = trees;
