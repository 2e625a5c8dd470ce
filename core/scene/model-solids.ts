import type { Material, Scene, SceneMesh, Vector } from './scene.ts';

/** One closed solid of the plate in its place: a range of a mesh that several share. */
export interface ModelSolid {
  /** The part's title, unique by its id. */
  readonly name: string;
  readonly material: Material | 'bolt';
  /** Number of the mesh in `meshes`. */
  readonly mesh: number;
  readonly from: number;
  readonly count: number;
  /** Where it stands: moved by `at`, and turned half round the x axis first where `turned`. */
  readonly at: Vector;
  readonly turned: boolean;
}

export interface ModelSolids {
  readonly meshes: readonly Pick<SceneMesh, 'positions' | 'normals' | 'indices'>[];
  readonly solids: readonly ModelSolid[];
}

/** Every closed solid of a scene; the flat sheets that stand in open bays are none. */
export function modelSolids({ parts, meshes, bolts }: Scene): ModelSolids {
  const still = parts
    .filter(({ kind, mesh }) => kind !== 'bolt' && meshes[mesh]!.material !== 'bay')
    .map(({ id, title, mesh, from, count }): ModelSolid => ({ name: `${id} ${title}`, material: meshes[mesh]!.material, mesh, from, count, at: [0, 0, 0], turned: false })); // prettier-ignore
  const standing = bolts.flatMap(({ indices, placements, parts: numbers }, set) =>
    [...numbers].map((part, i): ModelSolid => {
      const [x = 0, y = 0, z = 0, way = 1] = placements.subarray(4 * i, 4 * i + 4);
      const { id, title } = parts[part]!;
      return { name: `${id} ${title}`, material: 'bolt', mesh: meshes.length + set, from: 0, count: indices.length, at: [x, y, z], turned: way < 0 }; // prettier-ignore
    }),
  );
  return { meshes: [...meshes, ...bolts], solids: [...still, ...standing] };
}
