import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

/** How far the joints of tube on tube give way. */
export const jointsField = withRule(
  z.strictObject({
    /** `rigid`; `published`: by a published formula wherever one holds, rigid elsewhere; `stated`: as the fields below say. */
    stiffness: z.enum(['rigid', 'published', 'stated']),
    /** Turning of the cross tube against the main tube: in the plane of both (about the upright) … */
    inPlane: quantity('turningStiffness').optional(),
    /** … out of it (in the cross tube's upright plane, about the main tube's axis) … */
    outOfPlane: quantity('turningStiffness').optional(),
    /** … and about its own axis; as the weld itself where it is left out. */
    twist: quantity('turningStiffness').optional(),
    /** Square to the faces that are welded: along a cross tube that is let in, upright where it lies on top. */
    axial: quantity('stiffness').optional(),
    source: text.optional(),
    /** Both ends of what the stiffness may be, as multiples of it; the plate is solved at both. */
    range: z
      .strictObject({
        low: z.number().positive().max(1),
        high: z.union([z.number().min(1), z.literal('rigid')]),
        source: text,
      })
      .optional(),
  }),
  ['stiffness', 'inPlane', 'outOfPlane', 'twist', 'axial', 'source', 'range'],
  ({ stiffness, inPlane, outOfPlane, twist, axial, source, range }): Fault[] => {
    if (stiffness === 'stated')
      return (
        [
          ['inPlane', inPlane, 'for example “2000 kNm/rad”'],
          ['outOfPlane', outOfPlane, 'for example “500 kNm/rad”'],
          ['source', source, 'a test, a calculation or a document'],
        ] as const
      ).flatMap(([field, value, like]) =>
        value === undefined
          ? [{ path: [field], what: `The joints’ stiffness is stated without “${field}”`, mend: `Give it: ${like}.` }]
          : [],
      );
    const faults: Fault[] = [];
    if (inPlane || outOfPlane || twist || axial)
      faults.push({
        path: ['stiffness'],
        what: `The joints have numbers, and are to be ${stiffness === 'rigid' ? 'rigid' : 'as published'}`,
        mend: 'Say "stiffness": "stated", or take the numbers out.',
      });
    if (stiffness === 'rigid' && range)
      faults.push({
        path: ['range'],
        what: 'A range is given for joints that are rigid',
        mend: 'State a stiffness; "high": "rigid" makes its upper end rigid.',
      });
    return faults;
  },
);
