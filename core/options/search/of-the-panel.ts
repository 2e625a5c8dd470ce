import type { Check } from '../../checks/check.ts';
import type { Situation } from '../../loads/situation.ts';

/**
 * Checks at a panel that nothing of other panels enters, in the cases below, but how they lie in plan and what they weigh: what presses a
 * panel is its share of the force, by plan, less its own weight and, where the suspension goes slack, less its own inertia, which is
 * largest where the others are lightest. Declared here, and held by a property test over the samples.
 */
const checksOfThePanel: ReadonlySet<string> = new Set([
  'panel-bending-four-sides',
  'panel-bending-two-sides',
  'panel-bending-bolts',
  'panel-shear',
  'panel-deflection-four-sides',
  'panel-deflection-two-sides',
  'panel-deflection-bolts',
  'bolt-tension',
  'bolt-shear',
  'bolt-combined',
  'bolt-bearing-panel',
  'bolt-bearing-tube',
  'bolt-tear-out',
  'bolt-block-tear',
  'bolt-pull-through',
  'bolt-wall-pull',
  'bolt-edge-distance',
  'bolt-edge-distance-largest',
  'bolt-pitch',
  'bolt-pitch-largest',
  'bolt-group-in-plane',
  'bolt-group-ultimate',
  'weld-directional',
  'weld-size',
  'weld-edge',
  'weld-length',
]);

const cases: ReadonlySet<Situation['loadCase']> = new Set(['service', 'lost bolt row', 'lost panel', 'lost leg']);

/**
 * True where a fail of this check at a place is one whatever the other panels are that lie the same in plan, as long as they are no
 * lighter: what presses the panel acts the way of the force. Trusts that the plate is heavy in water.
 */
export function isOfThePanel({ id, once }: Pick<Check, 'id' | 'once'>, place: string, situation: Situation): boolean {
  if (!checksOfThePanel.has(id)) return false;
  const sign = situation.direction === 'up' ? 1 : -1;
  const least = Math.min(...[situation.pressures, situation.servicePressures].map((of) => sign * (of.get(place) ?? 0)));
  return once === true || (cases.has(situation.loadCase) && least > 0);
}
