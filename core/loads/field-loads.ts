import { addLoaded, addPattern, type Loaded } from './loaded.ts';
import type { PlateLoads } from './plate-loads.ts';
import type { Pressures } from './pressures.ts';

export interface FieldLoads {
  /** Adds to a load what the fields hand to their tubes. */
  readonly add: (into: Loaded, pressures: Pressures) => void;
  /** Mass of the panel on each field for its area, kg/m²: with an acceleration, a pattern of pressures. */
  readonly masses: Float64Array;
}

/**
 * What pressed and pulled fields load their tubes with. A field bears on its tubes if pressed, hangs on them if pulled;
 * while every field keeps its sense all is linear, so each pattern of pressures is summed over the fields once for all
 * loadings that share it, and a field that is not there is taken off again.
 */
export function fieldLoads({ fields }: PlateLoads): FieldLoads {
  const known = new Map<Float64Array, Map<string, Loaded>>();

  const bearing = (i: number, up: boolean) => {
    const { panel, pressed, pulled } = fields[i]!;
    return up === (panel.pressedBy === 'up') ? pressed : pulled;
  };
  const summed = (pattern: Float64Array, ups: readonly boolean[], like: Loaded): Loaded => {
    const sum = { load: new Float64Array(like.load.length), motion: new Float64Array(like.motion.length) };
    pattern.forEach((p, i) => p !== 0 && addPattern(sum, bearing(i, ups[i]!), p));
    return sum;
  };

  return {
    masses: Float64Array.from(fields, ({ mass }) => mass),
    add: (into, pressures) => {
      const whole = pressures.whole;
      const ups = Array.from(whole, (p) => p > 0);
      const senses = ups.map(Number).join('');
      for (const [pattern, times] of pressures.terms) {
        const bySense = known.get(pattern) ?? known.set(pattern, new Map<string, Loaded>()).get(pattern)!;
        const sum = bySense.get(senses) ?? bySense.set(senses, summed(pattern, ups, into)).get(senses)!;
        addLoaded(into, sum, times);
      }
      for (const i of pressures.without) addPattern(into, bearing(i, ups[i]!), -whole[i]!);
    },
  };
}
