import type { BeamSection as SectionShape } from '../elements/beam.ts';
import type { Vector } from '../vector.ts';

/** The plate as one structure of nodes and parts. Each node has six freedoms ux uy uz rx ry rz in the axes of the
 *  geometry (x along the main tubes, z up), freedom k of node n at 6 n + k. SI. Every part knows the place it stands for. */
export interface Structure {
  /** x y z of each node, m: 3N. */
  readonly coordinates: Float64Array;
  readonly beams: readonly BeamPart[];
  readonly shells: readonly ShellPart[];
  readonly ties: readonly TiePart[];
  readonly contacts: readonly ContactPart[];
  /** Joints of tube on tube that give way; a rigid joint is one node. */
  readonly joints?: readonly JointPart[];
  readonly panels: readonly PanelMesh[];
  readonly tubes: readonly TubeMesh[];
}

/** Section and material of a beam, SI; z of the section is up for a tube that lies level. */
export interface BeamSection extends SectionShape {
  readonly E: number;
  readonly G: number;
}

/** A length of tube between two of its nodes. Offsets run from the node to the end of the beam on the tube's axis. */
export interface BeamPart {
  readonly tube: number;
  readonly nodes: readonly [number, number];
  readonly offsets: readonly [Vector, Vector];
  /** Along the tube, m. */
  readonly from: number;
  readonly to: number;
  readonly section: BeamSection;
}

/** A rectangle of a panel's mid-plane: nodes anticlockwise from the low corner. */
export interface ShellPart {
  readonly panel: number;
  readonly nodes: readonly [number, number, number, number];
  readonly thickness: number;
  readonly E: number;
  readonly nu: number;
  /** Sides along x and y, m: equal rectangles of one material and thickness share their matrix. */
  readonly a: number;
  readonly b: number;
  /** Field of the loads that presses on it, an index into `PlateLoads.fields`; -1 where none does. */
  readonly field: number;
}

/** Two points of a panel and a tube that stay together, up to a stated stiffness: a bolt, or a length of weld. The points
 *  lie at one place, where the faces meet. */
export interface TiePart {
  readonly kind: 'bolt' | 'weld';
  /** The bolt's id, or panel and side of a weld. */
  readonly id: string;
  readonly panel: number;
  readonly tube: number;
  readonly nodes: readonly [panel: number, tube: number];
  readonly offsets: readonly [Vector, Vector];
  /** Along z (pull), x and y (shear): N/m; about x and y (bending) and z (torsion): N·m. */
  readonly stiffness: TieStiffness;
  /** Force of the tube on the panel along z before the points move, N: a bolt's preload. None where it is left out. */
  readonly preload?: number;
  /** Length of weld that it stands for, m; 0 for a bolt. */
  readonly length: number;
}

export interface TieStiffness {
  readonly axial: number;
  readonly shear: number;
  readonly bending: number;
  readonly torsion: number;
}

/** A joint of a cross tube on a main tube that gives way, between two points at one place. */
export interface JointPart {
  /** Crossing's id. */
  readonly id: string;
  readonly nodes: readonly [main: number, cross: number];
  readonly offsets: readonly [Vector, Vector];
  /** Along x, y, z, N/m, and about them, N·m/rad. */
  readonly stiffness: readonly [number, number, number, number, number, number];
}

/** A point of a panel that may press on a tube's flat and never pull on it. */
export interface ContactPart {
  readonly panel: number;
  readonly tube: number;
  readonly nodes: readonly [panel: number, tube: number];
  /** From the tube's node to the point of its wall: only its parts in plan matter to a vertical force. */
  readonly offset: Vector;
  /** +1 where the panel lies on the tube, -1 where it lies under it. */
  readonly side: 1 | -1;
  /** N/m of both faces together over the area that the point stands for. */
  readonly stiffness: number;
  /** Gap before any load, m; negative where a preload of -gap · stiffness presses the faces together. */
  readonly gap: number;
  /** Panel's area that the point stands for, m². */
  readonly area: number;
}

/** Where a line, leg, sling, strut or support on deck acts. */
export interface SupportPart {
  readonly id: string;
  readonly node: number;
  /** From the node to a point on the line of action. */
  readonly offset: Vector;
  /** Force on the structure for 1 N of vertical force. */
  readonly direction: Vector;
}

/** One panel's part of the mesh: a lattice of lines with some cells left out (notches). */
export interface PanelMesh {
  readonly id: string;
  readonly z: number;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Node of each crossing of lines, row by row (x fastest); -1 where there is none. */
  readonly nodes: Int32Array;
  /** First and one past the last of its shells, ties and contacts. */
  readonly shells: readonly [number, number];
  readonly ties: readonly [number, number];
  readonly contacts: readonly [number, number];
}

/** One tube's part of the mesh: its nodes in order along it. */
export interface TubeMesh {
  readonly id: string;
  readonly set: 'main' | 'cross';
  readonly stations: Float64Array;
  readonly nodes: Int32Array;
  /** From each node to the tube's axis: not zero where the node belongs to the tube that it crosses. */
  readonly offsets: readonly Vector[];
  readonly beams: readonly [number, number];
}

export const noOffset: Vector = [0, 0, 0];
