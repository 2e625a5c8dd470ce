import { resolve } from 'node:path';
import { refusal } from '../../core/refusal.ts';
import { startingDocument } from '../../core/document/starting-document.ts';
import { writeNewFile } from '../host/write-new-file.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'new FILE [--units metric|inch]';

export const newVerb: Verb = {
  usage,
  purpose: 'writes a small document to start from; edit it with any text editor',
  help: '  --units metric|inch   units of the values and of every print; metric by default\n\nWrites a complete small document whose every value is yours to change. A file that is already there is never overwritten.\nQuantities are text with a unit: "10 mm", "3/8 in", "300 lbf", "40 ksi", "1.2 t".\n\nExample: stillplate new plate.stillplate --units metric',
  run: async (args, on) => {
    const { values, file } = optionsOf(args, { units: { type: 'string' } }, usage, 1);
    const units = values.units ?? 'metric';
    if (units !== 'metric' && units !== 'inch')
      throw refusal({
        what: `“${units}” is no system of units`,
        where: { option: '--units' },
        mend: 'Write metric or inch.',
      });
    const path = resolve(on.folder, file);
    const text = `${JSON.stringify(startingDocument(units), null, 2)}\n`;
    if (!(await writeNewFile(path, text)))
      throw refusal({
        what: 'There is a file of this name already',
        where: { file },
        mend: 'Choose another name; nothing was changed.',
      });
    on.out(`Wrote ${file}. Next: stillplate check ${file}`);
    return exit.passes;
  },
};
