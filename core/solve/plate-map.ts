import type { PlateField } from './plate-shape.ts';
import type { PlateAnswer } from './plate-answer.ts';
import { plateRigidity, type UniformPlate } from './uniform-plate.ts';

/** The field of an answer in SI: w in m, moments in N·m/m, and the von Mises stress of the faces in Pa, on the grid of
 *  `PlateField` (columns along x from 0 to a, rows along y from 0 to b). */
export function plateMap(plate: UniformPlate, { shape }: PlateAnswer): PlateField & { readonly stress: Float64Array } {
  const { a, t, q } = plate;
  const M = q * a ** 2;
  const scaled = (values: Float64Array, by: number): Float64Array => values.map((value) => by * value);
  const { columns, rows, w, Mx, My, Mxy } = shape.field;
  const stress = Mx.map((mx, i) => {
    const [my, mxy] = [My[i]!, Mxy[i]!];
    return ((6 * Math.abs(M)) / t ** 2) * Math.sqrt(mx * mx - mx * my + my * my + 3 * mxy * mxy);
  });
  const deflection = scaled(w, (q * a ** 4) / plateRigidity(plate));
  return { columns, rows, w: deflection, Mx: scaled(Mx, M), My: scaled(My, M), Mxy: scaled(Mxy, M), stress };
}
