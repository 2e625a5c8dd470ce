import { refusal, requirePositive } from '../refusal.ts';
import type { Material, StrengthStep } from './rows.ts';

/** Yield or 0.2 % proof strength in Pa of a material at a thickness in m.
 *  Refuses a thickness beyond the material's table, and a material that does not yield. */
export const yieldOf = (material: Material, thickness: number): number =>
  atThickness(material, thickness, 'yield strength', material.yieldStrength);

/** Ultimate tensile strength in Pa of a material at a thickness in m. Refuses a thickness beyond the table. */
export const ultimateOf = (material: Material, thickness: number): number =>
  atThickness(material, thickness, 'ultimate strength', material.ultimateStrength);

// 16 mm may arrive as 0.016000000000000004 from a conversion; it still belongs to the step "up to 16 mm".
const rounding = 1 + 1e-9;

function atThickness(material: Material, thickness: number, what: string, steps: readonly StrengthStep[]): number {
  requirePositive({ thickness });
  const last = steps.at(-1);
  if (!last)
    throw refusal({
      what: `${material.id} has no ${what}`,
      where: { material: material.id },
      mend: 'Use its ultimate strength, or give a row of your own with the value and its source',
    });
  const step = steps.find(({ upTo }) => thickness <= upTo * rounding);
  if (!step)
    throw refusal({
      what: `the ${what} of ${material.id} is known up to ${millimetres(last.upTo)} mm, this part is ${millimetres(thickness)} mm thick`,
      where: { material: material.id },
      mend: 'Choose a thinner part or another material, or give a row of your own with the value and its source',
    });
  return step.value;
}

const millimetres = (length: number): string => String(Number((length * 1000).toPrecision(6)));
