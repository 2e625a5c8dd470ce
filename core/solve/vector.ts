/** A place, offset, force or direction in the axes of the structure. */
export type Vector = readonly [x: number, y: number, z: number];
