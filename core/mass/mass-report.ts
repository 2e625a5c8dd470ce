import type { GrowthMass } from './growth-on.ts';
import type { Finding } from '../finding.ts';
import type { Hanging } from './hanging-of.ts';
import type { LeastWeight } from './least-weight.ts';
import type { Trap } from './traps-of.ts';

export type { Hanging } from './hanging-of.ts';
export type { Trap } from './traps-of.ts';

/** Mass, volumes and weight of the plate; SI. */
export interface MassReport {
  readonly parts: readonly MassPart[];
  readonly total: number;
  /** Net panels alone, without their fasteners, welds and coating. */
  readonly panels: number;
  /** kg/m³, of the water that displaces and entrains. */
  readonly waterDensity: number;
  /** Centre of mass, m. */
  readonly centre: readonly [number, number, number];
  /** About the centre of mass: xx, yy, zz, kg·m². */
  readonly inertia: readonly [number, number, number];
  /** Water inside flooded tubes, kg: moves with the plate, is no part of its weight. */
  readonly entrainedWater: number;
  /** Marine growth of the stated years: in none of the other numbers here, which are of the clean plate. */
  readonly growth: GrowthMass | null;
  /** Displaced volume as built (sealed tubes with their bore), all flooded, all sealed, m³. */
  readonly displaced: { readonly asBuilt: number; readonly flooded: number; readonly sealed: number };
  /** As built, m. */
  readonly centreOfBuoyancy: readonly [number, number, number];
  /** Weight in water, N; negative floats. */
  readonly submergedWeight: { readonly asBuilt: number; readonly flooded: number; readonly sealed: number };
  /** As built, less allowances and what corrodes (`leastWeight`): counted on where weight helps. */
  readonly least: Readonly<Record<'air' | 'water', LeastWeight>>;
  readonly hanging: Hanging;
  /** Water held like a tray on topside openings bounded by tubes, air under a panel like a bell, per bay. */
  readonly trays: readonly Trap[];
  readonly bells: readonly Trap[];
  readonly findings: readonly Finding[];
}

export interface MassPart {
  readonly name: string;
  readonly kind: 'tubes' | 'panels' | 'fasteners' | 'welds' | 'coating' | 'attachments' | 'extras' | 'tolerance';
  readonly mass: number;
  readonly volume: number;
  readonly centre: readonly [number, number, number];
}
