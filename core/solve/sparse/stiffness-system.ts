import { refusal } from '../../refusal.ts';
import type { ElementStiffness } from '../structure/element-stiffness.ts';

/** K u = f as its parts: K is the sum of the elements' matrices over the freedoms that are not held.
 *  coordinates: 3N in m, which only guide the order of elimination. held: 6N, 1 where the freedom cannot move. */
export interface StiffnessSystem {
  readonly coordinates: Float64Array;
  readonly elements: readonly ElementStiffness[];
  readonly held: Uint8Array;
}

/** Refuses a system whose arrays do not fit together, or that has an entry which is not a number. */
export function requireSystem({ coordinates, elements, held }: StiffnessSystem): void {
  const count = held.length / 6;
  if (!Number.isInteger(count) || coordinates.length !== 3 * count)
    throw refusal({
      what: `${coordinates.length} coordinates and ${held.length} freedoms do not belong together`,
      mend: 'Give three coordinates and six freedoms for each node',
    });
  elements.forEach(({ nodes, stiffness }, element) => {
    const place = { element };
    if (stiffness.length !== 36 * nodes.length ** 2)
      throw refusal({
        what: `An element of ${nodes.length} nodes has a matrix of ${stiffness.length} entries`,
        where: place,
        mend: `Give ${36 * nodes.length ** 2} entries`,
      });
    for (const node of nodes)
      if (!(Number.isInteger(node) && node >= 0 && node < count))
        throw refusal({
          what: `There is no node ${node}`,
          where: place,
          mend: `Number the nodes from 0 to ${count - 1}`,
        });
    if (finite.has(stiffness)) return;
    for (const entry of stiffness)
      if (!Number.isFinite(entry))
        throw refusal({
          what: `The matrix of an element has the entry ${entry}`,
          where: { ...place, node: nodes[0]! },
          mend: 'Look for a length, thickness or modulus that is zero or missing',
        });
    finite.add(stiffness);
  });
}

/** Matrices that were looked through: each is once, as long as it lives. */
const finite = new WeakSet<Float64Array>();
