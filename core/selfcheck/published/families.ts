import { allowableValues } from './allowable.ts';
import { anodeValues } from './anodes.ts';
import { boltValues } from './bolts.ts';
import { crossingValues } from './crossings.ts';
import { eyeValues } from './eyes.ts';
import { fatigueDamageValues } from './fatigue-damage.ts';
import { fatigueSteelValues } from './fatigue-steel.ts';
import { fatigueWeldValues } from './fatigue-welds.ts';
import { fixingValues } from './fixings.ts';
import { handlingValues } from './handling.ts';
import { panelValues } from './panels.ts';
import type { PublishedValue } from './published-value.ts';
import { recoveryValues } from './recovery.ts';
import { tubeValues } from './tubes.ts';
import { weldValues } from './welds.ts';

/** Values from outside by what they are of, in the order of the report. */
export const families: readonly { readonly title: string; readonly values: readonly PublishedValue[] }[] = [
  { title: 'Panels', values: panelValues },
  { title: 'Bolts', values: boltValues },
  { title: 'Studs, pads, sleeves, distances and groups of bolts', values: fixingValues },
  { title: 'Welds of panels', values: weldValues },
  { title: 'Tubes and their walls', values: tubeValues },
  { title: 'Crossings', values: crossingValues },
  { title: 'Eyes', values: eyeValues },
  { title: 'Hanging and lifting', values: handlingValues },
  { title: 'Recovery', values: recoveryValues },
  { title: 'Fatigue of welds', values: fatigueWeldValues },
  { title: 'Fatigue of plate edges, holes and bolts', values: fatigueSteelValues },
  { title: 'Fatigue: two million cycles of the category, on the curve of two slopes', values: fatigueDamageValues },
  { title: 'Anodes', values: anodeValues },
  { title: 'The same checks by allowable stress', values: allowableValues },
];

export const publishedValues: readonly PublishedValue[] = families.flatMap(({ values }) => values);
