import { resolve } from 'node:path';
import { handbookWords } from '../../core/handbook/texts/words.ts';
import { refusal } from '../../core/refusal.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'handbook [--out HANDBOOK.pdf] [--paper A4|letter]';

export const handbookVerb: Verb = {
  usage,
  purpose: 'writes the handbook as PDF: the first hour, the theory of every check, limits, words of the trade',
  help: [
    '  --out HANDBOOK.pdf   where to write it, handbook.pdf by default',
    '  --paper A4|letter    the paper, A4 by default',
    '',
    'The window has the same text, searchable and beside the plate: press F1 there.',
    '',
    'Example: stillplate handbook --out handbook.pdf',
  ].join('\n'),
  run: async (args, on) => {
    const { values } = optionsOf(
      args,
      { out: { type: 'string', default: 'handbook.pdf' }, paper: { type: 'string', default: 'A4' } },
      usage,
      0,
    );
    const { out, paper } = values;
    if (paper !== 'A4' && paper !== 'letter')
      throw refusal({ what: `There is no paper “${paper}”`, where: { option: '--paper' }, mend: 'Use A4 or letter.' });
    const [{ handbookNote }, { writeNote }] = await Promise.all([
      import('../../core/handbook/handbook-note.ts'),
      import('../host/note/write-note.ts'),
    ]);
    const date = new Date().toISOString().slice(0, 10);
    await writeFileWhole(resolve(on.folder, out), await writeNote(handbookNote(paper, date)));
    on.out(`Wrote ${out}: ${handbookWords.subject.toLowerCase()}.`);
    return exit.passes;
  },
};
