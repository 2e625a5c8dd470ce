import { requirePositive } from '../refusal.ts';
import { boundedMemo } from './bounded-memo.ts';
import { hingedPlate } from './hinged-plate.ts';
import { plateRitz, type RitzSolution } from './plate-ritz.ts';
import { sideRatio } from './side-ratio.ts';
import { plateRigidity, requirePlate, type UniformPlate } from './uniform-plate.ts';

/** A plate on edge beams that sink, beside the same plate on edges that do not. SI. */
export interface EdgeBeamAnswer {
  /** g = E I / (a D), with a the shorter side: above about 100 the edges hardly sink. */
  readonly g: number;
  readonly deflectionCentre: number;
  /** Deflection of the beams at the middle of the sides y = 0 and x = 0. */
  readonly deflectionBeamX: number;
  readonly deflectionBeamY: number;
  readonly momentCentre: number;
  /** Bending moment of the beams along x and along y at their middle, N·m. */
  readonly beamMomentX: number;
  readonly beamMomentY: number;
  /** Centre deflection and larger centre moment, over those of the plate hinged on edges that do not sink. */
  readonly deflectionAmplification: number;
  readonly momentAmplification: number;
}

const memo = boundedMemo<Pick<RitzSolution, 'derivative'>>(256);

/** A plate hinged on four equal edge beams of bending stiffness EI (N·m², no torsion stiffness, same centre plane) that
 *  stand on rigid corners, under uniform pressure: tells whether supports "do not sink". Ritz's method with polynomials
 *  of degree 20, corners by Lagrange multipliers. Refuses EI that is not positive. Error: about 0.1 %; thin plates only.
 *  Source: T&WK, Theory of Plates and Shells, 2nd ed., art. 49 (the problem); values by Ritz's method. */
export function edgeBeamStiffness(plate: UniformPlate & { readonly EI: number }): EdgeBeamAnswer {
  requirePlate(plate);
  requirePositive({ EI: plate.EI });
  const { a, b, nu, q, EI } = plate;
  const D = plateRigidity(plate);
  const [ratio, gA] = [sideRatio(b, a), sideRatio(EI, a * D)];
  const { derivative } = memo(`${ratio} ${nu} ${gA}`, () => {
    const edges = { x0: 'free', xa: 'free', y0: 'free', yb: 'free' } as const;
    const points = [
      [0, 0],
      [1, 0],
      [0, ratio],
      [1, ratio],
    ] as const;
    const degree = (stretch: number): number => 2 * Math.ceil(10 * Math.sqrt(Math.max(1, stretch)));
    const solution = plateRitz({ ratio, nu, edges, points, edgeBeam: gA }, degree(1 / ratio), degree(ratio));
    if (!solution) throw new Error('four corners always hold a plate');
    return solution;
  });
  const value = (x: number, y: number, p: 0 | 2, s: 0 | 2): number => derivative([x], [y], p, s)[0]!;
  const [w, M] = [(q * a ** 4) / D, q * a ** 2];
  const [xx, yy] = [value(0.5, ratio / 2, 2, 0), value(0.5, ratio / 2, 0, 2)];
  const [deflection, moment] = [value(0.5, ratio / 2, 0, 0), -Math.min(xx + nu * yy, yy + nu * xx)];
  const stiff = hingedPlate(plate).shape;
  return {
    g: EI / (Math.min(a, b) * D),
    deflectionCentre: w * deflection,
    deflectionBeamX: w * value(0.5, 0, 0, 0),
    deflectionBeamY: w * value(0, ratio / 2, 0, 0),
    momentCentre: M * moment,
    beamMomentX: -M * gA * a * value(0.5, 0, 2, 0),
    beamMomentY: -M * gA * a * value(0, ratio / 2, 0, 2),
    deflectionAmplification: deflection / stiff.deflectionCentre,
    momentAmplification: moment / Math.max(stiff.momentXCentre, stiff.momentYCentre),
  };
}
