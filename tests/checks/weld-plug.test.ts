import { describe, expect, it } from 'vitest';
import { checkRows, valuesAt } from '../../core/checks/evaluate-check.ts';
import { fatigueWeldPlugShear } from '../../core/checks/fatigue-weld-plug-shear.ts';
import { weldPlug } from '../../core/checks/weld-plug.ts';
import { weldPlugPitch } from '../../core/checks/weld-plug-pitch.ts';
import { weldPlugSize } from '../../core/checks/weld-plug-size.ts';
import { valuesGiven } from './bolt-values.ts';
import { demoModel, reads, situationOf } from './model-of.ts';
import { welded } from './welded.ts';

const plugs = { diameter: '18 mm', pitch: '100 mm', edgeDistance: '35 mm' };
const model = demoModel(welded({ plugs }));

it('EN 1993-1-8, 4.5.3.3 on the area of a plug of 18 mm: 241.2 MPa in S355 (f_u 470, beta_w 0.9), 61.38 kN; AISC 360, Table J2.5: 0.6 · 482 MPa / 2, 36.8 kN (by hand)', () => {
  const en = valuesGiven(weldPlug, 'partial factors', { d_p: 0.018, f_u: 470e6, beta_w: 0.9, gamma_M2: 1.25 });
  expect(en.A_w! * 1e6).toBeCloseTo(254.469, 3);
  expect(en.F_w_Rd! / 1e3).toBeCloseTo(61.38, 2);
  const us = valuesGiven(weldPlug, 'allowable stress', { d_p: 0.018, f_u: 470e6, F_EXX: 482e6, Omega_J: 2 });
  expect(us.F_w_Rd! / 1e3).toBeCloseTo(36.8, 1);
  for (const { F_w_Rd, F_low, F_high } of [en, us]) {
    expect(F_low!).toBeLessThan(F_w_Rd!);
    expect(F_high!).toBeGreaterThan(F_w_Rd!);
  }
});

it('takes the whole pull in the plane over the largest pitch: 40 N/mm over 100 mm, 4 kN', () => {
  const given = { N_pull: 40e3, p_far: 0.1 };
  for (const safety of ['partial factors', 'allowable stress'] as const)
    expect(valuesGiven(weldPlug, safety, given).F_v).toBeCloseTo(4000, 9);
  const down = situationOf(model, 'service-down');
  const pitches = model.panels.get('A1')!.plugs.map(({ pitch }) => pitch);
  expect(reads(weldPlug, 'p_far', model, 'A1', down)).toBe(Math.max(...pitches));
  expect(weldPlug.rule!(demoModel(welded({ plugs, throat: '0.1 mm' })), 'A1', down)).toMatch(/whole throat/);
});

it.each([
  [6, 14, 17],
  [8, 16, 19],
  [16, 24, 36],
])(
  'panel of %d mm: at least %d mm, at most %d mm (EN 1993-1-8, 4.3.5(3); AISC 360, J2.3b: 5/16 in over, then 1/8 in or 2 1/4 thicknesses)',
  (t, low, high) => {
    const v = valuesGiven(weldPlugSize, 'partial factors', { t_0: t, c_8: 8, c_3: 3 });
    expect([v.d_min, v.d_max]).toEqual([low, high]);
    expect([v.d_low! < v.d_min!, v.d_min! < v.d_high!]).toEqual([true, true]);
  },
);

it('centres stand four diameters apart at least, 14 thicknesses or 200 mm at most (AISC 360, J2.3b; EN 1993-1-8, Table 3.3)', () => {
  const at = (t_0: number) => valuesGiven(weldPlugPitch, 'allowable stress', { d_p: 18, t_0, p_200: 200 });
  expect([at(6).p_min, at(6).p_max, at(20).p_max]).toEqual([72, 84, 200]);
  expect([at(6).p_low, at(6).p_high]).toEqual([36, 108]);
});

it('judges size and distance of a panel of 8 mm, and has nothing to say of one without plugs', () => {
  const verdict = (check: typeof weldPlug, change: object) => {
    const [row] = checkRows(check, demoModel(welded({ plugs: { ...plugs, ...change } }, { thickness: '8 mm' }))).rows;
    return [row!.verdict, row!.reason ?? ''] as const;
  };
  expect(verdict(weldPlugSize, {})[0]).toBe('passes');
  expect(verdict(weldPlugSize, { diameter: '15 mm' })[0]).toBe('fails');
  expect(verdict(weldPlugSize, { diameter: '25 mm' })).toEqual(['cannot be judged', expect.stringMatching(/shrinks/)]);
  expect(verdict(weldPlugPitch, {})[0]).toBe('passes');
  expect(verdict(weldPlugPitch, { pitch: '60 mm' })[0]).toBe('fails');
  expect(verdict(weldPlugPitch, { pitch: '180 mm' })).toEqual(['cannot be judged', expect.stringMatching(/gape/)]);
  for (const check of [weldPlug, weldPlugSize, weldPlugPitch]) {
    const plain = demoModel(welded());
    expect(check.applies(plain, 'A1', situationOf(plain))).toMatch(/no plug welds/);
    expect(check.applies(demoModel(), 'A1', situationOf(plain))).toMatch(/bolted/);
  }
});

it('drills the panel and fills it again: same mass, a hole more in cut and list, and no water through it', () => {
  const plain = demoModel(welded());
  const panel = model.panels.get('A1')!;
  const n = panel.plugs.length;
  expect(n).toBeGreaterThan(8);
  expect(panel.cutouts.filter(({ purpose }) => purpose === 'plug')).toHaveLength(n);
  expect(panel.cutLength - plain.panels.get('A1')!.cutLength).toBeCloseTo(n * Math.PI * 0.018, 9);
  const mass = ({ mass: { parts } }: typeof plain) => parts.filter(({ kind }) => kind !== 'welds').reduce((sum, part) => sum + part.mass, 0); // prettier-ignore
  const welds = ({ mass: { parts } }: typeof plain) => parts.filter(({ kind }) => kind === 'welds').reduce((sum, part) => sum + part.mass, 0); // prettier-ignore
  expect(mass(plain) - mass(model)).toBeCloseTo(welds(model) - welds(plain), 9);
  expect(mass(plain)).toBeGreaterThan(mass(model));
  expect(model.geometry.areas.open).toBeCloseTo(plain.geometry.areas.open, 9);
});

describe('the plugs’ own shear under cycles', () => {
  it('is judged as a throat sheared across, category 36: 9.425 kN on 20 mm are 30 MPa (DNV-RP-C203, 2.3.5, from memory; by hand)', () => {
    const { A_w, s_up, s_dn } = valuesGiven(fatigueWeldPlugShear, 'partial factors', { d_p: 0.02, F_up: 9424.778, F_dn: 4712.389 }); // prettier-ignore
    expect(A_w! * 1e6).toBeCloseTo(314.159, 3);
    expect([s_up! / 1e6, s_dn! / 1e6]).toEqual([expect.closeTo(30, 6), expect.closeTo(15, 6)]);
    expect(reads(fatigueWeldPlugShear, 'sigma_C', model, 'A1')).toBe(36e6);
  });

  it('takes the pull of either end over the largest pitch, without load factor, and adds both ranges (W3 free to corrode)', () => {
    const free = demoModel(welded({ plugs }), { protection: { cathodic: false } });
    const ends = [free.loads.swing.up, free.loads.swing.down].map((situation) => {
      const at = valuesAt(weldPlug, free, 'A1', situation);
      if ('missing' in at) throw new Error(at.missing);
      return at.all['F_v']! / (Math.PI / 4) / 0.018 ** 2 / 1e6;
    });
    const at = valuesAt(fatigueWeldPlugShear, free, 'A1', situationOf(free));
    if ('missing' in at) throw new Error(at.missing);
    expect(at.all['D']! / ((4e7 * (ends[0]! ** 3 + ends[1]! ** 3)) / 10 ** 10.493)).toBeCloseTo(1, 6);
    expect(at.all['D_lim']).toBe(0.1);
  });

  it('passes under a light swing and fails under a heavy one, within its bounds; nothing to say without plugs', () => {
    const under = (force: string) => checkRows(fatigueWeldPlugShear, demoModel(welded({ plugs }), { loads: { service: { force } } })); // prettier-ignore
    expect(under('1 kN').rows.map(({ verdict }) => verdict)).toContain('passes');
    expect(under('60 kN').rows.map(({ verdict }) => verdict)).toContain('fails');
    for (const force of ['1 kN', '60 kN']) expect(under(force).findings).toEqual([]);
    const plain = demoModel(welded());
    expect(fatigueWeldPlugShear.applies(plain, 'A1', situationOf(plain))).toMatch(/no plug welds/);
  });
});
