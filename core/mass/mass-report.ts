import type { Finding } from '../finding.ts';

/** Mass, volumes and weight of the plate; SI. */
export interface MassReport {
  readonly parts: readonly MassPart[];
  readonly total: number;
  readonly panels: number;
  /** Centre of mass, m. */
  readonly centre: readonly [number, number, number];
  /** About the centre of mass: xx, yy, zz, kg·m². */
  readonly inertia: readonly [number, number, number];
  /** Water inside flooded tubes, kg: moves with the plate, is no part of its weight. */
  readonly entrainedWater: number;
  /** Displaced volume as built (sealed tubes with their bore), all flooded, all sealed, m³. */
  readonly displaced: { readonly asBuilt: number; readonly flooded: number; readonly sealed: number };
  readonly centreOfBuoyancy: readonly [number, number, number];
  /** Weight in water, N. */
  readonly submergedWeight: { readonly asBuilt: number; readonly flooded: number; readonly sealed: number };
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

/** How the plate hangs: tilt in air and in water, and what restores it. */
export interface Hanging {
  /** Vertical line through the suspension's point of hang, plan. */
  readonly hangX: number;
  readonly hangY: number;
  /** Height of the hang point above the centre of mass, m: negative is unstable. */
  readonly heightAboveMass: number;
  /** Tilt about x and about y, rad, hanging freely. */
  readonly tilt: { readonly air: readonly [number, number]; readonly water: readonly [number, number] };
  /** Tilt in water with the panel of one bay left open, largest, and which. */
  readonly worstOpenBay: { readonly bay: string; readonly tilt: number } | null;
}

export interface Trap {
  readonly bay: string;
  /** Volume when level and at the stated tilt, m³. */
  readonly level: number;
  readonly tilted: number;
  /** Mass of trapped water, kg, or lost weight in N for air. */
  readonly effect: number;
  /** Time to drain (or vent) through holes and gaps, s; null when nothing lets it out. */
  readonly drainTime: number | null;
}
