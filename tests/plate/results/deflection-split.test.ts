import { describe, expect, it } from 'vitest';
import { deflections } from '../../../core/plate/results/deflections.ts';
import { deflectionSplit, splitParts } from '../../../core/plate/results/deflection-split.ts';
import { levelled } from '../../../core/plate/results/levelled.ts';
import { panelPoints, riseOf, tubePoints } from '../../../core/plate/results/plate-point.ts';
import type { ReadyPlate, SolvedLoading } from '../../../core/plate/solve-plate.ts';
import type { Structure } from '../../../core/solve/structure/structure.ts';
import { changedPlate } from './support/level-plate.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';
import { withStifferBeams } from './support/with-stiffer-beams.ts';

const model = sampleModel('small');
const plate = ready(model, 0.2);

describe.each(['service-down', 'service-up', 'lift-in-air-down'])('the rise of a point under %s', (situation) => {
  const solved = solvedLoading(plate, situation);
  const { largest } = deflections(plate, solved);
  const points = [largest.point, tubePoints(plate.structure, 0)[0]!, panelPoints(plate.structure, 1)[5]!];

  it('is the sum of what its parts give, to 1e-9', () => {
    for (const point of points) {
      const { rise, parts, rest } = deflectionSplit(plate, solved, point);
      const sum = splitParts.reduce((total, part) => total + parts[part], 0);
      expect(Math.abs(sum - rise)).toBeLessThan(1e-9 * Math.abs(largest.rise));
      expect(rest).toBeCloseTo(rise - sum, 18);
    }
    expect(deflectionSplit(plate, solved, largest.point).rise).toBe(largest.rise);
  });
});

/** du_P when every part of one kind gets stiffer by a share ε is -ε times its part of u_P: the part means what it says. */
describe('a part of the split foretells what stiffening that part brings', () => {
  const ε = 1e-5;
  const stiffer: Record<string, (structure: Structure) => Structure> = {
    'main tubes': (s) => withStifferBeams(s, 1 + ε, (set) => set === 'main'),
    'cross tubes': (s) => withStifferBeams(s, 1 + ε, (set) => set === 'cross'),
    bolts: (s) => ({
      ...s,
      ties: s.ties.map((tie) => ({
        ...tie,
        stiffness: {
          axial: (1 + ε) * tie.stiffness.axial,
          shear: (1 + ε) * tie.stiffness.shear,
          bending: (1 + ε) * tie.stiffness.bending,
          torsion: (1 + ε) * tie.stiffness.torsion,
        },
      })),
    }),
    contact: (s) => ({
      ...s,
      contacts: s.contacts.map((part) => ({ ...part, stiffness: (1 + ε) * part.stiffness })),
    }),
  };
  const base = changedPlate(model, 0.2, (s) => s);
  const solve = (of: ReadyPlate): SolvedLoading => solvedLoading(of, 'service-down', { stage: 'linear' });
  const solved = solve(base);
  const { largest: { point } } = deflections(base, solved); // prettier-ignore
  const split = deflectionSplit(base, solved, point);

  it.each(Object.keys(stiffer))('%s', (part) => {
    const changed = changedPlate(model, 0.2, stiffer[part]!);
    const now = deflectionSplit(changed, solve(changed), point).rise;
    const share = split.parts[part as keyof typeof split.parts];
    expect(Math.abs((split.rise - now) / ε - share)).toBeLessThan(1e-3 * Math.abs(share) + 1e-6 * Math.abs(split.rise));
    expect(Math.abs(share)).toBeGreaterThan(0);
  });

  it('panels, in bending by t³ and in their plane by t together, by Young’s modulus', () => {
    const changed = changedPlate(model, 0.2, (s) => ({
      ...s,
      shells: s.shells.map((shell) => ({ ...shell, E: (1 + ε) * shell.E })),
    }));
    const now = deflectionSplit(changed, solve(changed), point).rise;
    const share = split.parts['panels in bending'] + split.parts['panels in their plane'];
    expect(Math.abs((split.rise - now) / ε / share - 1)).toBeLessThan(1e-3);
    // three times the one and once the other, for a change of thickness; the contact face moves with it, so only nearly
    expect(Math.abs(split.parts['panels in bending'])).toBeGreaterThan(Math.abs(split.parts['panels in their plane']));
  });
});

describe('deflections', () => {
  it('are told from the supports where those hold the plate: a support’s own point does not move along its line', () => {
    const solved = solvedLoading(plate, 'deck-down');
    const { from, tubes } = deflections(plate, solved);
    expect(from).toBe('supports');
    for (const { place } of solved.situation.supports!.items) {
      const at = tubePoints(plate.structure, place.tube).find(
        ({ x, y }) => Math.hypot(x - place.x, y - place.y) < 1e-6,
      )!;
      expect(Math.abs(deflectionAt(solved, at.node, at.offset))).toBeLessThan(1e-12);
    }
    expect(Math.max(...tubes.map(({ rise }) => Math.abs(rise)))).toBeGreaterThan(1e-5);
  });

  it('are told from the mean plane where lines are slack: mass times rise, and times its arms, sums to nil', () => {
    const solved = solvedLoading(plate, 'service-up');
    const { from, largest } = deflections(plate, solved);
    expect(from).toBe('mean plane');
    const sums = [0, 0, 0];
    for (const { node, offset, mass } of plate.masses) {
      const [x, y] = [plate.structure.coordinates[3 * node]! + offset[0], plate.structure.coordinates[3 * node + 1]! + offset[1]]; // prettier-ignore
      const rise = deflectionAt(solved, node, offset);
      [1, x, y].forEach((arm, k) => (sums[k]! += mass * arm * rise));
    }
    const scale = plate.masses.reduce((sum, { mass }) => sum + mass, 0) * Math.abs(largest.rise);
    for (const sum of sums) expect(Math.abs(sum)).toBeLessThan(1e-6 * scale);
  });

  it('tell a panel’s dip apart from the motion of its tubes: it is the same when the tubes are ten times as stiff', () => {
    const dip = (of: ReadyPlate) => {
      const own = deflections(of, solvedLoading(of, 'service-down')).panels[1]!;
      return { dip: own.dip!.rise, whole: own.largest.rise };
    };
    const soft = dip(plate);
    const stiff = dip(changedPlate(model, 0.2, (s) => withStifferBeams(s, 10)));
    expect(Math.abs(soft.whole / stiff.whole)).toBeGreaterThan(1.4);
    expect(Math.abs(soft.dip / stiff.dip - 1)).toBeLessThan(0.3);
  });
});

const level = new Map<SolvedLoading, Float64Array>();
function deflectionAt(solved: SolvedLoading, node: number, offset: readonly [number, number, number]): number {
  const u = level.get(solved) ?? levelled(plate, solved);
  level.set(solved, u);
  return riseOf({ part: 'panel', id: '', x: 0, y: 0, node, offset }, u);
}
