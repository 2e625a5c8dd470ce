import { describe, expect, it } from 'vitest';
import { balanceReport } from '../../../core/plate/results/balance-report.ts';
import { balanceWords } from '../../../core/plate/results/balance-words.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';

const plate = ready(sampleModel('small'), 0.2);

describe('the balance of a solved loading', () => {
  it.each(['service-down', 'service-up', 'deck-down'])('leaves nothing over under %s', (situation) => {
    const solved = solvedLoading(plate, situation);
    const report = balanceReport(plate, solved);
    expect(report.residual).toBeLessThan(1e-9);
    expect(report.equations).toBeLessThan(1e-14);
    expect(report.zero).toBeLessThan(1e-8);
    report.rest.forEach((rest, k) => expect(rest).toBe(report.applied[k]! + report.supports[k]! + report.inertia[k]!));
    expect(Math.abs(report.applied[2])).toBeGreaterThan(500);
    const [, , lift] = report.supports;
    expect(Math.abs(lift) > 1).toBe(situation !== 'service-up'); // lines are slack when the water lifts
    expect(Math.abs(report.inertia[2]) > 1).toBe(situation === 'service-up');
  });

  it('notices a support’s force that is not what the equations had', () => {
    const solved = solvedLoading(plate, 'service-down');
    const forces = solved.answer.forces.map((force, i) => (i === 0 ? 1.001 * force : force));
    const report = balanceReport(plate, { ...solved, answer: { ...solved.answer, forces } });
    expect(report.residual).toBeGreaterThan(1e-5);
  });

  it('says whether contact keeps its word', () => {
    const settled = balanceReport(plate, solvedLoading(plate, 'service-down'));
    expect(settled.contact.settled).toBe(true);
    expect(settled.contact.pulling).toBeLessThan(1e-6 * settled.contact.pressing);
    expect(settled.contact.overlap).toBeLessThan(1e-9);
    expect(settled.contact.closed).toBeLessThan(settled.contact.points);
    const linear = balanceReport(plate, solvedLoading(plate, 'service-down', { stage: 'linear' }));
    expect(linear.contact.settled).toBe(false);
    expect(linear.contact.pulling).toBeGreaterThan(1);
  });

  it('is printed in lines, the failure in capitals', () => {
    const [applied, supports, inertia, rest, contact] = balanceWords(balanceReport(plate, solvedLoading(plate, 'service-down')), 'metric'); // prettier-ignore
    expect(applied).toMatch(/^Applied: force .* N/);
    expect(supports).toMatch(/^Supports: /);
    expect(inertia).toMatch(/^Inertia: /);
    expect(rest).toMatch(/^Left over: /);
    expect(contact).toMatch(/^Contact settled after \d+ steps/);
    // nothing acts along x and y: rounding is printed as nought, what is left over as it is
    expect(applied).toMatch(/^Applied: force 0 N, 0 N, −\d/);
    expect(`${applied} ${supports} ${inertia}`).not.toMatch(/·10⁻/);
    expect(rest).toMatch(/·10⁻/);
    const linear = balanceReport(plate, solvedLoading(plate, 'service-down', { stage: 'linear' }));
    expect(balanceWords(linear, 'metric').at(-1)).toMatch(/^CONTACT DID NOT SETTLE/);
    expect(balanceWords(linear, 'inch').join(' ')).toContain('lbf');
    const bare = ready(sampleModel('small'), 0.3, new Set(['A1', 'A2', 'A3']));
    expect(balanceWords(balanceReport(bare, solvedLoading(bare, 'service-down')), 'metric').at(-1)).toMatch(
      /no contact/,
    );
  });
});
