import { fixingKernels } from '../fixings/kernels.ts';
import { kernels as plateKernels, type Kernel } from '../solve/kernels.ts';

/** Every registered kernel, by the name that a step gives. */
export const kernelRegistry: Readonly<Record<string, Kernel>> = { ...plateKernels, ...fixingKernels };

/** The same as plain functions, for the generated code. */
export const kernels: Readonly<Record<string, (...values: number[]) => number>> = Object.fromEntries(
  Object.entries(kernelRegistry).map(([name, { run }]) => [name, run]),
);
