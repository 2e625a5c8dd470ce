/** A number as it is printed, in its unit; `per` is that unit in SI. */
export interface Printed {
  readonly expected: number;
  /** Half of the last digit that is printed. */
  readonly tolerance: number;
  readonly unit: string;
  readonly per: number;
}

const units = {
  '1': 1, N: 1, kN: 1e3, kip: 4448.2216152605, 'kN·m': 1e3, 'kN/m': 1e3, 'N/mm': 1e3, 'N/mm³': 1e9, 'kN/mm': 1e6, MPa: 1e6,
  ksi: 6894757.293168, 'kip/in': 175126.8352,
  mm: 1e-3, in: 0.0254, 'mm²': 1e-6, m: 1, 'm³': 1, 'm/s': 1, s: 1, kg: 1, A: 1, 'Ω': 1, dB: 1, Hz: 1, d: 86_400, '°': Math.PI / 180,
} as const; // prettier-ignore

/** The digits are text, so that a zero at the end counts: the tolerance is half of the last one. */
export function printed(digits: string, unit: keyof typeof units = '1'): Printed {
  const decimals = digits.split('.')[1]?.length ?? 0;
  return { expected: Number(digits), tolerance: 0.5 * 10 ** -decimals, unit, per: units[unit] };
}
