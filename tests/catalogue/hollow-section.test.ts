import { describe, expect, it } from 'vitest';
import { hollowSection } from '../../core/catalogue/hollow-section.ts';
import type { HollowSection } from '../../core/catalogue/rows.ts';
import { standardSections } from '../../core/catalogue/standard-sections.ts';

const section = (id: string): HollowSection => {
  const found = standardSections.find((row) => row.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

/** Half a unit of the last printed digit, with a hair for the arithmetic. */
const halfDigit = (printed: string): number => 0.5001 * 10 ** -(printed.split('.')[1]?.length ?? 0);
const expectPrinted = (value: number, printed: string, name: string): void =>
  expect(Math.abs(value - Number(printed)), `${name}: ${value} printed ${printed}`).toBeLessThanOrEqual(halfDigit(printed));

const cm2 = 1e4;
const cm3 = 1e6;
const cm4 = 1e8;

describe('hollow sections against EN 10210-2, Annex C (rows read in a secondary copy of the table)', () => {
  // m kg/m, A cm2, I cm4, i cm, W_el cm3, W_pl cm3, I_t cm4, W_t cm3
  it.each([
    ['80x80x5', '11.6', '14.7', '137', '3.05', '34.2', '41.1', '217', '49.8'],
    ['60x60x4', '6.90', '8.79', '45.4', '2.27', '15.1', '18.3', '72.5', '22.0'],
    ['50x50x4', '5.64', '7.19', '25.0', '1.86', '9.99', '12.3', '40.4', '14.5'],
    ['40x40x4', '4.39', '5.59', '11.8', '1.45', '5.91', '7.44', '19.5', '8.54'],
  ])('%s', (size, m, A, I, i, Wel, Wpl, It, Wt) => {
    const s = section(`SHS ${size} hot`);
    expectPrinted(s.massPerMetre, m, 'm');
    expectPrinted(s.area * cm2, A, 'A');
    expectPrinted(s.inertiaY * cm4, I, 'I');
    expectPrinted(Math.sqrt(s.inertiaY / s.area) * 100, i, 'i');
    expectPrinted(s.elasticY * cm3, Wel, 'W_el');
    expectPrinted(s.plasticY * cm3, Wpl, 'W_pl');
    expectPrinted(s.torsion * cm4, It, 'I_t');
    expectPrinted(s.torsionModulus * cm3, Wt, 'W_t');
  });
});
