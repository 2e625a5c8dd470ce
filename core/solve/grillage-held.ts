import { refusal } from '../refusal.ts';
import { nodeName } from './grillage-input.ts';
import type { GrillageModel } from './grillage-model.ts';
import { feltAt, freeMotions, motionInWords, spanOf, type RigidFrame, type RigidMotion } from './rigid-motion.ts';

/** Gives the motions of the whole that no support holds: none, or those of a free body. Refuses the rest in words. */
export function requireHeld(model: GrillageModel, frame: RigidFrame): RigidMotion[] {
  const parts = partsOf(model);
  if (parts.length > 1 && model.freeBody)
    throw refusal({
      what: `${nodeName(model, parts[1]![0]!)} and ${nodeName(model, parts[0]![0]!)} belong to parts that nothing joins, so they are no single free body`,
      where: { node: parts[1]![0]! + 1 },
      mend: 'Join the parts by a member, or solve each of them',
    });
  let free: RigidMotion[] = [];
  for (const part of parts) {
    const inPart = new Set(part);
    const rows = model.supports.flatMap(({ node, w, rx, ry }) => {
      const { x, y } = model.nodes[node]!;
      return inPart.has(node)
        ? [w, rx, ry].flatMap((one, freedom) => (one === undefined ? [] : [feltAt(frame, freedom, x, y)]))
        : [];
    });
    free = freeMotions(spanOf(rows));
    if (free.length > 0 && !model.freeBody)
      throw refusal({
        what:
          rows.length === 0
            ? `nothing holds the grid${parts.length > 1 ? ` at ${nodeName(model, part[0]!)}` : ''}`
            : `the grid${parts.length > 1 ? ` at ${nodeName(model, part[0]!)}` : ''} can ${motionInWords(frame, free[0]!)}: nothing holds it against that`,
        where: { node: part[0]! + 1 },
        mend: 'Add a support, hold a turn at one, or let the grid’s own inertia balance the loads (free body)',
      });
  }
  return free;
}

/** Nodes by connected part. */
function partsOf({ nodes, members }: GrillageModel): number[][] {
  const beside = nodes.map((): number[] => []);
  for (const { from, to } of members) {
    beside[from]!.push(to);
    beside[to]!.push(from);
  }
  const seen = new Uint8Array(nodes.length);
  const parts: number[][] = [];
  nodes.forEach((_, first) => {
    if (seen[first]) return;
    seen[first] = 1;
    const part = [first];
    for (const node of part)
      for (const next of beside[node]!) {
        if (seen[next]) continue;
        seen[next] = 1;
        part.push(next);
      }
    parts.push(part);
  });
  return parts;
}
