import { refusal } from '../refusal.ts';
import { boxText } from './box-text.ts';
import type { Box } from './box.ts';
import { equationOf, substituted } from './equation.ts';
import { evaluateFormula, type Values } from './evaluate.ts';
import type { Formula } from './formula.ts';
import { numberBox } from './number-box.ts';
import { symbolBox } from './symbol-box.ts';
import { symbolsOf } from './symbols-of.ts';

export interface TraceInput {
  readonly symbol: string;
  /** Unit to show the value in; `1` for a pure number. */
  readonly unit: string;
  readonly meaning: string;
  /** Where the number comes from, and the source it cites if any. */
  readonly from: string;
  readonly source?: string;
}

export type TraceStep = { readonly symbol: string; readonly unit: string; readonly meaning: string } & (
  | { readonly formula: Formula }
  /** `kernel` is the kernel's title, for reading. */
  | { readonly kernel: string; readonly arguments: readonly string[] }
);

/** One line as it is shown and printed: left = formula = substituted = result. An input has left and result only. */
export interface TraceLine {
  readonly symbol: string;
  readonly meaning: string;
  readonly left: Box;
  readonly formula?: Box;
  /** Left out when the formula has no symbol to substitute. */
  readonly substituted?: Box;
  readonly result: Box;
  /** The whole line as text. */
  readonly plain: string;
  readonly from?: string;
  readonly source?: string;
}

/** Shows an SI value in a unit: its digits (`1.2e-7` is allowed) and the unit as printed, empty for a pure number. */
export type FormatQuantity = (si: number, unit: string) => { readonly number: string; readonly unit: string };

export interface Evaluated {
  readonly inputs: readonly TraceInput[];
  readonly steps: readonly TraceStep[];
  /** SI values of every input and step, as they were computed. */
  readonly values: Values;
}

/**
 * An evaluated check with its numbers in place, one line for each input and step. Each formula is evaluated once more
 * from the tree that is printed: when that is not the value which was computed, to the bit, it refuses.
 */
export function traceOf({ inputs, steps, values }: Evaluated, format: FormatQuantity): readonly TraceLine[] {
  const unitOf = new Map([...inputs, ...steps].map(({ symbol, unit }) => [symbol, unit]));
  const print = (symbol: string): Box => {
    const value = values[symbol];
    const unit = unitOf.get(symbol);
    if (value === undefined || unit === undefined)
      throw refusal({
        what: `${symbol} has no value to print`,
        where: { symbol },
        mend: `Declare ${symbol} among the inputs or steps`,
      });
    return quantityBox(format(value, unit));
  };
  return [
    ...inputs.map(({ symbol, meaning, from, source }) => ({ ...line(symbol, meaning, print(symbol)), from, source })),
    ...steps.map((step) => {
      if ('kernel' in step) return kernelLine(step, print);
      requireSame(step, values);
      const numbers = symbolsOf(step.formula).size > 0 ? substituted(step.formula, print) : undefined;
      return line(step.symbol, step.meaning, print(step.symbol), equationOf(step.formula), numbers);
    }),
  ];
}

function line(symbol: string, meaning: string, result: Box, formula?: Box, numbers?: Box): TraceLine {
  const left = symbolBox(symbol);
  const shown = [left, formula, numbers, result].filter((box) => box !== undefined);
  return { symbol, meaning, left, formula, substituted: numbers, result, plain: shown.map(boxText).join(' = ') };
}

/** A kernel has no formula to print: its title stands with each argument and its number. */
function kernelLine(step: Extract<TraceStep, { kernel: string }>, print: (symbol: string) => Box): TraceLine {
  const argument = (symbol: string): readonly Box[] => [
    symbolBox(symbol),
    { kind: 'operator', text: '=' },
    print(symbol),
  ];
  const call: Box = {
    kind: 'row',
    boxes: [
      { kind: 'text', text: step.kernel },
      { kind: 'bracket', shape: 'round', body: listed(step.arguments.map(argument)) },
    ],
  };
  return line(step.symbol, step.meaning, print(step.symbol), undefined, call);
}

const listed = (items: readonly (readonly Box[])[]): Box => ({
  kind: 'row',
  boxes: items.flatMap((item, i): readonly Box[] => (i ? [{ kind: 'operator', text: ',' }, ...item] : item)),
});

function quantityBox({ number, unit }: ReturnType<FormatQuantity>): Box {
  const digits = numberBox(number);
  return unit === ''
    ? digits
    : {
        kind: 'row',
        boxes: [...(digits.kind === 'row' ? digits.boxes : [digits]), { kind: 'text', text: `\u00a0${unit}` }],
      };
}

function requireSame({ symbol, formula }: { symbol: string; formula: Formula }, values: Values): void {
  const printed = evaluateFormula(formula, values);
  if (Object.is(printed, values[symbol])) return;
  throw refusal({
    what: `${symbol} was computed as ${values[symbol]}, its printed formula gives ${printed}`,
    where: { symbol },
    mend: 'The generated functions are stale: run npm run generate',
  });
}
