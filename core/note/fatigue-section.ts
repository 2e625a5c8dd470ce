import type { CheckRow } from '../checks/check-row.ts';
import type { Reading } from '../checks/check.ts';
import { checks } from '../checks/index.ts';
import { fatigueReport, type FatigueDetail, type FatigueReport } from '../checks/fatigue-report.ts';
import type { Point } from '../geometry/geometry.ts';
import type { Model } from '../model.ts';
import { placeWords } from '../place-words.ts';
import { significant } from '../quantity/format-quantity.ts';
import { fatiguePicture } from './fatigue-picture.ts';
import { fatiguePlot } from './fatigue-plot.ts';
import type { Block, Figure, Section, Shape } from './note.ts';
import type { Print } from '../print-in.ts';

export const fatigueSectionCautions = [
  'A life here is that of calculation, with S-N curves that 2.3 % of details do not reach: nothing may break at its end, or before it.',
  'A design fatigue factor is on life alone; no partial factor is on stress or strength in these checks, and none may be added to them in exchange.',
  'Welds are taken as welded, protection as kept up over the whole life: once it is lost the curves of free corrosion hold, from that day.',
] as const;

/** Fatigue as the note tells it: how the force swings, the life of each detail, the governing one over its S-N curve. */
export function fatigueSection(model: Model, rows: readonly CheckRow[], print: Print): Section {
  const report = fatigueReport(model, rows);
  const { history, environment, factor, details } = report;
  const leaders = details.filter(({ leads }) => leads);
  const governing = governingOf(report);
  const plot = governing && fatiguePlot(model, governing);
  const blocks: Block[] = [
    { kind: 'paragraph', text: history.words },
    {
      kind: 'paragraph',
      text: `The details are ${environment.words}. The calculated life must be ${significant(factor.value, 3)} times the life wanted: ${factor.reason}.`,
    },
    governing
      ? {
          kind: 'paragraph',
          tone: governing.verdict === 'passes' ? 'plain' : 'loud',
          text: `${governing.title}, ${placeWords(model, governing.place)}, has the shortest life: ${lifeText(governing)} of ${years(governing.needed)} needed.${governing.verdict === 'passes' ? '' : ` To change: ${governing.mend}`}`,
        }
      : { kind: 'paragraph', tone: 'loud', text: 'No life can be told of any detail; the table says what is missing.' },
    {
      kind: 'table',
      caption:
        'Details, the gravest place of each: range of the stated swing (a sealed wall: of a deployment), and what it may be at most for the life needed',
      columns: [
        { title: 'Detail', width: 0.18 },
        { title: 'Place', width: 0.12 },
        { title: 'Class', width: 0.08 },
        { title: 'Range', width: 0.1, align: 'right' },
        { title: 'May be', width: 0.1, align: 'right' },
        { title: 'Damage', width: 0.11, align: 'right' },
        { title: 'Life', width: 0.11, align: 'right' },
        { title: 'To live longer', width: 0.2 },
      ],
      rows: leaders.map((detail) => {
        const stress = (si: number | null) => (si === null ? '–' : print.quantity(si, 'MPa', 3));
        return [
          detail.title.replace('Fatigue of ', ''),
          placeWords(model, detail.place),
          detail.curve ?? '–',
          stress(detail.range),
          stress(detail.bearable),
          detail.damage === null ? '–' : significant(detail.damage, 3),
          detail.damage === null ? 'NOT JUDGED' : lifeText(detail),
          detail.damage === null ? detail.reason : detail.mend,
        ];
      }),
      loud: leaders.flatMap(({ verdict }, i) => (verdict === 'passes' ? [] : [i])),
    },
    ...forcesOfBothEnds(model, leaders, print),
    ...(leaders.length > 0 ? [sketches(leaders)] : []),
    ...(plot ? [plot] : []),
    { kind: 'list', tone: 'caution', items: fatigueSectionCautions },
  ];
  return { title: 'Fatigue', blocks };
}

/**
 * Where the document takes the whole plate's forces too: what each detail counts from at both ends of the cycle beside what
 * it would by hand. Nothing else where both are by hand.
 */
function forcesOfBothEnds(model: Model, leaders: readonly FatigueDetail[], print: Print): Block[] {
  const { solved } = model;
  if (solved === null || 'missing' in solved) return [];
  const byHand: Model = { ...model, solved: null };
  const rows = leaders.flatMap(({ id, place, title, damage }) => {
    const check = damage === null ? undefined : checks.find((one) => one.id === id);
    return Object.entries(check?.inputs ?? {}).flatMap(([symbol, { unit, meaning, read: up }]) => {
      const other = symbol.endsWith('_up') ? check!.inputs[symbol.replace(/_up$/, '_dn')] : undefined;
      if (!other) return [];
      const four = [up, other.read].flatMap((read) =>
        [byHand, model].map((of) => read(of, place, model.loads.swing.up)),
      );
      const text = (si: Reading) => (typeof si !== 'number' ? '–' : si === 0 ? '0' : print.quantity(si, unit, 3));
      const what = meaning.replace(/, force( of the water)? up, no load factor$/, '');
      return [[title.replace('Fatigue of ', ''), placeWords(model, place), what, ...four.map(text)]];
    });
  });
  if (rows.length === 0) return [];
  return [
    {
      kind: 'paragraph',
      text: 'The plate is solved as one structure at both ends of the cycle as well. Each force counts as it makes the range larger: the larger of both, and the smaller at an end beyond which the detail comes to rest.',
    },
    {
      kind: 'table',
      caption: 'Forces and stresses at the ends of a cycle of service, no load factor: by hand, and as counted',
      columns: [
        { title: 'Detail', width: 0.18 },
        { title: 'Place', width: 0.12 },
        { title: 'What', width: 0.22 },
        { title: 'Up, by hand', width: 0.12, align: 'right' },
        { title: 'counted', width: 0.12, align: 'right' },
        { title: 'Down, by hand', width: 0.12, align: 'right' },
        { title: 'counted', width: 0.12, align: 'right' },
      ],
      rows,
    },
  ];
}

/** The judged detail of the shortest life. */
export function governingOf({ details }: FatigueReport): FatigueDetail | null {
  return details.reduce<FatigueDetail | null>(
    (worst, detail) =>
      detail.leads && detail.damage !== null && detail.damage > (worst?.damage ?? -1) ? detail : worst,
    null,
  );
}

const years = (count: number): string => `${significant(count, 3)} ${count === 1 ? 'year' : 'years'}`;

export const lifeText = ({ life, needed }: FatigueDetail): string =>
  life === null ? 'no damage' : life > 100 * needed ? `over ${years(100 * needed)}` : years(life);

/** All sketches of the details made, side by side, each with its title under it. */
function sketches(details: readonly FatigueDetail[]): Figure {
  const columns = 4;
  const [width, height] = [130, 92];
  const rows = Math.ceil(details.length / columns);
  const shapes = details.flatMap(({ id, title }, i): Shape[] => {
    const [x, y] = [(i % columns) * width, (rows - 1 - Math.floor(i / columns)) * height + 24];
    const words = title.replace(/^Fatigue of an? /, '');
    const split = words.lastIndexOf(' ', Math.ceil(words.length / 2) + 4);
    return [
      ...moved(fatiguePicture(id, title).shapes, x, y),
      {
        kind: 'label',
        at: [x + 50, y - 10],
        text: split > 0 ? words.slice(0, split) : words,
        size: 6,
        anchor: 'middle',
      },
      ...(split > 0
        ? [{ kind: 'label', at: [x + 50, y - 18], text: words.slice(split + 1), size: 6, anchor: 'middle' } as const]
        : []),
    ];
  });
  return {
    kind: 'figure',
    caption: 'The details and where each cracks (no scale)',
    alt: `Sketches of ${details.length} details with their cracks`,
    box: { x: -15, y: 0, width: columns * width, height: rows * height },
    widthShare: 1,
    shapes,
  };
}

function moved(shapes: readonly Shape[], dx: number, dy: number): Shape[] {
  const by = ([x, y]: Point): Point => [x + dx, y + dy];
  return shapes.map((shape) => {
    switch (shape.kind) {
      case 'path':
        return { ...shape, rings: shape.rings.map((ring) => ring.map(by)) };
      case 'arrow':
      case 'dimension':
        return { ...shape, from: by(shape.from), to: by(shape.to) };
      default:
        return { ...shape, at: by(shape.at) };
    }
  });
}
