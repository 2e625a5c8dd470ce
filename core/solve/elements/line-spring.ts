import { refusal, requirePositive } from '../../refusal.ts';
import { spring } from './spring.ts';
import type { Spring } from './spring.ts';
import type { Vector } from '../vector.ts';

/** A straight line (sling, leg, strut) from a point of the structure to a fixed one: N/m along it and nothing across; its
 *  small motions do not turn it. offset: from the node to the line's lower end, to: from there to the fixed end, m, global
 *  axes. EA in N. Gives a spring of one node whose force along its x is the line's: x runs from the fixed end to the
 *  structure, so a taut line is positive. A line only pulls: whether it is in the system at all is the analysis's to say,
 *  which takes it out where the force is negative and looks again (a strut stays). */
export function lineSpring({
  offset,
  to,
  EA,
}: {
  readonly offset: Vector;
  readonly to: Vector;
  readonly EA: number;
}): Spring {
  requirePositive({ EA });
  const length = Math.hypot(...to);
  if (!(length > 0))
    throw refusal({ what: 'A line has no length', mend: 'Give its fixed end away from the structure' });
  const x = to.map((c) => -c / length) as unknown as Vector;
  // Any two directions across will do: they carry nothing. The axis least along x keeps them well apart.
  const least = x.reduce((best, c, k) => (Math.abs(c) < Math.abs(x[best]!) ? k : best), 0);
  const aside = [0, 1, 2].map((k) => (k === least ? 1 : 0) - x[least]! * x[k]!);
  const width = Math.hypot(...aside);
  const y = aside.map((c) => c / width) as unknown as Vector;
  const z = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]];
  return spring({ stiffness: [EA / length, 0, 0, 0, 0, 0], offsets: [offset], axes: [...x, ...y, ...z] });
}
