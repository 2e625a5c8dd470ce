import type { Appraisal } from './appraise.ts';
import { graver, type BothSides, type CheckRow } from './checks/check-row.ts';
import type { SolvedForces } from './loads/solved-forces.ts';
import { unitReading } from './quantity/units.ts';

/** The program's version; the one place that says it, held equal to package.json by a test. */
export const programVersion = '0.1.0';

/** One object with everything that a command prints with --json. Quantities and checks in SI. */
export interface Result {
  readonly schema: 'stillplate-result/1';
  readonly document: string;
  readonly documentHash: string;
  readonly programVersion: string;
  readonly option: string | null;
  readonly basis: string;
  readonly quantities: Appraisal['quantities'];
  readonly checks: readonly ResultRow[];
  readonly governing: Readonly<Record<string, ResultRow>>;
  /** The mesh and its errors, where forces of the whole plate were judged with. */
  readonly solver?: SolvedForces['mesh'];
  readonly limitStates: readonly {
    readonly name: string;
    readonly verdict: string;
    readonly fails: number;
    readonly unjudged: number;
    readonly made: number;
    readonly governing: string | null;
    readonly remark: string;
  }[];
  readonly findings: Appraisal['findings'];
}

export interface ResultRow {
  readonly id: string;
  readonly title: string;
  readonly limitState: string;
  readonly place: string;
  readonly loadCase: string | null;
  readonly direction: string | null;
  readonly demand: number | null;
  readonly capacity: number | null;
  readonly unit: string;
  readonly utilisation: number | null;
  readonly verdict: string;
  readonly near: boolean;
  readonly reason: string;
  readonly sources: readonly string[];
  /** By hand and by the whole plate's solution, where both were asked for; `demand` and the rest are those that govern. */
  readonly forces?: BothSides;
}

/** The result of an appraisal. `every`: all rows; else the gravest of each check, place and direction. */
export function resultOf(appraisal: Appraisal, { every = false }: { every?: boolean } = {}): Result {
  const { model, rows, governing } = appraisal;
  return {
    schema: 'stillplate-result/1',
    document: model.document.project.name,
    documentHash: appraisal.documentHash,
    programVersion,
    option: appraisal.optionId,
    basis: model.basis.name,
    quantities: appraisal.quantities,
    checks: (every ? rows : gravest(rows)).map(resultRow),
    governing: Object.fromEntries(Object.entries(governing).map(([state, row]) => [state, resultRow(row)])),
    limitStates: appraisal.limitStates.map(({ name, verdict, fails, unjudged, made, row, remark }) => ({
      name,
      verdict,
      fails,
      unjudged,
      made,
      governing: row ? `${row.id} at ${row.place}` : null,
      remark,
    })),
    ...(model.solved && !('missing' in model.solved) ? { solver: model.solved.mesh } : {}),
    findings: appraisal.findings,
  };
}

/** The gravest row of each check, place and direction, in the order of the rows. */
export function gravest(rows: readonly CheckRow[]): readonly CheckRow[] {
  const leaders = new Map<string, CheckRow>();
  for (const row of rows) {
    const key = `${row.id}|${row.place}|${row.direction}`;
    const leader = leaders.get(key);
    if (!leader || graver(row, leader) < 0) leaders.set(key, row);
  }
  return [...leaders.values()];
}

function resultRow(row: CheckRow): ResultRow {
  const { id, title, limitState, place, loadCase, direction, demand, capacity, utilisation, verdict, near, reason } =
    row;
  return {
    id,
    title,
    limitState,
    place,
    loadCase,
    direction,
    demand,
    capacity,
    unit: siUnit(row.unit),
    utilisation,
    verdict,
    near,
    reason,
    sources: row.sources.map(sourceText),
    ...(row.both ? { forces: row.both } : {}),
  };
}

/** “ (from memory)” where a source says so by its mark alone; nothing where its clause says already what of it is. */
export const memoryMark = ({
  clause,
  memory,
}: {
  readonly clause?: string | undefined;
  readonly memory?: boolean | undefined;
}): string => (memory && !clause?.includes('from memory') ? ' (from memory)' : '');

/** A source in one line: "EN 1993-1-8:2005, Table 3.4 (from memory)". */
export function sourceText({
  document,
  edition,
  clause,
  memory,
}: {
  document: string;
  edition?: string;
  clause?: string;
  memory?: boolean;
}): string {
  const year = !edition
    ? ''
    : /^\d{4}/.test(edition)
      ? `:${edition}`
      : /^Rev/.test(edition)
        ? `, ${edition}`
        : `, ${edition} ed.`;
  return `${document}${year}${clause ? `, ${clause}` : ''}${memoryMark({ clause, memory })}`;
}

const baseUnits = ['kg', 'm', 's', 'A', 'K', 'cd', 'mol', 'rad', 'b'];
const named: Readonly<Record<string, string>> = {
  'kg*m*s^-2': 'N',
  'kg*m^-1*s^-2': 'Pa',
  'kg*m^2*s^-2': 'N*m',
  'kg*s^-2': 'N/m',
};

/** SI unit of what a unit in mathjs words measures: "kN" → "N", "mm" → "m". */
export function siUnit(unit: string): string {
  const powers = unitReading(unit)
    .dimensions.map((power, i) => (power === 0 ? '' : `${baseUnits[i]}${power === 1 ? '' : `^${power}`}`))
    .filter(Boolean);
  const text = powers.join('*') || '1';
  return named[text] ?? text;
}
