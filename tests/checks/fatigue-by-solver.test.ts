import { describe, expect, it } from 'vitest';
import { modelOf, notSolvedYet } from '../../core/appraise.ts';
import type { Check } from '../../core/checks/check.ts';
import { checkRows, valuesAt } from '../../core/checks/evaluate-check.ts';
import { fatigueBoltHoleTube } from '../../core/checks/fatigue-bolt-hole-tube.ts';
import { fatigueBoltHolePanel } from '../../core/checks/fatigue-bolt-hole-panel.ts';
import { fatiguePlateEdge } from '../../core/checks/fatigue-plate-edge.ts';
import { fatigueCrossingToe } from '../../core/checks/fatigue-crossing-toe.ts';
import { fatigueCrossingRoot } from '../../core/checks/fatigue-crossing-root.ts';
import { eyeSwing } from '../../core/checks/fatigue-eye-force.ts';
import { fatigueBoltTension } from '../../core/checks/fatigue-bolt-tension.ts';
import { tubeStressInputs } from '../../core/checks/fatigue-tube-stress.ts';
import { fatigueEyeHole } from '../../core/checks/fatigue-eye-hole.ts';
import { fatigueWeldCorner } from '../../core/checks/fatigue-weld-corner.ts';
import { fatigueWeldRoot } from '../../core/checks/fatigue-weld-root.ts';
import { weldDirectional } from '../../core/checks/weld-directional.ts';
import type { SituationForces } from '../../core/loads/solved-forces.ts';
import type { Model } from '../../core/model.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { valuesGiven } from './bolt-values.ts';
import { solvedAlike } from './solved-alike.ts';
import { welded } from './welded.ts';

const document = demoDocument({ forces: { from: 'hand and solver' } });
const hand = modelOf(demoDocument());
const withForces = (changed: (forces: SituationForces, id: string) => SituationForces, of = document): Model =>
  modelOf(of, solvedAlike(modelOf(of), changed));
const read = (check: Pick<Check, 'inputs'>, model: Model, symbol: string, place: string): unknown =>
  check.inputs[symbol]!.read(model, place, model.loads.swing.up);

describe('where the document asks for the whole plate’s forces, fatigue counts from the graver of both methods', () => {
  it('tubes: three times the moment of the grid by hand counts, a third of it does not', () => {
    const scaled = (by: number) =>
      withForces((forces) => ({
        ...forces,
        tubes: Object.fromEntries(Object.entries(forces.tubes).map(([id, of]) => [id, { ...of, M: by * of.M }])),
      }));
    const [more, less] = [scaled(3), scaled(1 / 3)];
    for (const symbol of ['M_up', 'M_dn'])
      for (const id of hand.tubes.keys()) {
        const own = read({ inputs: tubeStressInputs }, hand, symbol, id) as number;
        expect(own).toBeGreaterThan(0);
        expect((read({ inputs: tubeStressInputs }, more, symbol, id) as number) / own).toBeCloseTo(3, 9);
        expect(read({ inputs: tubeStressInputs }, less, symbol, id)).toBe(own);
      }
  });

  it('bolts and eyes: what the solver found at either end, where it is larger', () => {
    const pull = (force: number) =>
      withForces((forces, id) => ({
        ...forces,
        panels: Object.fromEntries(
          Object.entries(forces.panels).map(([panel, of]) => [panel, { ...of, pull: { ...of.pull!, force: id === 'swing-up' ? force : 1 } }]), // prettier-ignore
        ),
        legs: Object.fromEntries(Object.entries(forces.legs).map(([leg, of]) => [leg, { ...of, along: force }])),
      }));
    const own = read(fatigueBoltTension, hand, 'F_up', 'A1') as number;
    const down = read(fatigueBoltTension, hand, 'F_dn', 'A1');
    expect(read(fatigueBoltTension, pull(1e6), 'F_up', 'A1')).toBe(1e6);
    expect(read(fatigueBoltTension, pull(1), 'F_up', 'A1')).toBe(own);
    expect(read(fatigueBoltTension, pull(1e6), 'F_dn', 'A1')).toBe(Math.max(down as number, 1));
    const eye = { inputs: eyeSwing('F') };
    const [leg] = Object.keys(solvedAlike(hand).situations['swing-up']!.legs);
    expect(read(eye, pull(1e6), 'F_dn', leg!)).toBe(1e6);
    expect(read(eye, pull(0), 'F_dn', leg!)).toBe(read(eye, hand, 'F_dn', leg!));
  });

  it('welds: shear along the weld, which a field by itself has none of, opens the root with the rest', () => {
    const along = (force: number) =>
      withForces((forces) => ({
        ...forces,
        panels: Object.fromEntries(
          Object.entries(forces.panels).map(([panel, of]) => [panel, { ...of, weld: { side: 'mainLow', along: force, across: 0, pull: 0, opening: 0, use: force } }]), // prettier-ignore
        ),
      }), demoDocument(welded(), { forces: { from: 'hand and solver' } })); // prettier-ignore
    const [first] = along(0).fields.keys();
    expect(read(fatigueWeldRoot, modelOf(demoDocument(welded())), 'f_l_up', first!)).toBe(0);
    expect(read(fatigueWeldRoot, along(0), 'f_l_up', first!)).toBe(0);
    const few = read(fatigueWeldRoot, along(1e4), 'f_l_up', first!) as number;
    expect(few).toBeGreaterThanOrEqual(1e4);
    expect(few).toBeLessThan(2e4);
    expect((read(fatigueWeldRoot, along(3e4), 'f_l_up', first!) as number) / few).toBeCloseTo(3, 12);
    // 30 MPa along, 40 MPa square to it: 50 MPa, by hand. 40 √2/2 · 5 mm of pull off and across each is 40 MPa on the throat.
    const square = (40e6 * 0.005) / Math.SQRT2;
    const { s_up, s_dn } = valuesGiven(fatigueWeldRoot, 'partial factors', { a_w: 0.005, f_z_up: square, f_h_up: square, m_up: 0, f_l_up: 150e3, f_z_dn: 0, f_h_dn: 0, m_dn: 0, f_l_dn: 50e3 }); // prettier-ignore
    expect(s_up! / 1e6).toBeCloseTo(50, 9);
    expect(s_dn! / 1e6).toBeCloseTo(10, 9);
  });

  it('panels: their largest stress by the solution, bending and stretch, as the strength check takes it to the end of life', () => {
    const stressed = (stress: number | null) =>
      withForces((forces) => ({
        ...forces,
        panels: Object.fromEntries(Object.entries(forces.panels).map(([panel, of]) => [panel, { ...of, stress }])),
      }));
    const { thickness, thicknessEnd } = hand.panels.get('A1')!;
    for (const check of [fatiguePlateEdge, fatigueBoltHolePanel]) {
      const own = read(check, hand, 'b_up', 'A1') as number;
      expect(own).toBeGreaterThan(0);
      expect(read(check, stressed(0), 'b_up', 'A1')).toBe(own);
      expect((read(check, stressed(200e6), 'b_up', 'A1') as number) / (200e6 * (thickness / thicknessEnd) ** 2)).toBeCloseTo(1, 9); // prettier-ignore
      expect(read(check, stressed(null), 'b_dn', 'A1')).toMatchObject({ missing: expect.any(String) as unknown });
    }
  });

  it('and cannot be judged before the plate is solved, or where contact did not settle', () => {
    const reasons = (model: Model) => [
      ...new Set(checkRows(fatigueBoltTension, model).rows.map(({ verdict, reason }) => `${verdict}: ${reason}`)),
    ];
    const notYet = modelOf(document, { missing: notSolvedYet });
    expect(reasons(notYet).join()).toMatch(/^cannot be judged: .*not solved yet/);
    const loose = withForces((forces, id) => ({ ...forces, settled: id !== 'swing-down' }));
    expect(reasons(loose).join()).toMatch(/^cannot be judged: .*settle/);
    const [leg] = Object.keys(solvedAlike(hand).situations['swing-up']!.legs);
    expect(read({ inputs: eyeSwing('F') }, loose, 'F_dn', leg!)).toMatchObject({ missing: expect.stringMatching(/settle/) as unknown }); // prettier-ignore
    const { situations, ...solved } = solvedAlike(hand);
    const { 'swing-up': _gone, ...others } = situations;
    expect(reasons(modelOf(document, { ...solved, situations: others })).join()).toMatch(/ends of the cycle/);
    expect(checkRows(fatigueEyeHole, notYet).rows.map(({ verdict }) => verdict)).not.toContain('passes');
  });
});

describe('hot spots at crossings', () => {
  const nothing = { M_1: 0, V_1: 0, N_1: 0, M_0: 0, N_0: 0 };
  const withCrossings = (change: Partial<typeof nothing>, torque = 1) =>
    withForces((forces) => ({
      ...forces,
      tubes: Object.fromEntries(Object.entries(forces.tubes).map(([id, of]) => [id, { ...of, T: torque * of.T }])),
      crossings: Object.fromEntries(Object.keys(forces.crossings).map((id) => [id, { ...nothing, ...change }])),
    }));
  const at = (model: Model) => read(fatigueCrossingToe, model, 's_up', 'A/2') as number;
  const own = at(hand);

  it('are those of the grid where the whole plate has no more on any arm', () => {
    expect(own).toBeGreaterThan(0);
    expect(at(withCrossings({}))).toBe(own);
    expect(at(withCrossings({ M_1: 1, V_1: 1, N_1: 0, M_0: 1 }, 0.5))).toBe(own);
  });

  it('grow in proportion to what it has more, each force by itself, none forgotten', () => {
    for (const force of Object.keys(nothing) as (keyof typeof nothing)[]) {
      const more = [1, 2, 3].map((k) => at(withCrossings({ [force]: k * 5e5 })) - own);
      expect([force, more[0]! > 0]).toEqual([force, true]);
      expect((more[2]! - more[1]!) / (more[1]! - more[0]!)).toBeCloseTo(1, 6);
    }
    expect(at(withCrossings({}, 3))).toBeGreaterThan(own);
    expect(at(withCrossings({ M_1: 1e6, M_0: 1e6 })) - own).toBeCloseTo(at(withCrossings({ M_1: 1e6 })) + at(withCrossings({ M_0: 1e6 })) - 2 * own, 0); // prettier-ignore
  });

  it('and wait for the plate to be solved', () => {
    expect(read(fatigueCrossingToe, modelOf(document, { missing: notSolvedYet }), 's_up', 'A/2')).toMatchObject({ missing: expect.any(String) as unknown }); // prettier-ignore
  });
});

describe('a plate so heavy that it hangs in its lines through the whole cycle', () => {
  const heavy = demoDocument({ loads: { service: { force: '1 kN', includes: ['inertia', 'drag'] } }, forces: { from: 'hand and solver' } }); // prettier-ignore
  const byHand = modelOf(demoDocument({ loads: { service: { force: '1 kN', includes: ['inertia', 'drag'] } } }));
  const scaled = (up: number, down: number) =>
    withForces((forces, id) => {
      const by = id === 'swing-up' ? up : down;
      const times = <T extends object>(of: Readonly<Record<string, T>>): Record<string, T> =>
        Object.fromEntries(
          Object.entries(of).map(([name, one]) => [name, Object.fromEntries(Object.entries(one).map(([key, value]) => [key, typeof value === 'number' ? by * value : value])) as T]), // prettier-ignore
        );
      return { ...forces, tubes: times(forces.tubes), legs: times(forces.legs), crossings: times(forces.crossings) };
    }, heavy);
  const rangeOf = (check: Check, model: Model, place: string): number => {
    const of = valuesAt(check, model, place, model.loads.swing.up);
    if ('missing' in of) throw new Error(of.missing);
    expect(Math.abs(of.all['z']!)).toBeGreaterThan(1);
    return of.all['sigma_r']!;
  };

  it('has the difference of both ends as its range: a solution that pulls more at the smaller end does not make it smaller', () => {
    const places: readonly (readonly [Check, readonly string[]])[] = [
      [fatigueEyeHole, fatigueEyeHole.places(byHand).filter((id) => fatigueEyeHole.applies(byHand, id, byHand.loads.swing.up) === true)], // prettier-ignore
      [fatigueBoltHoleTube, [...byHand.tubes.keys()]],
    ];
    for (const [check, ids] of places) {
      expect(ids.length).toBeGreaterThan(0);
      for (const id of ids) {
        const own = rangeOf(check, byHand, id);
        // more at the end nearer to rest, less, more at the other, and half of all
        expect(rangeOf(check, scaled(1.5, 1), id)).toBeCloseTo(own, 3);
        expect(rangeOf(check, scaled(0.5, 1), id)).toBeGreaterThan(own * 1.05);
        expect(rangeOf(check, scaled(1, 1.5), id)).toBeGreaterThan(own * 1.4);
        expect(rangeOf(check, scaled(0.5, 0.5), id)).toBeGreaterThan(own);
      }
    }
    // crossings: forces of the solution that are round numbers, at either end or at both
    for (const id of fatigueCrossingRoot.places(byHand))
      for (const [up, down] of [[9, 0], [0, 9], [9, 9], [0, 0]] as const) // prettier-ignore
        expect(rangeOf(fatigueCrossingRoot, scaled(up, down), id)).toBeGreaterThanOrEqual(rangeOf(fatigueCrossingRoot, byHand, id)); // prettier-ignore
  });
});

describe('forces of a panel’s weld at both ends of the cycle', () => {
  it('are those of the strength check there, without load factors', () => {
    const model = modelOf(demoDocument(welded()));
    for (const bay of model.fields.keys())
      for (const [end, at] of [
        ['up', 'up'],
        ['down', 'dn'],
      ] as const) {
        const values = valuesAt(weldDirectional, model, bay, model.loads.swing[end]);
        if ('missing' in values) throw new Error(values.missing);
        const { f_z, f_h, m_r } = values.all;
        expect(f_h).not.toBe(0);
        expect(['f_z', 'f_h', 'm'].map((symbol) => read(fatigueWeldRoot, model, `${symbol}_${at}`, bay))).toEqual([f_z, f_h, m_r].map((size) => Math.abs(size!))); // prettier-ignore
      }
  });

  // By hand, throat 5 mm: 400 N/mm / (√2 · 5 mm) + 6 · 20 N / (5 mm)² = 56.569 + 4.8 = 61.369 MPa square to the throat,
  // 200 N/mm / (√2 · 5 mm) = 28.284 MPa across it, 150 N/mm / 5 mm = 30 MPa along: together 73.93 MPa.
  it.each([fatigueWeldRoot, fatigueWeldCorner])('$id: add up on the throat as worked by hand', (check) => {
    for (const at of ['up', 'dn']) {
      const all = valuesGiven(check, 'partial factors', { a_w: 0.005, [`f_z_${at}`]: 300e3, [`f_h_${at}`]: 100e3, [`m_${at}`]: 20, [`f_l_${at}`]: 150e3 }); // prettier-ignore
      expect(all[`sigma_${at}`]! / 1e6).toBeCloseTo(61.369, 3);
      expect(all[`tau_${at}`]! / 1e6).toBeCloseTo(28.284, 3);
      expect(all[`s_${at}`]! / 1e6).toBeCloseTo(73.93, 2);
    }
  });
});
