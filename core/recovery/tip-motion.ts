import type { LiftFields } from '../document/recovery-field.ts';

/** Vertical motion of the tip of crane or frame, amplitudes. SI. */
export interface TipMotion {
  readonly rise: number;
  readonly speed: number;
  readonly acceleration: number;
}

/**
 * Tip of a crane or frame at (along, across) from the vessel's centre: heave, roll and pitch are taken as independent,
 *   η = √(η3² + (across sin η4)² + (along sin η5)²),  speed and acceleration by 2π/T.
 * Motions for each metre of significant height, straight lines between the periods given, the nearest beyond them.
 * Source: DNV-RP-N103, 4.3.3 (from memory).
 */
export function tipMotion({ motions, tip }: Pick<LiftFields, 'motions' | 'tip'>, Hs: number, T: number): TipMotion {
  const at = motionAt(motions, T);
  const rise = Hs * Math.hypot(at.heave, tip.across.si * Math.sin(at.roll), tip.along.si * Math.sin(at.pitch));
  const omega = (2 * Math.PI) / T;
  return { rise, speed: rise * omega, acceleration: rise * omega ** 2 };
}

function motionAt(motions: LiftFields['motions'], T: number): { heave: number; roll: number; pitch: number } {
  const rows = [...motions].sort((a, b) => a.period.si - b.period.si);
  const k = Math.min(rows.length - 1, Math.max(0, rows.filter(({ period }) => period.si <= T).length - 1));
  const [a, b] = [rows[k]!, rows[Math.min(rows.length - 1, k + 1)]!];
  const span = b.period.si - a.period.si;
  const part = span > 0 ? Math.min(1, Math.max(0, (T - a.period.si) / span)) : 0;
  const between = (of: (row: (typeof rows)[number]) => number): number => of(a) + part * (of(b) - of(a));
  return { heave: between((r) => r.heave.si), roll: between((r) => r.roll.si), pitch: between((r) => r.pitch.si) };
}
