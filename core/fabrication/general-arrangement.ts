import type { Tube } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { planFigure } from '../note/drawing-section.ts';
import type { Figure, Note, Shape } from '../note/note.ts';
import { programVersion } from '../result.ts';
import { quantityText } from '../quantity/format-quantity.ts';
import type { FabricationPack } from './fabrication-pack.ts';

/** General arrangement for the shop: plan and elevations with dimensions, parts list, notes, under a title block. */
export function generalArrangement(
  model: Model,
  { parts, bars }: FabricationPack,
  optionTitle: string,
  documentHash: string,
): Note {
  const { document, geometry, mass } = model;
  const { project, paper } = document;
  const drawnIn = (metres: number): string => quantityText(metres, document.units === 'inch' ? 'in' : 'mm');
  const block = [['Project', project.name], ['Number', project.number], ['Option', optionTitle], ['Revision', `${project.revision}, ${project.date}`], ['Mass in air', quantityText(mass.total, 'kg')]] as const; // prettier-ignore
  const tubes = bars.flatMap(({ section, material, bars: own }) => {
    const lengths = new Map<string, string[]>();
    for (const { id, length } of own.flatMap(({ cuts }) => cuts)) {
      const key = drawnIn(length);
      lengths.set(key, [...(lengths.get(key) ?? []), id]);
    }
    return [...lengths].map(([length, ids]) => [`tube ${ids.join(', ')}`, String(ids.length), `${section}, ${length} long`, material, '']); // prettier-ignore
  });
  const plates = parts.map(({ number, panels, pattern }) => [number, String(panels.length), `${drawnIn(pattern.width)} × ${drawnIn(pattern.height)} × ${drawnIn(pattern.thickness)}, ${pattern.holes.length} holes`, pattern.material, quantityText(pattern.mass, 'kg')]); // prettier-ignore
  return {
    title: `General arrangement: ${project.name}`,
    stamp: 'DRAFT FOR THE SHOP',
    paper,
    titleBlock: block.flatMap(([label, value]) => (value === undefined ? [] : [[label, value] as const])),
    documentHash,
    programVersion,
    date: project.date,
    language: 'en-GB',
    attachments: [],
    sections: [
      { title: 'Plan', blocks: [planFigure(model)] },
      {
        title: 'Elevations',
        startsPage: true,
        blocks: [elevation(model, 'x', drawnIn), elevation(model, 'y', drawnIn)],
      },
      {
        title: 'Parts list',
        startsPage: true,
        blocks: [
          { kind: 'table', caption: `${parts.length} ${parts.length === 1 ? 'design' : 'designs'} of plates for ${geometry.panels.length} panels, ${geometry.mainTubes.length + geometry.crossTubes.length} tubes; bolts and welds are listed in bolts.csv and welds.csv`, columns: [{ title: 'Part', width: 0.24 }, { title: 'Count', width: 0.08, align: 'right' }, { title: 'Size', width: 0.38 }, { title: 'Material', width: 0.18 }, { title: 'Mass each', width: 0.12, align: 'right' }], rows: [...plates, ...tubes] }, // prettier-ignore
          { kind: 'list', tone: 'caution', items: notes },
        ],
      },
    ],
  };
}

const notes = [
  'Not to scale: written dimensions govern. Cut from the DXF files; what a drawing and a list say differently is asked about, not chosen.',
  'Cut and drill only from a pack that goes with a signed check note.',
  'General tolerances, execution class, weld quality and inspection as read-me-first.txt states them.',
  'Never weld, cut, galvanise or heat a sealed tube that is not vented.',
];

/** The plate seen along an axis: from the side ("x" runs to the right) or from its end ("y" does). Points in mm. */
function elevation({ geometry }: Model, right: 'x' | 'y', text: (metres: number) => string): Figure {
  const along = right === 'x' ? geometry.mainTubes : geometry.crossTubes;
  const endOn = right === 'x' ? geometry.crossTubes : geometry.mainTubes;
  const box = (x0: number, x1: number, z0: number, z1: number) => [[x0, z0], [x1, z0], [x1, z1], [x0, z1]].map(([x, z]) => [1000 * x!, 1000 * z!] as const); // prettier-ignore
  const path = (ring: ReturnType<typeof box>, fill: 'tube' | 'panel' | 'paper'): Shape => ({ kind: 'path', rings: [ring], closed: true, pen: 'thin', fill }); // prettier-ignore
  const long = along.flatMap((tube) => tube.pieces.map(([from, to]) => path(box(from, to, tube.bottom, tube.top), 'tube'))); // prettier-ignore
  // Cross tubes let in between the main tubes are hidden behind the first of these; seen from the end, main tubes stand in front.
  const hidden = (tube: Tube): boolean => right === 'x' && along.some(({ bottom, top }) => tube.bottom >= bottom - 1e-9 && tube.top <= top + 1e-9); // prettier-ignore
  const ends = endOn.map((tube): Shape => {
    const ring = box(tube.at - tube.section.width / 2, tube.at + tube.section.width / 2, tube.bottom, tube.top);
    return hidden(tube) ? { kind: 'path', rings: [ring], closed: true, pen: 'hidden' } : path(ring, 'paper');
  });
  const plates = geometry.panels.map(({ outline: o, bottom, top }) => path(right === 'x' ? box(o.x0, o.x1, bottom, top) : box(o.y0, o.y1, bottom, top), 'panel')); // prettier-ignore
  const tubes = [...along, ...endOn];
  const [low, high] = [Math.min(...tubes.map(({ bottom }) => bottom), ...geometry.panels.map(({ bottom }) => bottom)), Math.max(...tubes.map(({ top }) => top), ...geometry.panels.map(({ top }) => top))]; // prettier-ignore
  const [from, to] = right === 'x' ? [geometry.extents.x0, geometry.extents.x1] : [geometry.extents.y0, geometry.extents.y1]; // prettier-ignore
  const size = 1000 * (to - from);
  const z0 = 1000 * low;
  return {
    kind: 'figure',
    caption: `${right === 'x' ? 'From the side' : 'From the end'}: ${right} to the right, z up; tubes seen end on are white, hidden ones dashed. Overall ${text(to - from)} × ${text(high - low)}. Eyes and rigging are not drawn`, // prettier-ignore
    alt: `Elevation of the plate, ${text(to - from)} long and ${text(high - low)} high over tubes and panels`,
    box: {
      x: 1000 * from - 0.14 * size,
      y: z0 - 0.1 * size,
      width: 1.28 * size,
      height: 1000 * (high - low) + 0.2 * size,
    },
    widthShare: 1,
    shapes: [
      ...long,
      ...ends,
      ...plates,
      { kind: 'dimension', from: [1000 * from, z0], to: [1000 * to, z0], offset: 34, text: text(to - from) },
      { kind: 'dimension', from: [1000 * to, z0], to: [1000 * to, 1000 * high], offset: 24, text: text(high - low) },
      ...endOn.slice(1).map(({ at }, i): Shape => ({ kind: 'dimension', from: [1000 * endOn[i]!.at, z0], to: [1000 * at, z0], offset: 16, text: text(at - endOn[i]!.at) })), // prettier-ignore
      ...endOn.map(({ id, at }): Shape => ({ kind: 'label', at: [1000 * at, 1000 * high + 0.02 * size], text: id, size: 7, anchor: 'middle' })), // prettier-ignore
    ],
  };
}
