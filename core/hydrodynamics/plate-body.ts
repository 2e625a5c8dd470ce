import type { Model } from '../model.ts';
import { testedWater, type TestedWater } from './tested-water.ts';

/** What a test or a motion needs of a plate. SI. */
export interface PlateBody {
  /** In air, kg, and volume of its material, m³. */
  readonly mass: number;
  readonly volume: number;
  /** Solid plan area, m². */
  readonly area: number;
  readonly density: number;
  /** In flooded tubes, m³. */
  readonly waterInside: number;
  /** Below the surface, m; null where only figures are given. */
  readonly depth: number | null;
  /** The accepted test that its document uses, if it does. */
  readonly tested: TestedWater | null;
}

/** The plate of a document as a body in the water. */
export function plateBodyOf(model: Model): PlateBody & { readonly depth: number } {
  const { mass, loads, document } = model;
  const tested = testedWater(model);
  return {
    mass: mass.total,
    volume: mass.displaced.asBuilt,
    area: loads.plate.shares.solid,
    density: mass.waterDensity,
    waterInside: mass.entrainedWater / mass.waterDensity,
    depth: document.water.depth.si,
    tested: tested && !('missing' in tested) ? tested : null,
  };
}
