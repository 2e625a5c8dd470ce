import { describe, expect, it } from 'vitest';
import { crossingActions } from '../../core/loads/crossing-actions.ts';
import { loaded } from '../../core/loads/loaded.ts';
import { plateLoads } from '../../core/loads/plate-loads.ts';
import { Supports } from '../../core/loads/supports.ts';
import { cellResultant } from '../../core/loads/tube-lines.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { seeded } from '../geometry/seeded.ts';
import { loadedPlate } from './loaded-plate.ts';

/** The demo plate hung at the ends of its outer main tubes, under loads and torques drawn anew on every cell. */
function heldPlate(seed: number) {
  const { geometry, mass } = loadedPlate(demoDocument());
  const ends = [geometry.mainTubes[0]!, geometry.mainTubes.at(-1)!].flatMap(({ id, at }) =>
    [geometry.crossTubes[0]!, geometry.crossTubes.at(-1)!].map((cross) => ({
      tube: geometry.mainTubes.findIndex((tube) => tube.id === id),
      at: cross.at,
      crossing: `${id}/${cross.id}`,
      x: cross.at,
      y: at,
    })),
  );
  const plate = plateLoads(geometry, mass, ({ x0, x1, y0, y1 }) => (x1 - x0) * (y1 - y0), ends);
  const next = seeded(seed);
  const load = Float64Array.from({ length: 4 * plate.lines.from.length }, (_, i) => (next() - 0.5) * (i % 4 < 2 ? 4e3 : 300)); // prettier-ignore
  const supports = new Supports(plate.points.map((point, i) => ({ id: `S${i}`, point })), plate.frame, plate.spread); // prettier-ignore
  const [held] = supports.hold(loaded(plate.frame, load), { present: ends.map((_, i) => i), oneWay: false, skew: 1 });
  return { geometry, plate, held: held!, actions: crossingActions(plate.frame, geometry.crossings, held!.motion, held!.load) }; // prettier-ignore
}

describe('what acts on crossings', () => {
  it.each([1, 2, 3])('hands over all that loads each cross tube: force and both moments (statics), draw %d', (seed) => {
    const { geometry, plate: { lines }, held, actions } = heldPlate(seed); // prettier-ignore
    geometry.crossTubes.forEach(({ id, at: x }, k) => {
      const tube = lines.mains + k;
      const acting = new Float64Array(3);
      for (let e = lines.firstCell[tube]!; e < lines.firstCell[tube + 1]!; e++) cellResultant(lines, held.load, e, acting); // prettier-ignore
      const handed = new Float64Array(3);
      for (const crossing of geometry.crossings.filter(({ cross }) => cross === id)) {
        const { P, D1, D0 } = actions.get(crossing.id)!;
        handed[0]! += P;
        handed[1]! += P * x - D0;
        handed[2]! += P * crossing.y + D1;
      }
      for (const i of [0, 1, 2]) expect(Math.abs(handed[i]! - acting[i]!)).toBeLessThan(1e-6 * 4e3);
    });
  });
});
