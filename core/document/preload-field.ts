import * as z from 'zod';
import { quantity } from './quantity-field.ts';
import { text } from './text-field.ts';
import { withRule, type Fault } from './with-rule.ts';

/** Tension that tightening leaves in a bolt: a force, or a part of its ultimate strength on the tensile area (0.7 in EN 1090-2). */
export const preloadField = withRule(
  z.strictObject({
    force: quantity('force').optional(),
    ofStrength: z.number().positive().max(0.8).optional(),
    source: text,
  }),
  ['force', 'ofStrength'],
  ({ force, ofStrength }): Fault[] =>
    (force === undefined) === (ofStrength === undefined)
      ? [
          {
            path: [],
            what: force === undefined ? 'The preload has no value' : 'The preload is given twice',
            mend: 'Give "force", or "ofStrength" (0.7 of the ultimate strength on the tensile area, for instance).',
          },
        ]
      : [],
);
