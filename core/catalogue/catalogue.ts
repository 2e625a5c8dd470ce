import { refusal, Refusal } from '../refusal.ts';
import type { RefusalText } from '../refusal.ts';
import { boltClasses } from './bolt-classes.ts';
import { bolts } from './bolts.ts';
import { materials } from './materials.ts';
import type { Bolt, BoltClass, HollowSection, Material, Row, StockPlate, Substance, WeldMetal } from './rows.ts';
import { spelling, spellingDistance } from './spelling.ts';
import { standardSections } from './standard-sections.ts';
import { stockPlates } from './stock-plates.ts';
import { substances } from './substances.ts';
import { weldMetals } from './weld-metals.ts';

/** What each kind of row is. */
export interface RowOf {
  readonly material: Material;
  readonly section: HollowSection;
  readonly bolt: Bolt;
  readonly boltClass: BoltClass;
  readonly weldMetal: WeldMetal;
  readonly stockPlate: StockPlate;
  readonly substance: Substance;
}

export type RowKind = keyof RowOf;

/** Rows of the user's own, by kind, in SI. */
export type UserRows = { readonly [K in RowKind]?: readonly RowOf[K][] };

/** Built-in rows and the user's own. A look-up forgives case, blanks and the spelling of numbers; it never guesses:
 *  an unknown id is refused with the three nearest ids. */
export interface Catalogue {
  material(id: string): Material;
  section(id: string): HollowSection;
  bolt(id: string): Bolt;
  boltClass(id: string): BoltClass;
  weldMetal(id: string): WeldMetal;
  substance(id: string): Substance;
  readonly stockPlates: readonly StockPlate[];
  /** All rows of a kind, built-in first, in the order of the tables. */
  list<K extends RowKind>(kind: K): readonly RowOf[K][];
  /** Ids of the user's own rows. */
  readonly own: ReadonlySet<string>;
}

const builtIn: { readonly [K in RowKind]: readonly RowOf[K][] } = {
  material: materials,
  section: standardSections,
  bolt: bolts,
  boltClass: boltClasses,
  weldMetal: weldMetals,
  stockPlate: stockPlates,
  substance: substances,
};

const kinds = Object.keys(builtIn) as RowKind[];

const kindWords: Record<RowKind, string> = {
  material: 'material',
  section: 'hollow section',
  bolt: 'bolt',
  boltClass: 'bolt class',
  weldMetal: 'weld metal',
  stockPlate: 'stock plate',
  substance: 'substance',
};

const builtInIndex = Object.fromEntries(kinds.map((kind) => [kind, indexOf(builtIn[kind])])) as Record<
  RowKind,
  ReadonlyMap<string, Row>
>;

/** The catalogue with the user's rows added. Refuses a user row whose id is empty, doubled or already built in,
 *  and one with a number that is not finite and positive; all faults at once. */
export function catalogueWith(user: UserRows = {}): Catalogue {
  const faults = kinds.flatMap((kind) => faultsOf(kind, user[kind] ?? []));
  const [first, ...others] = faults;
  if (first) throw new Refusal([first, ...others]);

  const userIndex = Object.fromEntries(kinds.map((kind) => [kind, indexOf(user[kind] ?? [])])) as Record<
    RowKind,
    ReadonlyMap<string, Row>
  >;
  const list = <K extends RowKind>(kind: K): readonly RowOf[K][] => [
    ...(builtIn[kind] as readonly RowOf[K][]),
    ...((user[kind] ?? []) as readonly RowOf[K][]),
  ];
  // A check asks for the same few rows thousands of times: each spelling is read once.
  const asked = new Map<string, Row>();
  const find = <K extends RowKind>(kind: K, id: string): RowOf[K] => {
    const before = asked.get(`${kind} ${id}`);
    if (before) return before as RowOf[K];
    const found = builtInIndex[kind].get(keyOf(id)) ?? userIndex[kind].get(keyOf(id));
    if (!found) throw unknown(kind, id, list(kind));
    asked.set(`${kind} ${id}`, found);
    return found as RowOf[K];
  };
  return {
    material: (id) => find('material', id),
    section: (id) => find('section', id),
    bolt: (id) => find('bolt', id),
    boltClass: (id) => find('boltClass', id),
    weldMetal: (id) => find('weldMetal', id),
    substance: (id) => find('substance', id),
    stockPlates: list('stockPlate'),
    list,
    own: new Set(kinds.flatMap((kind) => (user[kind] ?? []).map(({ id }) => id))),
  };
}

function keyOf(id: string): string {
  return spelling(id).join(' ');
}

function indexOf(rows: readonly Row[]): ReadonlyMap<string, Row> {
  return new Map(rows.flatMap((row) => [row.id, ...(row.also ?? [])].map((name) => [keyOf(name), row] as const)));
}

function unknown(kind: RowKind, id: string, rows: readonly Row[]): Refusal {
  const wanted = spelling(id);
  const nearest = rows
    .map((row) => ({ id: row.id, distance: spellingDistance(wanted, spelling(row.id)) }))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 3)
    .map((row) => row.id);
  return refusal({
    what: `the catalogue has no ${kindWords[kind]} “${id}”`,
    where: { [kind]: id },
    mend: `Nearest are: ${nearest.join('; ')}. Or add a row of your own to the document`,
  });
}

function faultsOf(kind: RowKind, rows: readonly Row[]): RefusalText[] {
  const ids = rowIdFaults(
    kind,
    rows.map(({ id }) => id),
  );
  return rows.flatMap((row, at) => {
    const where = { [kind]: row.id };
    const faults: RefusalText[] = ids
      .filter(({ index }) => index === at)
      .map(({ what, mend }) => ({ what, where, mend }));
    for (const [path, value] of numbersIn(row))
      if (
        !(value > 0 && Number.isFinite(value)) &&
        !(path === 'innerRadius' || path === 'outerRadius' ? value === 0 : false)
      )
        faults.push({
          what: `${path} of “${row.id}” must be positive, it is ${value}`,
          where: { ...where, field: path },
          mend: 'Give a value above zero',
        });
    return faults;
  });
}

/** What is wrong with the ids of the user's rows of one kind: empty, already built in, or taken twice. By place in the list. */
export function rowIdFaults(kind: RowKind, ids: readonly string[]): { index: number; what: string; mend: string }[] {
  const seen = new Set<string>();
  return ids.flatMap((id, index) => {
    const key = keyOf(id);
    const before = seen.has(key);
    seen.add(key);
    if (!key)
      return {
        index,
        what: `a ${kindWords[kind]} of your own has no usable id`,
        mend: 'Give it a name with letters or digits',
      };
    if (builtInIndex[kind].has(key))
      return {
        index,
        what: `“${id}” is the id of a built-in ${kindWords[kind]}`,
        mend: 'Give your own row another id, so that the note shows whose numbers were used',
      };
    return before ? { index, what: `“${id}” stands twice among your own rows`, mend: 'Keep one, or rename one' } : [];
  });
}

function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, path ? `${path}.${key}` : key));
}
