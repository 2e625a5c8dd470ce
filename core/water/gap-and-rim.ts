import type { Image } from './lattice/doublet-kernel.ts';

/** Drag coefficient on the outline of what the gaps dissipate in a heave: damping over the angular frequency in kg, area in m², amplitude in m. */
export const gapDrag = (damping: number, density: number, area: number, amplitude: number): number =>
  (3 * Math.PI * damping) / (4 * density * area * amplitude);

/** Eddies at the rim grow with the pressure jump there: by its part of the solid plate's. All three in kg. */
export const rimPart = (addedMass: number, damping: number, solid: number): number =>
  Math.min(1, Math.hypot(addedMass, damping) / solid);

/** Images of bed and surface where they are nearer than five times the longer side b; null: without end. All in m. */
export function nearImages(b: number, depth: number | null, aboveBed: number | null): Image[] {
  const images: Image[] = [];
  if (aboveBed !== null && aboveBed < 5 * b) images.push({ height: 2 * aboveBed, sense: -1 });
  if (depth !== null && depth < 5 * b) images.push({ height: 2 * depth, sense: 1 });
  return images;
}
