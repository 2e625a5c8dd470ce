import { bolted, boltInputs } from './bolt-inputs.ts';
import { boltForceCautions, tensionInputs, tensionSteps } from './bolt-force-steps.ts';
import { tighteningInputs } from './bolt-tightening.ts';
import { missing, type Check, type Step } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { solvedBoltForces } from './solved-inputs.ts';

const { d, d_0 } = boltInputs;
const { T_t, k_low } = tighteningInputs;

const pressure: readonly Step[] = [
  ...tensionSteps,
  { symbol: 'F_hi', expression: 'T_t / (k_low * d)', unit: 'kN', meaning: 'largest preload: the smoothest thread' },
  {
    symbol: 'A_n',
    expression: 'pi / 4 * (d_w^2 - d_0^2)',
    unit: 'mm^2',
    meaning: 'area of the washer on the panel, hole left out',
  },
  {
    symbol: 'p_w',
    expression: '(F_hi + F_t) / A_n',
    unit: 'MPa',
    meaning: 'pressure under the washer: all of the preload and of the pull with its prying (a soft panel gives the bolt all of it)',
  },
]; // prettier-ignore

/** Washer on a panel of plastic or laminate: it sinks in under a pressure that lasts. */
export const boltWasherPressure: Check = {
  id: 'bolt-washer-pressure',
  title: 'Washer on a soft panel',
  limitState: 'strength',
  source: [
    { document: 'pressure on the area of the washer: statics' },
    { document: 'the source that the document names for the bearing stress', clause: 'under the load’s duration' },
    { document: 'Shigley, Mechanical Engineering Design', clause: 'T = k d F', memory: true },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = bolted(model, bay);
    if (applies !== true) return applies;
    const { family } = panelAt(model, bay).material;
    return family === 'thermoplastic' || family === 'laminate' || 'the panel is of metal: it does not creep under a washer'; // prettier-ignore
  },
  inputs: {
    ...tensionInputs,
    ...{ d, d_0, T_t, k_low },
    p_Rd: {
      unit: 'MPa',
      meaning: 'bearing stress that the panel bears for the duration of its load, as a design value',
      from: 'document: designs, long-term values',
      read: (model, bay) =>
        panelAt(model, bay).design.longTerm?.bearing?.si ??
        missing(
          `the bearing stress that ${panelAt(model, bay).material.title} bears under a washer for the duration of its load ("bearing" of the long-term values, with their source)`,
        ),
    },
  },
  steps: { 'partial factors': pressure, 'allowable stress': pressure },
  solved: { inputs: solvedBoltForces },
  demand: 'p_w',
  capacity: 'p_Rd',
  range: [{ holds: 'd_w > d_0', otherwise: 'the washer is no wider than the hole: give the panel a plate washer' }],
  second: {
    title: 'below, the preload on the whole disc of the washer; above, all of it on the ring of the head, half as wide',
    source: [{ document: 'statics, bounds derived by hand' }],
    steps: [
      { symbol: 'p_low', expression: 'F_hi / (pi / 4 * d_w^2)', unit: 'MPa', meaning: 'smaller' },
      { symbol: 'p_high', expression: '(F_hi + F_t) / (pi / 8 * (d_w^2 - d_0^2))', unit: 'MPa', meaning: 'larger' },
    ],
    of: 'p_w',
    low: 'p_low',
    high: 'p_high',
  },
  cautions: [
    ...boltForceCautions,
    'A panel that creeps lets go of its preload and the joint slips: a metal sleeve through the panel takes the preload off it. Wider washers lower the pressure; spring washers follow the creep.',
  ],
};
