import { isCutAway, type Cut } from '../../core/scene/part-at.ts';
import type { Scene, ScenePart, Vector } from '../../core/scene/scene.ts';

/** The sharp edges of a part where they are drawn: 6 numbers a segment, m; what a section takes away is left out. */
export function drawnEdges(scene: Scene, part: ScenePart, apart: number, cut: Cut | null): number[] {
  const raised = part.lift * apart;
  const set = part.kind === 'bolt' ? scene.bolts[part.mesh]! : null;
  const { edges } = set ?? scene.meshes[part.mesh]!;
  const [x = 0, y = 0, z = 0, up = 1] = set ? set.placements.subarray(4 * part.from, 4 * part.from + 4) : [];
  const drawn: number[] = [];
  const place = (i: number): Vector => [x + edges[i]!, y + up * edges[i + 1]!, z + up * edges[i + 2]! + raised];
  for (let i = part.edgesFrom; i < part.edgesFrom + part.edgesCount; i += 6) {
    const [a, b] = [place(i), place(i + 3)];
    if (!isCutAway(a, cut) || !isCutAway(b, cut)) drawn.push(...a, ...b);
  }
  return drawn;
}
