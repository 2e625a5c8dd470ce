/**
 * Water that a tray a × b with walls h high keeps when tilted, m³: it spills over the lowest wall until level.
 * The surface leaves the lower wall's top and falls by tan θ along the tray (length L across the axis of tilt, W along it):
 *   V = W L (h − L tan θ / 2)   while the far side is wet, L tan θ ≤ h;   V = W h² / (2 tan θ)   after.
 * Tilted about the axis that keeps more of the two; θ in rad, 0 to π/2.
 */
export function heldVolume(a: number, b: number, h: number, tilt: number): number {
  const slope = Math.tan(tilt);
  const about = (L: number, W: number): number =>
    L * slope <= h ? W * L * (h - (L * slope) / 2) : (W * h ** 2) / (2 * slope);
  return Math.max(about(a, b), about(b, a));
}
