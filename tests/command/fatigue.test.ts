import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { startingDocument } from '../../core/document/starting-document.ts';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

interface Counted {
  readonly schema: string;
  readonly curve: string;
  readonly environment: string;
  readonly source: string;
  readonly unit: string;
  readonly cycles: readonly { readonly range: number; readonly mean: number; readonly count: number }[];
  readonly damage: number;
}

const example = '-2\n1\n-3\n5\n-1\n3\n-4\n4\n-2\n';

const counted = (text: string, ...args: readonly string[]) =>
  inFolder(async (folder) => {
    await writeFile(join(folder, 'record.csv'), text);
    return ran(['fatigue', 'record.csv', ...args], folder);
  });

describe('fatigue RECORD.csv', () => {
  it('gives ASTM E1049’s example in MPa, with a header or none (5.4.4; numbers of the table from memory)', async () => {
    for (const text of [example, `stress\n${example}`]) {
      const { code, out, err } = await counted(text, '--curve', 'W3', '--environment', 'free', '--json');
      expect([code, err]).toEqual([0, '']);
      const { cycles, damage, ...said } = JSON.parse(out) as Counted;
      expect(cycles).toEqual([
        { range: 3, mean: -0.5, count: 0.5 },
        { range: 4, mean: -1, count: 0.5 },
        { range: 4, mean: 1, count: 1 },
        { range: 6, mean: 1, count: 0.5 },
        { range: 8, mean: 0, count: 0.5 },
        { range: 8, mean: 1, count: 0.5 },
        { range: 9, mean: 0.5, count: 0.5 },
      ]);
      // Σ n r³ = 1094, log a = 10.493 (DNV-RP-C203, Table 2-4)
      expect(damage / (1094 / 10 ** 10.493)).toBeCloseTo(1, 9);
      expect(said).toMatchObject({ schema: 'stillplate-result/1', curve: 'W3', environment: 'free', unit: 'MPa' });
      expect(said.source).toMatch(/DNV-RP-C203:2016, Table 2-4, class W3/);
    }
  });

  it('raises the ranges of a thick part: 50 mm of class F, 2^(3 · 0.25) = 1.682 times the damage', async () => {
    const of = async (...more: string[]) =>
      (JSON.parse((await counted(example, '--curve', 'F', '--environment', 'free', '--json', ...more)).out) as Counted)
        .damage;
    expect((await of('--thickness', '50mm')) / (await of())).toBeCloseTo(1.6818, 4);
    expect(await of('--thickness', '10mm')).toBe(await of());
  });

  it('says in words what it counted, and that it is no approval', async () => {
    const { out } = await counted(example, '--curve', '90', '--environment', 'air');
    expect(out).toMatch(/9 values, 4 cycles by rainflow/);
    expect(out).toMatch(/No approval/);
  });

  it.each([
    [['--environment', 'air'], /S-N curve is missing/],
    [['--curve', 'D'], /environment is missing.*air, protected or free/],
    [['--curve', 'D', '--environment', 'sea'], /“sea” is no environment/],
    [['--curve', 'Z', '--environment', 'air'], /No S-N curve “Z” is held/],
    [['--curve', '90', '--environment', 'protected'], /holds in air, not in seawater/],
    [['--curve', 'D', '--environment', 'air', '--thickness', '25kg'], /thickness/],
    [['--curve', 'D', '--environment', 'air', '--thickness', '0mm'], /must be more than zero/],
    [['--curve', 'D', '--environment', 'air', '--option', 'base'], /not for a record/],
  ])('refuses %j', async (args, words) => {
    const { code, out, err } = await counted(example, ...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(words);
  });

  it('refuses a bad row by its number, a record of one value, and a file that is not there', async () => {
    const given = ['--curve', 'D', '--environment', 'air'] as const;
    expect((await counted('stress\n1\n2\nthree\n', ...given)).err).toMatch(
      /row 4.*Row 4 of the record is no number: “three”/,
    );
    expect((await counted('1\n', ...given)).err).toMatch(/one value, and a cycle needs two/);
    const { code, err } = await ran(['fatigue', 'nowhere.csv', ...given]);
    expect(code).toBe(2);
    expect(err).toMatch(/There is no such file/);
  });
});

describe('fatigue DOC.stillplate', () => {
  const plate = (args: readonly string[], fatigue?: unknown) =>
    inFolder(async (folder) => {
      await writeFile(
        join(folder, 'plate.stillplate'),
        JSON.stringify({ ...(startingDocument('metric') as object), fatigue }),
      );
      return ran(['fatigue', 'plate.stillplate', ...args], folder);
    });

  interface Life {
    readonly factor: { readonly value: number };
    readonly environment: { readonly name: string };
    readonly details: readonly {
      readonly id: string;
      readonly place: string;
      readonly verdict: string;
      readonly damage: number | null;
      readonly life: number | null;
      readonly leads: boolean;
      readonly mend: string;
    }[];
  }

  it('gives damage and life of each detail, the gravest first, and what to change', async () => {
    const { code, out } = await plate(['--json'], { access: 'under water', consequence: 'substantial' });
    const { details, factor } = JSON.parse(out) as Life;
    expect(factor.value).toBe(3);
    expect(code).toBe(1);
    expect(details.length).toBeGreaterThan(10);
    for (const { damage, life, verdict, mend } of details) {
      expect(mend).not.toBe('');
      if (damage === null) expect(verdict).toBe('cannot be judged');
      else expect(damage <= 1 / 3).toBe(verdict === 'passes');
      if (damage) expect(life! > 0).toBe(true);
    }
    const text = await plate([]);
    expect(text.out).toMatch(
      /Design fatigue factor 10: no access for inspection, substantial consequence, taken where/,
    );
    expect(text.out).toMatch(/To change: /);
  });

  it('a hundredth of the swing lives longer than all of it', async () => {
    const loading = (range: string) => ({ loading: { kind: 'stated', range, cyclesPerYear: 4e6, source: 'invented' } });
    const lives = async (range: string) =>
      new Map(
        (JSON.parse((await plate(['--json'], loading(range))).out) as Life).details.map(({ id, place, life }) => [
          `${id} ${place}`,
          life,
        ]),
      );
    const [large, small] = [await lives('100 kN'), await lives('1 kN')];
    let compared = 0;
    for (const [at, life] of large) {
      if (life === null) continue;
      expect(small.get(at), at).toBeGreaterThan(life);
      compared++;
    }
    expect(compared).toBeGreaterThan(5);
  });

  it('is a document whatever its name, if it is JSON', () =>
    inFolder(async (folder) => {
      await writeFile(join(folder, 'plate.json'), JSON.stringify(startingDocument('metric')));
      const { out, err } = await ran(['fatigue', 'plate.json', '--json'], folder);
      expect(err).toBe('');
      expect((JSON.parse(out) as Life).details.length).toBeGreaterThan(10);
    }));

  it('refuses a curve for a document', async () => {
    const { code, err } = await plate(['--curve', 'D']);
    expect(code).toBe(2);
    expect(err).toMatch(/“--curve” is not for a document/);
  });
});
