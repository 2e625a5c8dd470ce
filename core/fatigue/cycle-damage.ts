import type { SnCurve } from './sn-curve.ts';

/** Damage of one cycle of a stress range, Pa: 1 / N by the curve, without thickness effect; 0 of no range. */
export function cycleDamage({ S_k, N_k, m_1, m_2, cutOff }: SnCurve, range: number): number {
  if (range <= cutOff) return 0;
  const x = range / S_k;
  return x ** (x > 1 ? m_1 : m_2) / N_k;
}
