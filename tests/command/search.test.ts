import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { inFolder } from './in-folder.ts';
import { ran } from './ran.ts';

it('asks what the document’s own “search” says, and what is typed before that', () =>
  inFolder(async (folder) => {
    const sample = JSON.parse(await readFile('samples/small.stillplate.json', 'utf8')) as object;
    const search = { aims: ['weight'], thickness: ['6 mm', '8 mm', '10 mm'], aside: ['fatigue'], lift: '900 kg' };
    await writeFile(join(folder, 'own.stillplate.json'), JSON.stringify({ ...sample, chosen: null, search }));
    const asked = async (...words: string[]) => {
      const { out, err } = await ran(['search', 'own.stillplate.json', '--json', ...words], folder);
      expect(err).toBe('');
      const { aims, aside, options } = JSON.parse(out) as Record<string, unknown>;
      return { aims, aside, options };
    };
    expect(await asked()).toEqual({ aims: ['weight'], aside: ['fatigue'], options: 3 });
    expect(await asked('--thickness', '8mm', '--aims', 'mass')).toEqual({ aims: ['mass'], aside: ['fatigue'], options: 1 }); // prettier-ignore
  }));

it('an option that leaves checks open puts none aside that leaves none: both are shown, and with --judged what is judged alone', () =>
  inFolder(async (folder) => {
    await writeFile(join(folder, 'middle.stillplate.json'), await readFile('samples/middle.stillplate.json', 'utf8'));
    const asked = ['search', 'middle.stillplate.json', '--zones', 'all', '--aims', 'mass', '--thickness', '8mm', '--material', 'S355 plate,5083-H116']; // prettier-ignore
    const open = await ran(asked, folder);
    expect(open.out).toMatch(/CANNOT BE JUDGED in what is found: .*Slip under reversing shear/);
    expect(open.out).toMatch(/8mm, 5083-H116/);
    expect(open.out).toMatch(/8mm, S355 plate/);
    const judged = await ran([...asked, '--judged'], folder);
    expect(judged.out).toMatch(/8mm, S355 plate/);
    expect(judged.out).not.toMatch(/CANNOT BE JUDGED/);
  }));
