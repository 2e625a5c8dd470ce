import { requirePositive } from '../../refusal.ts';

/**
 * Wave number k, 1/m, of a linear wave: ω² = g k tanh(k d); ω in rad/s, depth of water d in m (Infinity: deep), g in m/s².
 * Newton's rule on k d from a start that lies above the root; to the last digits in at most 8 steps.
 * Source: linear wave theory (Airy; Dean and Dalrymple, Water Wave Mechanics).
 */
export function waveNumber(omega: number, depth: number, gravity: number): number {
  requirePositive({ omega, gravity });
  if (!(depth > 0)) requirePositive({ depth });
  const deep = (omega * omega) / gravity;
  if (depth === Infinity || deep * depth > 40) return deep;
  const u = deep * depth;
  // Eckart's start, 5 % off at most
  let x = u / Math.sqrt(Math.tanh(u));
  for (let i = 0; i < 20; i++) {
    const t = Math.tanh(x);
    const step = (x * t - u) / (t + x * (1 - t * t));
    x -= step;
    if (Math.abs(step) < 1e-15 * x) break;
  }
  return x / depth;
}

/** Motion of the water at a height z (m, negative below the surface) under a wave of amplitude a (m). Amplitudes, SI. */
export interface WaveMotion {
  readonly k: number;
  readonly length: number;
  readonly celerity: number;
  readonly groupCelerity: number;
  /** Vertical and horizontal displacement, velocity and vertical acceleration. */
  readonly rise: number;
  readonly sway: number;
  readonly w: number;
  readonly u: number;
  readonly wDot: number;
}

/** Linear kinematics: rise = a sinh k(z+d) / sinh kd, sway = a cosh k(z+d) / sinh kd. Refuses a place above the surface or below the bed. */
export function waveMotion(a: number, omega: number, depth: number, z: number, gravity: number): WaveMotion {
  const k = waveNumber(omega, depth, gravity);
  if (depth < Infinity) requirePositive({ 'height above the bed': depth + z });
  const down = decay(k, depth, z);
  const n = depth === Infinity ? 0.5 : 0.5 * (1 + (2 * k * depth) / Math.sinh(Math.min(700, 2 * k * depth)));
  const sway =
    depth === Infinity || k * depth > 40 ? down : (down * Math.cosh(k * (z + depth))) / Math.sinh(k * (z + depth));
  return {
    k,
    length: (2 * Math.PI) / k,
    celerity: omega / k,
    groupCelerity: (n * omega) / k,
    rise: a * down,
    sway: a * sway,
    w: a * omega * down,
    u: a * omega * sway,
    wDot: a * omega * omega * down,
  };
}

/** sinh k(z+d) / sinh kd: what is left of the surface's rise at z. */
export function decay(k: number, depth: number, z: number): number {
  if (depth === Infinity || k * depth > 40) return Math.exp(k * z);
  return Math.sinh(k * (z + depth)) / Math.sinh(k * depth);
}
