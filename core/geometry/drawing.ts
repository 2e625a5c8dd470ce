import type { Point } from './geometry.ts';

/** Plain data of a drawing; points in mm, y up. */
export interface DrawnShape<Role extends string> {
  readonly role: Role;
  /** Id of the tube or panel, where it is one. */
  readonly id?: string;
  /** Closed rings without the first point repeated; a ring inside another is a hole. */
  readonly rings: readonly (readonly Point[])[];
}

/** A straight edge; hidden where something lies over it. */
export interface DrawnLine<Role extends string> {
  readonly role: Role;
  readonly id: string;
  readonly hidden: boolean;
  readonly from: Point;
  readonly to: Point;
}

export interface DrawnCircle<Role extends string> {
  readonly role: Role;
  readonly at: Point;
  readonly diameter: number;
}

export interface DrawnLabel {
  readonly role: 'tube' | 'bay';
  readonly at: Point;
  readonly text: string;
}

/** Points that a dimension line measures between, square to the direction in which they differ, and its text. */
export interface DrawnDimension {
  readonly from: Point;
  readonly to: Point;
  readonly text: string;
  /** Which row from the drawing outwards, from 0; without it the next free one on its side. */
  readonly row?: number;
}
