import type { Appraisal } from '../appraise.ts';
import type { ResultSummary } from './register.ts';

/** What a revision keeps of its result, so that the next one can say what changed. */
export function resultSummary({ quantities, limitStates, findings }: Appraisal): ResultSummary {
  return {
    quantities: Object.fromEntries(
      Object.entries(quantities).map(([id, { title, unit, value }]) => [id, { title, unit, value }]),
    ),
    limitStates: limitStates.map(({ name, verdict, row, highest }) => ({
      name,
      verdict,
      governing: row ? `${row.title} at ${row.place}` : null,
      utilisation: highest?.utilisation ?? null,
    })),
    findings: findings.map(({ place, text }) => `${place}: ${text}`),
  };
}
