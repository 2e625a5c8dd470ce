import type { RawDocument } from '../../core/document/read-document.ts';
import { searchProblem, type Problem } from '../../core/options/search/search.ts';

/** 50,544 options of the middle sample: three zones of panels, for each three pitches and 12 or 13 thicknesses, the thinnest of them
 *  `from`, mm, and the others half a millimetre apart. */
export function middleSpace(raw: RawDocument, from: number): Problem {
  const zone = (name: string, panels: readonly string[], count: number) => ({
    name,
    panels,
    like: 'underside',
    thickness: Array.from({ length: count }, (_, i) => `${from + i / 2} mm`),
    fixing: ['60 mm', '70 mm', '80 mm'].map((pitch) => ({ name: pitch, fixing: { pitch } })),
  });
  return searchProblem(raw, {
    from: null,
    zones: [
      zone('row A', ['A1', 'A2', 'A3', 'A4', 'A5', 'A6'], 13),
      zone('row B, near', ['B1', 'B2', 'B3'], 12),
      zone('row B, far', ['B4', 'B5', 'B6'], 12),
    ],
    aims: ['mass', 'holes'],
    limits: {},
    aside: [],
    judged: false,
  });
}
