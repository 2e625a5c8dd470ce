import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { mergedFindings } from '../../core/merged-findings.ts';
import { openDocument } from '../host/open-document.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'validate FILE';

export const validateVerb: Verb = {
  usage,
  purpose: 'reads a document and says everything that is wrong with it, or that nothing is',
  help: 'Reads the document and builds each of its options. Every wrong field is named with its path, what was given, and how to mend it.\nNothing is changed. Findings (what an engineer should look at) are listed; they are no errors.',
  run: async (args, on) => {
    const { file } = optionsOf(args, {}, usage, 1);
    const { raw, document } = await openDocument(resolve(on.folder, file));
    for (const option of [null, ...document.options.map(({ id }) => id)]) {
      const { findings, optionTitle } = appraise(raw, document, option);
      on.out(`${optionTitle}: can be built, ${findings.length === 0 ? 'no findings' : `${findings.length} findings`}`);
      for (const { places, text, mend } of mergedFindings(findings)) on.out(`  ${places.join(', ')}: ${text} ${mend}`);
    }
    return exit.passes;
  },
};
