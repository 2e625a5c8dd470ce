import { describe, expect, it } from 'vitest';
import { readRecording, type Wanted } from '../../core/record/read-recording.ts';
import { readTable } from '../../core/record/read-table.ts';
import { secondsOf } from '../../core/record/time-text.ts';

const travel: Wanted = { name: 'travel', alsoCalled: ['stroke'], kind: 'length' };
const force: Wanted = { name: 'force', alsoCalled: ['load'], kind: 'force' };
const read = (text: string, wanted: readonly Wanted[] = [travel, force]) => readRecording(readTable(text), wanted);
const values = (text: string): number[][] => {
  const { time, channels } = read(text);
  return [[...time], ...channels.map((channel) => [...channel.values])];
};

describe('a record, however it is laid out', () => {
  const wanted = [[0, 0.5, 1], [0.25, 0.26, -0.1], [1200, 1250, 1300]]; // prettier-ignore
  it.each([
    ['comma, header with units', 'time (s),travel (m),force (N)\n0,0.25,1200\n0.5,0.26,1250\n1,-0.1,1300\n'],
    ['semicolon and decimal comma', 'time;travel;force\n0;0,25;1200\n0,5;0,26;1250\n1;-0,1;1300\n'],
    ['tab, other units', 'time [s]\ttravel [mm]\tforce [kN]\r\n0\t250\t1.2\r\n0.5\t260\t1.25\r\n1\t-100\t1.3\r\n'],
    ['no header', '0,0.25,1200\n0.5,0.26,1250\n1,-0.1,1300'],
    [
      'columns the other way round, a comment, empty lines',
      '# rig 2\n\nload (N),clock,stroke (m)\n1200,10:00:00,0.25\n\n1250,10:00:00.5,0.26\n1300,10:00:01,-0.1\n',
    ],
    [
      'a line of units under the names, quotes',
      '"time","travel","force"\n"s","mm","kN"\n"0","250","1.2"\n"0.5","260","1.25"\n"1","-100","1.3"\n',
    ],
    [
      'a title above, a mark for the order of bytes',
      '\uFEFFTest 12 of the closed plate\ntime, s;travel, m;force, N\n0;0.25;1200\n0.5;0.26;1250\n1;-0.1;1300\n',
    ],
    [
      'dates',
      'time,travel,force\n2026-03-01T10:00:00Z,0.25,1200\n2026-03-01T11:00:00.5+01:00,0.26,1250\n2026-03-01 10:00:01Z,-0.1,1300\n',
    ],
  ])('%s', (_, text) => {
    values(text).forEach((column, i) => column.forEach((value, k) => expect(value).toBeCloseTo(wanted[i]![k]!, 9)));
  });

  it('goes on past midnight on a clock', () => {
    expect(read('time,travel,force\n23:59:59,0,1\n00:00:00,0,1\n00:00:01.5,0,1\n').time).toEqual(
      Float64Array.of(0, 1, 2.5),
    );
  });

  it('keeps bad rows out, with line and reason, and finds the gap', () => {
    const { time, bad, gaps } = read(
      'time,travel,force\n0,0,1\n0.1,0,1\n0.1,0,1\n0.05,0,1\n0.2,,1\n0.3,x,1\n0.4,0\n?,0,1\n0.5,0,1\n0.6,0,1\n0.7,0,NaN\n0.8,0,1\n',
    );
    expect([...time]).toEqual([0, 0.1, 0.5, 0.6, 0.8]);
    expect(bad).toEqual([
      { line: 4, why: 'tells the same time as the row before' },
      { line: 5, why: 'goes back in time' },
      { line: 6, why: 'travel is empty' },
      { line: 7, why: 'travel: “x” is no number' },
      { line: 8, why: 'has 2 cells, the others 3' },
      { line: 9, why: '“?” is no time as the others are' },
      { line: 12, why: 'force: “NaN” is no number' },
    ]);
    expect(gaps).toEqual([{ from: 0.1, to: 0.5 }, { from: 0.6, to: 0.8 }]); // prettier-ignore
  });

  it('counts lines past a cell that runs over two', () => {
    expect(read('time,travel,force,remark\n0,0,1,"a\nb"\n1,0,1,\n2,x,1,\n3,0,1,\n').bad[0]).toEqual({
      line: 5,
      why: 'travel: “x” is no number',
    });
  });
});

describe('what cannot be a record is refused, with what to do', () => {
  it.each([
    ['', /no rows/],
    ['time,travel\n0,1\n1,1\n2,1\n', /No column is called force: the header has “time”, “travel”/],
    ['time,travel (kg),force\n0,1,1\n1,1,1\n2,1,1\n', /“kg” is no unit of length/],
    ['time,travel (furlong),force\n0,1,1\n1,1,1\n2,1,1\n', /unit “furlong” is not known/],
    ['time,travel,force\n0,1,1\n1,x,1\n2,1,\n', /1 of 3 rows can be read; line 3 travel: “x” is no number/],
    ['0,1\n1,1\n2,1\n', /there is none for force/],
    ['__proto__,constructor\n0,1\n', /No column is called time/],
  ])('%j', (text, error) => expect(() => read(text)).toThrow(error));
});

it('takes no day, hour or minute that does not exist', () => {
  for (const text of ['2026-02-30T10:00:00Z', '2026-02-01T24:00:00Z', '2026-13-01T10:00:00Z'])
    expect(secondsOf(text, 'date and time', '.')).toBeUndefined();
  expect(secondsOf('25:00:00', 'clock', '.')).toBeUndefined();
  // ISO 8601: one hour east of UTC is one hour earlier
  expect(secondsOf('1970-01-01T01:00:00+01:00', 'date and time', '.')).toBe(0);
  // Unix time of the first second of 2000, 2024-02-29 and 2100-03-01 (general reference: JavaScript's own calendar)
  for (const day of ['2000-01-01', '2024-02-29', '2100-03-01', '1969-12-31'])
    expect(secondsOf(`${day}T00:00:00Z`, 'date and time', '.')).toBe(Date.parse(`${day}T00:00:00Z`) / 1000);
});
