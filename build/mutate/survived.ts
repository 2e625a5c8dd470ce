import type { Tried } from './try-mutants.ts';

/** True for a slip that no test noticed though it could have been: what it changed is a number somewhere. */
export const survived = ({ killedBy, neverANumber }: Tried): boolean => killedBy === undefined && !neverANumber;
