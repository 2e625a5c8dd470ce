import { expect, it } from 'vitest';
import { grownPlan } from '../../core/water/grown-plan.ts';
import { growthOnTube, marineGrowth, thicknessByRows } from '../../core/water/marine-growth.ts';

it('50 mm on a 200 mm square tube is 66.3 kg/m at 1325 kg/m³ (square growth, worked by hand)', () => {
  expect(growthOnTube(0.2, 0.2, { thickness: 0.05, density: 1325 })).toBeCloseTo(66.25, 9);
});

it('grows 100 mm to 40 m, 50 mm below and 20 mm north of 59° (Norwegian guidance, Dahle and Kvitrud 1995/2003)', () => {
  const at = (depth: number, years: number, degrees: number | null) =>
    marineGrowth(depth, years, degrees === null ? null : (degrees * Math.PI) / 180).thickness;
  expect([at(40, 5, 57), at(41, 5, 57), at(41, 5, 61), at(41, 5, null), at(30, 1, 57)]).toEqual([0.1, 0.05, 0.02, 0.05, 0.05]); // prettier-ignore
});

it('narrows a gap by twice its thickness and closes a small hole', () => {
  const bar = (x0: number) => ({ x0, x1: x0 + 0.2, y0: 0, y1: 3 });
  const { rectangles, holes, thickness } = grownPlan({ rectangles: [bar(0), bar(1)], holes: [{ x: 0.1, y: 1, diameter: 0.09 }], thickness: 0.2 }, 0.05); // prettier-ignore
  expect(rectangles[1]!.x0 - rectangles[0]!.x1).toBeCloseTo(0.7, 12);
  expect(holes).toEqual([]);
  expect(thickness).toBeCloseTo(0.3, 12);
});

it('goes by the user’s rows where their band holds the depth: straight between the years, from none', () => {
  const q = (si: number) => ({ si, typed: `${si} m` });
  const row = (from: number, to: number, years: number, thickness: number) => ({ from: q(from), to: q(to), years, thickness: q(thickness) }); // prettier-ignore
  const rows = [row(0, 20, 3, 0.12), row(20, 60, 3, 0.05), row(20, 60, 1, 0.03)];
  const at = (depth: number, years: number) => thicknessByRows(rows, depth, years);
  expect([at(10, 1.5), at(30, 0.5), at(30, 1), at(30, 2), at(30, 9), at(70, 1)]).toEqual([0.06, 0.015, 0.03, 0.04, 0.05, null]); // prettier-ignore
});
