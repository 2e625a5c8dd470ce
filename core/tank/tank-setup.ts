/** What hangs in the tank and how it is driven. SI. */
export interface TankSetup {
  /** Mass of the body in air, kg. */
  readonly mass: number;
  /** Volume of its material, m³: what water it displaces. */
  readonly volume: number;
  /** Area that the drag coefficient refers to, m². */
  readonly area: number;
  /** kg/m³. */
  readonly density: number;
  /** Width that the Keulegan-Carpenter number refers to, m. */
  readonly width: number;
  /** kg that move with the plate below the load cell and are no part of it: frame, rod, shackles. */
  readonly rigMass: number;
  /** Water carried inside the tubes, m³: it moves with the plate, but is no added mass. */
  readonly waterInside: number;
  /** Stiffness of line and crane between where travel is measured and the plate, N/m; null where they do not stretch. */
  readonly stiffness: number | null;
  /** The force may be read up to this long before or after the travel, s; null where nobody has said. */
  readonly delayBound: number | null;
  /** Unknowns beside added mass, drag and the load cell's zero. */
  readonly also: ReadonlySet<Also>;
  /** Harmonics of the fitted motion. */
  readonly harmonics: number;
}

export type Also = 'linear damping' | 'dry friction' | 'force drift' | 'delay';
