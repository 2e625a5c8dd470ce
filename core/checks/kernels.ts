import { fixingKernels } from '../fixings/kernels.ts';
import { boundedMemo } from '../solve/bounded-memo.ts';
import { kernels as plateKernels, type Kernel } from '../solve/kernels.ts';

/** Every registered kernel, by the name that a step gives. */
export const kernelRegistry: Readonly<Record<string, Kernel>> = { ...plateKernels, ...fixingKernels };

/** The same as plain functions, for the generated code. A dozen checks ask the same of one field: each answer is kept. */
export const kernels: Readonly<Record<string, (...values: number[]) => number>> = Object.fromEntries(
  Object.entries(kernelRegistry).map(([name, { run }]) => {
    const memo = boundedMemo<number>(2048);
    return [name, (...values: number[]) => memo(values.join(), () => run(...values))];
  }),
);
