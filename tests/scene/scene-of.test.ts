import { describe, expect, it } from 'vitest';
import { isInside } from '../../core/geometry/panel-of.ts';
import { panelBodies } from '../../core/mass/panel-bodies.ts';
import { tubeBodies } from '../../core/mass/tube-bodies.ts';
import { buffersOf } from '../../core/scene/buffers-of.ts';
import { lostByChords } from '../../core/scene/ring.ts';
import { sceneOf } from '../../core/scene/scene-of.ts';
import { demoModel } from '../checks/model-of.ts';
import { sampleModels } from '../checks/sample-models.ts';
import { openEdges } from './open-edges.ts';
import { volumeOf } from './volume-of.ts';

const stacked = demoModel({
  grid: { arrangement: 'stacked', crossTubes: { section: 'SHS 100x100x5 hot' } },
  designs: { deck: { support: 'cross tubes' } },
});
const notched = demoModel({ designs: { deck: { cornerNotch: '80 mm', fixing: { into: 'tapped pad' } } } });
const models = [...sampleModels(), stacked, notched];
const cases = models.map((model) => ({
  name: `${model.document.project.name}, ${model.geometry.arrangement}, ${Object.values(model.document.panels)[0]}`,
  model,
  scene: sceneOf(model),
}));

/** Positions are rounded to 24 bits: over a plate of 10 m half a unit is 0.5 µm, which moves the faces of a body of a
 *  surface S by that much. */
const rounding = (scene: { box: { high: readonly number[]; low: readonly number[] } }): number =>
  Math.max(...scene.box.high, ...scene.box.low.map((x) => -x)) * 2 ** -24;

describe.each(cases)('the scene of $name', ({ model, scene }) => {
  const { geometry } = model;
  const { meshes, parts, bolts } = scene;
  const partOf = (id: string) => parts.find((part) => part.id === id)!;
  const volume = (id: string) => {
    const part = partOf(id);
    const mesh = meshes[part.mesh]!;
    return volumeOf(mesh.positions, mesh.indices, part.from, part.count);
  };

  it('has the steel of each tube as the mass report counts it, but for the chords of its corners', () => {
    const bodies = tubeBodies(geometry);
    let at = 0;
    for (const tube of [...geometry.mainTubes, ...geometry.crossTubes]) {
      const { section, pieces } = tube;
      const length = pieces.reduce((sum, [from, to]) => sum + to - from, 0);
      const steel = pieces.reduce((sum) => sum + bodies[at++]!.volume, 0);
      const grown = section.nominalWall / section.wall;
      const inner = section.shape === 'round' ? section.height / 2 - section.nominalWall : section.innerRadius * grown;
      const outer = section.shape === 'round' ? section.outerRadius : section.outerRadius * grown;
      // Chords of the outer corners cut steel off; those of the bore leave it in.
      const chords = length * (lostByChords(inner) - lostByChords(outer));
      const surface = length * 4 * (section.height + section.width);
      expect(Math.abs(volume(`tube:${tube.id}`) - steel - chords), tube.id).toBeLessThan(rounding(scene) * surface);
      expect(Math.abs(chords) / steel).toBeLessThan(0.006);
    }
  });

  it('has the net volume of each panel as the mass report counts it, but for the chords of its holes', () => {
    panelBodies(geometry).forEach((body, i) => {
      const panel = geometry.panels[i]!;
      const holes = panel.cutouts.filter((c) => isInside(c, panel.outline, panel.design.cornerNotch?.si ?? 0));
      const chords = panel.thickness * holes.reduce((sum, hole) => sum + lostByChords(hole.diameter / 2), 0);
      const surface = 2 * panel.area + panel.cutLength * panel.thickness;
      expect(Math.abs(volume(`panel:${panel.id}`) - body.volume - chords), panel.id).toBeLessThan(
        rounding(scene) * surface,
      );
      expect(chords / body.volume).toBeLessThan(0.002);
    });
  });

  it('closes every solid: each edge lies between two triangles that run along it in opposite directions', () => {
    for (const part of parts) {
      if (part.kind === 'bay' || part.kind === 'bolt') continue;
      const { positions, indices } = meshes[part.mesh]!;
      expect(openEdges(positions, indices, part.from, part.count), part.id).toBe(0);
    }
    for (const { positions, indices, title } of bolts) expect(openEdges(positions, indices), title).toBe(0);
  });

  it('turns the normals out of the material: along each triangle’s own', () => {
    for (const { positions, normals, indices, material } of [
      ...meshes,
      ...bolts.map((b) => ({ ...b, material: 'bolt' })),
    ]) {
      for (let i = 0; i < indices.length; i += 3) {
        const corner = (k: number) => [0, 1, 2].map((axis) => positions[3 * indices[i + k]! + axis]!);
        const [a, b, c] = [corner(0), corner(1), corner(2)] as [number[], number[], number[]];
        const e = b.map((x, axis) => x - a[axis]!) as [number, number, number];
        const f = c.map((x, axis) => x - a[axis]!) as [number, number, number];
        const own = [e[1] * f[2] - e[2] * f[1], e[2] * f[0] - e[0] * f[2], e[0] * f[1] - e[1] * f[0]];
        for (let k = 0; k < 3; k++) {
          const normal = [0, 1, 2].map((axis) => normals[3 * indices[i + k]! + axis]!);
          const along = own.reduce((sum, x, axis) => sum + x * normal[axis]!, 0);
          if (!(along > 0 && Math.abs(Math.hypot(...normal) - 1) < 1e-6)) expect.fail(`${material} triangle ${i / 3}`);
        }
      }
    }
  });

  it('gives every index, edge and bolt to one part, in order, and every vertex the number of its part', () => {
    meshes.forEach((mesh, m) => {
      const own = parts.flatMap((part, number) => (part.kind !== 'bolt' && part.mesh === m ? [{ part, number }] : []));
      let [index, edge] = [0, 0];
      for (const { part, number } of own) {
        expect([part.from, part.edgesFrom], part.id).toEqual([index, edge]);
        index += part.count;
        edge += part.edgesCount;
        const vertices = mesh.indices.subarray(part.from, index);
        expect(
          vertices.every((vertex) => mesh.parts[vertex] === number),
          part.id,
        ).toBe(true);
        expect(
          mesh.edgeParts.subarray(part.edgesFrom / 3, edge / 3).every((n) => n === number),
          part.id,
        ).toBe(true);
      }
      expect([index, edge]).toEqual([mesh.indices.length, mesh.edges.length]);
    });
    bolts.forEach((set, b) =>
      set.parts.forEach((number, i) =>
        expect(parts[number]).toMatchObject({ kind: 'bolt', mesh: b, from: i, count: 1 }),
      ),
    );
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
  });

  it('has every bolt of geometry at its place, and as many welds, eyes, tubes, panels and open bays', () => {
    const all = geometry.panels.flatMap((panel) => panel.bolts);
    const placed = bolts.flatMap((set) =>
      Array.from(set.parts, (number, i) => [parts[number]!.place, ...set.placements.subarray(4 * i, 4 * i + 2)]),
    );
    expect(new Map(placed.map(([id, x, y]) => [id, [x, y]]))).toEqual(
      new Map(all.map(({ id, x, y }) => [id, [Math.fround(x), Math.fround(y)]])),
    );
    const count = (kind: string) => parts.filter((part) => part.kind === kind).length;
    const covered = new Set(geometry.panels.flatMap((panel) => panel.bays));
    const sides = geometry.panels.flatMap((panel) => [...new Set(panel.weldRuns.map(({ side }) => side))]);
    const { suspension, padEyes } = model.document.grid;
    expect({
      tube: count('tube'),
      panel: count('panel'),
      bay: count('bay'),
      weld: count('weld'),
      attachment: count('attachment'),
      bolt: count('bolt'),
    }).toEqual({
      tube: geometry.mainTubes.length + geometry.crossTubes.length,
      panel: geometry.panels.length,
      bay: geometry.bays.filter(({ id }) => !covered.has(id)).length,
      weld: geometry.crossings.length + sides.length,
      attachment: suspension.attachments.length + (padEyes?.points.length ?? 0),
      bolt: all.length,
    });
  });

  it('keeps every vertex of a part in its box, and all boxes in the scene’s', () => {
    for (const { id, box } of parts)
      for (const axis of [0, 1, 2] as const) {
        expect(box.low[axis] <= box.high[axis], id).toBe(true);
        expect(box.low[axis] >= scene.box.low[axis] && box.high[axis] <= scene.box.high[axis], id).toBe(true);
      }
    meshes.forEach((mesh) =>
      mesh.parts.forEach((number, i) => {
        const { box } = parts[number]!;
        for (const axis of [0, 1, 2] as const) {
          const x = mesh.positions[3 * i + axis]!;
          if (!(x >= box.low[axis] - 1e-6 && x <= box.high[axis] + 1e-6)) expect.fail(`${parts[number]!.id} at ${x}`);
        }
      }),
    );
  });

  it('is plain data: cloned with its buffers handed over it is the same, and the buffers are gone here', () => {
    const again = sceneOf(model);
    const buffers = buffersOf(again);
    expect(structuredClone(again, { transfer: buffers })).toEqual(scene);
    expect(buffers.every(({ byteLength }) => byteLength === 0)).toBe(true);
  });

  it('shows in each load the force that geometry’s fields get from the situation’s pressures', () => {
    for (const load of scene.loads) {
      const situation = model.loads.situations.find(({ id }) => id === load.id)!;
      const panels = [...situation.panelForces.values()].reduce((sum, force) => sum + force, 0);
      const arrows = load.arrows.reduce((sum, arrow) => sum + arrow.force, 0);
      expect(Math.abs(arrows - panels), load.id).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(panels)));
    }
  });
});

it('cuts no hole that leaves its panel or runs into another, and stays closed', () => {
  const hole = (x: string) => ({ x, y: '0 mm', diameter: '60 mm', purpose: 'vent' });
  const model = demoModel({ designs: { deck: { holes: [hole('0 mm'), hole('20 mm'), hole('600 mm')] } } });
  const { meshes, parts } = sceneOf(model);
  const panel = parts.find(({ kind }) => kind === 'panel')!;
  const { positions, indices } = meshes[panel.mesh]!;
  expect(openEdges(positions, indices, panel.from, panel.count)).toBe(0);
});

it('hangs a bridle from one apex, its line up to the surface', () => {
  const { ropes, water } = sceneOf(demoModel());
  expect(ropes).toHaveLength(3);
  expect(ropes[0]!.to).toEqual(ropes[1]!.to);
  const [x, y] = ropes[0]!.to;
  expect(ropes[2]).toEqual({ role: 'suspension', from: ropes[0]!.to, to: [x, y, 60], width: 0 });
  // Eyes stand on the tubes' top, z = 0, their holes 90 mm above, the apex 4 m above that; the surface 60 m up.
  expect(ropes[0]!.to[2]).toBeCloseTo(4.09, 12);
  expect(water).toEqual({ surface: 60, depth: '60 m' });
});
