import { catalogueWith } from '../catalogue/catalogue.ts';
import { readDocument } from '../document/read-document.ts';
import { startingDocument } from '../document/starting-document.ts';
import type { PlateDocument } from '../document/schema.ts';
import { userRows } from '../document/user-rows.ts';
import { gridOf } from '../geometry/geometry-of.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { typedLength } from '../quantity/typed-length.ts';
import { refusal, Refusal, type RefusalText } from '../refusal.ts';

/** The six things that a new plate asks for; quantities as typed. */
export interface NewPlate {
  readonly name: string;
  readonly units: 'metric' | 'inch';
  /** Outline in plan: along the main tubes, and along the cross tubes. */
  readonly length: string;
  readonly width: string;
  readonly mainTubes: number;
  readonly crossTubes: number;
  readonly section: string;
  readonly depth: string;
  /** Largest force of the water either way. */
  readonly force: string;
}

/**
 * A complete document for an evenly spaced grid in which every bay is closed, from six answers. What was not asked is as
 * in `startingDocument` and there to be changed. Refuses every wrong answer at once.
 */
export function newPlate(asked: NewPlate): ReturnType<typeof startingDocument> {
  const faults: RefusalText[] = [];
  const attempt = <T>(field: string, read: () => T): T | undefined => {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      faults.push(...error.all.map(({ what, mend }) => ({ what, mend, where: { path: field } })));
      return undefined;
    }
  };
  const positive = (field: 'length' | 'width' | 'depth' | 'force', kind: 'length' | 'force') =>
    attempt(field, () => {
      const { si } = readQuantity(asked[field], kind);
      if (si > 0) return si;
      throw refusal({ what: `“${asked[field]}” must be more than zero`, mend: 'Write a larger one.' });
    });
  const length = positive('length', 'length');
  const width = positive('width', 'length');
  positive('depth', 'length');
  positive('force', 'force');
  const isCount = (field: 'mainTubes' | 'crossTubes'): boolean =>
    Number.isInteger(asked[field]) && asked[field] >= 2 && asked[field] <= 60;
  for (const field of ['mainTubes', 'crossTubes'] as const)
    if (!isCount(field))
      faults.push({
        what: 'The number of tubes is not a whole number from 2 to 60',
        where: { path: field },
        mend: 'Write 2 or more.',
      });
  const section = attempt('section', () => catalogueWith().section(asked.section));
  const along =
    length !== undefined && section && isCount('crossTubes')
      ? attempt('length', () => spacing(length, asked.crossTubes, section.width, asked))
      : undefined;
  const across =
    width !== undefined && section && isCount('mainTubes')
      ? attempt('width', () => spacing(width, asked.mainTubes, section.width, asked))
      : undefined;
  const [first, ...more] = faults;
  if (first || !along || !across) throw new Refusal([first!, ...more]);

  const start = startingDocument(asked.units);
  const hole = (n: number, of: (typeof start.designs.bolted.holes)[number]) => ({
    ...of,
    x: lengthTyped(((along.spacing - section!.width) / 4) * (n === 0 ? -1 : 1), asked.units),
  });
  const places = (x: readonly number[], y: readonly number[], name: string) =>
    y
      .flatMap((j) => x.map((i) => ({ i, j })))
      .map(({ i, j }, n) => ({
        id: `${name}${n + 1}`,
        x: lengthTyped(i * along.spacing, asked.units),
        y: lengthTyped(j * across.spacing, asked.units),
      }));
  const inner = asked.crossTubes >= 4 ? [1, asked.crossTubes - 2] : [0, asked.crossTubes - 1];
  const grid = {
    ...start.grid,
    mainTubes: {
      ...start.grid.mainTubes,
      section: asked.section,
      count: asked.mainTubes,
      spacing: lengthTyped(across.spacing, asked.units),
      overhang: lengthTyped(along.overhang, asked.units),
    },
    crossTubes: {
      ...start.grid.crossTubes,
      section: asked.section,
      count: asked.crossTubes,
      spacing: lengthTyped(along.spacing, asked.units),
      overhang: lengthTyped(across.overhang, asked.units),
    },
    suspension: { ...start.grid.suspension, attachments: places(inner, [0, asked.mainTubes - 1], 'S') },
  };
  const { bolted, welded } = start.designs;
  const document = {
    ...start,
    project: { ...start.project, name: asked.name },
    water: { ...start.water, depth: asked.depth },
    grid,
    designs: {
      bolted: { ...bolted, holes: bolted.holes.map((of, n) => hole(n, of)) },
      welded: { ...welded, holes: welded.holes.map((of, n) => hole(n, of)) },
    },
    loads: {
      ...start.loads,
      service: { ...start.loads.service, force: asked.force },
      deck: { ...start.loads.deck, supports: places([0, asked.crossTubes - 1], [0, asked.mainTubes - 1], 'D') },
    },
  };
  const bays = baysOf(readDocument(document));
  const all = (design: string) =>
    Object.fromEntries(bays.map((bay) => [bay, design])) as unknown as typeof start.panels;
  return {
    ...document,
    panels: all('bolted'),
    options: document.options.map((option) => ({ ...option, changes: { ...option.changes, panels: all('welded') } })),
  };
}

/** Even spacing in round figures and the overhang that makes up the outline. */
function spacing(
  outline: number,
  count: number,
  tube: number,
  { units }: NewPlate,
): { readonly spacing: number; readonly overhang: number } {
  const unit = units === 'inch' ? 0.0254 / 8 : 0.001;
  const room = outline - tube;
  const step = Math.floor(room / (count - 1) / unit + 1e-9) * unit;
  if (!(step > tube + unit))
    throw refusal({
      what: `${count} tubes of ${lengthTyped(tube, units)} leave no gap in ${lengthTyped(outline, units)}`,
      mend: 'Take fewer tubes, a smaller section or a larger outline.',
    });
  return { spacing: step, overhang: (outline - step * (count - 1)) / 2 };
}

/** To a tenth of a millimetre or a ten-thousandth of an inch. */
const lengthTyped = (metres: number, units: 'metric' | 'inch'): string => typedLength(metres, units, { mm: 1, in: 4 });

function baysOf(document: PlateDocument): readonly string[] {
  return gridOf(document, catalogueWith(userRows(document))).bays.map(({ id }) => id);
}
