import { utf8ToBytes } from '@noble/hashes/utils.js';
import { modelSolids, type ModelSolid } from './model-solids.ts';
import type { Scene } from './scene.ts';

/** Plain colours, linear, so that parts are told apart; the format has no steel. */
const colours: Readonly<Record<ModelSolid['material'], readonly [number, number, number]>> = {
  tube: [0.32, 0.36, 0.4],
  panel: [0.2, 0.4, 0.55],
  bay: [0.5, 0.5, 0.5],
  weld: [0.6, 0.35, 0.15],
  attachment: [0.55, 0.5, 0.2],
  bolt: [0.12, 0.12, 0.12],
};
const materials = Object.keys(colours) as ModelSolid['material'][];

/**
 * The plate as binary glTF 2.0 (GLB), metres: a node for each tube, panel, weld, eye and bolt under its name. The
 * format is y up; one node at the root turns the plate, whose z is up.
 */
export function gltfOf(scene: Scene): Uint8Array {
  const { meshes, solids } = modelSolids(scene);
  const used = [...new Set(solids.map(({ mesh }) => mesh))];
  const chunks: Uint8Array[] = [];
  const bufferViews: object[] = [];
  const accessors: object[] = [];
  let length = 0;
  const view = (data: Float32Array | Uint32Array, target: number): number => {
    chunks.push(new Uint8Array(data.buffer, data.byteOffset, data.byteLength));
    bufferViews.push({ buffer: 0, byteOffset: length, byteLength: data.byteLength, target });
    length += data.byteLength;
    return bufferViews.length - 1;
  };
  const shared = new Map(
    used.map((mesh) => {
      const { positions, normals, indices } = meshes[mesh]!;
      const vectors = { componentType: 5126, count: positions.length / 3, type: 'VEC3' };
      accessors.push({ bufferView: view(positions, 34962), ...vectors, ...extent(positions) }, { bufferView: view(normals, 34962), ...vectors }); // prettier-ignore
      return [mesh, { position: accessors.length - 2, normal: accessors.length - 1, indexView: view(indices, 34963) }];
    }),
  );
  const made = new Map<string, number>();
  const bodies: object[] = [];
  const bodyOf = ({ mesh, from, count, material, name }: ModelSolid): number => {
    const key = `${mesh} ${from}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const { position, normal, indexView } = shared.get(mesh)!;
    accessors.push({ bufferView: indexView, byteOffset: 4 * from, componentType: 5125, count, type: 'SCALAR' });
    bodies.push({ name, primitives: [{ attributes: { POSITION: position, NORMAL: normal }, indices: accessors.length - 1, material: materials.indexOf(material) }] }); // prettier-ignore
    made.set(key, bodies.length - 1);
    return bodies.length - 1;
  };
  const nodes = solids.map((solid) => ({
    name: solid.name,
    mesh: bodyOf(solid),
    ...(solid.material === 'bolt'
      ? { translation: solid.at, ...(solid.turned ? { rotation: [1, 0, 0, 0] } : {}) }
      : {}),
  }));
  const half = Math.SQRT1_2;
  const json = {
    asset: { version: '2.0', generator: 'Stillplate' },
    scene: 0,
    scenes: [{ nodes: [0] }],
    nodes: [{ name: 'plate, z up', rotation: [-half, 0, 0, half], children: nodes.map((_, i) => i + 1) }, ...nodes],
    meshes: bodies,
    materials: materials.map((name) => ({ name, pbrMetallicRoughness: { baseColorFactor: [...colours[name], 1], metallicFactor: 0.4, roughnessFactor: 0.6 } })), // prettier-ignore
    accessors,
    bufferViews,
    buffers: [{ byteLength: length }],
  };
  return container(utf8ToBytes(JSON.stringify(json)), chunks, length);
}

/** Smallest and largest of each coordinate, which the format asks for. */
function extent(positions: Float32Array): { min: number[]; max: number[] } {
  const [min, max] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  positions.forEach((value, i) => {
    min[i % 3] = Math.min(min[i % 3]!, value);
    max[i % 3] = Math.max(max[i % 3]!, value);
  });
  return { min, max };
}

/** Header, text padded by spaces and data padded by zeros, each to a multiple of four bytes. */
function container(text: Uint8Array, chunks: readonly Uint8Array[], dataLength: number): Uint8Array {
  const padded = (n: number): number => 4 * Math.ceil(n / 4);
  const [textLength, binLength] = [padded(text.length), padded(dataLength)];
  const bytes = new Uint8Array(12 + 8 + textLength + 8 + binLength);
  const view = new DataView(bytes.buffer);
  [0x46546c67, 2, bytes.length, textLength, 0x4e4f534a].forEach((word, i) => view.setUint32(4 * i, word, true));
  bytes.fill(0x20, 20, 20 + textLength);
  bytes.set(text, 20);
  const at = 20 + textLength;
  view.setUint32(at, binLength, true);
  view.setUint32(at + 4, 0x004e4942, true);
  let place = at + 8;
  for (const chunk of chunks) {
    bytes.set(chunk, place);
    place += chunk.length;
  }
  return bytes;
}
