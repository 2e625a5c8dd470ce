import { describe, expect, it } from 'vitest';
import { coefficientLeft, groupsLeft, hungGroup, pushOfGroupLeft, pushOfPlate, pushOfPlateLeft, sagOfPlate, stressOfPlate, type ListedGroup } from '../../core/fixings/listed-group.ts'; // prettier-ignore

const { abs, exp, hypot, max, min, sqrt } = Math;
type Point = readonly [number, number];
const none = { yLow: [], yHigh: [], xLow: [], xHigh: [] };
const plate = { t: 0.01, E: 210e9, nu: 0.3 };

/** A group of which one row is lost: `left` remains, the plate's middle at (a/2, b/2). */
const losing = (a: number, b: number, left: readonly Point[], lost: readonly Point[]): ListedGroup => ({
  ...{ a, b, points: [...left, ...lost] },
  rows: { ...none, xHigh: lost.map((_, i) => left.length + i) },
});
/** Shear of the worst bolt under a unit weight, as the check writes it. */
const shear = ({ n, polar, lever, across, along }: ReturnType<typeof hungGroup>): number =>
  hypot(1 / n + (lever * across) / polar, (lever * along) / polar);

describe('bolts on listed places, hung in their plane with a row lost', () => {
  it('gives 21.0 kN for the bracket of Shigley, Mechanical Engineering Design: 16 kN at 425 mm from 4 bolts (from memory)', () => {
    const four: Point[] = [[0, 0], [0.15, 0], [0, 0.12], [0.15, 0.12]]; // prettier-ignore
    const hung = hungGroup(losing(1, 0.12, four, [[1, 0.06]]));
    expect(hung).toMatchObject({ n: 4 });
    expect(hung.lever).toBeCloseTo(0.425, 12);
    expect(hung.polar).toBeCloseTo(4 * (0.075 ** 2 + 0.06 ** 2), 12);
    expect(16 * shear(hung)).toBeCloseTo(20.973, 2);
  });

  it('gives what was worked by hand for five bolts of no pattern: centroid (60, 80) mm, Σr² = 42 800 mm², 1.114 of the weight', () => {
    // Elastic group (Shigley, shear joints with eccentric loading). Places, mm: (0, 0) (150, 0) (30, 100) (0, 150) (120, 150).
    // Σx = 300, Σy = 400. From the centroid: (-60, -80) (90, -80) (-30, 20) (-60, 70) (60, 70):
    // r² = 10 000, 14 500, 1 300, 8 500, 8 500: Σ = 42 800. Middle of the plate (400, 80): lever 340 of a weight along y, none along x.
    // Worst bolt (90, -80): along the weight 1/5 + 340 · 90 / 42 800 = 0.914953, square to it 340 · 80 / 42 800 = 0.635514.
    const left: Point[] = [[0, 0], [0.15, 0], [0.03, 0.1], [0, 0.15], [0.12, 0.15]]; // prettier-ignore
    const hung = hungGroup(losing(0.8, 0.16, left, [[0.78, 0.1]]));
    expect(hung.n).toBe(5);
    expect(1e6 * hung.polar).toBeCloseTo(42800, 6);
    expect([hung.lever, hung.across, hung.along].map((m) => 1000 * m)).toEqual([340, 90, 80].map((mm) => expect.closeTo(mm, 9))); // prettier-ignore
    expect(shear(hung)).toBeCloseTo(hypot(0.914953, 0.635514), 5);
  });

  it('loses each row in turn and takes the worst: on the far side the lever is on the other hand', () => {
    const points: Point[] = [[0.05, 0.05], [0.95, 0.05], [0.05, 0.45], [0.95, 0.45], [0.4, 0.05], [0.7, 0.45]]; // prettier-ignore
    const group: ListedGroup = { a: 1, b: 0.5, points, rows: { yLow: [0, 1, 4], yHigh: [2, 3, 5], xLow: [0, 2], xHigh: [1, 3] } }; // prettier-ignore
    const worst = groupsLeft(group).map((left) => {
      const n = left.length;
      const [cx, cy] = [0, 1].map((k) => left.reduce((s, p) => s + p[k]!, 0) / n) as [number, number];
      const I = left.reduce((s, [x, y]) => s + (x - cx) ** 2 + (y - cy) ** 2, 0);
      return max(...left.flatMap(([x, y]) => [
        hypot(1 / n + ((0.25 - cy) * (y - cy)) / I, ((0.25 - cy) * (x - cx)) / I),
        hypot(1 / n + ((0.5 - cx) * (x - cx)) / I, ((0.5 - cx) * (y - cy)) / I),
      ])); // prettier-ignore
    });
    expect(worst.length).toBe(4);
    expect(shear(hungGroup(group))).toBeCloseTo(max(...worst), 12);
  });

  it('gives C = 1.75 of three bolts at 3 in, 3 in beside the load (AISC Manual, Part 7; from memory)', () => {
    const row: Point[] = [[0, 0], [0, 3], [0, 6]]; // prettier-ignore
    expect(abs(coefficientLeft(losing(6, 6, row, [[6, 3]])) - 1.75)).toBeLessThan(0.0051);
  });

  it('agrees for groups of no pattern with a search for the centre about which forces and moment balance (second method)', () => {
    const groups: ListedGroup[] = [
      losing(0.8, 0.16, [[0, 0], [0.15, 0], [0.03, 0.1], [0, 0.15], [0.12, 0.15]], [[0.78, 0.1]]),
      losing(1, 0.7, [[0.02, 0.03], [0.3, 0.02], [0.55, 0.04], [0.03, 0.4], [0.02, 0.66], [0.41, 0.68]], [[0.98, 0.3]]),
      losing(1.2, 0.4, [[0.05, 0.05], [0.05, 0.2], [0.06, 0.37], [0.5, 0.02], [0.9, 0.03], [0.44, 0.38]], [[1.17, 0.2], [1.16, 0.1]]),
    ]; // prettier-ignore
    for (const group of groups)
      expect(coefficientLeft(group)).toBeCloseTo(min(...groupsLeft(group).flatMap((left) => [byCentre(left, [1, 0], group), byCentre(left, [0, 1], group)])), 5); // prettier-ignore
  });
});

/** P over R_ult by Newton's steps on the place of the centre itself, from that of the elastic group. */
function byCentre(bolts: readonly Point[], [ux, uy]: Point, { a, b }: ListedGroup): number {
  const n = bolts.length;
  const [cx, cy] = [0, 1].map((k) => bolts.reduce((s, p) => s + p[k]!, 0) / n) as [number, number];
  const I = bolts.reduce((s, [x, y]) => s + (x - cx) ** 2 + (y - cy) ** 2, 0);
  const e = (a / 2 - cx) * uy - (b / 2 - cy) * ux;
  if (abs(e) < 1e-12) return n;
  /** Unbalanced force along and square to the load, with the load that balances the moment. */
  const at = ([X, Y]: Point) => {
    const far = max(...bolts.map(([x, y]) => hypot(x - X, y - Y)));
    let [Fx, Fy, M] = [0, 0, 0];
    for (const [x, y] of bolts) {
      const r = hypot(x - X, y - Y);
      const R = (1 - exp(-3.4 * (r / far))) ** 0.55;
      [Fx, Fy, M] = [Fx - (R * (y - Y)) / r, Fy + (R * (x - X)) / r, M + R * r];
    }
    const P = M / abs((a / 2 - X) * uy - (b / 2 - Y) * ux);
    const turn = Math.sign((a / 2 - X) * uy - (b / 2 - Y) * ux);
    return { P, off: [turn * (Fx * ux + Fy * uy) - P, turn * (Fy * ux - Fx * uy)] as const };
  };
  // Elastic: the centre lies I / (n e) from the centroid, on the other hand of the load.
  let c: Point = [cx - (I / (n * e)) * uy, cy + (I / (n * e)) * ux];
  for (let i = 0; i < 200; i++) {
    const { off } = at(c);
    const h = 1e-7;
    const [dx, dy] = [at([c[0] + h, c[1]]).off, at([c[0], c[1] + h]).off];
    const J = [(dx[0] - off[0]) / h, (dy[0] - off[0]) / h, (dx[1] - off[1]) / h, (dy[1] - off[1]) / h] as const;
    const det = J[0] * J[3] - J[1] * J[2];
    const step = [(J[3] * off[0] - J[1] * off[1]) / det, (J[0] * off[1] - J[2] * off[0]) / det] as const;
    // Halved until the balance betters: near a bolt its force turns round at once.
    const size = hypot(...off);
    let part = 1;
    const next = (): Point => [c[0] - part * step[0], c[1] - part * step[1]];
    while (part > 1e-9 && !(hypot(...at(next()).off) < size)) part /= 2;
    if (part <= 1e-9) break;
    c = next();
  }
  const { P, off } = at(c);
  expect(hypot(...off) / P).toBeLessThan(1e-6);
  return P;
}

describe('bolts on listed places under a plate that is pulled off', () => {
  it('parts the force by statics alone where three bolts are left, whatever bends: worked by hand', () => {
    // Plate 1.2 × 0.8 m, its force 0.96 q at (0.6, 0.4). On (0.1, 0.1), (0.9, 0.2), (0.4, 0.7): barycentric coordinates of
    // the middle: v1 = (0.8, 0.1), v2 = (0.3, 0.6), d = (0.5, 0.3); det 0.45; 0.21 / 0.45 = 7/15, 0.19 / 0.45 = 19/45, 1/9.
    const three: Point[] = [[0.1, 0.1], [0.9, 0.2], [0.4, 0.7]]; // prettier-ignore
    const whole: ListedGroup = { a: 1.2, b: 0.8, points: three, rows: none };
    expect(pushOfPlate(whole, plate)).toBeCloseTo((0.96 * 7) / 15, 5);
    const lost = losing(1.2, 0.8, three, [[1.15, 0.4]]);
    expect(pushOfGroupLeft(lost)).toBeCloseTo((0.96 * 7) / 15, 12);
    expect(pushOfPlateLeft(lost, plate)).toBeCloseTo((0.96 * 7) / 15, 5);
    expect(() => pushOfGroupLeft(losing(1, 1, [[0.1, 0.2], [0.4, 0.35], [0.8, 0.55]], [[0.9, 0.2]]))).toThrow(/stand on one line/); // prettier-ignore
  });

  it('has for four corners of a square w = 0.0255 q a⁴ / D and a stress of 6 · 0.1504 q a² / t² (ν = 0.3; series, as in the test of the plate on points)', () => {
    const a = 0.9;
    const corners: ListedGroup = { a, b: a, points: [[0, 0], [a, 0], [0, a], [a, a]], rows: none }; // prettier-ignore
    expect(pushOfPlate(corners, plate)).toBeCloseTo(a ** 2 / 4, 8);
    expect(sagOfPlate(corners, plate, 0.02) / a ** 4).toBeCloseTo(0.025507, 4);
    // At the middle of a free edge bending is along it alone: von Mises is that stress.
    expect(stressOfPlate(corners, plate, 0.22) / (6 * a ** 2)).toBeCloseTo(0.15044, 3);
    // Nothing of it depends on thickness or modulus.
    const other = { t: 0.02, E: 70e9, nu: 0.3 };
    expect(sagOfPlate(corners, other, 0.02)).toBeCloseTo(sagOfPlate(corners, plate, 0.02), 12);
    expect(stressOfPlate(corners, other, 0.05)).toBeCloseTo(stressOfPlate(corners, plate, 0.05), 12);
  });

  it('reads the stress on the bolts that are left, which is larger', () => {
    const a = 0.9;
    const eight: ListedGroup = { a, b: a, points: [[0, 0], [a / 2, 0], [a, 0], [0, a / 2], [a, a / 2], [0, a], [a / 2, a], [a, a]], rows: { yLow: [0, 1, 2], yHigh: [5, 6, 7], xLow: [0, 3, 5], xHigh: [2, 4, 7] } }; // prettier-ignore
    const [whole, left] = [stressOfPlate(eight, plate, 0.05), stressOfPlate(eight, plate, 0.05, true)];
    expect(left).toBeGreaterThan(whole);
    const five = groupsLeft(eight)[0]!;
    expect(left).toBeCloseTo(stressOfPlate({ ...eight, points: five }, plate, 0.05), 6);
    expect(sqrt(left)).toBeLessThan(3 * a);
  });
});
