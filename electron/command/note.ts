import { resolve } from 'node:path';
import { compare } from '../../core/options/compare.ts';
import { openDocument } from '../host/open-document.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { chosenOption } from './chosen-option.ts';
import { exitOf } from './check.ts';
import { solvedFor } from './solved-for.ts';
import { optionsOf } from './options-of.ts';
import type { Verb } from './verbs.ts';

const usage = 'note FILE [--out NOTE.pdf] [--option ID] [--solver]';

export const noteVerb: Verb = {
  usage,
  purpose: 'writes the check note of one option as PDF, with the document and the results inside it',
  help: '  --out NOTE.pdf   where to write it, note.pdf by default; an older note there is replaced only when the new one is complete\n  --option ID      the option; by default the chosen one\n  --solver         with the forces of the whole plate solved as well, though the document does not ask for them\n\nThe note is stamped NOT ISSUED. It is an archive PDF (PDF/A-3 subset, tagged); conformance is not verified here.\n\nExample: stillplate note samples/middle.stillplate.json --out middle.pdf',
  run: async (args, on) => {
    const { values, file } = optionsOf(
      args,
      { out: { type: 'string', default: 'note.pdf' }, option: { type: 'string' }, solver: { type: 'boolean' } },
      usage,
      1,
    );
    const { raw, document, bytes } = await openDocument(resolve(on.folder, file));
    const option = chosenOption(document, values.option);
    const comparison = compare(raw, document, null, (id) => solvedFor(raw, document, id, values.solver ?? false, on));
    const appraisal = comparison.appraisals.find(({ optionId }) => optionId === option)!;
    // Only this command needs fonts and the PDF library: the others start faster without.
    const [{ checkNote }, { writeNote }, { unprintable }] = await Promise.all([
      import('../../core/note/check-note.ts'),
      import('../host/note/write-note.ts'),
      import('../host/note/unprintable.ts'),
    ]);
    const note = checkNote(raw, appraisal, comparison, bytes);
    await writeFileWhole(resolve(on.folder, values.out), await writeNote(note));
    on.out(`Wrote ${values.out}: ${appraisal.optionTitle}.`);
    const missing = unprintable(note);
    if (missing.length > 0)
      on.err(`No font here has these characters, the note shows a box for each and lists them: ${missing.join(' ')}`);
    return exitOf(appraisal);
  },
};
