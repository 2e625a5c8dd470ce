import type { Structure } from '../solve/structure/structure.ts';
import type { TubeForces } from '../plate/results/tube-forces.ts';

/** Of a tube's stations those that every loading has: start, middle and end of each length of beam, as indices. Others lie
 *  where a loading's own moment peaks. */
export function evenStations({ tubes, beams }: Structure, tube: number, { at }: Pick<TubeForces, 'at'>): number[] {
  const [first, last] = tubes[tube]!.beams;
  const out: number[] = [];
  let i = 0;
  for (const { from, to } of beams.slice(first, last)) {
    const start = i;
    while (i < at.length - 1 && at[i]! < to - rounding) i++;
    const middle = (from + to) / 2;
    let nearest = start;
    for (let k = start; k <= i; k++) if (Math.abs(at[k]! - middle) < Math.abs(at[nearest]! - middle)) nearest = k;
    out.push(start, nearest, i);
    i++;
  }
  return out;
}

/** m: stations are sums along a tube. */
const rounding = 1e-9;
