import { refusal } from '../refusal.ts';

/**
 * Dynamic viscosity of sea water in Pa·s at one atmosphere; salinity in g/kg, temperature in K. Kinematic: divide by the density.
 *   μ = μ_w (1 + A S + B S²),   μ_w = 4.2844e-5 + 1 / (0.157 (t + 64.993)² − 91.296)
 * A practical salinity may stand for g/kg: the half per cent between them moves the result by 0.05 %.
 * Refuses what lies outside the fit: 0 to 150 g/kg, 0 to 180 °C (down to −2 °C it is used as it stands). Error 1.5 %.
 * Source: Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16 (2010), eqs. 22 and 23.
 */
export function viscosity(salinity: number, temperature: number): number {
  const t = temperature - 273.15;
  if (!(salinity >= 0 && salinity <= 150 && t >= -2 && t <= 180))
    throw refusal({
      what: `Viscosity of sea water is not known at salinity ${salinity} and ${t.toFixed(1)} °C`,
      where: { path: 'water' },
      mend: 'Give a salinity up to 150 and a temperature from -2 degC to 180 degC.',
    });
  const S = salinity / 1000;
  const A = 1.541 + 1.998e-2 * t - 9.52e-5 * t ** 2;
  const B = 7.974 - 7.561e-2 * t + 4.724e-4 * t ** 2;
  return (4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296)) * (1 + A * S + B * S ** 2);
}
