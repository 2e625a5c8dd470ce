import type { Marks, MarkKind } from '../scene/marks.ts';
import type { ReadyPlate, SolvedLoading } from '../plate/solve-plate.ts';
import type { FixingForces } from '../plate/results/fixing-forces.ts';
import { pointMotion } from '../solve/structure/point-force.ts';
import type { Vector } from '../solve/vector.ts';

/** Pulls of bolts, pressures of contact and forces of welds as arrows on the panels' outer faces; `u`: displacements that the
 *  picture draws. A bolt that is not pulled and a point that does not press have none. */
export function marksOf(plate: ReadyPlate, { answer }: SolvedLoading, fixings: FixingForces, u: Float64Array): Marks[] {
  const { structure, model } = plate;
  const faces = structure.panels.map(({ id }) => {
    const { pressedBy, thickness, top, bottom } = model.panels.get(id)!;
    return pressedBy === 'down' ? { off: 1, z: top, thickness } : { off: -1, z: bottom, thickness };
  });
  const drafts: Record<MarkKind, Draft> = { 'bolt pull': empty(), 'contact pressure': empty(), 'weld force': empty() };
  const put = (kind: MarkKind, title: string, panel: number, node: number, arm: Vector, value: number): void => {
    if (!(value > 0)) return;
    const { off, z } = faces[panel]!;
    const draft = drafts[kind];
    draft.titles.push(title);
    draft.places.push(structure.coordinates[3 * node]! + arm[0], structure.coordinates[3 * node + 1]! + arm[1], z);
    draft.moves.push(...pointMotion(u, node, arm));
    draft.off.push(off);
    draft.values.push(value);
  };
  // bolts and welds come in the order of the ties
  let [bolt, weld] = [0, 0];
  for (const { kind, panel, nodes, offsets } of structure.ties)
    if (kind === 'bolt') {
      const { id, pull } = fixings.bolts[bolt++]!;
      put('bolt pull', `bolt ${id}`, panel, nodes[0], offsets[0], pull);
    } else {
      const { id, tube, resultant } = fixings.welds[weld++]!;
      put('weld force', `weld ${id} on ${tube}`, panel, nodes[0], offsets[0], resultant);
    }
  structure.contacts.forEach(({ panel, tube, nodes, area }, i) => {
    const pressing = answer.closed[i] ? answer.pressing[i]! / area : 0;
    put('contact pressure', `${structure.panels[panel]!.id} on ${structure.tubes[tube]!.id}`, panel, nodes[0], [0, 0, 0], pressing); // prettier-ignore
  });
  return Object.entries(drafts).flatMap(
    ([kind, { titles, places, moves, off, values }]) =>
    titles.length === 0
      ? []
      : [{ kind: kind as MarkKind, titles, places: Float32Array.from(places), moves: Float32Array.from(moves), off: Int8Array.from(off), values: Float32Array.from(values) }], // prettier-ignore
  );
}

interface Draft {
  readonly titles: string[];
  readonly places: number[];
  readonly moves: number[];
  readonly off: number[];
  readonly values: number[];
}

const empty = (): Draft => ({ titles: [], places: [], moves: [], off: [], values: [] });
