import { describe, expect, it } from 'vitest';
import { latticeLines, nearestLine } from '../../../core/solve/lattice-lines.ts';
import { tubeStations } from '../../../core/plate/mesh/tube-stations.ts';

describe('lines of a lattice', () => {
  it('go through every exact place, and none is further than the size from the next', () => {
    const lines = latticeLines([0, 0.41, 1, 0.333], [], { size: 0.09, least: 0.003 });
    for (const place of [0, 0.333, 0.41, 1]) expect([...lines]).toContain(place);
    for (let i = 1; i < lines.length; i++) {
      expect(lines[i]! - lines[i - 1]!).toBeGreaterThan(0);
      expect(lines[i]! - lines[i - 1]!).toBeLessThanOrEqual(0.09 + 1e-9);
    }
    // equal steps within a gap: 0.41 to 1 in seven
    expect(lines.filter((x) => x >= 0.41)).toHaveLength(8);
  });
  it('take a place that is only near where it leaves no sliver, and never past the ends', () => {
    const lines = latticeLines([0, 0.5, 1], [0.501, 0.25, 1.2, -0.1], { size: 2, least: 0.003 });
    expect([...lines]).toEqual([0, 0.25, 0.5, 1]);
  });
  it('count places that rounding parts as one', () => {
    expect([...latticeLines([0, 1, 1 - 1e-12], [], { size: 2, least: 0.003 })]).toHaveLength(2);
  });
  it('are found again by the nearest', () => {
    const lines = Float64Array.of(0, 0.2, 0.5, 1);
    expect([-1, 0.09, 0.11, 0.49, 0.76, 3].map((x) => nearestLine(lines, x))).toEqual([0, 0, 1, 2, 3, 3]);
  });
});

it('stations of a tube keep crossings and ends, and let close panels share a node', () => {
  const stations = tubeStations([0, 1, 2], [0.5, 0.502, 0.998, 1.5], { size: 10, least: 0.004 });
  expect([...stations]).toEqual([0, 0.5, 1, 1.5, 2]);
});
