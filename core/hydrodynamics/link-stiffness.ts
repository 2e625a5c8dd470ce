import type { Hydrodynamics } from '../document/hydrodynamics-field.ts';

type Stated = NonNullable<Hydrodynamics['system']>;

/**
 * Stiffness of power take-off and line in a row, N/m, with `longer` m more line than stated (less, where negative):
 *   1/K(longer) = 1/K + longer / EA.
 * The stated K where the line is not stated. Holds where line is left.
 */
export function linkStiffness({ stiffness, line }: Stated, longer: number): number {
  if (!line || longer === 0) return stiffness.si;
  return 1 / (1 / stiffness.si + longer / line.axialStiffness.si);
}

/** Stiffness of the line alone, N/m: what is left where the power take-off stands at its stop. Null where it is not stated. */
export const lineStiffness = ({ line }: Stated): number | null =>
  line ? line.axialStiffness.si / line.length.si : null;
