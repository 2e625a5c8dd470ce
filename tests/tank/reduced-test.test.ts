import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { testsField, type TankTest } from '../../core/document/tests-field.ts';
import { readTable } from '../../core/record/read-table.ts';
import { acceptedResult } from '../../core/tank/accepted-result.ts';
import { conditioned } from '../../core/tank/conditioned.ts';
import { reducedTest, testRecording } from '../../core/tank/reduced-test.ts';
import { testKey } from '../../core/tank/test-key.ts';

// The invented plate of build/make-tank-records.mjs, whose truth stands in samples/tank.truth.json.
const truth = (JSON.parse(readFileSync('samples/tank.truth.json', 'utf8')) as { records: { closed: { addedMass: number; dragCoefficient: number } } }).records.closed; // prettier-ignore
const text = readFileSync('samples/tank-closed.csv', 'utf8');
const given = (change: object = {}) => ({
  id: 'closed',
  title: 'Closed grid',
  record: { name: 'tank-closed.csv', hash: 'a'.repeat(64), bytes: text.length },
  setup: { mass: '1460 kg', volume: '0.186 m^3', area: '8.4 m^2', density: '1024 kg/m^3' },
  ...change,
});
const test = (change: object = {}): TankTest => testsField.parse({ tank: [given(change)] }).tank[0]!;
const reduced = (change: object = {}, file = text) => reducedTest(readTable(file), test(change));

/** The record with each row written anew. */
const rewritten = (row: (t: number, z: number, F: number) => readonly number[]): string =>
  ['a,b,c', ...text.trim().split('\n').slice(1).map((line) => row(...(line.split(',').map(Number) as [number, number, number])).join(','))].join('\n'); // prettier-ignore
const inOrder = { time: 1, travel: 2, force: 3 };

describe('a test with its settings', () => {
  const plain = reduced();

  it('finds the truth that the record was made from within its interval', () => {
    const { addedMass, dragCoefficient } = plain.result;
    expect(addedMass.low).toBeLessThan(truth.addedMass);
    expect(addedMass.high).toBeGreaterThan(truth.addedMass);
    expect(dragCoefficient.low).toBeLessThan(truth.dragCoefficient);
    expect(dragCoefficient.high).toBeGreaterThan(truth.dragCoefficient);
    expect(plain.steps.join(' ')).toMatch(/Whole cycles: \d+ in 3 runs/);
  });

  it('gives the same of a record in other columns, units, signs, factors and zero, once they are stated', () => {
    // time in ms, travel in mm downwards and 2 % short, force in kN as a push, 250 N off its zero
    const file = rewritten((t, z, F) => [-(F + 250) / 1000, 1000 * t, (-1000 * z) / 1.02]);
    const { result, steps } = reduced(
      {
        reading: { time: 2, travel: 3, force: 1, timeUnit: 'ms', travelUnit: 'mm', forceUnit: 'kN', travelUp: 'down', forcePositive: 'pushes' }, // prettier-ignore
        conditioning: { travelFactor: 1.02, forceZero: '-250 N', source: 'calibration sheet 7' },
      },
      file,
    );
    expect(result.addedMass.value / plain.result.addedMass.value).toBeCloseTo(1, 9);
    expect(result.dragCoefficient.value / plain.result.dragCoefficient.value).toBeCloseTo(1, 9);
    expect(steps).toEqual(expect.arrayContaining([expect.stringMatching(/turned round/), expect.stringMatching(/1.02/), 'Known from: calibration sheet 7.'])); // prettier-ignore
  });

  it('takes back a force that is read late, and the drag comes back', () => {
    // rows 0.1 s apart: the force of the row before stands in each row
    let last = 0;
    const late = rewritten((t, z, F) => [t, z, [last, (last = F)][0]!]);
    const asRead = reduced({ reading: inOrder }, late).result.dragCoefficient.value;
    const back = reduced({ reading: inOrder, conditioning: { forceLate: '0.1 s' } }, late).result;
    expect(Math.abs(asRead / truth.dragCoefficient - 1)).toBeGreaterThan(0.05);
    expect(back.dragCoefficient.value / plain.result.dragCoefficient.value).toBeCloseTo(1, 4);
  });

  it('leaves out what is trimmed, says how much, and refuses a trim that leaves nothing', () => {
    const part = reduced({ conditioning: { from: '80 s', to: '190 s' } });
    expect(part.result.runs.length).toBe(1);
    expect(part.steps[0]).toMatch(/readings are left out: before 80\.00 s or after 190\.0 s/);
    expect(() => reduced({ conditioning: { from: '9000 s' } })).toThrow(/0 lie in the part that is taken/);
  });

  it('makes up no force in a gap', () => {
    const gap = text.split('\n').filter((line) => !(Number(line.split(',')[0]) > 40 && Number(line.split(',')[0]) < 43)); // prettier-ignore
    const made = conditioned(testRecording(readTable(gap.join('\n')), test()), test({ conditioning: { forceLate: '0.05 s' } })); // prettier-ignore
    expect(made.steps[0]).toMatch(/2 readings at the end or beside a gap/);
  });
});

describe('what a document keeps of an accepted test', () => {
  const settings = test();
  const result = acceptedResult(settings, reduced(), '0.0.0');

  it('is read again by the schema, with the key of its record and settings', () => {
    const [kept] = testsField.parse({ tank: [given({ result })] }).tank;
    expect(kept!.result!.key).toBe(testKey(kept!));
    expect(kept!.result!.runs).toHaveLength(3);
    expect(kept!.result!.overlay.time.length).toBeGreaterThan(100);
    expect(kept!.result!.overlay.time.length).toBe(kept!.result!.overlay.modelled.length);
  });

  it('has another key when a setting or the record changes, and none of the title', () => {
    const key = testKey(settings);
    expect(testKey(test({ title: 'Another' }))).toBe(key);
    expect(testKey(test({ conditioning: { from: '1 s' } }))).not.toBe(key);
    expect(testKey(test({ record: { ...settings.record, hash: 'b'.repeat(64) } }))).not.toBe(key);
  });

  it('is refused where a value lies outside its interval', () => {
    const wrong = { ...result, dragCoefficient: { value: 9, low: 1, high: 2 } };
    expect(JSON.stringify(testsField.safeParse({ tank: [given({ result: wrong })] }).error?.issues)).toMatch(/outside its interval/); // prettier-ignore
  });
});
