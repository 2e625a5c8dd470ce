import { missing, type Check, type Step } from './check.ts';
import { constant } from './inputs.ts';

/** Fatigue of the plate: what is known of its cycles is printed, and nothing is promised. */
export const fatigue: Check = {
  id: 'fatigue',
  title: 'Fatigue of the plate',
  limitState: 'fatigue',
  source: [{ document: 'EN 1993-1-9', edition: '2005', clause: '7.1', memory: true }],
  places: () => ['plate'],
  applies: () => true,
  once: true,
  inputs: {
    F_s: {
      unit: 'kN',
      meaning: 'stated force of service',
      from: 'document: loads',
      read: ({ document }) => document.loads.service.force.si,
    },
    k_a: {
      unit: '1',
      meaning: 'amplitude over stated force: 1 for an amplitude, a half for a range',
      from: 'document: loads',
      read: ({ document }) => (document.loads.service.measure === 'range' ? 0.5 : 1),
    },
    n_y: {
      unit: '1',
      meaning: 'cycles a year',
      from: 'document: loads',
      read: ({ document }) => document.loads.service.cyclesPerYear,
    },
    L: { unit: 'year', meaning: 'life', from: 'document: basis', read: ({ document }) => document.basis.life.si },
    year: constant(1, 'year', 'one year', 'definition'),
    N_C: constant(2e6, '1', 'cycles that a detail class refers to', 'EN 1993-1-9, 7.1'),
    sigma_r: {
      unit: 'MPa',
      meaning: 'stress range at the worst detail',
      from: 'not held',
      read: () =>
        missing(
          'no detail classes, stress ranges and S-N curves are held yet; a margin on yield says nothing about life',
        ),
    },
    sigma_C: {
      unit: 'MPa',
      meaning: 'detail class',
      from: 'not held',
      read: () => missing('the detail classes of the welds and holes'),
    },
  },
  steps: { 'partial factors': damage(), 'allowable stress': damage() },
  demand: 'D',
  capacity: 'D_lim',
  second: {
    title: 'the slope of 5 below the knee at 5 million cycles, which air or good protection would allow',
    source: [{ document: 'EN 1993-1-9', edition: '2005', clause: '7.1(3)', memory: true }],
    steps: [
      { symbol: 'sigma_D', expression: 'cbrt(2 / 5) * sigma_C', unit: 'MPa', meaning: 'stress range at the knee' },
      {
        symbol: 'D_low',
        expression:
          'sigma_r < sigma_D ? N_L / (5 / 2 * N_C) * (sigma_r / sigma_D)^5 : N_L / N_C * (sigma_r / sigma_C)^3',
        unit: '1',
        meaning: 'damage with the slope of 5',
      },
    ],
    of: 'D',
    low: 'D_low',
  },
  cautions: [
    'A plate that moves with the waves sees millions of cycles: fatigue of welds, holes and bolts, not yield, often sets its life.',
    'The stated force is taken for every cycle here, which is safe for an extreme force; a long-term distribution gives less.',
  ],
};

function damage(): readonly Step[] {
  return [
    { symbol: 'F_a', expression: 'k_a * F_s', unit: 'kN', meaning: 'amplitude of the force' },
    { symbol: 'F_r', expression: '2 * F_a', unit: 'kN', meaning: 'range of the force' },
    { symbol: 'N_L', expression: 'n_y * L / year', unit: '1', meaning: 'cycles in the life' },
    {
      symbol: 'D',
      expression: 'N_L / N_C * (sigma_r / sigma_C)^3',
      unit: '1',
      meaning: 'damage over the life, constant range',
    },
    { symbol: 'D_lim', expression: '1', unit: '1', meaning: 'limit, before a factor for access and consequence' },
  ];
}
