import { yieldOf } from '../catalogue/strength-at-thickness.ts';
import type { WeldedFixing } from '../document/schema.ts';
import type { Bearing } from '../geometry/geometry.ts';
import type { Situation } from '../loads/situation.ts';
import type { Model } from '../model.ts';
import { missing, type Input, type Missing, type Reading } from './check.ts';
import { isPulled, panelAt, spansAt } from './field-inputs.ts';
import { sectionAtEnd, tubeAt } from './tube-inputs.ts';
import {
  cannotBeWelded,
  correlationOfParts,
  ultimateOfFiller,
  ultimateOfParts,
  type WeldedPart,
} from './weld-strength.ts';

/** True, or why a check of the panel's welds does not apply. */
export const welded = (model: Model, bay: string): true | string =>
  panelAt(model, bay).design.fixing.kind === 'welded' || 'the panel is bolted';

/** True where the document judges its welds by this method, or why not. */
export const judgedBy =
  (method: WeldedFixing['method'], otherwise: string) =>
  (model: Model, bay: string): true | string => {
    const applies = welded(model, bay);
    if (applies !== true) return applies;
    if (ofAluminium(model, bay)) return 'the parts are of aluminium: their weld is judged by the rules for it (EN 1999-1-1, or the Aluminum Design Manual)'; // prettier-ignore
    return weldAt(model, bay).method === method ? weldedOnFlat(model, bay) : otherwise;
  };

/** Whether the edge on a side ends on its tube's rounding: before the flat begins, or anywhere on a round tube. */
export const onCorner = (model: Model, { tube, flatLap }: Bearing): boolean =>
  flatLap <= 0 || tubeAt(model, tube).section.shape === 'round';

/** False where the panel is welded on corners alone. */
const onSomeFlat = (model: Model, bay: string): boolean => {
  const sides = weldedSides(model, bay);
  return sides.length === 0 || sides.some((side) => !onCorner(model, side));
};

/** True where an edge of a welded panel lies on a flat, or why not: on a corner the weld is pulled and pushed, not let go. */
export function weldedOnFlat(model: Model, bay: string): true | string {
  const applies = welded(model, bay);
  return applies === true ? onSomeFlat(model, bay) || 'every edge ends on the corner of its tube: its weld is judged there' : applies; // prettier-ignore
}

/** True where all that the weld joins is aluminium. */
export const ofAluminium = (model: Model, bay: string): boolean =>
  partsAt(model, bay).every(({ material }) => material.family === 'aluminium');

/** The fixing of a welded panel; only asked where `welded` is true. */
export const weldAt = (model: Model, bay: string): WeldedFixing => panelAt(model, bay).design.fixing as WeldedFixing;

/** Sides along which the panel is welded. */
export const weldedSides = (model: Model, bay: string): readonly Bearing[] =>
  panelAt(model, bay).bearings.filter(({ fixed }) => fixed);

/** The panel and the tubes it is welded to, thicknesses as ordered. */
export const partsAt = (model: Model, bay: string): readonly WeldedPart[] => [
  panelAt(model, bay),
  ...weldedSides(model, bay).map(({ tube }) => ({
    material: tubeAt(model, tube).material,
    thickness: tubeAt(model, tube).section.nominalWall,
  })),
];

/** What fails whatever the numbers are: parts that cannot be welded, a filler weaker than the parts, a weld that corrodes away. */
export function weldRule(model: Model, bay: string): string | undefined {
  const cannot = cannotBeWelded(partsAt(model, bay));
  if (cannot) return cannot;
  if (!(throatLeft(model, bay) > 0)) return 'corrosion takes the whole throat within the life';
  const filler = model.catalogue.weldMetal(weldAt(model, bay).metal);
  const parts = ultimateOfParts(partsAt(model, bay));
  if (
    model.basis.safety === 'partial factors' &&
    filler.ultimate !== null &&
    typeof parts === 'number' &&
    filler.ultimate < parts
  )
    return `${filler.title} is weaker than the parts it joins (EN 1993-1-8, 4.2(2))`;
  return undefined;
}

/** EN 1993-1-8, 4.1(1), holds from 4 mm, for the walls of hollow sections from 2.5 mm (7.1.1(5), from memory). */
function tooThin(model: Model, bay: string): Missing | undefined {
  if (model.basis.safety !== 'partial factors') return undefined;
  const [panel, ...walls] = partsAt(model, bay);
  return panel!.thickness < 0.004 || walls.some(({ thickness }) => thickness < 0.0025)
    ? missing(
        'a rule for welds of parts this thin: EN 1993-1-8, 4.1, begins at 4 mm (walls of hollow sections at 2.5 mm), and EN 1993-1-3 is not held. Take a thicker panel',
      )
    : undefined;
}

/** What the one open face of a panel's weld loses within the life, m: the larger loss of panel and tube. */
export function throatLoss(model: Model): number {
  const { panel, tubeOutside } = model.document.protection.lossPerFace;
  return panel.si > tubeOutside.si ? panel.si : tubeOutside.si;
}

const throatLeft = (model: Model, bay: string): number => weldAt(model, bay).throat.si - throatLoss(model);

/** Runs of an intermittent weld carry what lies over the gaps too. The geometry has refused one without run and gap. */
function lengthOverRun(model: Model, bay: string): number {
  const { pattern, run, gap } = weldAt(model, bay);
  if (pattern !== 'intermittent') return 1;
  return (run!.si + gap!.si) / run!.si;
}

/** Least flat lap on the tubes it is welded to, of the sides that have one: those on corners are judged by themselves. */
function flatLap(model: Model, bay: string): Reading {
  const sides = weldedSides(model, bay);
  if (sides.length === 0)
    return missing('a side on which the panel can be welded: none meets its tube at the same level');
  const laps = sides.filter((side) => !onCorner(model, side)).map(({ flatLap }) => flatLap);
  return laps.length > 0
    ? Math.min(...laps)
    : missing(
        "a lap onto the flat of the tube: the edge lies on the corner's radius, and the panel has nothing to heel on",
      );
}

const holds = (model: Model, bay: string, situation: Situation, not: 'main tubes' | 'cross tubes'): number =>
  spansAt(model, bay, situation).supports === not ? 0 : 1;

/** What the force in the weld follows from, beside the plate field itself, by symbol. */
export const weldForceInputs = {
  pulled: {
    unit: '1',
    meaning: 'the load pulls the panel off its tubes (1) or presses it on (0)',
    from: 'loads: direction',
    read: (model, bay, situation) => (isPulled(model, bay, situation) ? 1 : 0),
  },
  h: {
    unit: '1',
    meaning: 'edges relied on as held (1) or hinged (0)',
    from: 'document: designs',
    read: (model, bay) => (panelAt(model, bay).design.edges === 'held' ? 1 : 0),
  },
  h_x: {
    unit: '1',
    meaning: 'borne by the cross tubes (1) or not (0)',
    from: 'geometry',
    read: (model, bay, situation) => holds(model, bay, situation, 'main tubes'),
  },
  h_y: {
    unit: '1',
    meaning: 'borne by the main tubes (1) or not (0)',
    from: 'geometry',
    read: (model, bay, situation) => holds(model, bay, situation, 'cross tubes'),
  },
  l_f: {
    unit: 'mm',
    meaning: "weld to the line that the panel heels on, the end of the tube's corner radius",
    from: 'geometry',
    read: flatLap,
  },
  k_r: {
    unit: '1',
    meaning: 'length over welded length: 1 for a continuous weld',
    from: 'document: fixing',
    read: lengthOverRun,
  },
} as const satisfies Readonly<Record<string, Input>>;

/** Throat and strengths of the panel's weld, by symbol. */
export const weldStrengthInputs = {
  a_w: {
    unit: 'mm',
    meaning: 'throat at the end of life',
    from: 'document: fixing, corrosion',
    read: (model, bay) => {
      const left = throatLeft(model, bay);
      return left > 0 ? left : missing('a throat: corrosion takes all of it within the life');
    },
  },
  f_u: {
    unit: 'MPa',
    meaning: 'ultimate strength of the weaker part',
    from: 'catalogue: materials',
    read: (model, bay) => tooThin(model, bay) ?? ultimateOfParts(partsAt(model, bay)),
  },
  beta_w: {
    unit: '1',
    meaning: 'correlation factor of fillet welds',
    from: 'catalogue: materials',
    only: 'partial factors',
    read: (model, bay) => correlationOfParts(partsAt(model, bay)),
  },
  F_EXX: {
    unit: 'MPa',
    meaning: 'strength of the filler; that of the weaker part where it is only said to match',
    from: 'catalogue: weld metals',
    only: 'allowable stress',
    read: (model, bay) =>
      ultimateOfFiller(model.catalogue.weldMetal(weldAt(model, bay).metal).ultimate, partsAt(model, bay)),
  },
  f_yb: {
    unit: 'MPa',
    meaning: 'yield strength of the weaker part',
    from: 'catalogue: materials',
    only: 'allowable stress',
    read: (model, bay) =>
      Math.min(...partsAt(model, bay).map(({ material, thickness }) => yieldOf(material, thickness))),
  },
  t_b: {
    unit: 'mm',
    meaning: 'thinner of panel and tube wall, end of life',
    from: 'document: designs, corrosion',
    only: 'allowable stress',
    read: (model, bay) =>
      Math.min(
        panelAt(model, bay).thicknessEnd,
        ...weldedSides(model, bay).map(({ tube }) => sectionAtEnd(model, tube).wall),
      ),
  },
} as const satisfies Readonly<Record<string, Input>>;
