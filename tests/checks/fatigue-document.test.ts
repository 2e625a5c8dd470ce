import { describe, expect, it } from 'vitest';
import type { Check } from '../../core/checks/check.ts';
import { checkRows, valuesAt } from '../../core/checks/evaluate-check.ts';
import { fatigueBoltHolePanel } from '../../core/checks/fatigue-bolt-hole-panel.ts';
import { fatigueBoltShear } from '../../core/checks/fatigue-bolt-shear.ts';
import { fatigueBoltTension } from '../../core/checks/fatigue-bolt-tension.ts';
import { fatigueCrossingToe } from '../../core/checks/fatigue-crossing-toe.ts';
import { fatigueEyeRoot } from '../../core/checks/fatigue-eye-root.ts';
import { fatiguePlateEdge } from '../../core/checks/fatigue-plate-edge.ts';
import { fatigueWeldEnd } from '../../core/checks/fatigue-weld-end.ts';
import { fatigueWeldRoot } from '../../core/checks/fatigue-weld-root.ts';
import { checks } from '../../core/checks/index.ts';
import { modelOf } from '../../core/appraise.ts';
import { documentSchema } from '../../core/document/schema.ts';
import { hingedPlate } from '../../core/solve/hinged-plate.ts';
import type { Model } from '../../core/model.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { demoModel, reads } from './model-of.ts';
import { welded } from './welded.ts';

const MPa = 1e6;
const values = (check: Check, model: Model, place: string): Readonly<Record<string, number>> => {
  const of = valuesAt(check, model, place, model.loads.situations[0]!);
  if ('missing' in of) throw new Error(of.missing);
  return of.all;
};
const verdicts = (check: Check, model: Model) =>
  checkRows(check, model).rows.map(({ verdict, reason }) => ({ verdict, reason }));
/** No corrosion, no allowances: what is worked by hand has no end of life in it. */
const asNew = {
  protection: { lossPerFace: { panel: '0 mm', tubeOutside: '0 mm', tubeInside: '0 mm' } },
  mass: { weld: 0, tolerance: 0 },
};

describe('a document worked by hand', () => {
  it('cut edge of a welded panel without holes: swing of the pressure, stress by the series, n / N of class C free to corrode', () => {
    const model = demoModel(welded({}, { holes: [] }), asNew, { protection: { cathodic: false } });
    const { swing } = model.loads;
    const field = model.fields.get('A1')!;
    const pressure = (end: 'up' | 'down') => Math.abs(swing[end].pressures.get('A1')!);
    // the force holds the weight: the swing is the same both ways, its share of 60 kN over the field's area
    expect(pressure('up')).toBeCloseTo(pressure('down'), 6);
    const share = model.loads.shares.get('A1')!;
    expect(pressure('up')).toBeCloseTo((60e3 * Math.max(share.area, share.shape)) / share.solid, 6);
    const stress = (spans: { a: number; b: number }, q: number) =>
      hingedPlate({ a: spans.a, b: spans.b, t: 0.01, E: 210e9, nu: 0.3, q }).stressLargest;
    const { s_up, s_dn, sigma_r, D, D_lim, n_eq } = values(fatiguePlateEdge, model, 'A1');
    // plus what the sinking of the tubes adds, a few per cent
    expect(s_up! / stress(field.pulled, pressure('up'))).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(s_up! / stress(field.pulled, pressure('up'))).toBeLessThan(1.2);
    expect(sigma_r).toBe(s_up! + s_dn!);
    expect(n_eq).toBe(4e7);
    expect(D! / ((4e7 * (sigma_r! / MPa) ** 3) / 10 ** 12.115)).toBeCloseTo(1, 9);
    expect(D_lim).toBe(0.1);
  });

  it('tubes: no load factor, twice the force twice the range, eight times the damage free to corrode', () => {
    const of = (force: string) =>
      values(
        fatigueWeldEnd,
        demoModel(welded(), { loads: { service: { force } }, protection: { cathodic: false } }),
        'A',
      );
    const [one, two] = [of('20 kN'), of('40 kN')];
    expect(two['sigma_r']! / one['sigma_r']!).toBeCloseTo(2, 9);
    expect(two['D']! / one['D']!).toBeCloseTo(8, 8);
    const model = demoModel(welded());
    const factored = model.loads.situations.find(({ id }) => id === 'service-up')!;
    expect(reads(fatigueWeldEnd, 'M_up', model, 'A')).toBeCloseTo(
      factored.tubes.get('A')!.moment / factored.loadFactor,
      3,
    );
  });

  it('eyes: a bridle that goes slack halfway swings from all of its pull to none (statics)', () => {
    const model = demoModel({ loads: { service: { includes: ['inertia', 'drag'] } } });
    const z = model.loads.plate.least.water / 60e3;
    expect(z).toBeLessThan(1); // the water lifts more than the weight
    const { F_z_up, F_z_dn, s_up, sigma_r, s_dn } = values(fatigueEyeRoot, model, 'S1');
    expect([F_z_up, s_up]).toEqual([0, 0]);
    expect(sigma_r).toBe(s_dn);
    // both legs together carry the force down and the whole weight
    const both = F_z_dn! + values(fatigueEyeRoot, model, 'S2')['F_z_dn']!;
    expect(both / (60e3 + model.loads.plate.weight.water)).toBeCloseTo(1, 2);
  });

  it('a long-term distribution with the stated swing as its largest range does less than the swing in every cycle', () => {
    const of = (fatigue: object) => values(fatigueWeldRoot, demoModel(welded(), { fatigue }), 'A1')['D']!;
    const weibull = (largestRange: string) => ({
      loading: { kind: 'weibull', largestRange, inCycles: 4e7, shape: 1, cyclesPerYear: 4e6, source: 'invented' },
    });
    expect(of(weibull('120 kN'))).toBeLessThan(0.05 * of({}));
    expect(of(weibull('240 kN'))).toBeGreaterThan(4 * of(weibull('120 kN')));
  });

  it('a sea state of one height: as Weibull’s ranges with shape 2 and the same scale (Rayleigh)', () => {
    // deviation of the force 10 kN a metre × 2 m / 4; scale 2 √2 of it; its largest range in n cycles (ln n)^(1/2) scales
    const seconds = 10 * 365.25 * 86400;
    const n = seconds / 8;
    const scale = 2 * Math.SQRT2 * 5;
    const scatter = {
      kind: 'scatter',
      forcePerMetre: '10 kN/m',
      states: [{ height: '2 m', period: '8 s', probability: 1 }],
      source: 'invented',
    };
    const weibull = {
      kind: 'weibull',
      largestRange: `${scale * Math.sqrt(Math.log(1e6))} kN`,
      inCycles: 1e6,
      shape: 2,
      cyclesPerYear: n / 10,
      source: 'invented',
    };
    const of = (loading: object) => values(fatigueWeldRoot, demoModel(welded(), { fatigue: { loading } }), 'A1')['D']!;
    expect(of(scatter) / of(weibull)).toBeCloseTo(1, 3);
  });

  it('slams are counted apart', () => {
    const apart = [{ kind: 'slam', range: '240 kN', cycles: 500, source: 'invented' }];
    const { D_s, D_w, D, k_s, n_s, sigma_r } = values(
      fatigueWeldEnd,
      demoModel(welded(), { fatigue: { apart }, protection: { cathodic: false } }),
      'A',
    );
    expect([n_s, k_s]).toEqual([500, 2]);
    expect(D_s! / ((500 * ((2 * sigma_r!) / MPa) ** 3) / 10 ** 10.921)).toBeCloseTo(1, 6); // class G
    expect(D).toBe(D_w! + D_s!);
  });
});

describe('what cannot be judged, in words', () => {
  it('details said to be in air: refused, the plate is under water', () => {
    for (const check of checks.filter(({ limitState }) => limitState === 'fatigue'))
      for (const { verdict, reason } of verdicts(check, demoModel({ fatigue: { environment: 'air' } }))) {
        if (verdict === 'not applicable') continue;
        expect(verdict).toBe('cannot be judged');
        expect(reason).toMatch(/curves in air are refused|hot-spot|no published rule|none, and the hole wears/);
      }
    expect(verdicts(fatiguePlateEdge, demoModel({ fatigue: { environment: 'air' } }))[0]!.reason).toMatch(
      /under water, and curves in air are refused there/,
    );
  });

  it('a mean force without a distribution; with one it is judged', () => {
    const mean = { loads: { service: { level: 'mean' } } };
    expect(verdicts(fatigueBoltTension, demoModel(mean))[0]).toMatchObject({
      verdict: 'cannot be judged',
      reason: expect.stringMatching(/“fatigue.loading”/),
    });
    const loading = { kind: 'stated', range: '50 kN', cyclesPerYear: 1e6, source: 'invented' };
    expect(verdicts(fatigueBoltTension, demoModel(mean, { fatigue: { loading } }))[0]!.verdict).not.toBe(
      'cannot be judged',
    );
  });

  it('a panel of aluminium, a crossing of a round tube, a clearance bolt under reversing shear, a fitted one in the sea', () => {
    const of = (check: Check, ...changes: unknown[]) => verdicts(check, demoModel(...changes))[0]!;
    expect(of(fatigueBoltHolePanel, { designs: { deck: { material: '5083-H116' } } }).reason).toMatch(
      /an S-N curve for .* in the sea/,
    );
    expect(of(fatigueCrossingToe, { grid: { mainTubes: { section: 'CHS 139.7x8 hot' } } })).toMatchObject({
      verdict: 'cannot be judged',
      reason: expect.stringMatching(/round tube is crossed/),
    });
    expect(of(fatigueBoltShear)).toMatchObject({
      verdict: 'cannot be judged',
      reason: expect.stringMatching(/clearance holes/),
    });
    expect(of(fatigueBoltShear, { designs: { deck: { fixing: { shear: 'fitted' } } } }).reason).toMatch(/holds in air/);
    expect(
      of(fatigueBoltShear, {
        designs: { deck: { fixing: { shear: 'slip-resistant', slipFactor: { value: 0.3, source: 'invented' } } } },
      }),
    ).toMatchObject({ verdict: 'not applicable' });
  });

  it('pad eyes see no cycles in service', () => {
    const { suspension } = demoDocument().grid;
    const padEyes = {
      points: [{ id: 'L1', x: '0 m', y: '0 m' }],
      eye: Object.fromEntries(
        Object.entries(suspension.eye).map(([name, value]) => [
          name,
          typeof value === 'string' ? value : 'typed' in value ? value.typed : value,
        ]),
      ),
      apex: '3 m',
    };
    const rows = checkRows(fatigueEyeRoot, demoModel({ grid: { padEyes } })).rows;
    expect(rows.find(({ place }) => place === 'L1')).toMatchObject({ verdict: 'not applicable' });
    expect(rows.find(({ place }) => place === 'S1')!.verdict).not.toBe('not applicable');
  });
});

describe('the design fatigue factor', () => {
  it.each([
    [{}, 10],
    [{ access: 'under water', consequence: 'substantial' }, 3],
    [{ access: 'above water', consequence: 'limited' }, 1],
    [{ factor: { value: 5, reason: 'class society' } }, 5],
  ])('%j: %d (NORSOK N-004, Table 8-1, from memory; 10 where nothing is said)', (fatigue, factor) => {
    expect(reads(fatiguePlateEdge, 'DFF', demoModel({ fatigue }), 'A1')).toBe(factor);
  });

  it('leaves the partial factors of the basis out of the damage', () => {
    const model = demoModel();
    const raised = demoModel({
      basis: {
        overrides: [
          { factor: 'gamma_F_extreme', value: 3, reason: 'test' },
          { factor: 'gamma_M2', value: 3, reason: 'test' },
        ],
      },
    });
    for (const check of [fatiguePlateEdge, fatigueBoltTension])
      expect(values(check, raised, 'A1')['D']).toBe(values(check, model, 'A1')['D']);
  });
});

describe('the field “fatigue”', () => {
  const parse = (fatigue: unknown) => documentSchema.safeParse({ ...JSON.parse(JSON.stringify(raw())), fatigue });
  const raw = () => {
    const typed = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.map(typed)
        : typeof value === 'object' && value !== null
          ? 'typed' in value && 'si' in value
            ? (value as { typed: string }).typed
            : Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, typed(inner)]))
          : value;
    return typed(demoDocument());
  };

  it('may be left out: an older document still opens', () => {
    expect(parse(undefined).success).toBe(true);
    expect(modelOf(demoDocument()).document.fatigue).toBeUndefined();
  });

  it('refuses sea states that take more than all of the time', () => {
    const state = { height: '2 m', period: '8 s', probability: 0.6 };
    const read = parse({ loading: { kind: 'scatter', forcePerMetre: '10 kN/m', states: [state, state], source: 'x' } });
    expect(read.success).toBe(false);
    expect(JSON.stringify(read.error?.issues)).toMatch(/take 120 % of the time/);
  });

  it('refuses a shape of 9 and a factor below 1', () => {
    expect(
      parse({
        loading: { kind: 'weibull', largestRange: '1 kN', inCycles: 1e8, shape: 9, cyclesPerYear: 1, source: 'x' },
      }).success,
    ).toBe(false);
    expect(parse({ factor: { value: 0.5, reason: 'x' } }).success).toBe(false);
  });
});
