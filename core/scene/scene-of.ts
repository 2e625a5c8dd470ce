import { attachmentPoints } from '../geometry/attachment-points.ts';
import { lengthText } from '../geometry/length-text.ts';
import type { Model } from '../model.ts';
import { attachmentParts } from './attachment-parts.ts';
import { bayParts } from './bay-parts.ts';
import { boltHoles } from './bolt-holes.ts';
import { boltSets, placementOf, type BoltSet } from './bolt-sets.ts';
import { boltSolid } from './bolt-solid.ts';
import { dimensionsOf } from './dimensions-of.ts';
import { around, boxAround, emptyMesh, finishedMesh, middleOf } from './growing-mesh.ts';
import { loadsOf } from './loads-of.ts';
import { panelParts } from './panel-parts.ts';
import { partId, type PartDraft } from './part-draft.ts';
import { ropesOf } from './ropes-of.ts';
import type { Box, Material, Scene, SceneBolts, SceneMesh, ScenePart } from './scene.ts';
import { tubeParts } from './tube-parts.ts';
import { weldParts } from './weld-parts.ts';

/** The plate of a model as solids, merged by material, with what hangs it, its water, dimensions and loads. */
export function sceneOf(model: Model): Scene {
  const { document, geometry } = model;
  const text = lengthText(document.units);
  const points = attachmentPoints(document, geometry);
  const materials: readonly (readonly [Material, readonly PartDraft[]])[] = [
    ['tube', tubeParts(geometry)],
    ['panel', panelParts(geometry.panels)],
    ['bay', bayParts(geometry)],
    ['weld', weldParts(model)],
    ['attachment', attachmentParts(points)],
  ];
  const parts: ScenePart[] = [];
  const meshes = materials.map(([material, drafts], mesh) => merged(material, drafts, mesh, parts));
  const sets = boltSets(model);
  const bolts = sets.map((set, number) => standing(set, number, parts));
  return {
    units: document.units,
    parts,
    meshes,
    bolts,
    holes: boltHoles(sets),
    ropes: ropesOf(points, document),
    water: { surface: document.water.depth.si, depth: document.water.depth.typed },
    ...dimensionsOf(geometry, text),
    loads: loadsOf(model),
    box: around(parts.map(({ box }) => box)),
  };
}

/** One mesh of many parts, which are added to the table. */
function merged(material: Material, drafts: readonly PartDraft[], mesh: number, parts: ScenePart[]): SceneMesh {
  const growing = emptyMesh();
  const ends = drafts.map(({ build, ...draft }) => {
    const start = { vertices: growing.positions.length, from: growing.indices.length, edges: growing.edges.length };
    build(growing);
    const box = boxAround(growing.positions, start.vertices);
    const part = parts.length;
    parts.push({
      id: partId(draft.kind, draft.place),
      ...draft,
      mesh,
      from: start.from,
      count: growing.indices.length - start.from,
      edgesFrom: start.edges,
      edgesCount: growing.edges.length - start.edges,
      centre: middleOf(box),
      box,
    });
    return { part, vertices: growing.positions.length, edges: growing.edges.length };
  });
  return finishedMesh(material, growing, ends);
}

/** One mesh in many places; each bolt is a part. */
function standing({ title, seat, bolts }: BoltSet, mesh: number, parts: ScenePart[]): SceneBolts {
  const solid = boltSolid(seat);
  const own = boxAround(solid.positions);
  const first = parts.length;
  const placements = Float32Array.from(bolts.flatMap(placementOf));
  bolts.forEach(({ bolt, panel }, from) => {
    const box = placedBox(own, placements, from);
    parts.push({
      id: partId('bolt', bolt.id),
      kind: 'bolt',
      place: bolt.id,
      title: `Bolt ${bolt.id}, ${title}`,
      bays: panel.bays,
      mesh,
      from,
      count: 1,
      edgesFrom: 0,
      edgesCount: solid.edges.length,
      centre: middleOf(box),
      box,
      lift: 2 * placements[4 * from + 3]!,
    });
  });
  return {
    title,
    positions: Float32Array.from(solid.positions),
    normals: Float32Array.from(solid.normals),
    indices: Uint32Array.from(solid.indices),
    edges: Float32Array.from(solid.edges),
    placements,
    parts: Float32Array.from(bolts, (_, i) => first + i),
  };
}

function placedBox({ low, high }: Box, placements: Float32Array, i: number): Box {
  const [x, y, z, up] = placements.subarray(4 * i, 4 * i + 4) as unknown as [number, number, number, number];
  const [bottom, top] = up > 0 ? [low[2], high[2]] : [-high[2], -low[2]];
  const [near, far] = up > 0 ? [low[1], high[1]] : [-high[1], -low[1]];
  return { low: [x + low[0], y + near, z + bottom], high: [x + high[0], y + far, z + top] };
}
