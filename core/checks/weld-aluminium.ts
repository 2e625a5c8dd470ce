import type { Model } from '../model.ts';
import { missing, type Check, type Step } from './check.ts';
import { fieldInputs, fieldPlaces, panelAt } from './field-inputs.ts';
import { lineForceSteps, throatStressSteps } from './fillet-steps.ts';
import { constant } from './inputs.ts';
import { solvedWeldForces } from './solved-inputs.ts';
import { weldForceCautions, weldForceSteps } from './weld-force-steps.ts';
import { ofAluminium, partsAt, weldAt, welded, weldForceInputs, weldRule, weldStrengthInputs } from './weld-inputs.ts';

const { p, a, b, t, E, nu } = fieldInputs;

const heatAffected = (model: Model, bay: string): number | undefined => {
  const beside = partsAt(model, bay).map(({ material }) => material.heatAffected?.ultimate);
  return beside.every((one) => one !== undefined) ? Math.min(...beside) : undefined;
};

/** By the Aluminum Design Manual: shear of the filler on its throat, of the softened zone on a leg and through the panel. */
const allowable: readonly Step[] = [
  ...weldForceSteps,
  ...lineForceSteps({ along: false, root: true }),
  {
    symbol: 'f_fill',
    expression: 'F_suf * a_w / Omega_w',
    unit: 'N/mm',
    meaning: 'allowable force per length of the filler, on its throat',
  },
  { symbol: 'F_suw', expression: '0.6 * f_u_haz', unit: 'MPa', meaning: 'shear strength beside the weld' },
  {
    symbol: 'f_base',
    expression: 'F_suw * min(sqrt(2) * a_w, t) / Omega_w',
    unit: 'N/mm',
    meaning: 'allowable force per length of the softened zone: on a leg of the weld, or through the panel at its toe',
  },
  { symbol: 'q_f', expression: 'sqrt(3) * F_suf / Omega_w', unit: 'MPa', meaning: 'filler, as a stress without shear' },
  {
    symbol: 'q_w',
    expression: 'sqrt(3) * min(F_suf, F_suw) / Omega_w',
    unit: 'MPa',
    meaning: 'weaker of filler and zone, as a stress without shear',
  },
  { symbol: 'u', expression: 'f_w / min(f_fill, f_base)', unit: '1', meaning: 'force over allowable force' },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
];

const steps: readonly Step[] = [
  ...weldForceSteps,
  ...throatStressSteps({ along: false, root: true }),
  ...lineForceSteps({ along: false, root: true }),
  { symbol: 'u_w', expression: 'sigma_v / (f_w_k / gamma_Mw)', unit: '1', meaning: 'equivalent stress of the weld metal over f_w / γ_Mw' },
  {
    symbol: 's_haz',
    expression: 'sqrt(max(f_z, f_h)^2 + 3 * min(f_z, f_h)^2) / (sqrt(2) * a_w)',
    unit: 'MPa',
    meaning: 'equivalent stress where weld and part meet, on a leg: the larger force across it, the smaller along it',
  },
  {
    symbol: 's_haz_v',
    expression: 'sqrt(min(f_z, f_h)^2 + 3 * max(f_z, f_h)^2) / (sqrt(2) * a_w)',
    unit: 'MPa',
    meaning: 'the same on the other leg, forces exchanged',
  },
  {
    symbol: 's_toe',
    expression: 'sqrt(f_h^2 + 3 * f_z^2) / t',
    unit: 'MPa',
    meaning: 'equivalent stress of the panel at the toe, over its thickness',
  },
  {
    symbol: 'u_haz',
    expression: 'max(s_haz, s_haz_v, s_toe) / (f_u_haz / gamma_Mw)',
    unit: '1',
    meaning: 'zone softened by heat, beside the weld and at its toe',
  },
  { symbol: 'q_f', expression: 'f_w_k / gamma_Mw', unit: 'MPa', meaning: 'design strength of the weld metal' },
  { symbol: 'q_w', expression: 'min(f_w_k, f_u_haz) / gamma_Mw', unit: 'MPa', meaning: 'design strength of the weaker of weld metal and zone' },
  { symbol: 'u', expression: 'max(u_w, u_haz)', unit: '1', meaning: 'the larger of both' },
  { symbol: 'u_Rd', expression: '1', unit: '1', meaning: 'limit' },
]; // prettier-ignore

/** Weld of an aluminium panel on aluminium tubes: the filler's own strength, and the zones softened by heat. */
export const weldAluminium: Check = {
  id: 'weld-aluminium',
  title: 'Weld of an aluminium panel',
  limitState: 'strength',
  source: [
    {
      document: 'EN 1999-1-1',
      edition: '2007',
      clause: '8.6.3.3, 8.6.3.4, Table 8.8',
      safety: 'partial factors',
      memory: true,
    },
    {
      document: 'Aluminum Design Manual',
      edition: '2015',
      clause: 'J.2.2 (fillet welds), A.3 (strengths); the safety factor 1.95 also as a public page quotes it',
      safety: 'allowable stress',
      memory: true,
    },
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    if (applies !== true) return applies;
    return ofAluminium(model, bay) || 'the parts are not of aluminium';
  },
  rule: weldRule,
  inputs: {
    ...{ p, a, b, t, E, nu },
    ...weldForceInputs,
    a_w: weldStrengthInputs.a_w,
    f_w_k: {
      unit: 'MPa',
      meaning: 'characteristic strength of the weld metal, by filler and parent metal',
      from: 'catalogue: weld metals',
      only: 'partial factors',
      read: (model, bay) => {
        const filler = model.catalogue.weldMetal(weldAt(model, bay).metal);
        return filler.family === 'aluminium' && filler.ultimate !== null
          ? filler.ultimate
          : missing('the strength of the filler on this alloy: name it, as “5356 on 5083”, or add its row (EN 1999-1-1, Table 8.8)'); // prettier-ignore
      },
    },
    f_u_haz: {
      unit: 'MPa',
      meaning: 'ultimate strength beside the weld, of the weaker part',
      from: 'catalogue: materials',
      read: (model, bay) =>
        heatAffected(model, bay) ?? missing(`the strength beside a weld of ${panelAt(model, bay).material.title}`),
    },
    gamma_Mw: { ...constant(1.25, '1', 'partial factor on welds in aluminium', 'EN 1999-1-1, 8.6.3.1, from memory'), only: 'partial factors' },
    F_suf: {
      unit: 'MPa',
      meaning: 'shear strength of the filler',
      from: 'catalogue: weld metals',
      only: 'allowable stress',
      read: (model, bay) =>
        model.catalogue.weldMetal(weldAt(model, bay).metal).shear ??
        missing('the shear strength of the filler: name an aluminium filler, as “5356 on 5083”, or add its row with "shear" (Aluminum Design Manual, A.3)'),
    },
    Omega_w: { ...constant(1.95, '1', 'safety factor on welds in aluminium, as of a building', 'Aluminum Design Manual, J.2'), only: 'allowable stress' },
  },
  steps: { 'partial factors': steps, 'allowable stress': allowable },
  solved: solvedWeldForces,
  demand: 'u',
  capacity: 'u_Rd',
  second: {
    title: 'resultant whatever its direction: √3 of it on the weaker of weld and zone above, itself on the weld metal below',
    source: [{ document: 'von Mises', clause: 'bounds derived by hand' }],
    steps: [
      { symbol: 'u_high', expression: 'sqrt(3) * f_w / q_w * max(1 / a_w, 1 / t)', unit: '1', meaning: 'larger' },
      { symbol: 'u_low', expression: 'f_r / (a_w * q_f)', unit: '1', meaning: 'smaller' },
    ],
    of: 'u',
    low: 'u_low',
    high: 'u_high',
  },
  cautions: [
    ...weldForceCautions,
    'The zone softened by heat reaches some 20 to 40 mm from the weld: the panel is judged with its strengths there. Filler and alloy follow EN 1011-4; 5083 takes no filler of the 4000 series.',
  ],
}; // prettier-ignore
