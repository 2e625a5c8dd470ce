import type { HollowSection, Material } from '../catalogue/rows.ts';
import type { PanelDesign } from '../document/schema.ts';
import type { Finding } from '../finding.ts';

/**
 * The plate as built, in metres. Axes: x along the main tubes, y along the cross tubes, z up.
 * Origin: crossing of the first main tube's and the first cross tube's centre lines (evenly spaced sets), z = 0 on
 * top of the main tubes. Stacked: cross tubes lie on the main tubes (z from 0 up). Flush: cross tubes are let in
 * between the main tubes, tops level (z from 0 down).
 *
 * Main tubes are lettered A, B, …, cross tubes numbered 1, 2, …, like grid lines on a drawing. A bay takes the
 * letter and number of the tubes at its low-x, low-y corner, so it keeps its id while those tubes live.
 */
export interface Geometry {
  readonly arrangement: 'stacked' | 'flush';
  readonly mainTubes: readonly Tube[];
  readonly crossTubes: readonly Tube[];
  readonly bays: readonly Bay[];
  readonly crossings: readonly Crossing[];
  readonly panels: readonly Panel[];
  /** Plan outline's extents over tubes and panels. */
  readonly extents: Rectangle;
  readonly areas: PlanAreas;
  readonly findings: readonly Finding[];
}

export interface Rectangle {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface Tube {
  readonly id: string;
  readonly set: 'main' | 'cross';
  readonly section: HollowSection;
  readonly material: Material;
  readonly flooded: boolean;
  readonly vent: number | null;
  readonly drain: number | null;
  /** Centre line: y of a main tube, x of a cross tube. */
  readonly at: number;
  /** Ends along its own axis. */
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
  /** Pieces along the axis, in steel: one for a through tube, several for a cross tube let in between main tubes. */
  readonly pieces: readonly (readonly [from: number, to: number])[];
}

/** What lies between two neighbouring main tubes and two neighbouring cross tubes. */
export interface Bay {
  readonly id: string;
  readonly main: readonly [low: string, high: string];
  readonly cross: readonly [low: string, high: string];
  /** Clear opening between the tubes' faces, in plan. */
  readonly opening: Rectangle;
  /** Clear opening less what panels cover, m². */
  readonly openArea: number;
}

export interface Crossing {
  /** Main tube's id, slash, cross tube's id: "A/3". */
  readonly id: string;
  readonly main: string;
  readonly cross: string;
  readonly x: number;
  readonly y: number;
}

/** The four sides of a panel or bay: on the main tube of low or high y, on the cross tube of low or high x. */
export type Side = 'mainLow' | 'mainHigh' | 'crossLow' | 'crossHigh';
export const sides: readonly Side[] = ['mainLow', 'mainHigh', 'crossLow', 'crossHigh'];

export interface Panel {
  /** As the document names it: "A1" or "A1:B2". */
  readonly id: string;
  readonly designName: string;
  readonly design: PanelDesign;
  readonly material: Material;
  readonly bays: readonly string[];
  /** Outline before notches. */
  readonly outline: Rectangle;
  readonly thickness: number;
  /** Thickness at the end of life. */
  readonly thicknessEnd: number;
  readonly bottom: number;
  readonly top: number;
  /** Outer contour and holes (bolt holes included), metres, in plan. */
  readonly contour: readonly Point[];
  readonly cutouts: readonly Cutout[];
  /** Net plan area, m². */
  readonly area: number;
  readonly bearings: readonly Bearing[];
  readonly bolts: readonly Bolt[];
  readonly weldRuns: readonly WeldRun[];
  /** Length of all cut edges, contour and holes, m. */
  readonly cutLength: number;
  /** One for each bay that it covers: what bends between the tubes. */
  readonly fields: readonly Field[];
}

export type Point = readonly [x: number, y: number];

export interface Cutout {
  readonly x: number;
  readonly y: number;
  readonly diameter: number;
  readonly purpose: 'bolt' | 'vent' | 'drain' | 'lifting' | 'other';
}

/** A side of a panel that lies on a tube. */
export interface Bearing {
  readonly side: Side;
  readonly tube: string;
  /** Lap onto the tube from its face, m (past the corner radius counts from the face). */
  readonly lap: number;
  /** Flat width of the tube's wall under the lap: lap less the corner radius; zero or less means it bears on the radius only. */
  readonly flatLap: number;
  /** True if the panel's and the tube's faces meet (same level). */
  readonly level: boolean;
}

export interface Bolt {
  /** Panel id, dash, number: "A1-07", clockwise from the low corner. */
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly side: Side;
  readonly tube: string;
  /** Hole's centre to the panel's nearest edge, square to the side; and along it. */
  readonly edge2: number;
  readonly edge1: number;
  /** Pitch along its side, m. */
  readonly pitch: number;
  /** Bolt line to the tube's near face (where the panel leaves the tube), m. */
  readonly fromFace: number;
}

export interface WeldRun {
  readonly side: Side;
  readonly tube: string;
  readonly length: number;
  readonly from: Point;
  readonly to: Point;
}

/**
 * One bay's part of a panel as a plate: spans for each direction of the water's force.
 * Pressed on the tubes it bears along the tubes' faces (at the end of the corner radius); pulled off it hangs on the
 * bolt lines or weld lines.
 */
export interface Field {
  readonly bay: string;
  readonly panel: string;
  readonly pressed: Spans;
  readonly pulled: Spans;
  /** Area whose pressure the field carries: its part of the panel's outline, m². */
  readonly area: number;
}

export interface Spans {
  /** Span along x (between cross tubes) and along y (between main tubes), m, between the support lines. */
  readonly a: number;
  readonly b: number;
  /** Which sides hold it as a line. `bolts`: it hangs on discrete bolts, no line. */
  readonly supports: 'four sides' | 'main tubes' | 'cross tubes' | 'bolts';
  /** Bolts along each x-side and each y-side between the bolt lines, corners counted in both, for `bolts`; 0 otherwise. */
  readonly boltsAlongX: number;
  readonly boltsAlongY: number;
  /** Overhang of the plate beyond the bolt line, x and y. */
  readonly insetX: number;
  readonly insetY: number;
}

export interface PlanAreas {
  /** Rectangle around tubes (outline of the plate), m². */
  readonly outline: number;
  /** Union of tubes and panels seen from above. */
  readonly solid: number;
  readonly tubes: number;
  readonly panels: number;
  readonly open: number;
}
