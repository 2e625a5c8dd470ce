import { describe, expect, it } from 'vitest';
import { panelByElements, type EdgeSupport } from '../../core/solve/panel-by-elements.ts';
import { plateRigidity } from '../../core/solve/uniform-plate.ts';

const plate = (ratio: number, nu = 0.3) => ({ a: 1, b: ratio, t: 0.01, E: 210e9, nu, q: 1000 });
const solved = (ratio: number, support: EdgeSupport, nu = 0.3) => {
  const given = plate(ratio, nu);
  const D = plateRigidity(given);
  const answer = panelByElements(given, support);
  return { answer, w: (value: number) => (value * D) / given.q, M: (value: number) => value / given.q };
};
const within = (value: number, target: number, part: number): void =>
  expect(Math.abs(value / target - 1), `${value} for ${target}`).toBeLessThan(part);

describe('a panel by finite elements gives the published plate', () => {
  it('hinged, 1:1 and 1:2: 0.00406, 0.0479; 0.01013, 0.1017 (Timoshenko & Woinowsky-Krieger, 2nd ed., Table 8, from memory)', () => {
    for (const [ratio, alpha, beta] of [
      [1, 0.0040624, 0.0478864],
      [2, 0.0101287, 0.1016831],
    ] as const) {
      const { answer, w, M } = solved(ratio, { kind: 'hinged' });
      within(w(answer.deflectionCentre), alpha, 0.002);
      within(M(answer.momentXCentre), beta, 0.005);
      expect(answer.error).toBeLessThan(0.01);
    }
  });
  it('held all round: 0.00126, 0.0229, largest 0.0513 at the edge (Table 35 of the same book, from memory; centre by Ritz)', () => {
    const { answer, w, M } = solved(1, { kind: 'held' });
    within(w(answer.deflectionCentre), 0.0012653, 0.005);
    within(M(answer.momentXCentre), 0.022905, 0.01);
    within(M(answer.momentLargest), 0.051334, 0.02);
  });
  it('on its corners: 0.0255 and 0.1117 (Timoshenko & Woinowsky-Krieger, art. 48, from memory; digits by Ritz)', () => {
    const { answer, w, M } = solved(1, {
      kind: 'points',
      points: [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      exclusionRadius: 0.02,
    });
    within(w(answer.deflectionCentre), 0.025507, 0.005);
    within(M(answer.momentXCentre), 0.11171, 0.01);
  });
  it('on two sides: 0.01309 and 0.01501 at the free edges (Ritz, as core/solve/two-sided-plate.ts)', () => {
    const { answer, w } = solved(1, { kind: 'two-sides' });
    within(w(answer.deflectionCentre), 0.013094, 0.005);
    within(w(answer.deflectionLargest), 0.015011, 0.005);
  });
  it('on four points inset by a tenth: 0.008595 (Ritz with constraints)', () => {
    const points = [0.1, 0.9].flatMap((x) => [0.1, 0.9].map((y) => [x, y] as const));
    const { answer, w } = solved(1, { kind: 'points', points, exclusionRadius: 0.03 });
    within(w(answer.deflectionCentre), 0.008595, 0.01);
  });
});

describe('edges that bear but may lift', () => {
  // No published table of numbers was found (Papanikolaou & Doudoumis, Computers & Structures 79 (2001) 2559 has one); the
  // values are of two other methods that agree to four digits: C1 elements with an active set, and Ritz with one-way springs.
  it.each([
    [1, 0.3, 0.0043825, 0.000756, 0.49, 0.49, 0.05088],
    [1, 0, 0.004856, 0.001342, 0.39, 0.39, null],
    [2, 0.3, 0.010457, 0.001505, 0.4, 0.69, null],
  ])(
    'ratio %d, nu %d: w %d, corner rises %d, bears to %d of half the short edge and %d of the long, M %d',
    (ratio, nu, w0, rise, short, long, M0) => {
      const { answer, w, M } = solved(ratio, { kind: 'resting' }, nu);
      expect(answer.settled).toBe(true);
      within(w(answer.deflectionCentre), w0, 0.005);
      within(w(answer.cornerRise), rise, 0.03);
      if (M0 !== null) within(M(answer.momentXCentre), M0, 0.005);
      // a cell of the finer mesh
      expect(Math.abs(answer.bearing[0] - short)).toBeLessThan(1.1 / 12);
      expect(Math.abs(answer.bearing[1] - long)).toBeLessThan(1.1 / 12);
      expect(Math.abs(answer.reactionRatio - 1)).toBeLessThan(1e-9);
    },
  );
  it('moves more than the same panel held down, and turning the pressure round turns the answer round', () => {
    const { answer } = solved(1, { kind: 'resting' });
    const other = panelByElements({ ...plate(1), q: -1000 }, { kind: 'resting' });
    expect(answer.deflectionCentre).toBeGreaterThan(solved(1, { kind: 'hinged' }).answer.deflectionCentre * 1.07);
    within(-other.deflectionCentre, answer.deflectionCentre, 1e-9);
  });
});

it('refuses two points and names them', () => {
  expect(() =>
    panelByElements(plate(1), {
      kind: 'points',
      points: [
        [0, 0],
        [1, 1],
      ],
      exclusionRadius: 0,
    }),
  ).toThrow(/2 points do not hold a plate/);
});
