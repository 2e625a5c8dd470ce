import type { Check, Step } from './check.ts';
import { fieldInputs, fieldPlaces, panelAt } from './field-inputs.ts';
import { bucklingInputs, bucklingResistance, bucklingSources } from './panel-buckling-steps.ts';
import { bucklingFactor, membraneStress, ofPanel, partLost, thicknessAsMade } from './solved-inputs.ts';

const { a, b, t, E, nu } = fieldInputs;

/** Buckling of a panel in its plane, by the whole plate's buckling factor. */
export const panelBuckling: Check = {
  id: 'panel-buckling',
  title: 'Panel buckling in its plane',
  limitState: 'stability',
  source: bucklingSources,
  places: fieldPlaces,
  applies: (model, _, situation) =>
    model.solved === null
      ? 'the plate is not solved as one structure: panels are judged by what tubes with panels on them can hand over'
      : (partLost(model, situation) ?? true),
  inputs: {
    sigma_n: membraneStress,
    alpha_n: bucklingFactor,
    own: ofPanel(
      '1',
      'this panel is the part that gives way first (1) or another is (0)',
      (_, model, bay, { buckling }) => (buckling?.part === panelAt(model, bay).id ? 1 : 0),
    ),
    t_n: thicknessAsMade,
    ...{ a, b, t, E, nu },
    ...bucklingInputs,
  },
  steps: {
    'partial factors': [...pressed(), ...bucklingResistance['partial factors']],
    'allowable stress': [...pressed(), ...bucklingResistance['allowable stress']],
  },
  demand: 'sigma_m',
  capacity: 'sigma_Rd',
  second: {
    title:
      'where this panel gives way first: a field on hinged lines, pressed both ways everywhere as hard as its worst place can be',
    source: [
      {
        document: 'Timoshenko and Gere, Theory of Elastic Stability',
        edition: '2nd',
        clause: 'ch. 9, hinged edges, equal compression both ways',
        memory: true,
      },
    ],
    steps: [
      {
        symbol: 'sigma_e',
        expression: 'pi^2 * E * t^2 / (12 * (1 - nu^2)) * (1 / a^2 + 1 / b^2)',
        unit: 'MPa',
        meaning: 'buckling stress of the field, equal both ways',
      },
      {
        symbol: 'alpha_low',
        expression: 'own > 0 ? sqrt(3) / 2 * sigma_e / sigma_m : 0 * alpha_cr',
        unit: '1',
        meaning: 'over the largest principal stress that goes with the von Mises stress, 2/sqrt(3) of it',
      },
    ],
    of: 'alpha_cr',
    low: 'alpha_low',
  },
  cautions: [
    'The factor is the lowest of the whole plate under this loading, whichever panel gives way: another panel is judged with less than it has.',
    'Elastic, from a flat start and linear: contact that was closed stays closed. The buckling curve stands for first bow and welding stress.',
    'Side pressure bends the panel besides: what it adds is judged as panel stress, enlarged by the same factor.',
  ],
};

function pressed(): readonly Step[] {
  return [
    {
      symbol: 'sigma_m',
      expression: 'sigma_n * t_n / t',
      unit: 'MPa',
      meaning: 'stress in the plane at the end of life',
    },
    {
      symbol: 'alpha_cr',
      expression: 'alpha_n * (t / t_n)^3',
      unit: '1',
      meaning: 'buckling factor at the end of life: the same forces on a thinner plate',
    },
  ];
}
