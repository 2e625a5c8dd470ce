import { fromUnit } from '../quantity/format-quantity.ts';
import type { Safety } from '../source.ts';
import type { Input } from './check.ts';

/** A factor of the design basis as an input. `only`: the kind of basis that has it. */
export const basisFactor = (name: string, meaning: string, only?: Safety): Input => ({
  unit: '1',
  meaning,
  from: 'document: basis',
  read: (model) =>
    model.basis.factors[name]?.value ?? { missing: `the basis ${model.basis.name} has no factor ${name}` },
  ...(only ? { only } : {}),
});

/** A constant of a rule, with its unit: the dimensional constants of empirical formulas are inputs like any other. */
export const constant = (value: number, unit: string, meaning: string, from: string): Input => {
  const si = fromUnit(value, unit);
  return { unit, meaning, from, read: () => si };
};
