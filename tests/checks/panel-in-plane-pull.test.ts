import { describe, expect, it } from 'vitest';
import type { Check } from '../../core/checks/check.ts';
import { boltBearingPanel } from '../../core/checks/bolt-bearing-panel.ts';
import { boltBearingTube } from '../../core/checks/bolt-bearing-tube.ts';
import { boltCombined } from '../../core/checks/bolt-combined.ts';
import { boltShear } from '../../core/checks/bolt-shear.ts';
import { boltSlip } from '../../core/checks/bolt-slip.ts';
import { boltTearOut } from '../../core/checks/bolt-tear-out.ts';
import { weldDirectional } from '../../core/checks/weld-directional.ts';
import { weldThroat } from '../../core/checks/weld-throat.ts';
import { stripPull } from '../../core/solve/strip-pull.ts';
import type { Model } from '../../core/model.ts';
import type { Situation } from '../../core/loads/situation.ts';
import { modelWith, readOf, situationOf } from './bolt-model.ts';
import { valuesGiven } from './bolt-values.ts';

const bolts = [boltShear, boltCombined, boltSlip, boltTearOut, boltBearingPanel, boltBearingTube];
const welds = [weldDirectional, weldThroat];
const every = [...bolts, ...welds].map((check) => [check.id, check] as const);
const safeties = ['partial factors', 'allowable stress'] as const;

/** The inputs of the pull, and what it is shared by, as the check reads them in a model. */
function readings(check: Check, model: Model, situation: Situation): Record<string, number> {
  const names = ['p', 'a', 'b', 't', 'E', 'nu', 'h_x', 'h_y', 'a_b', 'b_b', 'n_x', 'n_y', 'k_r'];
  return Object.fromEntries(
    names
      .filter((name) => name in check.inputs)
      .map((name) => [name, readOf(check, name, model, 'A2', situation) as number]),
  );
}

describe.each(every)('%s: the pull of a stretched panel on edges that cannot move', (_, check) => {
  const welded = welds.includes(check);
  const model = modelWith((d) => {
    if (welded) Object.assign(d.panels, { A2: 'welded' });
  });

  it.each(safeties.filter((safety) => check.steps[safety]))('is in it under %s, in both directions', (safety) => {
    for (const direction of ['up', 'down'] as const) {
      const situation = situationOf(model, 'service', direction);
      const given = readings(check, model, situation);
      const values = valuesGiven(check, safety, given);
      // A strip of the shorter span, edges hinged (T&WK, 2nd ed., art. 2), never less.
      const strip = stripPull(
        { a: Math.min(given.a!, given.b!), t: given.t!, E: given.E!, nu: given.nu!, q: given.p! },
        'hinged',
      );
      expect(values.N_pull!).toBeGreaterThanOrEqual(strip.pull);
      expect(values.N_pull!).toBeGreaterThan(0);
      const symbol = welded ? 'f_h' : 'F_v';
      const pitch = Math.max(given.a_b! / (given.n_x! - 1), given.b_b! / (given.n_y! - 1));
      expect(values[symbol]! / (values.N_pull! * (welded ? given.k_r! : pitch))).toBeCloseTo(1, 9);
    }
  });

  it.each(safeties.filter((safety) => check.steps[safety]))(
    'is taken across the span that has supports, under %s: square to cross tubes, main tubes, or the shorter of both',
    (safety) => {
      const given = readings(check, model, situationOf(model, 'service', 'up'));
      const pull = (h_x: number, h_y: number): number =>
        valuesGiven(check, safety, { ...given, a: 1.2, b: 0.8, h_x, h_y }).N_pull!;
      const of = (a: number): number =>
        stripPull({ a, t: given.t!, E: given.E!, nu: given.nu!, q: given.p! }, 'hinged').pull;
      expect(pull(1, 0) / of(1.2)).toBeCloseTo(1, 6);
      expect(pull(0, 1) / of(0.8)).toBeCloseTo(1, 6);
      expect(pull(1, 1) / of(0.8)).toBeCloseTo(1, 6);
    },
  );
});
