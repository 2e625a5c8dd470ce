import { describe, expect, it } from 'vitest';
import { csvTable } from '../../../core/quantity/csv-table.ts';
import { boltRanges } from '../../../core/plate/results/bolt-ranges.ts';
import { fixingForces } from '../../../core/plate/results/fixing-forces.ts';
import { levelled } from '../../../core/plate/results/levelled.ts';
import { panelStress } from '../../../core/plate/results/panel-stress.ts';
import * as csv from '../../../core/plate/results/solver-csv.ts';
import type { CsvUnits } from '../../../core/plate/results/unit-table.ts';
import { rangeTables, solverTables } from '../../../core/plate/results/solver-tables.ts';
import { tubeForces } from '../../../core/plate/results/tube-forces.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';

it('a table is CSV as RFC 4180, section 2, says: CR LF, quotes about commas, quotes and line breaks, quotes doubled', () => {
  expect(csvTable(['a', 'b,c'], [['x "y"', 1.5], ['two\nlines', -2e-7]])).toBe(
    'a,"b,c"\r\n"x ""y""",1.5\r\n"two\nlines",-2e-7\r\n',
  ); // prettier-ignore
  expect(() => csvTable(['a'], [[NaN]])).toThrow(/NaN/);
});

const rowsOf = (text: string): string[][] =>
  text
    .trimEnd()
    .split('\r\n')
    .map((line) => line.split(','));

describe.each([
  ['the small sample', 'small', undefined],
  ['a welded panel', 'small', { A2: 'welded-4' }],
] as const)('tables of %s', (_, name, panels) => {
  const model = sampleModel(name, (raw) => {
    if (panels) (raw as { panels: unknown }).panels = panels;
  });
  const plate = ready(model, 0.2);
  const solved = solvedLoading(plate, 'service-down');
  const { structure } = plate;
  const forces = fixingForces(plate, solved);
  const tubes = tubeForces(plate, solved);
  const stress = panelStress(plate, solved);
  const tables = (units: CsvUnits) => ({
    nodes: rowsOf(csv.nodesCsv(plate, solved, units)),
    tubes: rowsOf(csv.tubesCsv(tubes, units)),
    panels: rowsOf(csv.panelsCsv(plate, stress, units)),
    bolts: rowsOf(csv.boltsCsv(forces, units)),
    welds: rowsOf(csv.weldsCsv(forces, units)),
    contacts: rowsOf(csv.contactsCsv(plate, solved, units)),
    supports: rowsOf(csv.supportsCsv(forces, units)),
  });

  it('have a line for everything there is, as wide as their header, with finite numbers only', () => {
    const all = tables('metric');
    const count = {
      nodes: structure.coordinates.length / 3,
      tubes: tubes.reduce((sum, { at }) => sum + at.length, 0),
      panels: stress.reduce((sum, { nodes }) => sum + nodes.length, 0),
      bolts: structure.ties.filter(({ kind }) => kind === 'bolt').length,
      welds: structure.ties.filter(({ kind }) => kind === 'weld').length,
      contacts: structure.contacts.length,
      supports: 4,
    };
    for (const [key, rows] of Object.entries(all)) {
      expect(rows.length - 1, key).toBe(count[key as keyof typeof count]);
      for (const row of rows) {
        expect(row).toHaveLength(rows[0]!.length);
        expect(row.join(' ')).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });

  it('come all at once as files to write, those without rows left out', () => {
    const files = solverTables(plate, solved, 'metric');
    const fixing = panels ? 'welds.csv' : 'bolts.csv';
    expect(files.map((file) => file.name)).toEqual(['nodes.csv', 'tubes.csv', 'panels.csv', fixing, 'contacts.csv', 'supports.csv']); // prettier-ignore
    expect(files[1]!.text).toBe(csv.tubesCsv(tubes, 'metric'));
  });

  it('have the ranges of bolts as the load turns, as `boltRanges` gives them; nothing where there are no bolts', () => {
    const ranges = boltRanges([forces.bolts, forces.bolts.map((bolt) => ({ ...bolt, inBolt: -bolt.inBolt, shearX: 0, shearY: 0 }))]); // prettier-ignore
    const files = rangeTables(ranges, 'SI');
    expect(files.map(({ name }) => name)).toEqual(forces.bolts.length > 0 ? ['bolt-ranges.csv'] : []);
    for (const { text } of files) {
      const [head, ...rows] = rowsOf(text);
      expect(rows).toHaveLength(forces.bolts.length);
      forces.bolts.forEach(({ id, inBolt, shearX, shearY }, i) => {
        expect(rows[i]![0]).toBe(id);
        // tension comes and goes: the bolt feels all of it, whichever way round, and shear falls to nought
        expect(Number(rows[i]![head!.indexOf('range of tension [N]')])).toBeCloseTo(Math.abs(inBolt), 9);
        expect(Number(rows[i]![head!.indexOf('range of shear [N]')])).toBeCloseTo(Math.hypot(shearX, shearY), 9);
      });
    }
  });

  it('say their units, and hold the same numbers in each', () => {
    const [si, metric, inch] = [tables('SI'), tables('metric'), tables('inch')];
    expect(si.tubes[0]).toContain('rise [m]');
    expect(metric.tubes[0]).toContain('rise [mm]');
    expect(inch.tubes[0]).toContain('rise [in]');
    const column = si.tubes[0]!.indexOf('rise [m]');
    const u = levelled(plate, solved);
    expect(Number(si.nodes[4]![si.nodes[0]!.indexOf('uz [m]')])).toBe(u[6 * 3 + 2]);
    si.tubes.slice(1).forEach((row, i) => {
      const m = Number(row[column]);
      expect(Number(metric.tubes[i + 1]![column])).toBeCloseTo(1e3 * m, 12);
      // the inch is 25.4 mm exactly (yard and pound agreement, 1959)
      expect(Number(inch.tubes[i + 1]![column])).toBeCloseTo(m / 0.0254, 12);
    });
  });
});
