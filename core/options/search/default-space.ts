import { listWords } from '../../document/bolt-pattern.ts';
import { catalogueWith } from '../../catalogue/catalogue.ts';
import { laidRaw } from '../../document/edit.ts';
import { readDocument, type RawDocument } from '../../document/read-document.ts';
import { userRows } from '../../document/user-rows.ts';
import { refusal } from '../../refusal.ts';
import { oppositeFixing } from '../opposite-fixing.ts';
import type { FixingChoice, SearchSpace, Zone } from './search-space.ts';

/** What a person asks for without writing a whole space: lists of what may vary, the same for all bays or bay by bay. */
export interface Asked {
  readonly aims?: SearchSpace['aims'];
  readonly thickness?: readonly string[];
  readonly material?: readonly string[];
  readonly side?: Zone['side'];
  readonly overlap?: readonly string[];
  readonly kind?: readonly ('bolted' | 'welded')[];
  readonly bolt?: readonly string[];
  readonly pitch?: readonly string[];
  readonly throat?: readonly string[];
  /** One design for all panels, or one for each set of panels that have the same design now, or one a panel. */
  readonly zones?: 'all' | 'designs' | 'panels';
  readonly open?: boolean;
  readonly limits?: SearchSpace['limits'];
  readonly aside?: readonly string[];
  readonly judged?: boolean;
}

/**
 * The space that a person's lists span. What is not listed stays as the panels have it; without any list: thickness from
 * stock, from half to twice what is there. A list of bolts, pitches and throats varies the fixing of the kind it is of;
 * where that kind is not there yet it is made as the opposite of what is (see `oppositeFixing`).
 */
export function askedSpace(raw: RawDocument, from: string | null, asked: Asked): SearchSpace {
  const laid = laidRaw(raw, from);
  const document = readDocument(laid);
  const panels = Object.entries(document.panels);
  if (panels.length === 0)
    throw refusal({
      what: 'The option has no panel to vary',
      where: { path: 'panels' },
      mend: 'Close at least one bay.',
    });
  const varies = Boolean(
    asked.material ??
    asked.side ??
    asked.overlap ??
    asked.kind ??
    asked.bolt ??
    asked.pitch ??
    asked.throat ??
    asked.open,
  );
  const zoneOf = (name: string, keys: readonly string[], like: string): Zone => {
    const design = document.designs[like]!;
    const thickness = asked.thickness ?? (varies ? undefined : stockAround(document, design.thickness.si));
    const fixing = fixingsOf(laid, document, like, asked);
    return {
      name,
      panels: keys,
      like,
      ...(thickness ? { thickness } : {}),
      ...(asked.material ? { material: asked.material } : {}),
      ...(asked.side ? { side: asked.side } : {}),
      ...(asked.overlap ? { overlap: asked.overlap } : {}),
      ...(fixing ? { fixing } : {}),
      ...(asked.open ? { open: true as const } : {}),
    };
  };
  const kind = asked.zones ?? 'all';
  const designs = [...new Set(panels.map(([, design]) => design))];
  const zones =
    kind === 'all' ? [zoneOf('all panels', panels.map(([key]) => key), designs[0]!)]
    : kind === 'designs' ? designs.map((like) => zoneOf(like, panels.filter(([, of]) => of === like).map(([key]) => key), like))
    : panels.map(([key, like]) => zoneOf(key, [key], like)); // prettier-ignore
  return {
    from,
    zones,
    aims: asked.aims ?? ['mass', 'holes'],
    limits: asked.limits ?? {},
    aside: asked.aside ?? [],
    judged: asked.judged ?? false,
  };
}

/** Stock thicknesses from half to twice one that is there, as they are written. */
function stockAround(document: ReturnType<typeof readDocument>, thickness: number): readonly string[] {
  const series = document.units === 'inch' ? 'inch' : 'metric';
  const kept = catalogueWith(userRows(document)).stockPlates.filter(
    (plate) => plate.series === series && plate.thickness >= thickness * 0.499 && plate.thickness <= thickness * 2.001,
  );
  return kept.map(({ id }) => id);
}

function fixingsOf(
  laid: RawDocument,
  document: ReturnType<typeof readDocument>,
  like: string,
  asked: Asked,
): readonly FixingChoice[] | null {
  const { kind, bolt, pitch, throat } = asked;
  if (!kind && !bolt && !pitch && !throat) return null;
  const design = document.designs[like]!;
  const raw = (laid['designs'] as Record<string, { fixing: Record<string, unknown> }>)[like]!.fixing;
  const own = design.fixing.kind;
  const kinds = kind ?? [
    ...new Set([own, ...(bolt || pitch ? ['bolted' as const] : []), ...(throat ? ['welded' as const] : [])]),
  ];
  return kinds.flatMap((of): FixingChoice[] => {
    const start: Record<string, unknown> = of === own ? raw : { ...oppositeFixing(document, design).fixing };
    if (of === 'bolted' && start['places'] !== undefined) {
      if (pitch)
        throw refusal({
          what: `The bolts of the design “${like}” stand on listed places: a pitch varies nothing`,
          where: { path: `designs.${like}.fixing.places` },
          mend: 'Leave the pitches out of the search, or give the design a pitch and an edge distance in place of the list.',
        });
      const words = listWords(start['places'] as readonly unknown[]);
      return (bolt ?? [start['bolt'] as string]).map((size) => ({
        name: `${size} ${words}`,
        fixing: { ...start, bolt: size },
      }));
    }
    if (of === 'bolted')
      return (bolt ?? [start['bolt'] as string]).flatMap((size) =>
        (pitch ?? [textOf(start['pitch'])]).map((apart) => ({
          name: `${size} up to ${apart} apart`,
          fixing: { ...start, bolt: size, pitch: apart },
        })),
      );
    return (throat ?? [textOf(start['throat'])]).map((size) => ({
      name: `welded ${String(start['pattern'])}, throat ${size}`,
      fixing: { ...start, throat: size },
    }));
  });
}

const textOf = (typed: unknown): string =>
  typeof typed === 'string' ? typed : String((typed as { typed?: unknown }).typed);
