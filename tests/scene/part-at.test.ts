import { expect, it } from 'vitest';
import { partAt } from '../../core/scene/part-at.ts';
import { sceneOf } from '../../core/scene/scene-of.ts';
import type { Vector } from '../../core/scene/scene.ts';
import { demoModel } from '../checks/model-of.ts';

// Flush grid of tubes 150 mm square, main tubes 1.3 m and cross tubes 1.1 m apart, panels on top: A1, A3, B1, B3.
const scene = sceneOf(demoModel());
const from = (x: number, y: number, direction: Vector = [0, 0, -1]) => ({ origin: [x, y, 10] as Vector, direction });
const idAt = (...args: Parameters<typeof partAt>) => {
  const hit = partAt(...args);
  return hit && scene.parts[hit.part]!.id;
};

it('meets the panel over a bay, its vent hole’s rim beside, the open bay, tubes, and nothing beyond the plate', () => {
  expect(idAt(scene, from(0.3, 0.3), 0, null)).toBe('panel:A1');
  // The vent of 50 mm lies in the middle of bay A1; below it is nothing.
  expect(idAt(scene, from(0.55, 0.65), 0, null)).toBe(null);
  expect(idAt(scene, from(1.65, 0.65), 0, null)).toBe('bay:A2');
  expect(idAt(scene, from(1.65, 1.3), 0, null)).toBe('tube:B');
  expect(idAt(scene, from(1.08, 1.0, [0, 0, -2]), 0, null)).toBe('panel:A1');
  expect(idAt(scene, from(-2, 0), 0, null)).toBe(null);
});

it('meets the top of the panel at its height, and each bolt from above at its head', () => {
  const hit = partAt(scene, from(0.3, 0.3), 0, null)!;
  expect(hit.point[2]).toBeCloseTo(0.01, 6);
  for (const part of scene.parts.filter(({ kind }) => kind === 'bolt'))
    expect(idAt(scene, from(part.centre[0], part.centre[1]), 0, null)).toBe(part.id);
});

it('meets parts where they are drawn when panels are pulled apart', () => {
  const side = { origin: [0.55, -5, 0.5 + 0.005] as Vector, direction: [0, 1, 0] as Vector };
  expect(idAt(scene, side, 0, null)).toBe(null);
  expect(idAt(scene, side, 0.5, null)).toBe('panel:A1');
});

it('looks past what a cut takes away: into the tube’s bore, where the lower wall lies', () => {
  const cut = { axis: 'z', at: -0.075, away: 'above' } as const;
  const hit = partAt(scene, from(1.65, 0), 0, cut)!;
  expect(scene.parts[hit.part]!.id).toBe('tube:A');
  // Bottom at −150 mm, wall 8 mm.
  expect(hit.point[2]).toBeCloseTo(-0.142, 6);
  expect(idAt(scene, from(0.3, 0.3), 0, cut)).toBe(null);
});
