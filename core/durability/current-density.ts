import { refusal } from '../refusal.ts';

/** Current that bare steel needs, A/m²: to be polarised, over the life in the mean, and at its end after a storm. */
export interface CurrentDensity {
  readonly initial: number;
  readonly mean: number;
  readonly final: number;
}

/** Colder than, °C, from the warmest; and [initial, mean, final] by depth: to 30 m, 100 m, 300 m. */
const table = [
  { from: 20, rows: [[0.15, 0.07, 0.1], [0.12, 0.06, 0.08], [0.14, 0.07, 0.09]] },
  { from: 12, rows: [[0.17, 0.08, 0.11], [0.14, 0.07, 0.09], [0.16, 0.08, 0.11]] },
  { from: 7, rows: [[0.2, 0.1, 0.13], [0.17, 0.08, 0.11], [0.19, 0.09, 0.14]] },
  { from: -Infinity, rows: [[0.25, 0.12, 0.17], [0.2, 0.1, 0.13], [0.22, 0.11, 0.17]] },
] as const; // prettier-ignore
const depths = [30, 100, 300] as const;

/**
 * Design current density of bare steel in the sea, A/m², by depth in m and temperature of the water in K.
 * Refuses a depth below 300 m, which no plate of this kind hangs at.
 * Source: DNV-RP-B401 (2010), tables of initial/final and mean densities, from memory.
 */
export function currentDensity(depth: number, temperature: number): CurrentDensity {
  const column = depths.findIndex((to) => depth <= to);
  if (column < 0)
    throw refusal({
      what: `The current that protects steel is tabled down to 300 m, the plate hangs at ${depth} m`,
      where: { path: 'water.depth' },
      mend: 'Have the protection designed by a specialist.',
    });
  const celsius = temperature - 273.15;
  const [initial, mean, final] = table.find(({ from }) => celsius > from)!.rows[column]!;
  return { initial, mean, final };
}
