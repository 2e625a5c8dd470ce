import { describe, expect, it } from 'vitest';
import { changesTable } from '../../../core/plate/results/changes-between.ts';
import { changeWords } from '../../../core/plate/results/change-words.ts';
import { deflections } from '../../../core/plate/results/deflections.ts';
import { splitParts } from '../../../core/plate/results/deflection-split.ts';
import { loadPath } from '../../../core/plate/results/load-path.ts';
import { whatChanged, type SolvedOption } from '../../../core/plate/results/what-changed.ts';
import type { ReadyPlate } from '../../../core/plate/solve-plate.ts';
import { changedPlate } from './support/level-plate.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';
import { withStifferBeams } from './support/with-stiffer-beams.ts';

const model = sampleModel('small');
const option = (plate: ReadyPlate, situation = 'service-down'): SolvedOption => ({
  plate,
  solved: solvedLoading(plate, situation),
});
describe('the same load on main tubes of half the stiffness', () => {
  const before = option(changedPlate(model, 0.2, (s) => s));
  const after = option(changedPlate(model, 0.2, (s) => withStifferBeams(s, 0.5, (set) => set === 'main')));
  const change = whatChanged(before, after);

  it('is told as the main tubes’ doing, and the changes of the parts sum to that of the rise', () => {
    expect(change.load.same).toBe(true);
    for (const { rise, parts } of change.places) {
      const sum = splitParts.reduce((total, part) => total + parts[part].change, 0);
      expect(Math.abs(sum - (rise.after - rise.before))).toBeLessThan(1e-9 * Math.abs(rise.before));
    }
    const { parts } = change.places[0]!;
    const most = splitParts.reduce((a, b) => (Math.abs(parts[b].change) > Math.abs(parts[a].change) ? b : a));
    expect(most).toBe('main tubes');
    // a determinate frame would have a factor of two; panels take a part of what the tubes give up
    const factor = parts['main tubes'].after / parts['main tubes'].before;
    expect(factor).toBeGreaterThan(1.3);
    expect(factor).toBeLessThan(2);
  });

  it('is said in sentences with the document’s units, main tubes before all other parts', () => {
    const words = changeWords(change, 'metric');
    const of = (start: string) => words.findIndex((line) => line.startsWith(start));
    expect(of('The two do not carry the same load')).toBe(-1);
    expect(of('Largest deflection: ')).toBeLessThan(of('Main tubes: '));
    for (const other of ['Cross tubes: ', 'Bolts: ', 'Panels in bending: '])
      if (of(other) >= 0) expect(of('Main tubes: ')).toBeLessThan(of(other));
    expect(words.join(' ')).toContain(' mm');
    expect(changeWords(change, 'inch').join(' ')).toContain(' in');
    expect(words.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('tells the panels’ own dip and the way of the load beside it, before and now', () => {
    const told = (of: SolvedOption) => deflections(of.plate, of.solved).panels.map(({ dip }) => Math.abs(dip!.rise));
    for (const [when, of] of [
      ['before', before],
      ['after', after],
    ] as const) {
      // prettier-ignore
      expect(Math.abs(change.dip[when]!.rise)).toBe(Math.max(...told(of)));
      expect(change.path[when]).toEqual(loadPath(of.plate, of.solved));
    }
    const words = changeWords(change, 'metric').join(' ');
    expect(words).toMatch(/Panels between their tubes.* dip most: A\d by .* mm before, A\d by .* mm now/);
    // main tubes that give way more take less from the panels
    expect(change.path.after.toMainTubes.all).toBeLessThan(change.path.before.toMainTubes.all);
    expect(words).toContain('% from panels to main tubes');
  });
});

it('as a table: the parts of each place sum to the rise’s change', () => {
  const before = option(changedPlate(model, 0.2, (s) => s));
  const after = option(changedPlate(model, 0.2, (s) => withStifferBeams(s, 2, () => true)));
  const changed = whatChanged(before, after);
  const { name, text } = changesTable([{ situation: 'service-down', title: '', loading: 'even', variant: 0, changed }]);
  expect(name).toBe('what-changed.csv');
  const rows = text.trim().split('\r\n').slice(1).map((line) => line.split(',')); // prettier-ignore
  expect(rows).toHaveLength(changed.places.length * (1 + splitParts.length));
  const [rise, ...parts] = rows.slice(0, 1 + splitParts.length).map((row) => Number(row.at(-1)));
  expect(parts.reduce((sum, part) => sum + part, 0) / rise!).toBeCloseTo(1, 9);
});

describe('with the panels taken off', () => {
  const with3 = option(ready(model, 0.2));
  const bare = option(ready(model, 0.2, new Set(['A1', 'A2', 'A3'])));
  const change = whatChanged(with3, bare);

  it('says first that the place moved off the panel, then that the load is not the same', () => {
    expect(change.moved).toBe(true);
    expect(change.load.same).toBe(false);
    expect(change.places.map(({ of }) => of)).toEqual(['after', 'before']);
    const [first, second] = changeWords(change, 'metric');
    expect(first).toMatch(/^The largest deflection moved from panel A2 .* to main tube [AB] /);
    expect(second).toMatch(/^The two do not carry the same load/);
  });

  it('reads the option that has no panel there at the nearest point of a tube, and says so', () => {
    const was = change.places[1]!;
    expect(was.point.before.part).toBe('panel');
    expect(was.point.after.part).not.toBe('panel');
    expect(was.apart).toBeGreaterThan(0.2);
    const words = changeWords(change, 'metric');
    const told = words.findIndex((line) => line.startsWith('Where it was, at panel A2'));
    expect(words[told + 1]).toMatch(/^The other option is read at its nearest point, (main|cross) tube/);
    expect(was.parts['panels in bending'].after).toBe(0);
  });
});
