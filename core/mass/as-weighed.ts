import type { PlateDocument } from '../document/schema.ts';
import type { Body } from './body.ts';
import { centreOf } from './centre-of.ts';

/** Name of the body by which the weighed mass differs from the sum of the parts. */
export const weighedName = 'Weighed, less what was computed';

/** With the difference to what the scales said, of the plate that was weighed: so every load and lift takes the weighed mass. */
export function asWeighed({ durability }: PlateDocument, bodies: Body[]): Body[] {
  const weighed = durability?.asBuilt?.weighed;
  if (!weighed) return bodies;
  const { sum, centre } = centreOf(bodies.map((b) => ({ weight: b.mass, at: b.centre })));
  const mass = weighed.mass.si - sum;
  if (mass === 0) return bodies;
  const arm = (found: number | undefined, own: number) =>
    found === undefined ? own : (weighed.mass.si * found - sum * own) / mass;
  return [
    ...bodies,
    {
      name: weighedName,
      kind: 'extras',
      mass,
      volume: 0,
      centre: [arm(weighed.x?.si, centre[0]), arm(weighed.y?.si, centre[1]), centre[2]],
      inertia: [0, 0, 0],
    },
  ];
}
