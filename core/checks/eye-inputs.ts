import { ultimateOf, yieldOf } from '../catalogue/strength-at-thickness.ts';
import type { Material } from '../catalogue/rows.ts';
import { attachmentPoints, type AttachmentPoint } from '../geometry/attachment-points.ts';
import type { Tube } from '../geometry/geometry.ts';
import type { LegPull, Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { oncePerModel } from '../once-per-model.ts';
import { missing, type Input, type Reading } from './check.ts';
import { partialFactor } from './partial-factor.ts';

const eyesOf = oncePerModel(({ document, geometry }) => attachmentPoints(document, geometry));

/** Places of checks on an eye: the id of an attachment or pad eye. */
export const eyePlaces = (model: Model): readonly string[] => eyesOf(model).map(({ id }) => id);

export const eyeAt = (model: Model, id: string): AttachmentPoint =>
  eyesOf(model).find((point) => point.id === id) as AttachmentPoint;

/** True where the eye is pulled in this situation, or why a check of it does not apply. */
export const eyePulled = (_: Model, id: string, situation: Situation): true | string =>
  situation.missing !== undefined ||
  (situation.legs.get(id)?.tension ?? 0) !== 0 ||
  'nothing pulls at this eye in any case';

/** The tube that the eye stands on, or what is missing. */
export function onTube(model: Model, id: string, value: (tube: Tube) => Reading): Reading {
  const { tube } = eyeAt(model, id);
  return tube ? value(tube) : missing(`a tube under eye ${id}: it stands on none`);
}

export const materialOfEye = (model: Model, id: string): Material =>
  model.catalogue.material(eyeAt(model, id).eye.material);

/** Thickness that one face of an eye loses within the life, m. */
const lossOf = (model: Model): number => model.document.protection.lossPerFace.tubeOutside.si;

/** Partial factor on yielding of the eye and its foot plate. */
export const eyeYieldFactor = partialFactor('gamma_M0', 'partial factor on yielding', (model, id) => [
  materialOfEye(model, id),
]);

/** Strength of a plate of the eye, by the rules for steel. */
export const strengthOfEye = (model: Model, id: string, of: typeof yieldOf, thickness: number): Reading => {
  const material = materialOfEye(model, id);
  return material.family === 'carbon steel' || material.family === 'stainless steel'
    ? of(material, thickness)
    : missing(`a rule for eyes of ${material.title}: those held here are for steel`);
};

const pull = (unit: string, meaning: string, value: (leg: LegPull, tube: Tube | null) => Reading): Input => ({
  unit,
  meaning,
  from: 'loads: legs',
  read: (model, id, situation) => {
    const leg = situation.legs.get(id);
    return leg ? value(leg, eyeAt(model, id).tube) : missing(`the pull at eye ${id} in this case`);
  },
});

const inPlan =
  (axis: 'along' | 'across') =>
  (leg: LegPull, tube: Tube | null): Reading => {
    if (!tube) return missing('a tube under the eye: its plane follows the tube');
    return Math.abs((tube.set === 'main') === (axis === 'along') ? leg.x : leg.y);
  };

/** Pull at the eye, load factor included, by symbol; sizes: a strut's push is taken as a pull. */
export const eyeForceInputs = {
  F: pull('kN', 'pull along the leg or line', ({ tension }) => Math.abs(tension)),
  F_z: pull('kN', 'part of the pull square to the tube', ({ tension, angle }) => Math.abs(tension) * Math.cos(angle)),
  F_l: pull('kN', "part of the pull along the tube, in the eye's plane", inPlan('along')),
  F_q: pull('kN', "part of the pull across the tube, across the eye's plane", inPlan('across')),
} as const satisfies Readonly<Record<string, Input>>;

const size = (meaning: string, value: (eye: AttachmentPoint['eye'], loss: number) => number): Input => ({
  unit: 'mm',
  meaning: `${meaning}, end of life`,
  from: 'document: eye, corrosion',
  read: (model, id) => {
    const left = value(eyeAt(model, id).eye, lossOf(model));
    return left > 0 ? left : missing(`${meaning}: nothing of it is left at the end of life`);
  },
});

/** Sizes and strengths of the eye, by symbol. The eye is taken as round-headed: as wide at its hole as it is high above it. */
export const eyeInputs = {
  t_e: size('thickness', ({ thickness }, loss) => thickness.si - 2 * loss),
  t_c: size('thickness of one cheek plate', ({ cheek }, loss) => (cheek?.thickness.si ?? 0) - loss),
  t_p: size('thickness at the pin, cheek plates counted', ({ thickness, cheek }, loss) => thickness.si + 2 * (cheek?.thickness.si ?? 0) - 2 * loss), // prettier-ignore
  d_0: size('hole', ({ holeDiameter }, loss) => holeDiameter.si + 2 * loss),
  d: { unit: 'mm', meaning: 'pin', from: 'document: eye', read: (model, id) => eyeAt(model, id).eye.pinDiameter.si },
  a_e: size(
    "hole's rim to the edge, in the direction of pull",
    ({ edge, holeDiameter }, loss) => edge.si - holeDiameter.si / 2 - 2 * loss,
  ),
  c_e: size(
    "hole's rim to the edge, to either side",
    ({ edge, width, holeDiameter }, loss) => Math.min(edge.si, width.si / 2) - holeDiameter.si / 2 - 2 * loss,
  ),
  h_e: {
    unit: 'mm',
    meaning: "hole's centre above the tube's face",
    from: 'document: eye',
    read: (model, id) => eyeAt(model, id).eye.height.si,
  },
  l_e: size('length of the foot along the tube', ({ width }, loss) => width.si - 2 * loss),
  f_y: {
    unit: 'MPa',
    meaning: 'yield strength of the eye',
    from: 'catalogue: materials',
    read: (model, id) => strengthOfEye(model, id, yieldOf, eyeAt(model, id).eye.thickness.si),
  },
  f_u: {
    unit: 'MPa',
    meaning: 'ultimate strength of the eye',
    from: 'catalogue: materials',
    read: (model, id) => strengthOfEye(model, id, ultimateOf, eyeAt(model, id).eye.thickness.si),
  },
} as const satisfies Readonly<Record<string, Input>>;

/** A hole that its pin cannot enter fails whatever the numbers are. */
export function pinRule(model: Model, id: string): string | undefined {
  const { pinDiameter, holeDiameter } = eyeAt(model, id).eye;
  return pinDiameter.si > holeDiameter.si
    ? `the pin (${pinDiameter.typed}) is larger than its hole (${holeDiameter.typed})`
    : undefined;
}

export const eyeCautions = [
  'A single load path: if this eye, its pin or its weld lets go, nothing else holds this corner. Have it tested and inspected.',
  'Local lifting rules may ask for larger factors, a proof load and a certificate; they come first.',
] as const;
