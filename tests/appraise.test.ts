import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../core/appraise.ts';
import { readDocument, type RawDocument } from '../core/document/read-document.ts';
import { Refusal } from '../core/refusal.ts';
import { resultOf } from '../core/result.ts';
import { solvedAlike } from './checks/solved-alike.ts';

const small = JSON.parse(readFileSync('samples/small.stillplate.json', 'utf8')) as RawDocument;
const asking = (change: object = {}): RawDocument => ({ ...small, forces: { from: 'hand and solver', ...change } });
const appraised = (raw: RawDocument, solved?: Parameters<typeof appraise>[3]) =>
  appraise(raw, readDocument(raw), null, solved);
const forces = solvedAlike(appraised(asking()).model);

describe('forces by hand and of the whole plate', () => {
  it('are by hand alone where the document says nothing', () => {
    const { rows, model } = appraised(small);
    expect(model.solved).toBeNull();
    expect(rows.every(({ both }) => both === null)).toBe(true);
  });

  it('wait, and say so, where the document asks for both and nothing is solved', () => {
    const { rows } = appraised(asking());
    const row = rows.find(({ id, situation }) => id === 'tube-bending' && situation === 'service-up')!;
    expect([row.verdict, row.reason]).toEqual(['cannot be judged', 'the plate is not solved yet as one structure']);
    expect(row.both!.hand.verdict).toBe('passes');
    expect(row.demand).toBe(row.both!.hand.demand);
  });

  it('are both judged when they are there, the same values to the same utilisation', () => {
    const { rows } = appraised(asking(), forces);
    const tubes = rows.filter(({ id, both }) => id === 'tube-bending' && both !== null);
    expect(tubes.length).toBeGreaterThan(10);
    for (const { both } of tubes) expect(both!.solver).toEqual(both!.hand);
    const lost = rows.filter(({ id, loadCase }) => id === 'bolt-tension' && loadCase === 'lost bolt row');
    expect(lost.length).toBeGreaterThan(0);
    expect(lost.every(({ both }) => both === null)).toBe(true);
  });

  it('are refused when they are of the plate before a change', () => {
    const changed = structuredClone(asking()) as RawDocument & { designs: Record<string, { thickness: string }> };
    changed.designs[Object.keys(changed.designs)[0]!]!.thickness = '12 mm';
    const { rows } = appraised(changed, forces);
    const row = rows.find(({ id, situation }) => id === 'tube-bending' && situation === 'service-up')!;
    expect([row.verdict, row.reason]).toEqual(['cannot be judged', expect.stringMatching(/before a change/)]);
    expect(row.both!.solver.demand).toBeNull();
  });

  it('cannot be judged where contact did not settle', () => {
    const open = solvedAlike(appraised(asking()).model, (one, id) => ({ ...one, settled: id !== 'service-up' }));
    const { rows } = appraised(asking(), open);
    const verdicts = (situation: string) =>
      rows.filter((row) => row.id === 'tube-bending' && row.situation === situation).map(({ verdict }) => verdict);
    expect(new Set(verdicts('service-up'))).toEqual(new Set(['cannot be judged']));
    expect(new Set(verdicts('service-down'))).toEqual(new Set(['passes']));
  });

  it('tell of a smaller demand that is chosen, of a choice that chooses nothing, and of a coarse mesh', () => {
    const doubled = solvedAlike(appraised(asking()).model, (one) => ({
      ...one,
      tubes: Object.fromEntries(Object.entries(one.tubes).map(([id, tube]) => [id, { ...tube, M: 2 * tube.M }])),
    }));
    const choose = [
      { check: 'tube-bending', place: 'A', take: 'hand', reason: 'measured on the last plate' },
      { check: 'tube-bending', place: 'Z', take: 'hand', reason: 'no such tube' },
    ];
    const coarse = { ...doubled, mesh: { ...doubled.mesh, stressError: 0.07 } };
    const { rows, findings } = appraised(asking({ choose }), coarse);
    const [a, b] = ['A', 'B'].map((place) => rows.find((row) => row.id === 'tube-bending' && row.place === place && row.situation === 'service-up')!); // prettier-ignore
    expect([a!.both!.governs, a!.both!.smaller]).toEqual(['hand', 'measured on the last plate']);
    expect([b!.both!.governs, b!.both!.smaller]).toEqual(['solver', '']);
    expect(b!.demand! / a!.demand!).toBeCloseTo(2, 9);
    const of = (id: string) => findings.filter((finding) => finding.id === id);
    expect(of('smaller-demand').map(({ place, text }) => [place, text])).toEqual([['A', expect.stringMatching(/measured on the last plate/)]]); // prettier-ignore
    expect(of('choice-of-nothing').map(({ place }) => place)).toEqual(['Z']);
    expect(of('solver-mesh')[0]!.text).toMatch(/7\.0 %/);
  });

  it('refuse a choice without a reason, in words', () => {
    for (const reason of [{}, { reason: '' }, { reason: '  ' }])
      try {
        readDocument(asking({ choose: [{ check: 'tube-bending', take: 'hand', ...reason }] }));
        expect.unreachable();
      } catch (error) {
        expect(error).toBeInstanceOf(Refusal);
        expect((error as Refusal).all[0]!.what).toMatch(/chosen for tube-bending without a reason/);
        expect((error as Refusal).all[0]!.mend).toMatch(/Say why/);
      }
  });

  it('are told side by side in the result, finite, with the mesh', () => {
    const result = resultOf(appraised(asking(), forces), { every: true });
    expect(result.solver).toEqual(forces.mesh);
    const row = result.checks.find(({ id, loadCase }) => id === 'tube-bending' && loadCase === 'service')!;
    expect(row.forces!.hand.demand).toBe(row.demand);
    expect(Object.keys(row.forces!)).toEqual(['hand', 'solver', 'governs', 'smaller']);
    expect(resultOf(appraised(small)).solver).toBeUndefined();
  });
});
