import { laidRaw } from '../../document/edit.ts';
import { patternWords } from '../../document/bolt-pattern.ts';
import { mergePatch } from '../../document/merge-patch.ts';
import { readDocument, type RawDocument } from '../../document/read-document.ts';
import type { MergePatch, PanelDesign, PlateDocument } from '../../document/schema.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { refusal } from '../../refusal.ts';
import type { SearchSpace, Zone } from './search-space.ts';

/** One zone with everything that it may be, ready to be counted through: `designOf(i)` for i below `count`. */
export interface ZoneChoices {
  readonly zone: Zone;
  readonly count: number;
  /** Candidates that differ in thickness alone stand beside each other, the thinnest first: this many in a column. */
  readonly column: number;
  /** Number of columns; the last is the open one where the zone may stay open. */
  readonly columns: number;
  /** The design of a candidate as read; null leaves the bays open. */
  readonly designOf: (index: number) => PanelDesign | null;
  /** The same as it is written in a document. */
  readonly rawOf: (index: number) => Readonly<Record<string, unknown>> | null;
  /** What it is, in few words. */
  readonly wordsOf: (index: number) => string;
}

/** Largest number of candidates in a zone: their aims are kept in memory while the search lasts. */
const mostCandidates = 250_000;

/**
 * Everything that each zone may be. Each fixing is read with each material by the document's own rules, so that what is
 * wrong in a space is told before the search and in the same words. Refuses zones that share a panel, and an empty list.
 */
export function zoneChoices(raw: RawDocument, space: SearchSpace): readonly ZoneChoices[] {
  const laid = laidRaw(raw, space.from);
  const document = readDocument(laid);
  const taken = new Map<string, string>();
  return space.zones.map((zone) => {
    for (const panel of zone.panels) {
      const other = taken.get(panel);
      if (other !== undefined)
        throw refusal({
          what: `Panel “${panel}” is in the zones “${other}” and “${zone.name}”`,
          where: { zone: zone.name },
          mend: 'Keep it in one of them.',
        });
      taken.set(panel, zone.name);
    }
    return choicesOf(laid, document, zone);
  });
}

function choicesOf(laid: RawDocument, document: PlateDocument, zone: Zone): ZoneChoices {
  const like = Object.hasOwn(document.designs, zone.like) ? document.designs[zone.like] : undefined;
  const rawLike = (laid['designs'] as Record<string, Record<string, unknown>>)[zone.like];
  if (!like || !rawLike)
    throw refusal({
      what: `There is no design “${zone.like}”`,
      where: { zone: zone.name },
      mend: `Name one of: ${Object.keys(document.designs).join(', ')}.`,
    });
  if (zone.panels.length === 0)
    throw refusal({
      what: `The zone “${zone.name}” has no panel`,
      where: { zone: zone.name },
      mend: 'Name its panels by their bays.',
    });
  for (const [name, list] of Object.entries({
    thickness: zone.thickness,
    material: zone.material,
    side: zone.side,
    overlap: zone.overlap,
    fixing: zone.fixing,
  }))
    if (list?.length === 0)
      throw refusal({
        what: `The zone “${zone.name}” has an empty list for ${name}`,
        where: { zone: zone.name },
        mend: 'Give at least one, or leave it out.',
      });

  const thicknesses = (zone.thickness ?? [like.thickness.typed])
    .map((typed) => readQuantity(typed, 'length'))
    .sort((a, b) => a.si - b.si);
  const materials = zone.material ?? [like.material];
  const sides = zone.side ?? [like.side];
  const overlaps = zone.overlap?.map((typed) => readQuantity(typed, 'length')) ?? [null];
  const fixings = zone.fixing ?? [{ name: fixingWords(like), fixing: {} }];
  for (const { si, typed } of [...thicknesses, ...overlaps.filter((overlap) => overlap !== null)])
    if (!(si > 0))
      throw refusal({
        what: `“${typed}” is not above zero`,
        where: { zone: zone.name },
        mend: 'Write a length above zero.',
      });

  const rawFixings = fixings.map(({ fixing }) => {
    const kind = fixing['kind'];
    return kind === undefined || kind === like.fixing.kind
      ? mergePatch(withoutPattern(rawLike['fixing'], fixing), fixing as MergePatch)
      : fixing;
  });
  // Every pair of fixing and material goes once through the document's own reader.
  const pairs = rawFixings.flatMap((fixing, f) =>
    materials.map((material, m) => [`f${f} m${m}`, { ...rawLike, material, fixing }] as const),
  );
  const read = readDocument({
    ...laid,
    designs: { ...(laid['designs'] as object), ...Object.fromEntries(pairs) },
  }).designs;

  const column = thicknesses.length;
  const closed = fixings.length * materials.length * sides.length * overlaps.length * column;
  const count = closed + (zone.open ? 1 : 0);
  if (count > mostCandidates)
    throw refusal({
      what: `The zone “${zone.name}” has ${count} candidates, the limit is ${mostCandidates}`,
      where: { zone: zone.name },
      mend: 'Vary less at once, or search in pieces.',
    });
  const parts = (index: number) => {
    const t = index % column;
    let rest = Math.floor(index / column);
    const overlap = overlaps[rest % overlaps.length]!;
    rest = Math.floor(rest / overlaps.length);
    const side = sides[rest % sides.length]!;
    rest = Math.floor(rest / sides.length);
    const m = rest % materials.length;
    return { thickness: thicknesses[t]!, overlap, side, m, f: Math.floor(rest / materials.length) };
  };
  return {
    zone,
    count,
    column,
    columns: closed / column + (zone.open ? 1 : 0),
    designOf: (index) => {
      if (index >= closed) return null;
      const { thickness, overlap, side, m, f } = parts(index);
      const design = read[`f${f} m${m}`]!;
      return { ...design, thickness, side, ...(overlap ? { overlap: { onMain: overlap, onCross: overlap } } : {}) };
    },
    rawOf: (index) => {
      if (index >= closed) return null;
      const { thickness, overlap, side, m, f } = parts(index);
      return {
        ...rawLike,
        thickness: thickness.typed,
        material: materials[m],
        side,
        fixing: rawFixings[f],
        ...(overlap ? { overlap: { onMain: overlap.typed, onCross: overlap.typed } } : {}),
      };
    },
    wordsOf: (index) => {
      if (index >= closed) return 'open';
      const { thickness, overlap, side, m, f } = parts(index);
      return [
        thickness.typed,
        materials[m],
        side,
        ...(overlap ? [`lapped ${overlap.typed}`] : []),
        fixings[f]!.name,
      ].join(', ');
    },
  };
}

/** A fixing without the bolts' pattern that a candidate's own takes the place of: lines for a list, a list for lines. */
function withoutPattern(fixing: unknown, candidate: Readonly<Record<string, unknown>>): MergePatch {
  const { pitch: _, edgeDistance: __, ...unlined } = fixing as Record<string, MergePatch>;
  if (candidate['places']) return unlined;
  const { places: ___, ...unlisted } = fixing as Record<string, MergePatch>;
  return candidate['pitch'] && candidate['edgeDistance'] ? unlisted : (fixing as MergePatch);
}

/** A design's fixing in few words. */
function fixingWords({ fixing }: PanelDesign): string {
  return fixing.kind === 'bolted'
    ? `${fixing.bolt} ${patternWords(fixing)}`
    : `welded ${fixing.pattern}, throat ${fixing.throat.typed}`;
}
