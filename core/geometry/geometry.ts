import type { HollowSection, Material } from '../catalogue/rows.ts';
import type { PanelDesign } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import type { Slot } from './slot.ts';

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
  /** Rectangle around the tubes: the plate's outline in plan. */
  readonly outline: Rectangle;
  /** Rectangle around tubes and panels. */
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
  /** Ends of its steel along its own axis. */
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
  /** Clear opening less what panels cover, m²; a panel's holes and the notches that reach past the tubes count as open. */
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
  /** Force of the water that presses it onto its tubes: a topside panel is pressed down, an underside panel up. */
  readonly pressedBy: 'up' | 'down';
  /** Outline before notches. */
  readonly outline: Rectangle;
  readonly thickness: number;
  /** Thickness at the end of life: both faces lose. */
  readonly thicknessEnd: number;
  readonly bottom: number;
  readonly top: number;
  /** Outer contour, counter-clockwise from the low corner, notches cut; and holes (bolt holes included), metres, in plan. */
  readonly contour: readonly Point[];
  readonly cutouts: readonly Cutout[];
  /** Net plan area, m²: contour less the holes that lie inside it. */
  readonly area: number;
  readonly bearings: readonly Bearing[];
  readonly bolts: readonly Bolt[];
  readonly weldRuns: readonly WeldRun[];
  readonly weldReturns: readonly WeldReturn[];
  readonly plugs: readonly Plug[];
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
  readonly purpose: 'bolt' | 'plug' | 'vent' | 'drain' | 'lifting' | 'other';
  /** A slot as wide as the diameter, where it is not round. */
  readonly slot?: Slot | undefined;
}

/** True where a bolt or a plug of weld closes the hole: no water passes. */
export const isFilled = ({ purpose }: Pick<Cutout, 'purpose'>): boolean => purpose === 'bolt' || purpose === 'plug';

/** A plug weld: where, and the pitch along its row, m. */
export interface Plug {
  readonly x: number;
  readonly y: number;
  readonly diameter: number;
  readonly tube: string;
  readonly pitch: number;
  /** From its centre to the panel's nearest edge. */
  readonly edge: number;
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
  /** True if the panel is bolted or may be welded to this tube: level, and among the sides that the design relies on. */
  readonly fixed: boolean;
}

export interface Bolt {
  /** Panel id, dash, number: "A1-07", clockwise from the low corner; or as listed. */
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** A corner bolt counts to the main tube's side; a bolt on an inner tube to the bay of lower number. */
  readonly side: Side;
  readonly tube: string;
  /** On a tube between the panel's bays, not at its edge. */
  readonly inner: boolean;
  /** Diameter of its hole, m: in the panel (the width of a slot), and in the tube's wall, which is round. */
  readonly hole: number;
  /** The hole in the panel, where it is slotted. */
  readonly slot?: Slot | undefined;
  /** Hole's centre to the panel's nearest edge, square to the side; and along it. */
  readonly edge2: number;
  readonly edge1: number;
  /** Pitch along its side, m; and along the other line, where two lines of bolts meet in it. */
  readonly pitch: number;
  readonly pitchAcross?: number;
  /** Bolt line to the tube's near face (where the panel leaves the tube), m; negative where the bolt misses the tube. */
  readonly fromFace: number;
  /** Of a bolt on a listed place, whose `pitch` is the distance to the nearest bolt of the panel; m. */
  readonly listed?: {
    /** The same between the middle lines of holes, where they are slots. */
    readonly clear: number;
    /** Along its tube to the next bolt, on the hand where it is farther; 0 where it stands alone. */
    readonly next: number;
    /** To the edges of the panel that it has to keep from gaping: square to its side, and along it beyond a row's last bolt. */
    readonly far: number;
  };
}

export interface WeldRun {
  readonly side: Side;
  readonly tube: string;
  readonly length: number;
  readonly from: Point;
  readonly to: Point;
}

/** An end of a side's weld taken round a corner of the panel. Not counted in strength. */
export interface WeldReturn extends WeldRun {
  /** The side whose edge it lies along; `side` is that of the weld which it ends. */
  readonly edge: Side;
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
  /** Where its bolts stand, if they are listed. */
  readonly listed?: ListedField;
}

/** One bay's part of a panel on listed bolts, m, in plan. */
export interface ListedField {
  /** Plate that hangs on them. */
  readonly plate: Rectangle;
  readonly points: readonly Point[];
  /** Which of them stand along each side: on the tubes of low and high y, of low and high x. Corner bolts are in two. */
  readonly rows: Readonly<Record<'yLow' | 'yHigh' | 'xLow' | 'xHigh', readonly number[]>>;
  /** Widest and narrowest step of the rows along x, and along y; 0 where there is none. */
  readonly farX: number;
  readonly farY: number;
  readonly nearX: number;
  readonly nearY: number;
}

/** Span lengths reach over tubes that give no support (welded panels pulled off an inner tube span all their bays). */
export interface Spans {
  /** Span along x (between cross tubes) and along y (between main tubes), m, between the support lines. */
  readonly a: number;
  readonly b: number;
  /** Which sides hold it as a line. `bolts`: it hangs on discrete bolts, no line. */
  readonly supports: 'four sides' | 'main tubes' | 'cross tubes' | 'bolts';
  /** Bolts along each x-side and each y-side between the bolt lines, corners counted in both, the fewer of the two sides, for `bolts`; 0 otherwise. */
  readonly boltsAlongX: number;
  readonly boltsAlongY: number;
  /** Overhang of the plate beyond the bolt line, x and y, the larger of the two sides; 0 where the plate goes on. */
  readonly insetX: number;
  readonly insetY: number;
}

/** Plan areas, m², of polygons on a lattice of 1 µm. */
export interface PlanAreas {
  /** Rectangle around the tubes. */
  readonly outline: number;
  /** Union of tubes and panels seen from above; holes of panels are open, bolt holes are filled by their bolts. */
  readonly solid: number;
  /** Union of the tubes alone. */
  readonly tubes: number;
  /** What panels close that tubes leave open: solid less tubes. */
  readonly panels: number;
  /** Outline that is not solid. */
  readonly open: number;
  /** open / outline. */
  readonly openRatio: number;
}
