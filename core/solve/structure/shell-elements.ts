import { shellStiffness, shellUnits } from '../elements/shell-stiffness.ts';
import { perShell } from './per-shell.ts';

/** Stiffness of each shell of a structure (576, see `shellStiffness`), and the two parts for 1 m of thickness that it is made of. */
export const shellElements = perShell((xyz, { E, nu, thickness }) => {
  const units = shellUnits(xyz, { E, nu });
  return { ...units, stiffness: shellStiffness(units, thickness) };
});
