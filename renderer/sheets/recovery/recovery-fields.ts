import type { FieldSpec } from '../../parts/FieldList.tsx';

/** Fields of the sheet "Deployment and recovery", each list under its own part of the document. */

export const plan: readonly FieldSpec[] = [
  { at: ['deployment'], takes: 'time', label: 'Deployment', help: 'From putting the plate down to getting it back.' },
  { at: ['inspection'], takes: 'time', label: 'Proved every', help: 'How often the chain is proved from end to end; once a deployment where it is left out.', optional: true },
  { at: ['current'], takes: 'speed', label: 'Current', help: 'Over the depth, while the float rises and the plate is hauled.' },
  { at: ['snag'], takes: 'force', label: 'Set aside for a snag', help: 'Pull that the float must have to spare while the rope runs out.' },
]; // prettier-ignore

export const rope: readonly FieldSpec[] = [
  { at: ['material'], takes: ['polypropylene', 'HMPE', 'polyester', 'polyamide', 'steel wire'], label: 'Rope of', help: 'Decides what wetting takes off the strength and what the rope weighs in water.' },
  { at: ['diameter'], takes: 'length', label: 'Diameter of the rope', help: 'Nominal, by its certificate.' },
  { at: ['breakingStrength'], takes: 'force', label: 'Breaking strength of the rope', help: 'New, dry and straight, by its certificate.' },
  { at: ['mass'], takes: 'lineMass', label: 'Mass of the rope for its length', help: 'Dry.' },
  { at: ['length'], takes: 'length', label: 'Length of the rope', help: 'As it lies in the canister; from depth, drift and slack where it is left out.', optional: true },
  { at: ['slack'], takes: 'number', label: 'Slack', help: 'Spare over depth and drift, as a part: 0.15 is 15 %.', optional: true },
  { at: ['splice'], takes: 'number', label: 'Left at the splice', help: 'Part of the strength: 0.9 is 90 %.', optional: true },
  { at: ['wear'], takes: 'number', label: 'Left by wear', help: 'Part of the strength that chafe leaves.', optional: true },
  { at: ['perYear'], takes: 'number', label: 'Left after a year in the sea', help: 'Part of the strength; taken for the time of the deployment.', optional: true },
  { at: ['bend'], takes: 'length', label: 'Bends over', help: 'Smallest diameter of thimble, pin or sheave.', optional: true },
  { at: ['designFactor'], takes: 'number', label: 'Strength over pull', help: 'What must be left of the strength over the working pull.', optional: true },
  { at: ['stretchAtBreak'], takes: 'number', label: 'Longer at its break', help: 'As a part of its length; by the material where it is left out.', optional: true },
  { at: ['packing', 'solid'], takes: 'number', label: 'Rope in the coil', help: 'Part of the coil’s volume that is rope: 0.45 when laid in by hand.' },
  { at: ['packing', 'how'], takes: ['measured', 'assumed'], label: 'How the packing is known', help: 'Coil the rope into its canister once and measure the height.' },
  { at: ['packing', 'source'], takes: 'text', label: 'Source of the packing', help: 'The trial, or who assumes it.' },
  { at: ['hauls'], takes: ['messenger', 'plate'], label: 'What it hauls', help: 'A heavier line that lifts the plate, or the plate itself.' },
  { at: ['messengerPull'], takes: 'force', label: 'Pull of the heavier line', help: 'To haul it in, where the rope hauls one.', optional: true },
  { at: ['source'], takes: 'text', label: 'Source of the rope', help: 'Certificate or maker’s sheet.' },
]; // prettier-ignore

export const float: readonly FieldSpec[] = [
  { at: ['kind'], takes: ['foam', 'hollow glass', 'hollow plastic'], label: 'Float of', help: 'Foam is compressed, hollow floats collapse.' },
  { at: ['volume'], takes: 'volume', label: 'Volume of the float', help: 'At the surface.' },
  { at: ['mass'], takes: 'mass', label: 'Mass of the float', help: 'Dry, without release and rope.' },
  { at: ['diameter'], takes: 'length', label: 'Breadth across its way up', help: 'For the drag as it rises.' },
  { at: ['dragCoefficient'], takes: 'number', label: 'Drag coefficient of the float', help: 'On the area of that breadth; 0.6 where it is left out.', optional: true },
  { at: ['ratedDepth'], takes: 'length', label: 'Rated depth', help: 'By its maker.' },
  { at: ['crushDepth'], takes: 'length', label: 'Collapse depth', help: 'By its maker; 1.25 of the rated depth where it is left out.', optional: true },
  { at: ['compression'], takes: 'number', label: 'Compressed by', help: 'Part of its volume lost at the rated depth.', optional: true },
  { at: ['uptake'], takes: 'number', label: 'Filled with water', help: 'Part of its volume by the end of the deployment.', optional: true },
  { at: ['visible'], takes: 'number', label: 'Out of the water', help: 'Part of its volume that must stand out of the water to be seen.', optional: true },
  { at: ['source'], takes: 'text', label: 'Source of the float', help: 'Maker’s sheet.' },
]; // prettier-ignore

export const release: readonly FieldSpec[] = [
  { at: ['kind'], takes: ['acoustic', 'timed', 'corroding link'], label: 'Kind of release', help: 'Two of unlike kind are worth more than two of one kind.' },
  { at: ['mass'], takes: 'mass', label: 'Mass of the release', help: 'In air.' },
  { at: ['volume'], takes: 'volume', label: 'Volume of the release', help: 'Displaced.' },
  { at: ['rating'], takes: 'force', label: 'Lets go under', help: 'Largest pull under which it is rated to let go.' },
  { at: ['leastPull'], takes: 'force', label: 'Hangs on below', help: 'Pull below which it may not let go.' },
  { at: ['endurance'], takes: 'time', label: 'Endurance', help: 'Life of its battery; for a timed or corroding link, the longest time until it lets go.' },
  { at: ['tiltLimit'], takes: 'angle', label: 'Largest tilt', help: 'From upright, by its maker.', optional: true },
  { at: ['antifouled'], takes: 'switch', label: 'Kept free of growth', help: 'Growth holds hooks shut.' },
  { at: ['checkedBeforeSailing'], takes: 'switch', label: 'Checked before sailing', help: 'The transponder answered on deck and in the water.' },
]; // prettier-ignore

export const canister: readonly FieldSpec[] = [
  { at: ['diameter'], takes: 'length', label: 'Canister, clear diameter', help: 'Inside.' },
  { at: ['height'], takes: 'length', label: 'Canister, clear height', help: 'Inside, lid on.' },
  { at: ['clearance'], takes: 'length', label: 'Left over the rope', help: 'Room so that the upper turns lie loose.' },
  { at: ['cone'], takes: 'length', label: 'Cone in the middle', help: 'Keeps turns from falling in; 0 for none.' },
  { at: ['lay'], takes: ['with the lay', 'figure of eight', 'against the lay'], label: 'Coiled', help: 'Against the lay the rope throws kinks as it runs out.' },
  { at: ['mass'], takes: 'mass', label: 'Mass of the canister', help: 'Empty, in air.' },
  { at: ['volume'], takes: 'volume', label: 'Volume of its material', help: 'Displaced by its walls.' },
  { at: ['x'], takes: 'length', label: 'Canister at x', help: 'Of its middle, along the main tubes.' },
  { at: ['y'], takes: 'length', label: 'Canister at y', help: 'Across them.' },
  { at: ['z'], takes: 'length', label: 'Canister at z', help: 'Over the plate’s level zero.' },
  { at: ['bolts', 'bolt'], takes: 'text', label: 'Mounting bolts', help: 'By their name in the catalogue: M12.' },
  { at: ['bolts', 'class'], takes: 'text', label: 'Class of the mounting bolts', help: 'Property class: 8.8, A4-70.' },
  { at: ['bolts', 'count'], takes: 'number', label: 'Number of mounting bolts', help: 'Evenly around the circle.' },
  { at: ['bolts', 'circle'], takes: 'length', label: 'Diameter of the bolt circle', help: 'Through the middles of the bolts.' },
  { at: ['acceleration'], takes: 'number', label: 'Largest acceleration', help: 'That the mounting sees, in g: on deck, in waves, by a snag.', optional: true },
]; // prettier-ignore

export const acoustic: readonly FieldSpec[] = [
  { at: ['sourceLevel'], takes: 'number', label: 'Source level', help: 'dB re 1 µPa at 1 m, of the deck unit.' },
  { at: ['frequency'], takes: 'number', label: 'Frequency', help: 'Hz.' },
  { at: ['bandwidth'], takes: 'number', label: 'Bandwidth', help: 'Hz, of the receiver.' },
  { at: ['threshold'], takes: 'number', label: 'Threshold', help: 'dB that signal must have over noise to be understood.' },
  { at: ['range'], takes: 'length', label: 'Range', help: 'Slant, from the vessel to the release.' },
  { at: ['wind'], takes: 'speed', label: 'Wind over the sea', help: 'Gives the noise where its level is not stated.', optional: true },
  { at: ['noise'], takes: 'number', label: 'Noise', help: 'dB re 1 µPa in a hertz, where it is known.', optional: true },
  { at: ['pH'], takes: 'number', label: 'pH of the water', help: 'About 8 in the open sea.', optional: true },
  { at: ['source'], takes: 'text', label: 'Source of the acoustics', help: 'Maker’s sheet.' },
]; // prettier-ignore

export const lift: readonly FieldSpec[] = [
  { at: ['sea', 'height'], takes: 'length', label: 'Significant height of the lift', help: 'Sea at which the lift is judged.' },
  { at: ['sea', 'period'], takes: 'time', label: 'Mean period of the lift', help: 'Zero-crossing.' },
  { at: ['lowering'], takes: 'speed', label: 'Lowered at', help: 'Of the winch.' },
  { at: ['hoisting'], takes: 'speed', label: 'Hoisted at', help: 'Of the winch.' },
  { at: ['aFrame'], takes: 'force', label: 'Frame or crane may carry', help: 'At its reach, dynamic load included.' },
  { at: ['winch'], takes: 'force', label: 'Winch may hold', help: 'Dynamic load included.' },
  { at: ['line', 'breakingStrength'], takes: 'force', label: 'Hoist line breaks at', help: 'By its certificate.' },
  { at: ['line', 'designFactor'], takes: 'number', label: 'Strength of the hoist line over its load', help: 'Three where it is left out.', optional: true },
  { at: ['line', 'stiffness'], takes: 'stiffness', label: 'Stiffness of the hoist line', help: 'Of all of it, paid out.' },
  { at: ['line', 'mass'], takes: 'lineMass', label: 'Mass of the hoist line for its length', help: 'Dry.' },
  { at: ['capacitySource'], takes: 'text', label: 'Source of what may be carried', help: 'Certificates of frame, winch and line.' },
  { at: ['tip', 'along'], takes: 'length', label: 'Tip from the vessel’s middle, along', help: 'Ahead positive.' },
  { at: ['tip', 'across'], takes: 'length', label: 'Tip from the vessel’s middle, across', help: 'To port positive.' },
  { at: ['motionSource'], takes: 'text', label: 'Source of the vessel’s motions', help: 'Who computed or measured them.' },
  { at: ['drainTime'], takes: 'time', label: 'May take to drain', help: 'Longest time that trays and tubes may take while the plate hangs in the splash zone.' },
  { at: ['tilt'], takes: 'angle', label: 'An edge first', help: 'Tilt at which it is lifted too, where it is.', optional: true },
  { at: ['bed'], takes: 'length', label: 'Depth of the bed', help: 'From the surface: how far a lost plate falls.', optional: true },
]; // prettier-ignore

export const sling: readonly FieldSpec[] = [
  { at: ['kind'], takes: ['wire', 'polyester', 'HMPE', 'other fibre'], label: 'Slings of', help: 'Decides the factor on their strength.' },
  { at: ['breakingStrength'], takes: 'force', label: 'Sling breaks at', help: 'One leg, by its certificate.' },
  { at: ['termination'], takes: 'number', label: 'Lost at termination or bend', help: 'As a factor on the load, the worse of both: 1.25 for a ferrule or splice.', optional: true },
  { at: ['source'], takes: 'text', label: 'Source of the slings', help: 'Certificate.' },
]; // prettier-ignore

export const shackle: readonly FieldSpec[] = [
  { at: ['workingLoad'], takes: 'force', label: 'Working load of a shackle', help: 'By its mark.' },
  { at: ['source'], takes: 'text', label: 'Source of the shackles', help: 'Certificate or mark.' },
];

export const mainFloat: readonly FieldSpec[] = [
  {
    at: ['reserve'],
    takes: 'force',
    label: 'Buoyancy it may lose',
    help: 'Beyond what the float over the plate carries.',
  },
  { at: ['whole'], takes: 'force', label: 'All its buoyancy', help: 'Of the float over the plate.' },
  { at: ['source'], takes: 'text', label: 'Source of the buoyancy', help: 'Who computed or measured it.' },
];

export const way: readonly FieldSpec[] = [
  { at: ['title'], takes: 'text', label: 'In words', help: 'As it stands in the note.' },
  { at: ['kind'], takes: ['standing line', 'released float', 'lift bag', 'diver'], label: 'Kind of way', help: 'A line left standing tangles and chafes; bags and divers are a last resort.' },
  { at: ['left'], takes: 'text', label: 'Left in the water', help: 'What stays behind.', optional: true },
]; // prettier-ignore

/** All of them, for the finder. */
export const recoveryLabels = [plan, rope, float, release, canister, acoustic, lift, sling, shackle, mainFloat, way].flatMap((list) => list.map(({ label }) => label)); // prettier-ignore
