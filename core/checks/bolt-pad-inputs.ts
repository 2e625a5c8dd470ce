import type { Model } from '../model.ts';
import type { Quantity } from '../quantity/kinds.ts';
import { bolted, fixingAt, tubesUnder } from './bolt-inputs.ts';
import { missing, type Input } from './check.ts';
import { correlationOfParts, ultimateOfParts, type WeldedPart } from './weld-strength.ts';

/** True where the bolts screw into pads inside the tube, or why not. */
export function intoPad(model: Model, bay: string): true | string {
  const applies = bolted(model, bay);
  if (applies !== true) return applies;
  return fixingAt(model, bay).into === 'tapped pad' || 'the bolt does not screw into a tapped pad';
}

const noPad = missing('the tapped pad: its material, thickness, width and weld ("pad" of the fixing)');

type Pad = NonNullable<ReturnType<typeof fixingAt>['pad']>;

const ofPad = (meaning: string, value: (pad: Pad) => Quantity): Input => ({
  unit: 'mm',
  meaning,
  from: 'document: fixing',
  read: (model, bay) => {
    const { pad } = fixingAt(model, bay);
    return pad ? value(pad).si : noPad;
  },
});

/** The pad and the walls it is welded to. */
export function padParts(model: Model, bay: string): readonly WeldedPart[] {
  const { pad } = fixingAt(model, bay);
  const walls = tubesUnder(model, bay).map(({ material, section }) => ({ material, thickness: section.nominalWall }));
  return pad ? [{ material: model.catalogue.material(pad.material), thickness: pad.thickness.si }, ...walls] : walls;
}

/** Inputs of the pad, by symbol. */
export const padInputs = {
  L_e: ofPad('thickness of the pad: length of thread engaged', ({ thickness }) => thickness),
  b_d: ofPad('width of the square pad', ({ width }) => width),
  a_d: ofPad('throat of the weld round the pad', ({ throat }) => throat),
  f_ud: {
    unit: 'MPa',
    meaning: 'ultimate strength of the pad',
    from: 'catalogue: materials',
    read: (model, bay) => {
      const { pad } = fixingAt(model, bay);
      return pad
        ? ultimateOfParts([{ material: model.catalogue.material(pad.material), thickness: pad.thickness.si }])
        : noPad;
    },
  },
  f_uj: {
    unit: 'MPa',
    meaning: 'ultimate strength of the weaker of pad and wall',
    from: 'catalogue: materials',
    read: (model, bay) => (fixingAt(model, bay).pad ? ultimateOfParts(padParts(model, bay)) : noPad),
  },
  beta_w: {
    unit: '1',
    meaning: 'correlation factor of fillet welds',
    from: 'catalogue: materials',
    only: 'partial factors',
    read: (model, bay) => (fixingAt(model, bay).pad ? correlationOfParts(padParts(model, bay)) : noPad),
  },
} as const satisfies Readonly<Record<string, Input>>;
