import type { Rates } from '../document/schema.ts';

/** What a design counts up to, whatever it costs: of panels, their fixings and what is drilled for them. */
export interface CountedWork {
  /** Panels as built, kg. */
  readonly plate: number;
  /** Cut edges, m. */
  readonly cut: number;
  /** Holes drilled for bolts, in panels and in tubes. */
  readonly holes: number;
  readonly bolts: number;
  /** m. */
  readonly weld: number;
  readonly panels: number;
}

type RateName = Exclude<keyof Rates, 'currency' | 'source'>;

export interface CostLine {
  readonly title: string;
  /** Null where the rates that it needs are not given. */
  readonly money: number | null;
  /** What would have to be given. */
  readonly missing: readonly RateName[];
}

export interface Cost {
  readonly lines: readonly CostLine[];
  /** Sum of the lines; null as long as one of them that counts anything has no rate. */
  readonly total: number | null;
  readonly missing: readonly RateName[];
}

/** Each line: what is counted, and the rates that its money is the product of (labour in minutes: an hour's rate over 60). */
const lines: readonly { readonly title: string; readonly of: (work: CountedWork) => number; readonly rate: RateName; readonly minutes?: true }[] = [
  { title: 'Plate', of: ({ plate }) => plate, rate: 'platePerKg' },
  { title: 'Cutting of edges', of: ({ cut }) => cut, rate: 'cutPerMetre' },
  { title: 'Drilling', of: ({ holes }) => holes, rate: 'perHole' },
  { title: 'Bolts with their parts', of: ({ bolts }) => bolts, rate: 'perBolt' },
  { title: 'Welding in the workshop', of: ({ weld }) => weld, rate: 'weldPerMetre' },
  { title: 'Coating again beside welds', of: ({ weld }) => weld, rate: 'recoatPerMetre' },
  { title: 'Coating again at holes', of: ({ holes }) => holes, rate: 'recoatPerHole' },
  { title: 'Placing panels', of: ({ panels }) => panels, rate: 'minutesToPlacePanel', minutes: true },
  { title: 'Fitting bolts', of: ({ bolts }) => bolts, rate: 'minutesToFitBolt', minutes: true },
]; // prettier-ignore

/** Taking panels off and putting them back, once. */
const removal: typeof lines = [
  { title: 'Taking bolts out', of: ({ bolts }) => bolts, rate: 'minutesToRemoveBolt', minutes: true },
  { title: 'Fitting bolts again', of: ({ bolts }) => bolts, rate: 'minutesToFitBolt', minutes: true },
  { title: 'Cutting welds off', of: ({ weld }) => weld, rate: 'minutesToCutMetre', minutes: true },
  { title: 'Welding again on deck', of: ({ weld }) => weld, rate: 'minutesToWeldMetre', minutes: true },
];

/** Cost by the user's own rates: to build and fit, and for `removals` times taken off and put back. In the user's currency. */
export function costOfRates(work: CountedWork, rates: Rates | undefined): Cost {
  const times = rates?.removals;
  const made = [...lines.map((line) => lineOf(line, 1)), ...removal.map((line) => lineOf(line, times))].filter(
    (line) => line !== null,
  );
  const vessel = vesselLine(work, rates);
  if (vessel) made.push(vessel);
  const missing = [...new Set(made.flatMap((line) => line.missing))];
  return {
    lines: made,
    total: missing.length > 0 ? null : made.reduce((sum, { money }) => sum + (money as number), 0),
    missing,
  };

  function lineOf({ title, of, rate, minutes }: (typeof lines)[number], repeated: number | undefined): CostLine | null {
    const count = of(work);
    if (count === 0 || repeated === 0) return null;
    const needs: RateName[] = [
      rate,
      ...(minutes ? (['labourPerHour'] as const) : []),
      ...(repeated === undefined ? (['removals'] as const) : []),
    ];
    const absent = needs.filter((name) => rates?.[name] === undefined);
    if (absent.length > 0) return { title, money: null, missing: absent };
    const labour = minutes ? (rates!.labourPerHour as number) / 60 : 1;
    return { title, money: count * (rates![rate] as number) * labour * (repeated as number), missing: [] };
  }
}

/**
 * Hours that a vessel waits over the life while panels are taken off and put back: minutes of one person's work over the
 * people who work at once, for each removal. Null with what is missing.
 */
export function offshoreHours(
  { bolts, weld }: Pick<CountedWork, 'bolts' | 'weld'>,
  rates: Rates | undefined,
): { readonly hours: number | null; readonly missing: readonly RateName[] } {
  if (rates?.removals === 0) return { hours: 0, missing: [] };
  const needed: readonly RateName[] = [
    'removals',
    'peopleOnDeck',
    ...(bolts > 0 ? (['minutesToRemoveBolt', 'minutesToFitBolt'] as const) : []),
    ...(weld > 0 ? (['minutesToCutMetre', 'minutesToWeldMetre'] as const) : []),
  ];
  const missing = needed.filter((name) => rates?.[name] === undefined);
  if (!rates || missing.length > 0) return { hours: null, missing };
  const of = (name: RateName): number => rates[name] as number;
  const minutes =
    (bolts > 0 ? bolts * (of('minutesToRemoveBolt') + of('minutesToFitBolt')) : 0) +
    (weld > 0 ? weld * (of('minutesToCutMetre') + of('minutesToWeldMetre')) : 0);
  return { hours: (of('removals') * minutes) / 60 / of('peopleOnDeck'), missing: [] };
}

/** The vessel that waits, where the user gives its rate: without it the vessel is no line, for many have none to pay. */
function vesselLine(work: CountedWork, rates: Rates | undefined): CostLine | null {
  if (rates?.vesselPerHour === undefined) return null;
  const { hours, missing } = offshoreHours(work, rates);
  if (hours === 0) return null;
  return { title: 'Vessel while panels are off', money: hours === null ? null : hours * rates.vesselPerHour, missing };
}
