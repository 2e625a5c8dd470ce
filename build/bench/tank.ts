import { csvParseRows } from 'd3-dsv';
import { firstLook } from '../../core/note/first-look.ts';
import { tankSection } from '../../core/note/tank-section.ts';
import { testsField } from '../../core/document/tests-field.ts';
import { printIn } from '../../core/print-in.ts';
import { readTable } from '../../core/record/read-table.ts';
import { reducedTest } from '../../core/tank/reduced-test.ts';
import { tankSetupOf } from '../../core/tank/tank-setup-of.ts';
import { normal } from '../../tests/tank/normal.ts';
import { interleaved } from './interleaved.ts';
import type { Measure } from './measure.ts';
import { motionBench } from './motion.ts';

const rows = 1_000_000;

/** A record of a million rows from its text to the picture of the fit, over reading and parsing it alone with the parser that is kept (d3-dsv and Number). */
export function bench(): readonly Measure[] {
  const text = recordOf(rows);
  const [test] = testsField.parse({
    tank: [
      {
        ...{ id: 'T', title: 'T', record: { name: 'T.csv', hash: '0'.repeat(64), bytes: text.length } },
        setup: { mass: '1460 kg', volume: '0.186 m^3', area: '8.4 m^2', density: '1024 kg/m^3' },
      },
    ],
  }).tank;
  const print = printIn('metric');
  const times = interleaved(
    {
      parse: () => csvParseRows(text).map((row) => row.map(Number)).length,
      whole: () => {
        const table = readTable(text);
        const reduced = reducedTest(table, test!);
        return [firstLook(table, reduced.recording, print), tankSection(reduced, tankSetupOf(test!), print)];
      },
    },
    3,
  );
  const ratio = times.whole / times.parse;
  return [
    {
      name: 'tank test of a million rows, from its text to the picture of the fit, over parsing it alone',
      ...{ ratio, goal: 3, met: ratio <= 3, milliseconds: times.whole },
    },
    ...motionBench(),
  ];
}

/** A plate driven at 8 s and at 10 s in turn, ten readings a second. */
export function recordOf(n: number): string {
  const random = normal(1);
  const lines = ['time (s),travel (m),force (N)'];
  for (let i = 0; i < n; i++) {
    const t = i / 10;
    const w = (2 * Math.PI) / (Math.floor(t / 800) % 2 === 0 ? 8 : 10);
    const [z, v] = [0.5 * Math.sin(w * t), 0.5 * w * Math.cos(w * t)];
    const F = 12_450 - 18_960 * w * w * z + 0.5 * 1024 * 8.4 * 6.8 * v * Math.abs(v);
    lines.push(`${t.toFixed(1)},${(z + 0.0015 * random()).toFixed(4)},${(F + 60 * random()).toFixed(1)}`);
  }
  return lines.join('\n');
}
