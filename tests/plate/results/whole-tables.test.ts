import { describe, expect, it } from 'vitest';
import { largePanels } from '../../../core/plate/large-panel.ts';
import { deflections } from '../../../core/plate/results/deflections.ts';
import { jointSpread } from '../../../core/plate/results/joint-spread.ts';
import { panelStress } from '../../../core/plate/results/panel-stress.ts';
import { largeTable, largeTables, shownTables, studyTable } from '../../../core/plate/results/whole-tables.ts';
import { everySolved, solveCases } from '../../../core/plate/solve-cases.ts';
import { drained } from '../../../core/solve/drained.ts';
import { sampleModel } from './support/solved-sample.ts';

/** Rows of a table as numbers or words by the names in its head. */
function rowsOf(text: string): Readonly<Record<string, string>>[] {
  const [head, ...lines] = text
    .trim()
    .split(/\r?\n/)
    .map((line) => line.split(','));
  return lines.map((line) => Object.fromEntries(head!.map((name, i) => [name, line[i]!])));
}
const named = (tables: readonly { readonly name: string; readonly text: string }[], name: string) =>
  rowsOf(tables.find((table) => table.name === name)!.text);

describe('tables of a whole plate', () => {
  it('hold both ends of the joints’ range, side by side and in full', () => {
    const model = sampleModel('small', (raw) => {
      const grid = raw['grid'] as Record<string, unknown>;
      const stiffness = '100 kNm/rad';
      const source = 'assumed for this test';
      const range = { low: 0.2, high: 'rigid', source };
      const joints = { stiffness: 'stated', inPlane: stiffness, outOfPlane: stiffness, source, range };
      grid['joints'] = joints;
    });
    const cases = drained(solveCases(model, { size: 0.4, stage: 'linear', cases: 'service', losses: false }));
    const [first] = everySolved(cases);
    const tables = shownTables(first!, 'SI');
    const ends = named(tables, 'joint-ends.csv');
    expect(ends.map(({ joints }) => joints)).toEqual(['as stated', 'low', 'high']);
    first!.joints.forEach(({ end, plate, solved }, k) => {
      const spread = jointSpread(end, plate, solved);
      expect(Number(ends[k + 1]!['tube moment [N*m]'])).toBeCloseTo(spread.moment, 6);
      expect(Number(ends[k + 1]!['largest deflection [m]'])).toBeCloseTo(spread.deflection, 12);
      expect(named(tables, `joints-${end}-nodes.csv`)).toHaveLength(plate.structure.coordinates.length / 3);
    });
    expect(tables.find(({ name }) => name === 'joints-low-tubes.csv')!.text).not.toBe(tables.find(({ name }) => name === 'tubes.csv')!.text); // prettier-ignore
    expect(named(shownTables(first!, 'metric'), 'joint-ends.csv')[0]!['largest deflection [mm]']).toBeDefined();
  });

  it('hold panels that deflect far with the forces of their stretch, and how far they dip', () => {
    const model = sampleModel('small');
    const cases = drained(solveCases(model, { size: 0.4, stage: 'contact', cases: 'service', losses: false }));
    const [of] = cases.solved;
    const most = Math.max(...deflections(cases.plate, of!).panels.map(({ dipOverThickness }) => dipOverThickness));
    const large = drained(largePanels(cases.plate, of!, { beyond: 0.999 * most }));
    expect(large.panels).toHaveLength(1);
    const rows = named([largeTable([{ of: of!, ...large }])], 'large-deflection.csv');
    expect(rows.map(({ panel }) => panel)).toEqual(large.panels.map(({ id }) => id));
    rows.forEach((row, k) => expect(Number(row['dip over thickness [1]'])).toBeCloseTo(large.panels[k]!.large!, 9));
    const { id, cells } = large.panels[0]!;
    const stretched = panelStress(cases.plate, large.solved, new Map([[id, cells]])).find((one) => one.id === id)!;
    const table = named(largeTables(cases.plate, large, 'SI'), 'panels.csv').filter(({ panel }) => panel === id);
    expect(table).toHaveLength(stretched.nodes.length);
    table.forEach((row, i) => expect(Math.abs(Number(row['Nx [N/m]']) - stretched.forces[6 * i]!)).toBeLessThan(1e-6));
    const plain = panelStress(cases.plate, large.solved).find((one) => one.id === id)!;
    expect(plain.forces).not.toEqual(stretched.forces);
  });

  it('hold a mesh study with what it goes towards, and leave open what goes to and fro', () => {
    const mesh = { size: 0.2, cell: 0.18, unknowns: 900, deflection: 0.002, bolt: 500, weld: 0, stressError: 0.05 };
    const convergence = [
      { quantity: 'deflection' as const, extrapolated: 0.0021, order: 2, errors: [0.05] },
      { quantity: 'bolt' as const, extrapolated: NaN, order: null, errors: [0.1] },
      { quantity: 'weld' as const, extrapolated: 0, order: null, errors: [0] },
    ];
    const study = { target: 0.02, meshes: [mesh], convergence, chosen: 0.2 } as unknown as Parameters<
      typeof studyTable
    >[0];
    const rows = named([studyTable(study, 'metric')], 'mesh-study.csv');
    expect(rows.map(({ of }) => of)).toEqual(['chosen mesh', 'extrapolated', 'observed order']);
    expect(Number(rows[1]!['deflection [mm]'])).toBeCloseTo(2.1, 12);
    expect(rows[1]!['bolt [N]']).toBe('');
  });
});
