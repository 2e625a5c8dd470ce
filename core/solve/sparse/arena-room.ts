import type { FrontKernels, MakeKernels } from './front-kernels.ts';

/** Hands out one arena again and again, a larger one where it no longer serves: new memory costs more than the work on a small
 *  plate, page by page. What was taken apart in it before can then solve no more. */
export function arenaRoom(make: MakeKernels): MakeKernels {
  let arena: FrontKernels | null = null;
  return (doubles) => (arena && arena.doubles.length >= doubles ? arena : (arena = make(doubles)));
}
