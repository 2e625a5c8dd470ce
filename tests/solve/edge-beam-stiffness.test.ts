import { expect, it } from 'vitest';
import { edgeBeamStiffness } from '../../core/solve/edge-beam-stiffness.ts';
import { hingedPlate } from '../../core/solve/hinged-plate.ts';
import { pointSupportedPlate } from '../../core/solve/point-supported-plate.ts';

const unit = (ratio: number) => ({ a: 1, b: ratio, t: 1, E: 12 * 0.91, nu: 0.3, q: 1 });

it('square plate on edge beams: independent Ritz values, derived (w0, w beam, M0, beam moment for g = 0.5 … 100)', () => {
  const rows = [
    [0.5, 0.011537, 0.006217, 0.07018, 0.03004],
    [1, 0.008589, 0.003768, 0.06139, 0.03656],
    [5, 0.005152, 0.000907, 0.05114, 0.04421],
    [10, 0.004621, 0.000466, 0.04955, 0.0454],
    [100, 0.004119, 0.000048, 0.04806, 0.04652],
  ] as const;
  for (const [g, w, beam, M, beamMoment] of rows) {
    const answer = edgeBeamStiffness({ ...unit(1), EI: g });
    expect(answer.g).toBeCloseTo(g, 12);
    expect(Math.abs(answer.deflectionCentre - w)).toBeLessThan(1e-6);
    expect(Math.abs(answer.deflectionBeamX - beam)).toBeLessThan(1e-6);
    expect(Math.abs(answer.momentCentre - M)).toBeLessThan(1e-5);
    expect(Math.abs(answer.beamMomentY - beamMoment)).toBeLessThan(1e-5);
    expect(answer.deflectionAmplification).toBeCloseTo(answer.deflectionCentre / 0.00406235, 5);
  }
});

it('tends to hinged edges for stiff beams and to four corners for soft ones, at any side ratio', () => {
  const stiff = edgeBeamStiffness({ ...unit(1.5), EI: 1e5 });
  expect(stiff.deflectionAmplification).toBeCloseTo(1, 4);
  expect(stiff.momentAmplification).toBeCloseTo(1, 4);
  const soft = edgeBeamStiffness({ ...unit(1.5), EI: 1e-6 });
  const corners = pointSupportedPlate(unit(1.5), {
    points: [
      [0, 0],
      [1, 0],
      [0, 1.5],
      [1, 1.5],
    ],
    exclusionRadius: 0.03,
  });
  expect(soft.deflectionCentre / corners.deflectionCentre).toBeCloseTo(1, 4);
  expect(hingedPlate(unit(1.5)).deflectionCentre).toBeLessThan(soft.deflectionCentre);
});

it('cuts in halves as statics ask: beams and plate together carry q a² b / 8 across the middle', () => {
  // Half the load about the middle section, less the corners: (q a b/2)(a/2 - a/4) = q a² b/8, beams and plate together.
  const EI = 2;
  const { beamMomentX, momentCentre } = edgeBeamStiffness({ ...unit(1), EI });
  // Two beams take 2 M; the plate's share lies between its least possible (0) and its centre moment times b.
  const plate = 1 / 8 - 2 * beamMomentX;
  expect(plate).toBeGreaterThan(0);
  expect(plate).toBeLessThan(momentCentre);
  expect(plate).toBeGreaterThan(0.5 * momentCentre);
});

it('scales with pressure, sides and stiffness in SI, and stays finite without pressure', () => {
  const plate = { a: 2, b: 1, t: 0.01, E: 210e9, nu: 0.3, q: 4e3, EI: 5e5 };
  const turned = edgeBeamStiffness({ ...plate, a: 1, b: 2 });
  const answer = edgeBeamStiffness(plate);
  for (const of of ['g', 'deflectionCentre', 'momentCentre', 'deflectionAmplification', 'momentAmplification'] as const)
    expect(answer[of] / turned[of]).toBeCloseTo(1, 5);
  expect(answer.beamMomentX / turned.beamMomentY).toBeCloseTo(1, 6);
  const none = edgeBeamStiffness({ ...plate, q: 0 });
  expect(none.deflectionCentre).toBe(0);
  expect(none.deflectionAmplification).toBeCloseTo(answer.deflectionAmplification, 9);
  expect(() => edgeBeamStiffness({ ...plate, EI: 0 })).toThrow(/EI must be positive/);
});
