/**
 * The plate as it moves: nodes of panels and stations of tubes with their displacements and turns. Everything drawn from it
 * is linear in the scale, p(s) = place + s · move, so a picture goes from one scale to another without being made anew. SI.
 */
export interface PlateShape {
  readonly panels: readonly ShapePanel[];
  readonly tubes: readonly ShapeTube[];
  /** Size of the largest displacement, m; of a mode or a buckling shape, which has no size of its own, 1. */
  readonly largest: number;
}

export interface ShapePanel {
  readonly id: string;
  readonly thickness: number;
  /** How far it goes up when panels are pulled off the tubes by a unit. */
  readonly lift: 1 | -1;
  /** Of each node of the mid-plane, three numbers: place, displacement (m), turn (rad). */
  readonly places: Float32Array;
  readonly moves: Float32Array;
  readonly turns: Float32Array;
  /** Four nodes a cell, anticlockwise seen from above. */
  readonly cells: Uint32Array;
}

export interface ShapeTube {
  readonly id: string;
  /** Along the tube, m: stations at which something jumps come twice. */
  readonly at: Float32Array;
  /** Of each station of the axis, three numbers. */
  readonly places: Float32Array;
  readonly moves: Float32Array;
  readonly turns: Float32Array;
  /** Outside of the section: for each corner y and z about the axis (m) and the normal there (4 numbers), anticlockwise
   *  seen against the axis. A sharp corner comes twice. y: across the axis in plan, z: up. */
  readonly outline: Float32Array;
  /** Thickness of the wall as ordered, m. */
  readonly wall: number;
  /** Unit vector along the axis in plan: x of a main tube, y of a cross tube. */
  readonly along: readonly [x: number, y: number];
}
