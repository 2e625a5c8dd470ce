import { hydrodynamicsOf, type HydrodynamicsReport } from '../hydrodynamics/hydrodynamics-of.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import { spectrumWords } from '../water/waves/sea-spectrum.ts';
import type { WaterQuantity } from '../water/water-report.ts';
import { coefficientFigure, decayFigure, pressureFigure } from './hydrodynamics-figures.ts';
import type { Block, Section } from './note.ts';
import { extremeBlocks, forceBlocks } from './sea-water-blocks.ts';

/** Why the ways of reckoning differ, and where each holds. */
const why: Readonly<Record<string, string>> = {
  'addedMass.heave': 'this plate with its own gaps, which choke as the motion grows',
  'addedMass.still': 'gaps let the water through unhindered: the least',
  'addedMass.solid': 'no gap at all: the most',
  'addedMass.byAspect': 'no gap, no height of the edges',
  'addedMass.byOpenArea': 'fitted to tests at motions as large as theirs; by open area alone',
  'addedMass.byScreen': 'openings spread evenly, without loss',
};
const moving = ['drag.kc', 'drag.coefficient', 'drag.gaps', 'drag.edge', 'drag.area', 'drag.steady', 'addedMass.roll', 'addedMass.pitch', 'addedMass.surge', 'addedMass.sway', 'addedMass.yaw']; // prettier-ignore
const here = ['water.density', 'water.gravity', 'water.pressure', 'water.viscosity'];

/** Added mass, drag, force and shares of the plate in the water that the document describes. */
export function hydrodynamicsSection(model: Model, print: Print): Section {
  const { hydrodynamics } = model.document;
  const title = 'Hydrodynamics';
  if (!hydrodynamics)
    return { title, blocks: [{ kind: 'paragraph', text: 'The document does not state motion, sea, bed or growth: added mass and drag are not reckoned.' }] }; // prettier-ignore
  const found = hydrodynamicsOf(model);
  const { report } = found;
  const { motion } = hydrodynamics;
  // Why the motion's numbers are missing is said once, in the list of what is not stated.
  const unjudged = report.unjudged.filter(({ id }) => motion || !/^(drag|force)/.test(id));
  const figures = [coefficientFigure(found, print), pressureFigure(found), decayFigure(found, model.document.water.depth.si, print)]; // prettier-ignore
  return {
    title,
    blocks: [
      {
        kind: 'paragraph',
        text: `${motion ? `Heave of ${motion.amplitude.typed} amplitude and ${motion.period.typed} period (${motion.source}).` : 'Potential flow at zero amplitude.'} The plan with its gaps, notches and vents is covered with cells of constant doublet strength on three lattices (${report.potential.cells.join(', ')} cells along the longer side) and extrapolated; gaps lose pressure with the square of their velocity, iterated with the amplitude; edges shed eddies by published laws.`,
      },
      ...notStated(model),
      quantityTable('Added mass in heave, one way beside the other', 'Why it differs', Object.keys(why), found, print, (id) => why[id]!), // prettier-ignore
      quantityTable('Motion and drag', 'Source', moving, found, print, (_id, { source }) => source), // prettier-ignore
      quantityTable('The water where the plate hangs', 'Source', here, found, print, (_id, { source }) => source, 4), // prettier-ignore
      ...gain(model, found, print),
      ...waves(model, found, print),
      ...forceBlocks(model, print),
      ...extremeBlocks(model, print),
      ...shares(model, found),
      ...figures.filter((figure) => figure !== null),
      ...lists(unjudged),
      { kind: 'list', tone: 'caution', items: report.cautions },
    ],
  };
}

/** What cannot be judged of the plate is loud; a rule that does not reach it is told plainly. */
function lists(unjudged: HydrodynamicsReport['report']['unjudged']): Block[] {
  const isRule = ({ id }: { readonly id: string }): boolean => id.startsWith('addedMass.by');
  return ([['loud', unjudged.filter((one) => !isRule(one))], ['plain', unjudged.filter(isRule)]] as const).flatMap(([tone, of]) =>
    of.length > 0 ? [{ kind: 'list', tone, items: of.map(({ id, reason }) => `${id} cannot be judged: ${reason}.`) }] : [],
  ); // prettier-ignore
}

function notStated({ document }: Model): Block[] {
  const { motion, sea, bed, growth } = document.hydrodynamics!;
  const missing = [
    ...(motion ? [] : ['motion: not stated, so drag and force of a motion are not judged']),
    ...(sea ? [] : ['sea: not stated, so nothing is said of the water’s own motion']),
    ...(bed ? [] : ['bed: not stated, so water without end is taken below the plate']),
    ...(growth ? [] : ['growth: not stated, so the plate is taken as clean']),
  ];
  return missing.length > 0 ? [{ kind: 'list', tone: 'plain', items: missing }] : [];
}

function quantityTable(
  caption: string,
  last: string,
  ids: readonly string[],
  { report }: HydrodynamicsReport,
  print: Print,
  words: (id: string, quantity: WaterQuantity) => string,
  digits = 3,
): Block {
  const barred = new Set(report.unjudged.map(({ id }) => id));
  const text = (value: number, unit: string): string => (unit === '1' ? significant(value, digits) : print.quantity(value, unit === 'N' ? 'kN' : unit === 'Pa' ? 'kPa' : unit, digits)); // prettier-ignore
  return {
    kind: 'table',
    caption,
    columns: [
      { title: 'Quantity', width: 0.31 },
      { title: 'Value', width: 0.17, align: 'right' },
      { title: 'Low to high', width: 0.22, align: 'right' },
      { title: last, width: 0.3 },
    ],
    rows: ids.flatMap((id) => {
      const q = report.quantities[id];
      if (!q) return [];
      const range = q.low === undefined || q.high === undefined ? '–' : `${text(q.low, q.unit)} to ${text(q.high, q.unit)}`; // prettier-ignore
      return [barred.has(id) ? [q.title, 'not judged', '', words(id, q)] : [q.title, text(q.value, q.unit), q.low === undefined && q.error !== undefined ? `lattice ± ${significant(100 * q.error, 2)} %` : range, words(id, q)]]; // prettier-ignore
    }),
  };
}

/** What the panels gain over the open grid in the same motion, and by their mass. */
function gain({ mass }: Model, { open }: HydrodynamicsReport, print: Print): Block[] {
  if (!open || !(mass.panels > 0)) return [];
  const gained = open.closed.addedMass - open.bare.addedMass;
  return [
    {
      kind: 'paragraph',
      text: `Without its panels the grid would have ${print.quantity(open.bare.addedMass, 'kg', 3)} of added mass in the same motion; the panels gain ${print.quantity(gained, 'kg', 3)}, ${significant(gained / mass.panels, 3)} times their own mass of ${print.quantity(mass.panels, 'kg', 3)}. The reaction that fixings, tubes and lines carry grows with it.`, // prettier-ignore
    },
  ];
}

function waves({ document, mass }: Model, { sea, growth }: HydrodynamicsReport, print: Print): Block[] {
  const stated = document.hydrodynamics?.sea;
  return [
    ...(sea && stated
      ? [{ kind: 'paragraph', text: `Sea of ${stated.significantHeight.typed} significant height and ${stated.peakPeriod.typed} peak period (${stated.source}; ${spectrumWords(stated)}): a wave of the peak period is ${print.quantity(sea.peak.length, 'm', 3)} long. At the plate the water’s significant height is ${print.quantity(sea.significantHeight, 'm', 3)} and its significant vertical velocity ${print.quantity(sea.significantVelocity, 'm/s', 3)} (linear waves).` } as const] // prettier-ignore
      : []),
    ...(growth
      ? [{ kind: 'paragraph', text: `Marine growth of ${print.length(growth.thickness)} on every face (${document.hydrodynamics!.growth!.source}; thickness by ${document.hydrodynamics!.growth!.rows ? 'the rows stated for this place' : 'NORSOK N-003 guidance, growing two years in a straight line, common practice'}): tubes are wider, gaps narrower. It has ${print.quantity(mass.growth?.mass ?? 0, 'kg', 3)} of mass and weighs ${print.quantity(9.80665 * ((mass.growth?.mass ?? 0) - mass.waterDensity * (mass.growth?.volume ?? 0)), 'kN', 3)} in water, which the service force down and the motion carry, as lifting out carries all of it; weight that helps, and all handling before the deployment, is of the clean plate.` } as const] // prettier-ignore
      : []),
  ];
}

function shares({ geometry, document }: Model, { report: { quantities } }: HydrodynamicsReport): Block[] {
  const percent = (id: string): string => {
    const q = quantities[id];
    return q ? `${significant(100 * q.value, 3)} %` : 'not judged';
  };
  return [
    {
      kind: 'table',
      caption: `Shares of the bays in the force of the plate: of inertia by potential flow; of drag, a quarter cycle later, the larger of area and edge-weighted area. Loads of this note take ${document.loads.panelShares === 'area, shape and flow' ? 'them beside area and pressure shape, the worst for each panel' : 'area and pressure shape only'}`, // prettier-ignore
      columns: [
        { title: 'Bay', width: 0.22 },
        { title: 'Of area', width: 0.26, align: 'right' },
        { title: 'Of inertia', width: 0.26, align: 'right' },
        { title: 'Of drag', width: 0.26, align: 'right' },
      ],
      rows: geometry.bays.map(({ id }) => [id, percent(`panel.${id}.shareOfArea`), percent(`panel.${id}.shareOfInertia`), percent(`panel.${id}.shareOfDrag`)]), // prettier-ignore
    },
  ];
}
