import { describe, expect, it } from 'vitest';
import { identify } from '../../core/tank/identify.ts';
import type { Also, TankSetup } from '../../core/tank/tank-setup.ts';
import { normal } from './normal.ts';

const [rho, S, m, A, C_d] = [1025, 8, 1500, 16_000, 7];
const setup = (also: readonly Also[]): TankSetup => ({
  ...{ mass: m, volume: 0.19, area: S, density: rho, width: 3, rigMass: 0, waterInside: 0, stiffness: null },
  ...{ delayBound: 0, harmonics: 3, also: new Set(also) },
});

interface Law {
  readonly friction?: number;
  readonly linear?: number;
  readonly late?: number;
}
/** Three runs of nine cycles, by a law with a term more. */
function record({ friction = 0, linear = 0, late = 0 }: Law, seed: number, runs: readonly (readonly [number, number])[]) {
  const random = normal(seed);
  const [t, z, F]: [number[], number[], number[]] = [[], [], []];
  let e = 0;
  for (const [a, T] of runs) {
    const [w, start] = [(2 * Math.PI) / T, 0.1 * t.length];
    const force = (at: number): number => {
      const v = a * w * Math.cos(w * at);
      return -(m + A) * a * w * w * Math.sin(w * at) + 0.5 * rho * S * C_d * v * Math.abs(v) + linear * v + friction * Math.sign(v); // prettier-ignore
    };
    for (let i = 0; i < 9.2 * T * 10; i++) {
      e = 0.6 * e + 0.8 * random();
      t.push(start + 0.1 * i);
      z.push(a * Math.sin(0.1 * i * w) + 0.001 * random());
      F.push(force(0.1 * i - late) + (m - rho * 0.19) * 9.80665 + 60 * e);
    }
  }
  return [Float64Array.from(t), Float64Array.from(z), Float64Array.from(F)] as const;
} // prettier-ignore
const three = [[0.3, 7], [0.5, 8], [0.7, 10]] as const; // prettier-ignore
const toldOf = (law: Law, seed: number, also: readonly Also[] = [], runs: readonly (readonly [number, number])[] = three) =>
  identify(...record(law, seed, runs), setup(also)).findings.flatMap(({ id, text }) => (id === 'term-left-out' ? [/asks for ([a-z ]+):/.exec(text)![1]] : [])); // prettier-ignore

describe('what a fit leaves over', () => {
  it('asks for no term where the record was made without one, in 40 seeded records with correlated noise', () => {
    for (let seed = 1; seed <= 40; seed++) expect(toldOf({}, seed)).toEqual([]);
  });

  it.each([
    ['dry friction', { friction: 250 }],
    ['linear damping', { linear: 1500 }],
    ['delay', { late: 0.05 }],
  ] as const)('asks for %s where the record has it, and no more once it is in the model', (term, law) => {
    for (let seed = 1; seed <= 10; seed++) {
      expect(toldOf(law, seed)).toContain(term);
      expect(toldOf(law, seed, [term])).toEqual([]);
    }
  });

  it('names neither linear damping nor delay at one amplitude and period, where they are drag: what it may name acts alike', () => {
    const one = [[0.5, 8]] as const;
    expect(toldOf({ linear: 1500 }, 1, [], one)).not.toContain('linear damping');
    expect(toldOf({ late: 0.05 }, 1, [], one)).not.toContain('delay');
  });
});
