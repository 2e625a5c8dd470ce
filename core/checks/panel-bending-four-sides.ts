import type { Check } from './check.ts';
import { fieldInputs, fieldPlaces, panelAt, spansAt } from './field-inputs.ts';
import { basisFactor } from './inputs.ts';

/** Bending of a panel field that bears on four line supports, first yield of the thin plate. */
export const panelBendingFourSides: Check = {
  id: 'panel-bending-four-sides',
  title: 'Panel in bending, borne on four sides',
  limitState: 'strength',
  source: [
    { document: 'Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells', edition: '2nd', clause: 'art. 30, 44' },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(5)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F11', safety: 'allowable stress', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay, situation) =>
    spansAt(model, bay, situation).supports === 'four sides' || `in this direction the panel is held by ${spansAt(model, bay, situation).supports}`,
  inputs: {
    ...fieldInputs,
    h: { unit: '1', meaning: 'edges relied on as held (1) or hinged (0)', from: 'document: designs', read: (model, bay) => (panelAt(model, bay).design.edges === 'held' ? 1 : 0) },
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [...stresses(), { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' }],
    'allowable stress': [...stresses(), { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' }],
  },
  demand: 'sigma_Ed',
  capacity: 'sigma_Rd',
  second: {
    title: 'strip across the short span: hinged strip above, half of a held strip below',
    source: [{ document: 'common practice, no source' }],
    steps: [
      { symbol: 'sigma_strip', expression: '0.75 * p * min(a, b)^2 / t^2', unit: 'MPa', meaning: 'hinged strip of the short span' },
      { symbol: 'sigma_low', expression: 'sigma_strip / 6', unit: 'MPa', meaning: 'a sixth of it' },
    ],
    of: 'sigma_Ed',
    low: 'sigma_low',
    high: 'sigma_strip',
  },
  cautions: ['Linear bending; the membrane effect of large deflections is left out, which is safe for the panel alone.'],
};

function stresses() {
  const plate = ['a', 'b', 't', 'E', 'nu', 'p'] as const;
  return [
    { symbol: 'sigma_hinged', kernel: 'plate.hinged.stress', arguments: plate, unit: 'MPa', meaning: 'largest stress, edges hinged' },
    { symbol: 'sigma_held', kernel: 'plate.held.stress', arguments: plate, unit: 'MPa', meaning: 'largest stress, edges held' },
    { symbol: 'sigma_Ed', expression: 'h > 0 ? sigma_held : sigma_hinged', unit: 'MPa', meaning: 'largest stress of the edges relied on' },
  ] as const;
}
