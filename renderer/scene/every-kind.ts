import { BackSide, BoxGeometry, BufferGeometry, DoubleSide, Float32BufferAttribute, InstancedMesh, LineSegments, Mesh, Scene, type Material } from 'three'; // prettier-ignore
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js';
import { bentMaterials } from './bent-material.ts';
import { outlineMaterial } from './outline-material.ts';
import type { Palette } from './palette.ts';
import { edgeMaterial, sceneUniforms, solidMaterial } from './solid-material.ts';
import { statesTexture } from './part-states.ts';
import { plainMaterial } from './plain-material.ts';

/**
 * One thing of every kind that is ever drawn. Three makes one program for all materials that read alike and frees it with
 * the last of them: as long as these stay, no later picture has to wait for a compiler.
 */
export function everyKind(palette: Palette): Scene {
  const shape = new BoxGeometry();
  // a program is another where the shape has no normals
  const lines = new BufferGeometry().setAttribute('position', new Float32BufferAttribute(3, 3));
  const uniforms = sceneUniforms(statesTexture({ parts: [] }));
  const bent = bentMaterials(uniforms, palette);
  const instanced = (material: Material) => new InstancedMesh(shape, material, 1);
  const sided = <Kind extends Material>(material: Kind, side: Kind['side']): Kind => Object.assign(material, { side });
  const solids = [solidMaterial(uniforms), sided(solidMaterial(uniforms), DoubleSide)];
  const colour = palette.ink;
  return new Scene().add(
    ...solids.flatMap((solid) => [new Mesh(shape, solid), instanced(solid)]),
    instanced(plainMaterial(colour, true)),
    instanced(sided(plainMaterial(colour, true), BackSide)),
    new Mesh(shape, bent.surface),
    new LineSegments(shape, bent.line),
    ...[edgeMaterial(uniforms), plainMaterial(colour, false), bent.still].map((one) => new LineSegments(lines, one)),
    ...[true, false].map((isSeen) => new LineSegments2(new LineSegmentsGeometry(), outlineMaterial(colour, 1, isSeen))),
  );
}
