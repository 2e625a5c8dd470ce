import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { Result } from '../../core/result.ts';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

/** The small sample without panels and options: solved in a moment. */
const bare = async (folder: string, forces: object | undefined): Promise<string> => {
  const raw = JSON.parse(await readFile('samples/small.stillplate.json', 'utf8')) as Record<string, unknown>;
  const path = join(folder, 'plate.stillplate.json');
  await writeFile(
    path,
    JSON.stringify({ ...raw, panels: {}, options: [], chosen: null, ...(forces ? { forces } : {}) }),
  );
  return path;
};

it('check, compare, fatigue and note solve the plate first where the document says so, and say so on stderr', () =>
  inFolder(async (folder) => {
    const path = await bare(folder, { from: 'hand and solver' });
    const { out, err } = await ran(['check', path, '--json', '--every']);
    expect(err).toMatch(/Solving the whole plate of “base”/);
    expect(err).toMatch(/Service, force of the water up/);
    const { checks, solver } = JSON.parse(out) as Result;
    expect(solver!.residual).toBeLessThan(1e-9);
    const row = checks.find(({ id, loadCase }) => id === 'tube-bending' && loadCase === 'service')!;
    const { hand, solver: by, governs } = row.forces!;
    expect(hand.demand).toBeGreaterThan(0);
    expect(by.demand).toBeGreaterThan(0);
    expect(row.demand).toBe(row.forces![governs].demand);
    expect(row.utilisation).toBe(Math.max(hand.utilisation!, by.utilisation!));

    const text = await ran(['check', path]);
    expect(text.out).toMatch(/Forces by hand and of the whole plate: \d+ demands are made of both/);
    expect((await ran(['compare', path])).err).toMatch(/Solving the whole plate of “base”/);
    const fatigue = await ran(['fatigue', path]);
    expect(fatigue.err).toMatch(/Solving the whole plate of “base”/);
    expect(fatigue.out).not.toMatch(/NOT JUDGED/);
    const note = await ran(['note', path, '--out', 'n.pdf'], folder);
    expect(note.err).toMatch(/Solving the whole plate of “base”/);
  }));

it('--solver does it for one run: the document keeps its forces by hand, and the print says so', () =>
  inFolder(async (folder) => {
    const path = await bare(folder, undefined);
    const before = await readFile(path, 'utf8');
    const byHand = await ran(['check', path, '--json']);
    expect([byHand.err, (JSON.parse(byHand.out) as Result).solver]).toEqual(['', undefined]);
    const { out } = await ran(['check', path, '--solver']);
    expect(out).toMatch(/for this run: the document takes its forces by hand/);
    const once = await ran(['fatigue', path, '--solver', '--json']);
    expect(once.err).toMatch(/Solving the whole plate/);
    const damages = (text: string) => (JSON.parse(text) as { details: { damage: number }[] }).details.map(({ damage }) => damage); // prettier-ignore
    expect(Math.max(...damages(once.out))).toBeGreaterThanOrEqual(Math.max(...damages((await ran(['fatigue', path, '--json'])).out))); // prettier-ignore
    expect(await readFile(path, 'utf8')).toBe(before);
  }));
