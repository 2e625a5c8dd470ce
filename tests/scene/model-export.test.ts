import { readFileSync } from 'node:fs';
import { Box3, type Mesh, type Object3D } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { gltfOf } from '../../core/scene/gltf-of.ts';
import { modelSolids } from '../../core/scene/model-solids.ts';
import { sceneOf } from '../../core/scene/scene-of.ts';
import { stlOf } from '../../core/scene/stl-of.ts';

const raw = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
const { model } = appraise(raw, readDocument(raw), null);
const scene = sceneOf(model);
const { solids } = modelSolids(scene);
const mm = ({ low, high }: typeof scene.box) => [...low, ...high].map((value) => 1000 * value);

/** Volume that triangles enclose (divergence theorem), in the cube of their unit. */
function volume(positions: ArrayLike<number>, index: (i: number) => number, count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => [0, 1, 2].map((d) => positions[3 * index(i + k) + d]!)) as [number[], number[], number[]]; // prettier-ignore
    sum += a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) + a[1]! * (b[2]! * c[0]! - b[0]! * c[2]!) + a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!); // prettier-ignore
  }
  return sum / 6;
}

describe('STL, read back by three’s own reader', () => {
  const geometry = new STLLoader().parse(stlOf(scene).buffer as ArrayBuffer);
  const { position, normal } = geometry.attributes as Record<string, { array: Float32Array; count: number }>;
  it('has every triangle of every solid, in mm, within the plate’s box', () => {
    expect(position!.count).toBe(solids.reduce((sum, { count }) => sum + count, 0));
    geometry.computeBoundingBox();
    const { min, max } = geometry.boundingBox!;
    mm(scene.box).forEach((value, i) => expect([...min.toArray(), ...max.toArray()][i]!).toBeCloseTo(value, 2));
    expect(normal!.array.every(Number.isFinite)).toBe(true);
  });
  it('is made of closed shells: each edge is walked once each way, solid by solid', () => {
    let at = 0;
    for (const { name, count } of solids) {
      const edges = new Map<string, number>();
      const key = (i: number) => [0, 1, 2].map((d) => position!.array[3 * i + d]!.toFixed(3)).join();
      for (let i = at; i < at + count; i += 3)
        for (const [p, q] of [
          [0, 1],
          [1, 2],
          [2, 0],
        ] as const) {
          const [a, b] = [key(i + p), key(i + q)];
          if (a === b) continue;
          const [edge, way] = a < b ? [`${a}|${b}`, 1] : [`${b}|${a}`, -1];
          edges.set(edge, (edges.get(edge) ?? 0) + way);
        }
      expect(
        [...edges.values()].filter((sum) => sum !== 0),
        name,
      ).toEqual([]);
      at += count;
    }
  });
  it('encloses each panel’s net area times its thickness', () => {
    let at = 0;
    const volumes = new Map<string, number>();
    for (const { name, count } of solids) {
      volumes.set(name, volume(position!.array.subarray(3 * at, 3 * (at + count)), (i) => i, count) / 1e9);
      at += count;
    }
    for (const panel of model.geometry.panels) {
      const [, got] = [...volumes].find(([name]) => name.startsWith(`panel:${panel.id} `))!;
      // A round hole is drawn with straight sides, corners on the circle: about a hundredth of the hole stays as steel.
      const ratio = got / (panel.area * panel.thickness);
      expect(ratio).toBeGreaterThan(1 - 1e-6);
      expect(ratio).toBeLessThan(1.001);
    }
  });
});

it('glTF, read back by three’s own reader: a named node for each solid, y up, in metres', async () => {
  const bytes = gltfOf(scene);
  const { scene: read } = await new GLTFLoader().parseAsync(bytes.buffer as ArrayBuffer, '');
  const meshes: Mesh[] = [];
  read.traverse((object: Object3D) => {
    if ('isMesh' in object) meshes.push(object as Mesh);
  });
  expect(meshes).toHaveLength(solids.length);
  read.updateMatrixWorld(true);
  const box = new Box3();
  for (const mesh of meshes) {
    const { index, attributes } = mesh.geometry;
    const point = new Box3().min.clone();
    for (let i = 0; i < index!.count; i++) box.expandByPoint(point.fromBufferAttribute(attributes['position']!, index!.getX(i)).applyMatrix4(mesh.matrixWorld)); // prettier-ignore
  }
  const { low, high } = scene.box;
  // z up turned into y up: y becomes z, z becomes −y.
  const expected = [low[0], low[2], -high[1], high[0], high[2], -low[1]];
  [...box.min.toArray(), ...box.max.toArray()].forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, 5));
});
