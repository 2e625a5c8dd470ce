import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { mergedFindings } from '../../core/merged-findings.ts';
import { Refusal, refusalLine, type RefusalText } from '../../core/refusal.ts';
import { openDocument } from '../host/open-document.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'validate FILE';

export const validateVerb: Verb = {
  usage,
  purpose: 'reads a document and says everything that is wrong with it, or that nothing is',
  help: 'Reads the document and builds each of its options. Every wrong field is named with its path, what was given, and how to mend it.\nNothing is changed. Findings (what an engineer should look at) are listed; they are no errors.\n\nExample: stillplate validate samples/middle.stillplate.json',
  run: async (args, on) => {
    const { file } = optionsOf(args, {}, usage, 1);
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const wrong = new Map<string, RefusalText>();
    for (const option of [null, ...document.options.map(({ id }) => id)]) {
      try {
        const { findings, optionTitle } = appraise(raw, document, option);
        const merged = mergedFindings(findings);
        on.out(
          `${optionTitle}: can be built, ${merged.length === 0 ? 'no findings' : `${merged.length} finding${merged.length === 1 ? '' : 's'}`}`,
        );
        for (const { places, text, mend } of merged) on.out(`  ${places.join(', ')}: ${text} ${mend}`);
      } catch (error) {
        // The other options are still read: everything that is wrong is told at once.
        if (!(error instanceof Refusal)) throw error;
        for (const text of error.all) wrong.set(refusalLine(text), text);
      }
    }
    const [first, ...more] = wrong.values();
    if (first) throw new Refusal([first, ...more]);
    return exit.passes;
  },
};
