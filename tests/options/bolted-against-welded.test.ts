import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocumentText } from '../../core/document/read-document.ts';
import { printIn } from '../../core/print-in.ts';
import { againstRows } from '../../core/options/bolted-against-welded-rows.ts';
import { boltedAgainstWelded } from '../../core/options/bolted-against-welded.ts';
import { solvedAlike } from '../checks/solved-alike.ts';
import { costOfRates, offshoreHours } from '../../core/options/cost-of-rates.ts';

const raw = readDocumentText(readFileSync('samples/small.stillplate.json', 'utf8'));
// Invented rates: only that the turning point is where the two costs meet is tried.
const rates = { currency: 'EUR', source: 'invented for this test', labourPerHour: 60, platePerKg: 3, cutPerMetre: 4, perHole: 5, perBolt: 6, weldPerMetre: 40, recoatPerMetre: 10, recoatPerHole: 2, minutesToFitBolt: 3, minutesToRemoveBolt: 2, minutesToWeldMetre: 30, minutesToCutMetre: 15, minutesToPlacePanel: 20, removals: 2 }; // prettier-ignore

it('sets bolted against welded with all else equal, and each rate that turns the decision makes the costs equal', () => {
  const against = boltedAgainstWelded({ ...raw, rates }, null);
  const { bolted, welded, turns } = against;
  const panels = (side: typeof bolted) => side.appraisal.model.geometry.panels;
  expect(panels(bolted).map(({ design }) => design.fixing.kind)).toEqual(panels(bolted).map(() => 'bolted'));
  expect(panels(welded).map(({ design }) => design.fixing.kind)).toEqual(panels(welded).map(() => 'welded'));
  expect(panels(welded).map(({ thickness, outline, material }) => [thickness, outline, material.id])).toEqual(
    panels(bolted).map(({ thickness, outline, material }) => [thickness, outline, material.id]),
  );
  expect(bolted.work.bolts).toBeGreaterThan(0);
  expect(bolted.work.weld).toBe(0);
  expect([welded.work.bolts, welded.work.holes]).toEqual([0, 0]);
  const byRate = turns.filter(({ unit }) => unit === 'rate');
  expect(byRate.length).toBeGreaterThan(0);
  for (const { what, turnsAt } of byRate) {
    const changed = { ...rates, [what]: turnsAt };
    const b = costOfRates(bolted.work, changed).total!;
    const w = costOfRates(welded.work, changed).total!;
    expect(Math.abs(b - w)).toBeLessThan(1e-9 * b);
  }
  expect(
    againstRows(against, printIn('metric')).find(({ title }) => title === 'Holes drilled, panel and tube')!.welded,
  ).toBe('0');
}, 120_000);

it('gives no cost without rates, and says which are missing', () => {
  const cost = costOfRates({ plate: 10, cut: 0, holes: 0, bolts: 4, weld: 0, panels: 1 }, undefined);
  expect(cost.total).toBeNull();
  expect(cost.missing).toContain('perBolt');
  expect(cost.missing).not.toContain('weldPerMetre');
  // 10 kg at 3, placing 6 min and 4 bolts of 3 min at 60 an hour, 4 bolts at 2: 30 + 6 + 12 + 8 = 56, by hand.
  const some = {
    currency: 'EUR',
    source: 'invented',
    platePerKg: 3,
    labourPerHour: 60,
    minutesToPlacePanel: 6,
    minutesToFitBolt: 3,
    perBolt: 2,
    removals: 0,
  };
  expect(costOfRates({ plate: 10, cut: 0, holes: 0, bolts: 4, weld: 0, panels: 1 }, some).total).toBeCloseTo(56, 12);
});

it('counts the hours that a vessel waits, by hand: 2 removals of 4 bolts at 3 + 2 min by 2 people are 20 min', () => {
  const work = { plate: 0, cut: 0, holes: 0, bolts: 4, weld: 0, panels: 0 };
  const some = { currency: 'EUR', source: 'invented', minutesToFitBolt: 3, minutesToRemoveBolt: 2, removals: 2, peopleOnDeck: 2 }; // prettier-ignore
  expect(offshoreHours(work, some).hours).toBeCloseTo(1 / 3, 12);
  expect(offshoreHours({ ...work, weld: 1 }, some)).toEqual({
    hours: null,
    missing: ['minutesToCutMetre', 'minutesToWeldMetre'],
  });
  const line = costOfRates(work, { ...some, vesselPerHour: 900 }).lines.find(({ title }) => /Vessel/.test(title));
  expect(line!.money).toBeCloseTo(300, 9);
});

it('where the document asks for the whole plate’s forces, both are judged with them if somebody solves, else both by hand, and it is said', () => {
  const asking = { ...raw, forces: { from: 'hand and solver' } };
  const byHand = boltedAgainstWelded(asking, null);
  expect(byHand.said.join()).toMatch(/judged with forces by hand, alike/);
  const strength = ({ strength: row }: typeof byHand.bolted) => [row!.utilisation !== null, row!.both];
  expect([strength(byHand.bolted), strength(byHand.welded)]).toEqual([[true, null], [true, null]]); // prettier-ignore

  const asked: string[] = [];
  const solved = boltedAgainstWelded(asking, null, (added, document, id) => {
    const { model } = appraise(added, document, id);
    asked.push(model.panels.get('A1')!.design.fixing.kind);
    return solvedAlike(model);
  });
  expect(asked).toEqual(['bolted', 'welded']);
  expect(solved.said.join()).not.toMatch(/by hand/);
  for (const { appraisal } of [solved.bolted, solved.welded])
    expect(appraisal.rows.some(({ both }) => both?.governs === 'solver')).toBe(true);
}, 120_000);
