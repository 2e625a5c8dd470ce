import { refusal, requirePositive } from '../../refusal.ts';
import { globalFromLocal } from './shell-global.ts';
import { plateBending } from './plate-bending.ts';
import { plateMembrane } from './plate-membrane.ts';
import { shellShape } from './shell-shape.ts';

/** Stiffness of a shell element for a thickness of 1 m, in its two parts, each (6n)² by rows, global axes. */
export interface ShellUnits {
  readonly membrane: Float64Array;
  readonly bending: Float64Array;
}

/** Both parts of a flat shell of three or four nodes (xyz: 9 or 12 coordinates in m, in turn round the outline):
 *  thickness t gives t membrane + t³ bending, exactly. E in Pa, nu in [0, 0.5). Nodes off the element's plane are
 *  joined to it by rigid links. Refuses an element without area or not convex, E that is not positive, nu out of range.
 *  Source: see plateMembrane, kirchhoffPlace. */
export function shellUnits(xyz: Float64Array, { E, nu }: { readonly E: number; readonly nu: number }): ShellUnits {
  requirePositive({ E });
  if (!(nu >= 0 && nu < 0.5))
    throw refusal({
      what: `nu must be from 0 to below 0.5, it is ${nu}`,
      where: { field: 'nu' },
      mend: 'Give Poisson’s ratio',
    });
  const shape = shellShape(xyz);
  return {
    membrane: globalFromLocal(shape, plateMembrane(shape, { E, nu }).stiffness, 'membrane'),
    bending: globalFromLocal(shape, plateBending(shape, { E, nu }), 'bending'),
  };
}

/** Stiffness (6n)² of a shell of the given thickness in m from its unit parts. */
export function shellStiffness({ membrane, bending }: ShellUnits, thickness: number): Float64Array {
  requirePositive({ thickness });
  const [t, cubed] = [thickness, thickness ** 3];
  return membrane.map((value, k) => t * value + cubed * bending[k]!);
}
