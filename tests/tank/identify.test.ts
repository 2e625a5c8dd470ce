import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { probabilityLarger } from '../../core/tank/compare-tests.ts';
import { dragByPhase, fourierAveraging } from '../../core/tank/fourier-averaging.ts';
import { identify } from '../../core/tank/identify.ts';
import { tankRecord } from '../../core/tank/tank-record.ts';
import type { Also, TankSetup } from '../../core/tank/tank-setup.ts';
import { normal } from './normal.ts';

// Worked case, derived from the closed forms of Keulegan & Carpenter (1958): m 20 t, A 466 114 kg (a disc's 8/3 ρ r³ order),
// S 100 m², C_d 8, ρ 1025; a 0.5 m, T 6 s.
const rho = 1025;
const truth = { A: 466_114, C_d: 8 };
const plate: TankSetup = {
  ...{ mass: 20_000, volume: 2.5, area: 100, density: rho, width: 10 },
  ...{ rigMass: 0, waterInside: 0, stiffness: null, delayBound: null, harmonics: 3, also: new Set<Also>() },
};
const rest = (20_000 - rho * 2.5) * 9.80665;

interface Made {
  readonly runs?: readonly { readonly a: number; readonly T: number; readonly n: number }[];
  readonly noise?: { readonly z: number; readonly F: number; readonly rho?: number };
  readonly seed?: number;
  /** The force is read this late, s. */
  readonly delay?: number;
  readonly linear?: number;
  readonly stiffness?: number;
}

/** A record of runs that follow each other at once, from the law that is to be found again. */
function made({
  runs = [{ a: 0.5, T: 6, n: 600 }],
  noise = { z: 0, F: 0 },
  seed = 1,
  delay = 0,
  linear = 0,
  stiffness = Infinity,
}: Made) {
  const random = normal(seed);
  const [t, z, F]: [number[], number[], number[]] = [[], [], []];
  let [start, e] = [0, random()];
  const r = noise.rho ?? 0;
  for (const { a, T, n } of runs) {
    const w = (2 * Math.PI) / T;
    const force = (at: number): number => {
      const v = a * w * Math.cos(w * at);
      return (
        -(20_000 + truth.A) * a * w * w * Math.sin(w * at) +
        0.5 * rho * 100 * truth.C_d * v * Math.abs(v) +
        linear * v +
        rest
      );
    };
    for (let i = 0; i < n; i++) {
      e = r * e + Math.sqrt(1 - r * r) * random();
      t.push(start + 0.1 * i);
      z.push(a * Math.sin(0.1 * i * w) + (force(0.1 * i) - rest) / stiffness + noise.z * random());
      F.push(force(0.1 * i - delay) + noise.F * e);
    }
    start += 0.1 * n;
  }
  return [Float64Array.from(t), Float64Array.from(z), Float64Array.from(F)] as const;
}
const setup = (change: Partial<TankSetup> = {}): TankSetup => ({ ...plate, ...change });
const two = [{ a: 0.5, T: 6, n: 600 }, { a: 0.8, T: 9, n: 720 }]; // prettier-ignore

describe('Fourier averaging', () => {
  it('gives A and C_d back from F_c = 95 411.33 N and F_s = −266 541.83 N (worked case)', () => {
    const { inertia, dragCoefficient } = fourierAveraging(95_411.33, -266_541.83, 0.5, (2 * Math.PI) / 6, rho, 100);
    expect(inertia - 20_000).toBeCloseTo(truth.A, -1);
    expect(dragCoefficient).toBeCloseTo(8, 5);
  });

  it('says that a degree of phase changes drag by 4.9 % at F_D / F_I = 0.42171 (worked case)', () => {
    expect(dragByPhase(1, 0.42171, Math.PI / 180)).toBeCloseTo(0.049, 3);
  });
});

describe('added mass and drag of a driven plate', () => {
  it('come back exactly from a record without noise, by both methods', () => {
    const result = identify(...made({}), setup());
    expect(result.addedMass.value).toBeCloseTo(truth.A, 4);
    expect(result.dragCoefficient.value).toBeCloseTo(8, 9);
    expect(result.weight.value).toBeCloseTo(rest, 4);
    expect(result.runs).toHaveLength(1);
    // whole cycles are cut at readings: Fourier's averages see up to a reading more
    expect(result.runs[0]!.fourier.inertia / truth.A).toBeCloseTo(1, 3);
    expect(result.runs[0]!.fourier.dragCoefficient).toBeCloseTo(8, 3);
    expect(result.runs[0]!.period).toBeCloseTo(6, 9);
    expect(result.runs[0]!.keuleganCarpenter).toBeCloseTo((2 * Math.PI * 0.5) / 10, 9);
  });

  it('of purely linear damping by quadratic drag: least squares over Fourier is 256 / 27π² = 0.960675 (derived)', () => {
    const [t, z, F] = made({ linear: 50_000 });
    const less = Float64Array.from(F, (f, i) => {
      const v = 0.5 * ((2 * Math.PI) / 6) * Math.cos((2 * Math.PI * t[i]!) / 6);
      return f - 0.5 * rho * 100 * 8 * v * Math.abs(v);
    });
    const [run] = identify(t, z, less, setup()).runs;
    expect(run!.fit.dragCoefficient / run!.fourier.dragCoefficient).toBeCloseTo(0.960675, 3);
  });

  it('lie in their 95 % intervals in 93 to 97 of 100 seeded records, pooled over noise, its correlation and sampling', () => {
    let [held, all] = [0, 0];
    for (const noise of [
      { z: 0.005, F: 0 },
      { z: 0, F: 3000 },
      { z: 0.002, F: 3000, rho: 0.8 },
      { z: 0.005, F: 1500 },
    ])
      // prettier-ignore
      for (let seed = 1; seed <= 100; seed++) {
        const { addedMass: A, dragCoefficient: C } = identify(...made({ noise, seed }), setup());
        held += Number(A.low <= truth.A && truth.A <= A.high) + Number(C.low <= 8 && 8 <= C.high);
        all += 2;
      }
    // 800 trials: 0.95 ± 3.3 standard deviations of a binomial (99.9 %)
    expect(held / all).toBeGreaterThan(0.925);
    expect(held / all).toBeLessThan(0.975);
  });

  it('widen with the stated bound on delay, by what a delay of that size does', () => {
    const record = made({ noise: { z: 0.001, F: 500 } });
    const [plain, bounded] = [identify(...record, setup()), identify(...record, setup({ delayBound: 0.01 }))];
    const late = identify(...made({ delay: 0.01 }), setup()).dragCoefficient.value - 8;
    const wider = bounded.dragCoefficient.high - plain.dragCoefficient.high;
    expect(wider / late).toBeCloseTo(1, 1);
    expect(plain.findings.map(({ id }) => id)).toContain('delay-not-stated');
  });

  it('say that drag is not identifiable where the bound on delay is as large as it', () => {
    const ids = identify(...made({}), setup({ delayBound: 0.2 })).findings.map(({ id }) => id);
    expect(ids).toContain('drag-not-identifiable');
  });

  it('with a delay as one more unknown come back from two periods, and are refused from one', () => {
    const both = identify(...made({ runs: two, delay: 0.05 }), setup({ also: new Set(['delay']) }));
    expect(both.also.get('delay')!.value).toBeCloseTo(0.05, 3);
    expect(both.dragCoefficient.value).toBeCloseTo(8, 1);
    expect(() => identify(...made({ delay: 0.05 }), setup({ also: new Set(['delay']) }))).toThrow(
      /cannot tell drag and delay apart/,
    );
  });

  it('with linear damping come back from two amplitudes, and are refused from one', () => {
    // speeds of 0.21 and 0.63 m/s: two amplitudes at one speed would tell nothing
    const runs = [{ a: 0.2, T: 6, n: 600 }, { a: 0.8, T: 8, n: 720 }]; // prettier-ignore
    const both = identify(...made({ runs, linear: 40_000 }), setup({ also: new Set(['linear damping']) }));
    expect(both.also.get('linear damping')!.value).toBeCloseTo(40_000, 2);
    expect(both.dragCoefficient.value).toBeCloseTo(8, 7);
    expect(() => identify(...made({ linear: 40_000 }), setup({ also: new Set(['linear damping']) }))).toThrow(
      /cannot tell drag and linear damping apart/,
    );
  });

  it('take the stretch of the line off the ram’s travel, and warn of its period', () => {
    const stiffness = 3e6;
    const record = made({ stiffness });
    expect(identify(...record, setup()).addedMass.value / truth.A).toBeGreaterThan(1.05);
    const result = identify(...record, setup({ stiffness }));
    expect(result.addedMass.value / truth.A).toBeCloseTo(1, 6);
    expect(result.findings.map(({ id }) => id)).toContain('rig-period');
  });

  it('leave water inside and rig out of the added mass', () => {
    const plain = identify(...made({}), setup()).addedMass.value;
    expect(plain - identify(...made({}), setup({ waterInside: 2 })).addedMass.value).toBeCloseTo(2 * rho, 6);
    expect(plain - identify(...made({}), setup({ rigMass: 300 })).addedMass.value).toBeCloseTo(300, 6);
  });

  it('hardly move for a few wild readings in the robust fit, and the record says so', () => {
    const [t, z, F] = made({ noise: { z: 0, F: 500 } });
    const before = identify(t, z, F, setup());
    for (const i of [150, 300, 301]) F[i]! += 400_000;
    const result = identify(t, z, F, setup());
    const moved = Math.abs(result.robust.inertia - before.robust.inertia);
    expect(moved).toBeLessThan(0.05 * Math.abs(result.addedMass.value - before.addedMass.value));
    expect(result.outliers).toBe(3);
    expect(result.findings.map(({ id }) => id)).toContain('outliers');
  });

  it('are refused from a record that has no three like cycles', () => {
    expect(() => identify(...made({ runs: [{ a: 0.5, T: 6, n: 150 }] }), setup())).toThrow(
      /no three in a row that are alike/,
    );
  });
});

describe('the sample records give back what they were made from (samples/tank.truth.json)', () => {
  const { plate: own, records } = JSON.parse(readFileSync('samples/tank.truth.json', 'utf8')) as {
    plate: { mass: number; volume: number; area: number; density: number };
    records: Record<string, { addedMass: number; dragCoefficient: number; delay?: number }>;
  };
  const of = (name: string, also: readonly Also[] = []) => {
    const { time, channels } = tankRecord(readFileSync(`samples/tank-${name}.csv`, 'utf8'));
    return identify(time, channels[0]!.values, channels[1]!.values, {
      ...plate,
      ...own,
      width: 2.9,
      also: new Set(also),
    });
  };
  it.each(['closed', 'open'])('%s', (name) => {
    const { addedMass, dragCoefficient } = of(name);
    const { addedMass: A, dragCoefficient: C_d } = records[name]!;
    expect(addedMass.low).toBeLessThan(A);
    expect(addedMass.high).toBeGreaterThan(A);
    expect(dragCoefficient.low).toBeLessThan(C_d);
    expect(dragCoefficient.high).toBeGreaterThan(C_d);
  });

  it('flawed: stuck travel, slack line and delay are found, and with the delay as an unknown the truth lies in the intervals', () => {
    const { findings, addedMass, dragCoefficient, also } = of('flawed', ['delay']);
    expect(findings.map(({ id }) => id)).toEqual(expect.arrayContaining(['channel-stuck', 'line-slack']));
    const { addedMass: A, dragCoefficient: C_d, delay } = records['flawed']!;
    for (const [{ low, high }, value] of [
      [addedMass, A],
      [dragCoefficient, C_d],
      [also.get('delay')!, delay!],
    ] as const) {
      // prettier-ignore
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
  });

  it('the closed plate’s added mass is larger than the open one’s with near certainty', () => {
    expect(probabilityLarger(of('closed').addedMass, of('open').addedMass)).toBeGreaterThan(0.999);
    expect(probabilityLarger(of('open').addedMass, of('open').addedMass)).toBeCloseTo(0.5, 6);
  });
});

it('a drift of the load cell’s zero is found beside added mass and drag, in its interval in 18 of 20 noisy records and more', () => {
  let within = 0;
  for (let seed = 1; seed <= 20; seed++) {
    const [time, z, F] = made({ runs: two, noise: { z: 0.002, F: 800, rho: 0.5 }, seed });
    const drifting = F.map((f, i) => f + 25 * time[i]!);
    const { also, addedMass, dragCoefficient } = identify(time, z, drifting, setup({ also: new Set<Also>(['force drift']) })); // prettier-ignore
    const { low, high } = also.get('force drift')!;
    if (low <= 25 && 25 <= high) within++;
    expect(Math.abs(addedMass.value / truth.A - 1)).toBeLessThan(0.01);
    expect(Math.abs(dragCoefficient.value / truth.C_d - 1)).toBeLessThan(0.03);
  }
  expect(within).toBeGreaterThanOrEqual(18);
});
