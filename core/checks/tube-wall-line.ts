import type { Model } from '../model.ts';
import { missing, type Check } from './check.ts';
import { basisFactor } from './inputs.ts';
import { sectionAtEnd, tubeForces, tubeInputs, tubePlaces } from './tube-inputs.ts';

const { B, t, f_y } = tubeInputs;

/** Laps of the panels' edges that lie on a tube, m. */
const lapsOn = (model: Model, id: string): readonly number[] =>
  model.geometry.panels.flatMap(({ bearings }) => bearings.filter(({ tube }) => tube === id).map(({ lap }) => lap));

/** The tube's wall under the edge of a panel, as a strip from web to web. */
export const tubeWallLine: Check = {
  id: 'tube-wall-line',
  title: "Tube wall under a panel's edge",
  limitState: 'strength',
  source: [
    { document: 'beam tables: a load on a simple beam', clause: 'a strip of unit width', memory: true },
    { document: 'EN 1993-1-1', edition: '2005', clause: '6.2.1(4)', safety: 'partial factors', memory: true },
    { document: 'AISC 360', edition: '2016', clause: 'F11', safety: 'allowable stress', memory: true },
  ],
  places: tubePlaces,
  applies: (model, id) => lapsOn(model, id).length > 0 || 'no panel bears on this tube',
  inputs: {
    q: {
      unit: 'kN/m',
      meaning: "force per length of a panel's edge on the wall",
      from: 'loads: grid of tubes',
      read: (_, id, situation) => tubeForces(situation, id, ({ wallLine }) => Math.abs(wallLine)),
    },
    ...{ B, t, f_y },
    l_1: {
      unit: 'mm',
      meaning: "largest lap of a panel's edge from the tube's face: where the line lies",
      from: 'geometry',
      read: (model, id) =>
        sectionAtEnd(model, id).shape === 'round'
          ? missing('a rule for a line load along the wall of a round tube')
          : Math.max(...lapsOn(model, id)),
    },
    n_l: {
      unit: '1',
      meaning: 'lines on the wall: panels on one side of the tube (1) or on both (2)',
      from: 'geometry',
      read: (model, id) =>
        new Set(
          model.geometry.panels.flatMap(({ bearings }) =>
            bearings.filter(({ tube }) => tube === id).map(({ side }) => side),
          ),
        ).size,
    },
    gamma_M0: basisFactor('gamma_M0', 'partial factor on yielding', 'partial factors'),
    Omega_b: basisFactor('Omega_b', 'safety factor on yielding', 'allowable stress'),
  },
  steps: {
    'partial factors': [
      ...strip(),
      { symbol: 'sigma_Rd', expression: 'f_y / gamma_M0', unit: 'MPa', meaning: 'design yield stress' },
    ],
    'allowable stress': [
      ...strip(),
      { symbol: 'sigma_Rd', expression: 'f_y / Omega_b', unit: 'MPa', meaning: 'allowable stress at first yield' },
    ],
  },
  demand: 'sigma',
  capacity: 'sigma_Rd',
  second: {
    title: 'strip held at stiff corners below, hinged with the line at its middle above',
    source: [{ document: 'beam tables', clause: 'fixed ends, load at a', memory: true }],
    steps: [
      {
        symbol: 'sigma_low',
        expression: '6 * q * s * (b_w - s)^2 / (b_w^2 * t^2)',
        unit: 'MPa',
        meaning: 'corners stiff, one line, at the nearer corner',
      },
      {
        symbol: 'sigma_high',
        expression: '6 * n_l * q * b_w / (4 * t^2)',
        unit: 'MPa',
        meaning: 'hinged, line or lines at the middle',
      },
    ],
    of: 'sigma',
    low: 'sigma_low',
    high: 'sigma_high',
  },
  cautions: [
    'The corners are taken as hinges, which is safe: they are part of stiff webs.',
    'A panel that presses bears near the web and bends the wall less; the line is taken where the edge lies in both directions.',
    'Bending of the wall adds to the bending of the tube as a whole, across it; both near their limits ask for a shell analysis.',
  ],
};

function strip() {
  return [
    { symbol: 'b_w', expression: 'B - 2 * t', unit: 'mm', meaning: 'clear width between the webs' },
    {
      symbol: 's',
      expression: 'min(max(l_1, t) - t, b_w / 2)',
      unit: 'mm',
      meaning: 'line from the nearer web; past the middle counts as the middle',
    },
    {
      symbol: 'm_w',
      expression: 'n_l == 2 ? q * s : q * s * (b_w - s) / b_w',
      unit: 'N',
      meaning: 'moment of the hinged strip per length',
    },
    { symbol: 'sigma', expression: '6 * m_w / t^2', unit: 'MPa', meaning: 'bending stress of the wall' },
  ] as const;
}
