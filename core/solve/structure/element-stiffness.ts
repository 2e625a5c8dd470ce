/** What everything stiff in a structure comes down to: a symmetric matrix over the freedoms of its nodes.
 *  nodes: indices into the structure's nodes, each with six freedoms ux uy uz rx ry rz in global axes.
 *  stiffness: (6n)², row-major, in N/m, N and N·m. Rigid offsets and joint flexibility are already inside.
 *  Elements of equal shape share one array (the same object), which the solver uses. An array that was handed over is not
 *  written to again: what was found out about it is kept by the object. */
export interface ElementStiffness {
  readonly nodes: readonly number[];
  readonly stiffness: Float64Array;
  /** Where entries may come to be that are zero now, as a matrix of the same size; without it, those of `stiffness` alone. */
  readonly pattern?: Float64Array;
}
