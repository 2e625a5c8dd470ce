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
  ],
  places: fieldPlaces,
  applies: (model, bay) => {
    const applies = welded(model, bay);
    if (applies !== true) return applies;
    return ofAluminium(model, bay) || 'the parts are not of aluminium, or the basis has no rule for it here';
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
    gamma_Mw: constant(1.25, '1', 'partial factor on welds in aluminium', 'EN 1999-1-1, 8.6.3.1'),
  },
  steps: { 'partial factors': steps },
  solved: solvedWeldForces,
  demand: 'u',
  capacity: 'u_Rd',
  second: {
    title: 'resultant whatever its direction: √3 of it on the weaker of weld and zone above, itself on the weld metal below',
    source: [{ document: 'EN 1999-1-1', edition: '2007', clause: '8.6.3; bounds derived by hand', memory: true }],
    steps: [
      { symbol: 'u_high', expression: 'sqrt(3) * f_w * gamma_Mw / min(f_w_k, f_u_haz) * max(1 / a_w, 1 / t)', unit: '1', meaning: 'larger' },
      { symbol: 'u_low', expression: 'f_r * gamma_Mw / (a_w * f_w_k)', unit: '1', meaning: 'smaller' },
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
