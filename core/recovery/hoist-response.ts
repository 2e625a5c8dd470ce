import { equivalentDamping } from '../motion/equivalent-damping.ts';
import { refusal } from '../refusal.ts';

/** A load on a hoist line whose upper end moves as a sine. SI. */
export interface Hoist {
  /** Load, added mass and a third of the line. */
  readonly mass: number;
  readonly stiffness: number;
  /** ½ ρ C_D A, N s²/m². */
  readonly drag: number;
  readonly amplitude: number;
  readonly omega: number;
}

export interface HoistResponse {
  /** Amplitude of the load, m, and of the line's varying pull, N. */
  readonly rise: number;
  readonly pull: number;
  readonly equivalent: number;
}

/**
 * Load under a moving hook: m z̈ + b ż + K z = K η, b the linear damping of the same work as the drag, (8/3π) D ω |z|; the line's varying
 * pull is K |η − z|. Below resonance the load follows, above it stays behind and the line works.
 * Source: forced vibration of one mass; linearised drag, Kryloff & Bogoliuboff (1943) (from memory).
 */
export function hoistResponse({ mass, stiffness, drag, amplitude, omega }: Hoist): HoistResponse {
  const spring = stiffness - mass * omega ** 2;
  const rise = (b: number): number => (stiffness * amplitude) / Math.hypot(spring, omega * b);
  const factor = (8 / (3 * Math.PI)) * drag * omega;
  const b = amplitude === 0 ? 0 : equivalentDamping((b) => factor * rise(b), factor * amplitude, 1e-12);
  if (b === undefined || !Number.isFinite(rise(b)))
    throw refusal({ what: 'Nothing damps the load on its hoist at this period', where: { path: 'recovery.lift' }, mend: 'Give the plate its drag coefficient.' }); // prettier-ignore
  const pull = (stiffness * amplitude * Math.hypot(mass * omega ** 2, omega * b)) / Math.hypot(spring, omega * b);
  return { rise: rise(b), pull, equivalent: b };
}
