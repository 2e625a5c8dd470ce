import { g, waterDensityOf } from '../water/sea-water.ts';
import type { PlateDocument } from '../document/schema.ts';
import { anodeDensity } from './anode-density.ts';

/** What the anodes cost the plate. SI. */
export interface AnodeBurden {
  /** Alloy of all anodes, kg, and its weight in water, N. Cores and brackets are extras of the document. */
  readonly mass: number;
  readonly weightInWater: number;
  /** Drag coefficient times the area that heave meets, m². */
  readonly dragArea: number;
  /** Drag of all anodes at the greatest speed of the stated motion, N; null where none is stated. */
  readonly drag: number | null;
}

/** Square bar across the flow. Source: DNV-RP-C205, Appendix E, rectangular sections, from memory. */
const barDrag = 2;

/**
 * Weight and drag of the anodes as square bars of their alloy and length, all lying across the heave. A flush anode shows its width.
 * Null where the document describes none.
 */
export function anodeBurden(document: PlateDocument): AnodeBurden | null {
  const anodes = document.durability?.anodes;
  if (!anodes) return null;
  const { count, alloy, length, width } = anodes;
  const rho = waterDensityOf(document);
  const mass = count * anodes.mass.si;
  const volume = anodes.mass.si / anodeDensity[alloy];
  const core = (Math.PI / 4) * (anodes.core?.si ?? 0) ** 2;
  const side = width?.si ?? Math.sqrt(volume / length.si + core);
  const dragArea = barDrag * count * side * length.si;
  const motion = document.hydrodynamics?.motion;
  const speed = motion && (2 * Math.PI * motion.amplitude.si) / motion.period.si;
  return {
    mass,
    weightInWater: mass * g * (1 - rho / anodeDensity[alloy]),
    dragArea,
    drag: speed === undefined ? null : 0.5 * rho * dragArea * speed ** 2,
  };
}
