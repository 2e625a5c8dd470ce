import type { UnitSystem } from '../../quantity/format-quantity.ts';
import { printedUnit, quantityText, significant } from '../../quantity/format-quantity.ts';
import type { BalanceReport, Six } from './balance-report.ts';

/** Sums this small beside the largest are rounding, and printed as nought; what is left over stands in a line of its own. */
const rounding = 1e-12;

/** A balance report as lines to print: the sums, what is left, and whether contact holds to its word. */
export function balanceWords(report: BalanceReport, units: UnitSystem): string[] {
  const text = (si: number, unit: string): string => quantityText(si, printedUnit(unit, units), 4);
  const most = (from: 0 | 3): number =>
    [report.applied, report.supports, report.inertia].reduce((all, six) => six.slice(from, from + 3).reduce((m, value) => Math.max(m, Math.abs(value)), all), 0); // prettier-ignore
  const [forces, moments] = [most(0), most(3)];
  const noForce = (f: number): number => (Math.abs(f) <= rounding * forces ? 0 : f);
  // A metre is the arm that a force of rounding may have.
  const noMoment = (m: number): number => (Math.abs(m) <= rounding * Math.max(moments, forces) ? 0 : m);
  const six = (name: string, [Fx, Fy, Fz, Mx, My, Mz]: Six): string =>
    `${name}: force ${[Fx, Fy, Fz].map((f) => text(noForce(f), 'N')).join(', ')}; moment ${[Mx, My, Mz].map((m) => text(noMoment(m), 'N*m')).join(', ')} (x, y, z; about the middle of the tubes).`;
  const { contact } = report;
  return [
    six('Applied', report.applied),
    six('Supports', report.supports),
    six('Inertia', report.inertia),
    `Left over: ${significant(report.residual, 2)} of the largest; equations ${significant(report.equations, 2)}.`,
    contact.points === 0
      ? 'No panel lies on a tube: no contact.'
      : contact.settled
        ? `Contact settled after ${contact.steps} ${contact.steps === 1 ? 'step' : 'steps'}: ${contact.closed} of ${contact.points} points closed; the hardest presses with ${text(contact.pressing, 'N')}, none pulls (at most ${text(contact.pulling, 'N')}), none overlaps (at most ${text(contact.overlap, 'mm')}).`
        : `CONTACT DID NOT SETTLE in ${contact.steps} ${contact.steps === 1 ? 'step' : 'steps'}: closed points pull with up to ${text(contact.pulling, 'N')}, open ones overlap by up to ${text(contact.overlap, 'mm')}.`,
  ];
}
