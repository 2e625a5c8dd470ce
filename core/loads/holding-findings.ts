import type { Finding } from '../finding.ts';
import type { CaseContext } from './case-context.ts';
import type { SolvedCase } from './solve-case.ts';

/** Arm of a force over the plate's size from which a sentence is due; below it the stated loads are no more exact. */
const noticeableArm = 0.02;

/** Largest support force over the mean from which sharing is called unequal: above the skew of four slings (1.25). */
const noticeableShare = 1.3;

/** How well the supports hold a solved case: a force beside them, one that carries nothing, or much more than the others. */
export function holdingFindings(
  { situation, solution }: SolvedCase,
  { geometry, lengthText, forceText }: CaseContext,
): Finding[] {
  const { x0, x1, y0, y1 } = geometry.extents;
  const { offCentre, idle } = solution();
  const { id: place, title, balance, attachmentForces } = situation;
  const findings: Finding[] = [];
  if (offCentre > noticeableArm * Math.max(x1 - x0, y1 - y0))
    findings.push({
      id: 'off-centre',
      place,
      text: `${title}: the force acts ${lengthText(offCentre)} beside what holds the plate; the plate begins to turn, and its inertia balances the moment.`,
      mend: 'Place panels evenly about the suspension, or hold the plate at three points.',
    });
  if (idle.length > 0)
    findings.push({
      id: 'support-slack',
      place,
      text: `${title}: ${idle.join(', ')} would have to work the other way and ${idle.length > 1 ? 'carry' : 'carries'} nothing.`,
      mend: 'Move the points so that the load acts between them.',
    });
  const forces = [...attachmentForces].filter(([, V]) => V > 0);
  const [id, most] = forces.reduce((a, b) => (b[1] > a[1] ? b : a), ['', 0] as [string, number]);
  const mean = -balance.terms.slice(0, -1).reduce((sum, { force }) => sum + force, 0) / forces.length;
  if (balance.by !== 'own inertia' && forces.length > 1 && most > noticeableShare * mean)
    findings.push({
      id: 'unequal-sharing',
      place,
      text: `${title}: ${id} takes ${forceText(most)}, the mean of ${forces.length} is ${forceText(mean)}.`,
      mend: 'Place the points so that they share alike, or size each for its own force.',
    });
  return findings;
}
