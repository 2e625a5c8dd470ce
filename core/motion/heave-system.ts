/**
 * A float and a still plate in heave, joined by a power take-off with a spring and a damper. SI; z up from rest.
 *   m1 z1″ + b1 z1′ + c1 z1 = F1 − T,   m2 z2″ + b2 u + D u|u| = T + I w′,   u = z2′ − w
 *   T = k (z1 − z2) + b (z1′ − z2′): what the line's pull varies about the weight of the plate
 */
export interface HeaveSystem {
  /** Null: the plate hangs from a point that does not move. */
  readonly float: (Body & { /** c1: ρ g times the area of the waterline, N/m. */ readonly stiffness: number }) | null;
  readonly plate: Body & {
    /** D = ½ ρ C_d S, N s²/m². */
    readonly drag: number;
    /** I = A + ρ V: what the water's own acceleration pushes with, kg. */
    readonly carried: number;
    /** Weight in water, N: the pull of the line at rest. */
    readonly weight: number;
  };
  readonly link: {
    readonly stiffness: number;
    readonly damping: number;
    /** A line pulls or hangs slack; a strut pushes too. */
    readonly pushes: boolean;
  };
}

interface Body {
  /** With the added mass, kg. */
  readonly mass: number;
  /** Linear damping, N s/m. */
  readonly damping: number;
}

/** What a harmonic wave does to the two bodies. Complex amplitudes [re, im] of e^{iωt}, SI. */
export interface HarmonicForcing {
  /** Force on the float, N. */
  readonly float: Complex;
  /** Force on the plate beside what the water's motion makes, N. */
  readonly plate: Complex;
  /** Vertical velocity of the water at the plate, m/s. */
  readonly water: Complex;
}

export type Complex = readonly [number, number];
