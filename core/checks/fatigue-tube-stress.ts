import type { Model } from '../model.ts';
import { missing, type Input, type Missing, type Reading, type Step } from './check.ts';
import { fromSwing, graverAtEnd, restOfPlate, type End } from './fatigue-swing.ts';
import { carbonSteel } from './fatigue-steel.ts';
import { sectionAtEnd, tubeAt } from './tube-inputs.ts';

const force = (end: End, unit: string, meaning: string, of: 'moment' | 'axial', solved: 'M' | 'N'): Input => ({
  unit,
  meaning: `${meaning}, force ${end}, no load factor`,
  from: fromSwing('grid of tubes'),
  read: (model, id, situation): Reading => {
    const forces = model.loads.swing[end].tubes.get(id);
    return forces
      ? graverAtEnd(model, end, restOfPlate.read(model, id, situation), forces[of], ({ tubes }) => tubes[id]?.[solved])
      : missing(`the forces inside tube ${id}: the grid is not solved at the ends of the cycle`);
  },
});

const size = (unit: string, meaning: string, of: 'elasticY' | 'area' | 'width'): Input => ({
  unit,
  meaning: `${meaning}, end of life`,
  from: 'catalogue: sections; document: corrosion',
  read: (model, id) => sectionAtEnd(model, id)[of],
});

/** Bending and axial force of a tube at both ends of the cycle, and the section that takes them. Largest along the tube. */
export const tubeStressInputs = {
  M_up: force('up', 'kN*m', 'largest bending moment', 'moment', 'M'),
  M_dn: force('down', 'kN*m', 'largest bending moment', 'moment', 'M'),
  N_up: force('up', 'kN', 'largest axial force', 'axial', 'N'),
  N_dn: force('down', 'kN', 'largest axial force', 'axial', 'N'),
  W_el: size('cm^3', 'elastic modulus', 'elasticY'),
  A: size('cm^2', 'area', 'area'),
} as const satisfies Readonly<Record<string, Input>>;

export const flangeWidth = size('mm', 'width, or outer diameter', 'width');

/** Nominal stress of the tube at both ends of the cycle; `net`: over the part of the flange that holes leave, as an expression. */
export const tubeStressSteps = (net?: string): readonly Step[] =>
  (['up', 'dn'] as const).map((at) => ({
    symbol: `s_${at}`,
    expression: net ? `(M_${at} / W_el + N_${at} / A) / (${net})` : `M_${at} / W_el + N_${at} / A`,
    unit: 'MPa',
    meaning: `nominal stress of the tube, force ${at === 'up' ? 'up' : 'down'}`,
  }));

/** What keeps a tube from having a curve, or undefined. */
export const steelOfTube = (model: Model, id: string): Missing | undefined => carbonSteel(tubeAt(model, id).material);

export const tubeStressCaution =
  'The largest moment along the tube is taken at every detail on it, and the ends of the cycle are added as if they bent the same section opposite ways.';
