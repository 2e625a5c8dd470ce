import { refusal } from '../refusal.ts';
import type { LineLoad } from './grillage-member.ts';
import type { GrillageLoads, GrillageModel } from './grillage-model.ts';

export const nodeName = (model: GrillageModel, node: number): string => model.nodes[node]!.name ?? `node ${node + 1}`;
export const memberName = (model: GrillageModel, e: number): string => model.members[e]!.name ?? `member ${e + 1}`;

export function requireGrid(model: GrillageModel): void {
  const refuse = (what: string, where: Record<string, number>, mend: string): never => {
    throw refusal({ what, where, mend });
  };
  const joined = new Uint8Array(model.nodes.length);
  model.nodes.forEach(({ x, y, mass = 0 }, i) => {
    if (!Number.isFinite(x) || !Number.isFinite(y) || !(mass >= 0 && mass < Infinity))
      refuse(
        `${nodeName(model, i)} needs finite x, y and a mass of at least 0 (x ${x}, y ${y}, mass ${mass})`,
        { node: i + 1 },
        'Give its place in m and mass in kg',
      );
  });
  model.members.forEach(({ from, to, EI, GJ, GA = Infinity, mass = 0 }, e) => {
    const [start, end] = [model.nodes[from], model.nodes[to]];
    const where = { member: e + 1 };
    if (!start || !end)
      return refuse(
        `${memberName(model, e)} joins nodes ${from + 1} and ${to + 1}, of which one does not exist`,
        where,
        'Give the number of a node',
      );
    if (start.x === end.x && start.y === end.y)
      refuse(`${memberName(model, e)} has no length`, where, 'Join two nodes at different places');
    if (!(EI > 0 && EI < Infinity && GJ >= 0 && GJ < Infinity && GA > 0 && mass >= 0 && mass < Infinity))
      refuse(
        `${memberName(model, e)} needs EI and GA above 0, GJ and mass of at least 0 (EI ${EI}, GJ ${GJ}, GA ${GA}, mass ${mass})`,
        where,
        'Give its stiffness in N·m², shear stiffness in N, mass in kg/m',
      );
    joined[from] = joined[to] = 1;
  });
  joined.forEach(
    (one, i) =>
      one ||
      refuse(`${nodeName(model, i)} belongs to no member`, { node: i + 1 }, 'Join it to the grid or leave it out'),
  );
  if (model.nodes.length === 0) refuse('the grid has no nodes', {}, 'Give nodes and members');
  model.supports.forEach(({ node, w = 1, rx = 1, ry = 1 }, i) => {
    if (!model.nodes[node])
      refuse(
        `support ${i + 1} stands at node ${node + 1}, which does not exist`,
        { support: i + 1 },
        'Give the number of a node',
      );
    if (!(w > 0 && rx > 0 && ry > 0))
      refuse(
        `support ${i + 1} needs stiffnesses above 0 (w ${w}, rx ${rx}, ry ${ry})`,
        { support: i + 1 },
        'Leave out what is free; Infinity is rigid',
      );
  });
}

export interface Loads {
  /** Forces on the freedoms of the nodes. */
  readonly nodal: Float64Array;
  readonly lines: LineLoad[];
}

export function requireLoads(model: GrillageModel, loads: GrillageLoads): Loads {
  const nodal = new Float64Array(3 * model.nodes.length);
  const lines = model.members.map((): LineLoad => ({ start: 0, end: 0, torque: 0 }));
  const refuse = (what: string, where: Record<string, number>): never => {
    throw refusal({ what, where, mend: 'Name a node or member of the grid, and give finite forces' });
  };
  loads.nodes?.forEach(({ node, w = 0, mx = 0, my = 0 }, i) => {
    if (!model.nodes[node] || ![w, mx, my].every(Number.isFinite))
      refuse(`load ${i + 1} on node ${node + 1} (w ${w}, mx ${mx}, my ${my}) is no load on this grid`, { load: i + 1 });
    [w, mx, my].forEach((force, freedom) => (nodal[3 * node + freedom]! += force));
  });
  loads.members?.forEach(({ member, force = 0, torque = 0 }, i) => {
    const [start, end] = typeof force === 'number' ? [force, force] : force;
    const line = lines[member];
    if (!line || ![start, end, torque].every(Number.isFinite))
      return refuse(
        `line load ${i + 1} on member ${member + 1} (${start} to ${end} N/m, torque ${torque}) is no load on this grid`,
        { load: i + 1 },
      );
    lines[member] = { start: line.start + start, end: line.end + end, torque: line.torque + torque };
  });
  return { nodal, lines };
}
