/** Channels of a float in the sea and of the plate below it, even in time. SI; arrays of like length. */
export interface SeaChannels {
  readonly dt: number;
  /** Of the float at the accelerometer, up, m/s²; gravity may be in it. */
  readonly acceleration: Float64Array;
  /** Of the float along its own length, towards its bow, m/s²: read with `acceleration` along the float's mast. */
  readonly ahead?: Float64Array;
  /** Between float and line, m: larger when the plate is further from the float. */
  readonly stroke?: Float64Array;
  /** Pull of the line, N. */
  readonly force?: Float64Array;
  /** Of the float, rad: raises a point ahead of the accelerometer. */
  readonly pitch?: Float64Array;
  /** Of the line from the vertical, rad; its sign does not matter. */
  readonly lineAngle?: Float64Array;
  /** Of the plate, up, m/s²; gravity may be in it. */
  readonly plateAcceleration?: Float64Array;
  /** Absolute or gauge, at the plate, Pa. */
  readonly pressure?: Float64Array;
}

/** What is known of the sensors and of what hangs between them. Null: not stated. SI. */
export interface SeaSetup {
  /** Slowest motion kept, s. */
  readonly highPass: number;
  /** The float's accelerometer keeps to the vertical, or turns with the float: then pitch brings it to the vertical. */
  readonly axes: 'vertical' | 'body';
  /** Standard deviation of a reading's noise: of accelerations (m/s²; null: taken from the record), stroke (m), force (N), pressure (Pa). */
  readonly accelerationNoise: number | null;
  readonly plateNoise: number | null;
  readonly strokeNoise: number;
  readonly forceNoise: number;
  readonly pressureNoise: number;
  /** Part by which the stroke's scale against the accelerometer's may be wrong. */
  readonly scaleError: number;
  /** The two clocks may be this far apart, s. */
  readonly clock: number;
  /** Of the line, N/m; null: it does not stretch. */
  readonly stiffness: number | null;
  /** Attachment ahead of the accelerometer, m. */
  readonly arm: number;
  /** Of the line from the float to the plate with the stroke in the middle, m; null: it hangs straight down. */
  readonly lineLength: number | null;
  /** kg/m³, and the depths of the plate and of the water (null: deep), m: what the waves' pressure at the plate follows from. */
  readonly density: number | null;
  readonly plateDepth: number | null;
  readonly waterDepth: number | null;
  /** Part by which the float may follow the water's surface wrongly. */
  readonly waveError: number;
  /** How the plate's motion is found; null: by what leaves least open. */
  readonly by: PlateWay | null;
  /** Double amplitude within which the plate counts as still, m; null: none. */
  readonly limit: number | null;
}

/** Float less stroke; an accelerometer on the plate; a pressure logger on it. */
export type PlateWay = 'difference' | 'accelerometer' | 'pressure';
