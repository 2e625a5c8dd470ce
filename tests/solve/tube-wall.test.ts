import { expect, it } from 'vitest';
import { heldPlate } from '../../core/solve/held-plate.ts';
import { wallUnderLine } from '../../core/solve/wall-under-line.ts';
import { wallCollapseUnderPoint, wallDeflectionUnderPoint } from '../../core/solve/wall-under-point.ts';

const wall = { b: 0.09, t: 0.005, E: 210e9, nu: 0.3 };
const D = (210e9 * 0.005 ** 3) / (12 * 0.91);

it('line load on a strip: p b/8 and p b³/192 D held, p b/4 and p b³/48 D hinged (beam tables)', () => {
  const [held, hinged] = [wallUnderLine(wall, 1e4, 'held'), wallUnderLine(wall, 1e4, 'hinged')];
  expect(held.moment).toBeCloseTo((1e4 * 0.09) / 8, 9);
  expect(held.deflection).toBeCloseTo((1e4 * 0.09 ** 3) / (192 * D), 12);
  expect(hinged.moment / held.moment).toBeCloseTo(2, 12);
  expect(hinged.deflection / held.deflection).toBeCloseTo(4, 12);
  expect(() => wallUnderLine({ ...wall, b: 0 }, 1, 'held')).toThrow(/b must be positive/);
});

it('point pull: collapse π f_y t² (fan of yield lines, derived): 27.9 kN at 5 mm, 71.4 kN at 8 mm, S355', () => {
  expect(Math.abs(wallCollapseUnderPoint({ t: 0.005, fy: 355e6 }, 'held') - 27.9e3)).toBeLessThan(50);
  expect(Math.abs(wallCollapseUnderPoint({ t: 0.008, fy: 355e6 }, 'held') - 71.4e3)).toBeLessThan(50);
  expect(wallCollapseUnderPoint({ t: 0.005, fy: 355e6 }, 'hinged')).toBeCloseTo(Math.PI * 0.5 * 355e6 * 0.005 ** 2, 6);
});

it('point pull: deflection 0.00725 P b²/D held (T&WK, 2nd ed., Table 37, from memory) and Levy’s series hinged', () => {
  // Hinged strip of infinite length: Σ over odd m of 1/(2 π³ m³) = 7 ζ(3) / (16 π³).
  const zeta3 = 1.2020569031595942;
  expect(
    Math.abs((wallDeflectionUnderPoint(wall, 1, 'hinged') * D) / wall.b ** 2 / ((7 * zeta3) / (16 * Math.PI ** 3)) - 1),
  ).toBeLessThan(1e-4);
  // Held: more than a strip in one half of it could give, less than the hinged wall.
  const held = (wallDeflectionUnderPoint(wall, 1, 'held') * D) / wall.b ** 2;
  expect(held).toBeCloseTo(0.00725, 12);
  // Betti: deflection at the centre under pressure, times the pressure's sum, bounds the influence of a point.
  expect(held).toBeGreaterThan(heldPlate({ a: 1, b: 1, t: 1, E: 12 * 0.91, nu: 0.3, q: 1 }).deflectionCentre);
});
