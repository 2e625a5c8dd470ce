import type { UnitSystem } from '../quantity/format-quantity.ts';

/**
 * The plate as solids for the window: buffers merged by material, with a table of parts. SI, axes of `Geometry`.
 * Plain data: it can be cloned to another thread, and `buffersOf` lists what can be handed over without a copy.
 */
export interface Scene {
  readonly units: UnitSystem;
  readonly parts: readonly ScenePart[];
  readonly meshes: readonly SceneMesh[];
  readonly bolts: readonly SceneBolts[];
  /** Holes of bolts in the tubes’ walls, 5 numbers each: x, y, z of the middle on the outer face, 1 or −1 for the way it faces up or down, radius. */
  readonly holes: Float32Array;
  readonly ropes: readonly SceneRope[];
  readonly water: SceneWater;
  readonly dimensions: readonly SceneDimension[];
  readonly labels: readonly SceneLabel[];
  readonly loads: readonly SceneLoad[];
  /** Around all solids. */
  readonly box: Box;
}

export type Vector = readonly [x: number, y: number, z: number];
export interface Box {
  readonly low: Vector;
  readonly high: Vector;
}

export type PartKind = 'tube' | 'panel' | 'bay' | 'weld' | 'attachment' | 'bolt';

export interface ScenePart {
  /** Kind, colon, place: "panel:A1", "bay:A1", "bolt:A1-07". A bay and its panel share the place, not the id. */
  readonly id: string;
  readonly kind: PartKind;
  /** As geometry and checks name it. */
  readonly place: string;
  /** In words: "Panel A1, underside, 6 mm". */
  readonly title: string;
  /** Bays that it belongs to: of a panel, its bolts and its welds; empty for tubes, crossings and attachments. */
  readonly bays: readonly string[];
  /** Number of its mesh in `meshes`; of a bolt, in `bolts`. */
  readonly mesh: number;
  /** Range in the mesh's `indices`; of a bolt, its instance, and 1. */
  readonly from: number;
  readonly count: number;
  /** Range in the mesh's `edges`, in numbers (six for a segment); of a bolt, the edges of the mesh that all share. */
  readonly edgesFrom: number;
  readonly edgesCount: number;
  readonly centre: Vector;
  readonly box: Box;
  /** How far it goes up when panels are pulled off the tubes by a unit: 0 tubes, ±1 panels and their welds, ±2 bolts. */
  readonly lift: number;
}

export type Material = 'tube' | 'panel' | 'bay' | 'weld' | 'attachment';

/** Parts of one material in one buffer. Closed solids, but for `bay`: flat sheets in open bays, to be picked. */
export interface SceneMesh {
  readonly material: Material;
  /** 3 per vertex, m. */
  readonly positions: Float32Array;
  /** 3 per vertex, unit, out of the material. */
  readonly normals: Float32Array;
  /** 3 per triangle, counter-clockwise from outside. */
  readonly indices: Uint32Array;
  /** Number of the part, 1 per vertex. */
  readonly parts: Float32Array;
  /** Sharp edges as line segments, 6 per segment, m; and number of the part, 2 per segment. */
  readonly edges: Float32Array;
  readonly edgeParts: Float32Array;
}

/** Bolts of one kind: one mesh, many places. The mesh stands with its z outwards from the panel, z = 0 where panel and tube meet. */
export interface SceneBolts {
  readonly title: string;
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint32Array;
  readonly edges: Float32Array;
  /** 4 per bolt: x, y, z in m, and 1 where its z points up, −1 where it is turned half round the x axis. */
  readonly placements: Float32Array;
  /** Number of the part, 1 per bolt. */
  readonly parts: Float32Array;
}

/** Line, bridle leg, strut or sling. */
export interface SceneRope {
  readonly role: 'suspension' | 'lifting sling';
  readonly from: Vector;
  readonly to: Vector;
  /** Width of a strut as it is drawn, m; 0 for what is a line. */
  readonly width: number;
}

export interface SceneWater {
  /** Height of the surface above z = 0, m. */
  readonly surface: number;
  /** As typed: "34 m". */
  readonly depth: string;
}

/** A dimension in plan: the two points, the direction in which its line stands off, and its text. */
export interface SceneDimension {
  readonly from: Vector;
  readonly to: Vector;
  readonly away: Vector;
  readonly text: string;
}

/** Name of a tube at its low end, or of a bay in its middle. */
export interface SceneLabel {
  readonly role: 'tube' | 'bay';
  readonly at: Vector;
  readonly away: Vector;
  readonly text: string;
}

/** One situation as arrows: the force on each panel field, N, up positive, load factor included. */
export interface SceneLoad {
  readonly id: string;
  readonly title: string;
  readonly direction: 'up' | 'down';
  /** What acts and on which path, a sentence. */
  readonly path: string;
  /** Force on the plate, N, up positive. */
  readonly force: number;
  readonly loadFactor: number;
  readonly arrows: readonly SceneArrow[];
  /** What could not be computed; then there are no arrows. */
  readonly missing: string | null;
}

export interface SceneArrow {
  readonly bay: string;
  /** Middle of the bay on the panel's top: the arrow stands on it, so that it is seen from above. */
  readonly at: Vector;
  /** As the panel's. */
  readonly lift: number;
  readonly force: number;
}
