import { expect, it } from 'vitest';
import { checkRows } from '../../core/checks/evaluate-check.ts';
import { tubeWallBent } from '../../core/checks/tube-wall-bent.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel } from './model-of.ts';

const given = { z: 40, rho: 1025, g: 9.80665, gamma_F: 1, f_y: 355e6, gamma_M0: 1, E: 206e9, nu: 0.3, round: 0, H: 0.2, B: 0.2, t: 0.008, W_el: 371e-6, M: 0 }; // prettier-ignore
const at = (change: Partial<typeof given>) => valuesGiven(tubeWallBent, 'partial factors', { ...given, ...change });

it('is the pressure’s own stress without bending: 111.37 MPa for a 200×200×8 at 40 m (strip with fixed ends p b²/2t² and p B/2t, worked by hand)', () => {
  expect(at({}).sigma_v! / 1e6).toBeCloseTo(111.37, 2);
});

it('adds bending by von Mises with opposite signs: two equal stresses give √3 of one (von Mises, worked by hand)', () => {
  const alone = at({}).sigma!;
  expect(at({ M: alone * given.W_el }).sigma_v! / alone).toBeCloseTo(Math.sqrt(3), 9);
});

it('lies between bending alone and the plain sum with hinged walls, square and round', () => {
  for (const round of [0, 1])
    for (const M of [0, 5e3, 40e3, 90e3]) {
      const { sigma_low, sigma_v, sigma_high } = at({ round, M });
      expect([sigma_low! <= sigma_v!, sigma_v! <= sigma_high!]).toEqual([true, true]);
    }
});

it('is judged for sealed tubes in the water only', () => {
  const sealedTubes = demoModel({ grid: { mainTubes: { flooding: 'sealed' } } });
  const judged = checkRows(tubeWallBent, sealedTubes).rows.filter(({ verdict }) => verdict !== 'not applicable');
  expect(new Set(judged.map(({ place }) => place))).toEqual(
    new Set(sealedTubes.geometry.mainTubes.map(({ id }) => id)),
  );
  expect(judged.some(({ loadCase }) => loadCase === 'service')).toBe(true);
  expect(judged.some(({ loadCase }) => loadCase === 'lift in air' || loadCase === 'support on deck')).toBe(false);
});
