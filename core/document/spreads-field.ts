import * as z from 'zod';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

/** Inputs whose spread may be stated. */
export const spreadInputs = ['force', 'thickness', 'yield', 'overlap', 'loss', 'drag'] as const;
export type SpreadInput = (typeof spreadInputs)[number];

/** How far inputs may be off, as parts of their value, by whose word: -0.05 and 0.1 are 5 % less to 10 % more. */
export const spreadsField = withRule(
  z
    .array(
      z.strictObject({
        input: z.enum(spreadInputs),
        low: z.number().min(-0.9).max(0),
        high: z.number().min(0).max(5),
        source: text,
      }),
    )
    .max(spreadInputs.length),
  ['*.input', '*.low', '*.high'],
  (given): Fault[] =>
    given.flatMap(({ input, low, high }, i): Fault[] => [
      ...(given.findIndex((other) => other.input === input) < i
        ? [{ path: [i, 'input'], what: `The spread of ${input} is given twice`, mend: 'Keep one of them.' }]
        : []),
      ...(low === high
        ? [
            {
              path: [i, 'high'],
              what: `The spread of ${input} has no width`,
              mend: 'Give a low below or a high above zero.',
            },
          ]
        : []),
    ]),
);

export type Spread = z.infer<typeof spreadsField>[number];
