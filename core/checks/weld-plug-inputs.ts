import type { Plug } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { missing, type Input } from './check.ts';
import { panelAt } from './field-inputs.ts';
import { weldAt, welded } from './weld-inputs.ts';

/** True where the panel has plug welds, or why no check of them applies. */
export function plugged(model: Model, bay: string): true | string {
  const applies = welded(model, bay);
  if (applies !== true) return applies;
  return weldAt(model, bay).plugs ? true : 'the panel has no plug welds';
}

const over =
  (value: (plugs: readonly Plug[]) => number): Input['read'] =>
  (model, bay) => {
    const { plugs } = panelAt(model, bay);
    return plugs.length > 0
      ? value(plugs)
      : missing('plug welds: no side of the panel is long enough for their edge distances');
  };

/** Sizes of plug welds, by symbol. */
export const plugInputs = {
  d_p: {
    unit: 'mm',
    meaning: 'diameter of the plug welds',
    from: 'document: fixing',
    read: (model, bay) => weldAt(model, bay).plugs?.diameter.si ?? missing('plug welds'),
  },
  t_0: {
    unit: 'mm',
    meaning: 'thickness of the panel as made',
    from: 'document: designs',
    read: (model, bay) => panelAt(model, bay).thickness,
  },
  p_far: {
    unit: 'mm',
    meaning: 'largest distance of plugs along a row',
    from: 'geometry',
    read: over((plugs) => Math.max(...plugs.map(({ pitch }) => pitch))),
  },
  p_near: {
    unit: 'mm',
    meaning: 'smallest distance of plugs along a row',
    from: 'geometry',
    read: over((plugs) => Math.min(...plugs.map(({ pitch }) => pitch))),
  },
} as const satisfies Readonly<Record<string, Input>>;

export const plugCautions = [
  'Plug welds carry no pull off the tube (EN 1993-1-8, 4.3.5): that is left to the weld of the edge.',
  'Under a load that turns round the panel is judged at its plugs by the class of AISC 360; the plugs’ own shear by that of a fillet’s throat. Fill the hole in layers; slag in its rim is not seen from outside.',
] as const;
