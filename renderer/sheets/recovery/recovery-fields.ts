import { fields } from '../../parts/FieldList.tsx';
import { texts } from '../../texts.ts';

const words = texts.recoveryFields;

/** Fields of the sheet "Deployment and recovery", each list under its own part of the document. */

export const plan = fields(words.plan, [
  { at: ['deployment'], takes: 'time' },
  { at: ['inspection'], takes: 'time', optional: true },
  { at: ['current'], takes: 'speed' },
  { at: ['snag'], takes: 'force' },
]); // prettier-ignore

export const rope = fields(words.rope, [
  { at: ['material'], takes: ['polypropylene', 'HMPE', 'polyester', 'polyamide', 'steel wire'] },
  { at: ['diameter'], takes: 'length' },
  { at: ['breakingStrength'], takes: 'force' },
  { at: ['mass'], takes: 'lineMass' },
  { at: ['length'], takes: 'length', optional: true },
  { at: ['slack'], takes: 'number', optional: true },
  { at: ['splice'], takes: 'number', optional: true },
  { at: ['wear'], takes: 'number', optional: true },
  { at: ['perYear'], takes: 'number', optional: true },
  { at: ['bend'], takes: 'length', optional: true },
  { at: ['designFactor'], takes: 'number', optional: true },
  { at: ['stretchAtBreak'], takes: 'number', optional: true },
  { at: ['packing', 'solid'], takes: 'number' },
  { at: ['packing', 'how'], takes: ['measured', 'assumed'] },
  { at: ['packing', 'source'], takes: 'text' },
  { at: ['hauls'], takes: ['messenger', 'plate'] },
  { at: ['messengerPull'], takes: 'force', optional: true },
  { at: ['source'], takes: 'text' },
]); // prettier-ignore

export const float = fields(words.float, [
  { at: ['kind'], takes: ['foam', 'hollow glass', 'hollow plastic'] },
  { at: ['volume'], takes: 'volume' },
  { at: ['mass'], takes: 'mass' },
  { at: ['diameter'], takes: 'length' },
  { at: ['dragCoefficient'], takes: 'number', optional: true },
  { at: ['ratedDepth'], takes: 'length' },
  { at: ['crushDepth'], takes: 'length', optional: true },
  { at: ['compression'], takes: 'number', optional: true },
  { at: ['uptake'], takes: 'number', optional: true },
  { at: ['visible'], takes: 'number', optional: true },
  { at: ['source'], takes: 'text' },
]); // prettier-ignore

export const release = fields(words.release, [
  { at: ['kind'], takes: ['acoustic', 'timed', 'corroding link'] },
  { at: ['mass'], takes: 'mass' },
  { at: ['volume'], takes: 'volume' },
  { at: ['rating'], takes: 'force' },
  { at: ['leastPull'], takes: 'force' },
  { at: ['endurance'], takes: 'time' },
  { at: ['tiltLimit'], takes: 'angle', optional: true },
  { at: ['antifouled'], takes: 'switch' },
  { at: ['checkedBeforeSailing'], takes: 'switch' },
]); // prettier-ignore

export const canister = fields(words.canister, [
  { at: ['diameter'], takes: 'length' },
  { at: ['height'], takes: 'length' },
  { at: ['clearance'], takes: 'length' },
  { at: ['cone'], takes: 'length' },
  { at: ['lay'], takes: ['with the lay', 'figure of eight', 'against the lay'] },
  { at: ['mass'], takes: 'mass' },
  { at: ['volume'], takes: 'volume' },
  { at: ['x'], takes: 'length' },
  { at: ['y'], takes: 'length' },
  { at: ['z'], takes: 'length' },
  { at: ['bolts', 'bolt'], takes: 'text' },
  { at: ['bolts', 'class'], takes: 'text' },
  { at: ['bolts', 'count'], takes: 'number' },
  { at: ['bolts', 'circle'], takes: 'length' },
  { at: ['acceleration'], takes: 'number', optional: true },
]); // prettier-ignore

export const acoustic = fields(words.acoustic, [
  { at: ['sourceLevel'], takes: 'number' },
  { at: ['frequency'], takes: 'number' },
  { at: ['bandwidth'], takes: 'number' },
  { at: ['threshold'], takes: 'number' },
  { at: ['range'], takes: 'length' },
  { at: ['wind'], takes: 'speed', optional: true },
  { at: ['noise'], takes: 'number', optional: true },
  { at: ['pH'], takes: 'number', optional: true },
  { at: ['source'], takes: 'text' },
]); // prettier-ignore

export const lift = fields(words.lift, [
  { at: ['sea', 'height'], takes: 'length' },
  { at: ['sea', 'period'], takes: 'time' },
  { at: ['lowering'], takes: 'speed' },
  { at: ['hoisting'], takes: 'speed' },
  { at: ['aFrame'], takes: 'force' },
  { at: ['winch'], takes: 'force' },
  { at: ['line', 'breakingStrength'], takes: 'force' },
  { at: ['line', 'designFactor'], takes: 'number', optional: true },
  { at: ['line', 'stiffness'], takes: 'stiffness' },
  { at: ['line', 'mass'], takes: 'lineMass' },
  { at: ['capacitySource'], takes: 'text' },
  { at: ['tip', 'along'], takes: 'length' },
  { at: ['tip', 'across'], takes: 'length' },
  { at: ['motionSource'], takes: 'text' },
  { at: ['drainTime'], takes: 'time' },
  { at: ['tilt'], takes: 'angle', optional: true },
  { at: ['bed'], takes: 'length', optional: true },
]); // prettier-ignore

export const sling = fields(words.sling, [
  { at: ['kind'], takes: ['wire', 'polyester', 'HMPE', 'other fibre'] },
  { at: ['breakingStrength'], takes: 'force' },
  { at: ['termination'], takes: 'number', optional: true },
  { at: ['source'], takes: 'text' },
]); // prettier-ignore

export const shackle = fields(words.shackle, [
  { at: ['workingLoad'], takes: 'force' },
  { at: ['source'], takes: 'text' },
]);

export const mainFloat = fields(words.mainFloat, [
  { at: ['reserve'], takes: 'force' },
  { at: ['whole'], takes: 'force' },
  { at: ['source'], takes: 'text' },
]);

export const way = fields(words.way, [
  { at: ['title'], takes: 'text' },
  { at: ['kind'], takes: ['standing line', 'released float', 'lift bag', 'diver'] },
  { at: ['left'], takes: 'text', optional: true },
]); // prettier-ignore

/** All of them, for the finder. */
export const recoveryLabels = [plan, rope, float, release, canister, acoustic, lift, sling, shackle, mainFloat, way].flatMap((list) => list.map(({ label }) => label)); // prettier-ignore
