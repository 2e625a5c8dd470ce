import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import type { Fault } from './with-rule.ts';

/** What a place is measured from: two edges of the panel that meet, inwards from both; or its centre, along the axes. */
export const placeData = ['low x, low y', 'high x, low y', 'high x, high y', 'low x, high y', 'centre'] as const;
export type PlaceDatum = (typeof placeData)[number];

/** Bolts of a panel one by one: the centre of each hole, from the panel's own edges before its corners are notched. */
export const boltPlaces = z
  .array(
    z.strictObject({
      x: quantity('length', 'any'),
      y: quantity('length', 'any'),
      from: z.enum(placeData).default('low x, low y'),
    }),
  )
  .min(1)
  .max(400);

interface Pattern {
  readonly pitch?: unknown;
  readonly edgeDistance?: unknown;
  readonly places?: unknown;
}

/** Bolts stand in lines or on listed places: never both, never neither. */
export function boltPatternFaults({ pitch, edgeDistance, places }: Pattern): Fault[] {
  if (places !== undefined)
    return (['pitch', 'edgeDistance'] as const)
      .filter((field) => ({ pitch, edgeDistance })[field] !== undefined)
      .map((field) => ({
        path: [field],
        what: `The bolts stand on listed places, and a ${field === 'pitch' ? 'pitch' : 'edge distance'} is given as well`,
        mend: `Leave "${field}" out (null in an option or a search), or leave out "places".`,
      }));
  return (['pitch', 'edgeDistance'] as const)
    .filter((field) => ({ pitch, edgeDistance })[field] === undefined)
    .map((field) => ({
      path: [field],
      what: `Bolts in lines need ${field === 'pitch' ? 'a pitch' : 'an edge distance'}`,
      mend: `Give "${field}" as a length, or list the bolts one by one in "places".`,
    }));
}
