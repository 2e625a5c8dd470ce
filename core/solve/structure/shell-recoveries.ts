import { shellRecovery } from '../elements/shell-recovery.ts';
import { perShell } from './per-shell.ts';

/** What turns displacements into forces, for each shell of a structure. */
export const shellRecoveries = perShell((xyz, { E, nu }) => shellRecovery(xyz, { E, nu }));
