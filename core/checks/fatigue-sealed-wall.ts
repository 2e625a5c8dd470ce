import type { Model } from '../model.ts';
import { fromUnit } from '../quantity/format-quantity.ts';
import type { Check, Missing } from './check.ts';
import {
  damageBounds,
  damageInputs,
  detailSources,
  fatigueCautions,
  fatigueCheck,
  underBoth,
  type DetailClass,
} from './fatigue-damage.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { constant } from './inputs.ts';
import { depthInputs, sealed, sealedWallSteps } from './sealed-wall-steps.ts';
import { tubeAt, tubeInputs, tubePlaces } from './tube-inputs.ts';

const { round, H, B, t } = tubeInputs;
const month = fromUnit(1, 'year') / 12;

function classAt(model: Model, id: string): DetailClass | Missing {
  const { material, section } = tubeAt(model, id);
  return carbonSteel(material) ?? { category: 71, thickness: section.wall };
}

const {
  n_eq: _ofTheForce,
  n_s: _slams,
  k_s: _slamOver,
  ...curveInputs
} = damageInputs(classAt, 'opposite', () => fatigueSealedWall);

/** The wall of a sealed tube gives way to the water's pressure and comes back: by every deployment, and a little by every wave. */
export const fatigueSealedWall: Check = {
  ...fatigueCheck,
  id: 'fatigue-sealed-wall',
  title: 'Fatigue of a sealed tube: wall under the pressure of each deployment',
  source: detailSources('Table 8.3, butt weld from one side, tested: category 71, for the tube’s own seam', true),
  places: tubePlaces,
  applies: sealed,
  inputs: {
    ...depthInputs,
    gamma_F: constant(1, '1', 'no load factor in fatigue', 'EN 1993-1-9'),
    ...{ round, H, B, t },
    z_m: {
      unit: 'm',
      meaning: 'amplitude of the plate’s motion in a wave, 0 where the document states none',
      from: 'document: hydrodynamics',
      read: ({ document }) => document.hydrodynamics?.motion?.amplitude.si ?? 0,
    },
    ...curveInputs,
    n_eq: {
      unit: '1',
      meaning:
        'deployments in the life: by the length of one, once a month where the document says nothing of recovery',
      from: 'document: recovery',
      read: ({ document: { basis, recovery } }) => Math.ceil(basis.life.si / (recovery?.deployment.si ?? month)),
    },
    n_s: {
      unit: '1',
      meaning: 'waves in the life',
      from: 'document: loads',
      read: ({ document: { basis, loads } }) => (loads.service.cyclesPerYear * basis.life.si) / fromUnit(1, 'year'),
    },
  },
  steps: underBoth([
    ...sealedWallSteps.filter(({ symbol }) => symbol !== 'p_cr'),
    { symbol: 'sigma_r', expression: 'sigma', unit: 'MPa', meaning: 'range of the stress from deck to depth and back' },
    { symbol: 'k_s', expression: '2 * z_m / z', unit: '1', meaning: 'range of the pressure in a wave over that' },
    { symbol: 'k_t', expression: 't_d > t_ref ? (t_d / t_ref)^k_x : 1', unit: '1', meaning: 'thickness effect' },
    { symbol: 'x_1', expression: 'k_t * sigma_r / S_k', unit: '1', meaning: 'range over that at the knee' },
    { symbol: 'x_h', expression: 'k_s * x_1', unit: '1', meaning: 'range of a wave over that at the knee' },
    {
      symbol: 'D_d',
      expression: 'n_eq / N_k * (x_1 > 1 ? x_1^m_1 : x_1^m_2)',
      unit: '1',
      meaning: 'damage of the deployments, by Palmgren and Miner',
    },
    {
      symbol: 'D_h',
      expression: 'n_s / N_k * (x_h > 1 ? x_h^m_1 : x_h^m_2)',
      unit: '1',
      meaning: 'damage of the waves, as the plate rises and sinks with them',
    },
    { symbol: 'D', expression: 'D_d + D_h', unit: '1', meaning: 'damage in the life' },
    { symbol: 'D_lim', expression: '1 / DFF', unit: '1', meaning: 'damage that the design fatigue factor leaves' },
  ]),
  second: damageBounds('opposite'),
  cautions: [
    ...fatigueCautions,
    'The seam is taken where the wall bends most. A leak that is not seen ends this: weigh the plate in water at each lift.',
    'The pressure of the wave itself at the plate is left out: it falls with depth, and lags the motion.',
  ],
};
