import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../../core/appraise.ts';
import { readDocument } from '../../../core/document/read-document.ts';
import type { Model } from '../../../core/model.ts';
import { jointCautions } from '../../../core/plate/mesh/joint-stiffness.ts';
import { deflections } from '../../../core/plate/results/deflections.ts';
import { deflectionSplit } from '../../../core/plate/results/deflection-split.ts';
import { jointSpread } from '../../../core/plate/results/joint-spread.ts';
import { everySolved, solveCases } from '../../../core/plate/solve-cases.ts';
import { readyPlate, solveLoading } from '../../../core/plate/solve-plate.ts';
import { drained } from '../../../core/solve/drained.ts';
import { roundJointFlexibility } from '../../../core/solve/round-joint-flexibility.ts';
import { jointForce } from '../../../core/solve/structure/tie.ts';

type Grid = Record<string, unknown>;
const modelWith = (sample: string, joints?: object, more: Grid = {}): Model => {
  const raw = JSON.parse(readFileSync(`samples/${sample}.stillplate.json`, 'utf8')) as {
    grid: Grid;
    options?: unknown;
  };
  Object.assign(raw.grid, more, joints ? { joints } : {});
  return modelOf(readDocument({ ...raw } as never));
};
const stated = (kNmRad: number, more: object = {}) => ({
  stiffness: 'stated',
  inPlane: `${kNmRad} kNm/rad`,
  outOfPlane: `${kNmRad} kNm/rad`,
  source: 'assumed for this test',
  ...more,
});
const size = 0.2;
const inService = (model: Model) => {
  const plate = readyPlate(model, { size });
  const situation = model.loads.situations.find((s) => s.id === 'service-down')!;
  return { plate, solved: drained(solveLoading(plate, situation, { loading: 0, variant: 0, stage: 'linear' })) };
};
const sink = (model: Model): number => {
  const { plate, solved } = inService(model);
  return Math.abs(deflections(plate, solved).largest.rise);
};

describe('joints of tubes that are let in', () => {
  const sample = 'small';
  const rigid = modelWith(sample);
  it('sink more the softer they are stated, and come back to the rigid plate as they grow stiff', () => {
    const sinks = [rigid, ...[1e9, 1e3, 1e2].map((k) => modelWith(sample, stated(k)))].map(sink);
    expect(sinks[1]! / sinks[0]!).toBeGreaterThan(1 - 1e-9);
    // the welds' own give is left: E times the length of a weld against beams of metres
    expect(sinks[1]! / sinks[0]!).toBeLessThan(1.01);
    expect(sinks[2]!).toBeGreaterThan(sinks[1]!);
    expect(sinks[3]!).toBeGreaterThan(sinks[2]!);
  });
  it('hand over the whole force: what a joint carries turns its spring by M/k', () => {
    const { plate, solved } = inService(modelWith(sample, stated(200)));
    const joints = plate.structure.joints!;
    // one at each face of a main tube that has a cross tube on it
    expect(joints.length).toBeGreaterThanOrEqual(plate.model.geometry.crossings.length);
    for (const joint of joints) {
      const { u } = solved.answer;
      const turn = u[6 * joint.nodes[1] + 3]! - u[6 * joint.nodes[0] + 3]!;
      expect(jointForce(joint, u).mx / 200e3).toBeCloseTo(turn, 12);
    }
    expect(solved.answer.residual).toBeLessThan(1e-13);
  });
  it('have their own part in the split of a deflection, which still sums to it', () => {
    const { plate, solved } = inService(modelWith(sample, stated(200)));
    const { rise, parts, rest } = deflectionSplit(plate, solved, deflections(plate, solved).largest.point);
    expect(Math.abs(parts.joints)).toBeGreaterThan(0.001 * Math.abs(rise));
    expect(Math.abs(rest)).toBeLessThan(1e-9 * Math.abs(rise));
  });
});

describe('joints of tubes that cross stacked', () => {
  const flat = { arrangement: 'stacked' };
  it('leave the cross tube whole: the softest joint is no hinge in it', () => {
    const soft = modelWith('small', stated(1e-3), flat);
    const { structure } = readyPlate(soft, { size });
    for (const { id, nodes } of structure.joints!) {
      const own = structure.tubes.find((tube) => tube.id === id.split('/')[1]!)!;
      const through = structure.beams.slice(...own.beams).filter((b) => b.nodes.includes(nodes[1]));
      const ends = own.nodes[0] === nodes[1] || own.nodes.at(-1) === nodes[1];
      expect(through).toHaveLength(ends ? 1 : 2);
    }
    expect(Number.isFinite(sink(soft))).toBe(true);
  });
  it('meet where the faces meet', () => {
    const { structure } = readyPlate(modelWith('small', stated(100), flat), { size });
    for (const { nodes, offsets } of structure.joints!) {
      const [a, b] = nodes.map((n, e) => [0, 1, 2].map((k) => structure.coordinates[3 * n + k]! + offsets[e]![k]!));
      expect(Math.hypot(...a!.map((v, k) => v - b![k]!))).toBeLessThan(1e-12);
      expect(a![2]).toBeCloseTo(0, 12); // top of the main tubes
    }
  });
  it('say that no published formula covers them', () => {
    expect(jointCautions(modelWith('small', { stiffness: 'published' }, flat)).join(' ')).toMatch(
      /runs through on top/,
    );
  });
});

describe('a range of the joints’ stiffness', () => {
  it('is solved at both ends, and the stated value lies between', () => {
    const model = modelWith(
      'small',
      stated(200, { range: { low: 0.5, high: 'rigid', source: 'assumed for this test' } }),
    );
    const { plate, solved, jointEnds } = drained(solveCases(model, { size, stage: 'linear', cases: 'service', losses: false })); // prettier-ignore
    expect(jointEnds.map(({ end }) => end)).toEqual(['low', 'high']);
    const most = (on: typeof plate, of: typeof solved): number => Math.max(...of.map((one) => Math.abs(deflections(on, one).largest.rise))); // prettier-ignore
    const [low, high] = jointEnds.map((end) => most(end.plate, end.solved));
    const middle = most(plate, solved);
    expect(low!).toBeGreaterThan(middle);
    expect(high!).toBeLessThan(middle);
    expect(high!).toBe(most(readyPlate(modelWith('small'), { size }), drained(solveCases(modelWith('small'), { size, stage: 'linear', cases: 'service', losses: false })).solved)); // prettier-ignore
  });
});

describe('a range of the joints’ stiffness with a part lost', () => {
  const range = { low: 0.2, high: 'rigid', source: 'assumed for this test' };
  const cases = drained(solveCases(modelWith('small', stated(100, { range })), { size, stage: 'linear', cases: 'service', losses: true })); // prettier-ignore
  const sinks = (of: { plate: Parameters<typeof deflections>[0]; solved: readonly Parameters<typeof deflections>[1][] }) => of.solved.map((one) => Math.abs(deflections(of.plate, one).largest.rise)); // prettier-ignore
  const rigid = drained(solveCases(modelWith('small'), { size, stage: 'linear', cases: 'service', losses: 'all' }));

  it('has each loading at both ends too: of the whole, of a lost row, panel, joint, and of each leg', () => {
    expect(cases.losses.map(({ kind }) => kind)).toEqual(['bolt row', 'panel', 'joint']);
    for (const { solved, jointEnds } of [cases, ...cases.losses]) {
      expect(jointEnds.map(({ end }) => end)).toEqual(['low', 'high']);
      for (const end of jointEnds)
        expect(end.solved.map(({ situation, loading, variant }) => [situation.id, loading, variant])).toEqual(solved.map(({ situation, loading, variant }) => [situation.id, loading, variant])); // prettier-ignore
    }
    expect(cases.solved.some(({ situation }) => situation.loadCase === 'lost leg')).toBe(true);
  });

  it.each(['bolt row', 'panel', 'joint'])('without a %s: the plate works less for the load the stiffer its joints, and rigid ones are those of the rigid plate', (kind) => {
    const lost = cases.losses.find((one) => one.kind === kind)!;
    const [low, high] = lost.jointEnds;
    // work of the load, half its force times its way: what stiffness lessens wherever it is added (Clapeyron)
    const works = (of: { solved: typeof lost.solved }) => of.solved.map(({ applied, answer: { u } }) => applied.reduce((sum, f, i) => sum + f * u[i]!, 0)); // prettier-ignore
    const [soft, between, stiff] = [works(low!), works(lost), works(high!)];
    between.forEach((work, i) => {
      expect(soft[i]!).toBeGreaterThan(work);
      expect(stiff[i]!).toBeLessThan(work);
    });
    const same = rigid.losses.find((one) => one.kind === kind && one.id === lost.id)!;
    expect(sinks(high!)).toEqual(sinks(same));
  }); // prettier-ignore

  it('is told beside each loading, and a joint that is lost is called one', () => {
    const shown = everySolved(cases);
    for (const { joints, plate, solved } of shown) {
      expect(joints.map(({ end }) => end)).toEqual(['low', 'high']);
      for (const at of joints) {
        const told = jointSpread(at.end, at.plate, at.solved);
        expect(told.deflection).toBe(deflections(at.plate, at.solved).largest.rise);
        expect(told.deflection).not.toBe(deflections(plate, solved).largest.rise);
      }
    }
    const titles = shown.filter(({ lost }) => lost?.kind === 'joint').map(({ title }) => title);
    expect(titles.length).toBeGreaterThan(0);
    for (const title of titles) expect(title).toMatch(/^One joint lost/);
  });
});

describe('what the document may say of joints', () => {
  it.each([
    [{ stiffness: 'stated', inPlane: '1 kNm/rad', source: 'x' }, /outOfPlane/],
    [{ stiffness: 'rigid', range: { low: 0.5, high: 2, source: 'x' } }, /range is given for joints that are rigid/],
    [{ stiffness: 'rigid', axial: '1 kN/mm' }, /have numbers/],
    [stated(1, { inPlane: '1 kN m' }), /stiffness against turning/],
  ])('%j is refused', (joints, words) => {
    expect(() => modelWith('small', joints)).toThrow(words);
  });
});

describe('local flexibility of round T-joints', () => {
  /** H. Fessler, P. B. Mockford, J. J. Webster (1986), parametric equations from tests of models, from memory. */
  const fessler = (β: number, γ: number, E: number, D: number) => ({
    axial: (1.95 * γ ** 2.15 * (1 - β) ** 1.3) / (E * D),
    inPlane: (134 * γ ** 1.73 * Math.exp(-4.52 * β)) / (E * D ** 3),
    outOfPlane: (85.5 * γ ** 2.2 * Math.exp(-3.85 * β)) / (E * D ** 3),
  });
  it('agree with the older fit of Fessler, Mockford and Webster (1986) within what two fits to different models do', () => {
    for (const β of [0.35, 0.5, 0.7])
      for (const γ of [10.5, 14, 19]) {
        const D = 0.4;
        const T = D / (2 * γ);
        const one = roundJointFlexibility({ D, T, d: β * D, t: T / 2, E: 210e9 });
        const other = fessler(β, γ, 210e9, D);
        for (const way of ['inPlane', 'outOfPlane'] as const) expect(Math.abs(Math.log(one[way] / other[way]))).toBeLessThan(Math.log(1.4)); // prettier-ignore
        expect(Math.abs(Math.log(one.axial / other.axial))).toBeLessThan(Math.log(2));
      }
  });
  it('refuses what lies outside the range of the fit', () => {
    expect(() => roundJointFlexibility({ D: 0.4, T: 0.014, d: 0.36, t: 0.01, E: 210e9 })).toThrow(/0.3 to 0.8/);
  });
});
