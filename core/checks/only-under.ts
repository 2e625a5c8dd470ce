import type { Safety } from '../source.ts';
import type { Input } from './check.ts';

/** The same inputs, asked for under one kind of design basis only. */
export function onlyUnder<Symbols extends string>(
  only: Safety,
  inputs: Readonly<Record<Symbols, Input>>,
): Readonly<Record<Symbols, Input>> {
  return Object.fromEntries(
    Object.entries<Input>(inputs).map(([symbol, input]) => [symbol, { ...input, only }]),
  ) as Record<Symbols, Input>;
}
