import { resolve } from 'node:path';
import { openDocument } from '../host/open-document.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { chosenOption } from './chosen-option.ts';
import { exitOf } from './check.ts';
import { noted } from '../host/note/noted.ts';
import { openRegister, registerBeside } from './open-register.ts';
import { optionsOf } from './options-of.ts';
import type { Verb } from './verbs.ts';

const usage = 'note FILE [--out NOTE.pdf] [--option ID] [--solver] [--register FILE]';

export const noteVerb: Verb = {
  usage,
  purpose: 'writes the check note of one option as PDF, with the document and the results inside it',
  help: '  --out NOTE.pdf   where to write it, note.pdf by default; an older note there is replaced only when the new one is complete\n  --option ID      the option; by default the chosen one\n  --solver         with the forces of the whole plate solved as well, though the document does not ask for them\n  --register FILE  what was issued; by default plate.register.json beside plate.stillplate, if there is one\n\nThe note is stamped NOT ISSUED unless the register says that this very content was issued.\nIt is an archive PDF (PDF/A-3 subset, tagged); conformance is not verified here.\n\nExample: stillplate note samples/middle.stillplate.json --out middle.pdf',
  run: async (args, on) => {
    const { values, file } = optionsOf(
      args,
      {
        out: { type: 'string', default: 'note.pdf' },
        option: { type: 'string' },
        solver: { type: 'boolean' },
        register: { type: 'string' },
      },
      usage,
      1,
    );
    const path = resolve(on.folder, file);
    const opened = await openDocument(path);
    const option = chosenOption(opened.document, values.option);
    const register = await openRegister(resolve(on.folder, values.register ?? registerBeside(path)));
    const { appraisal, pdf, unprintable } = await noted(opened, { option, solver: values.solver ?? false, register }, on); // prettier-ignore
    await writeFileWhole(resolve(on.folder, values.out), pdf);
    on.out(`Wrote ${values.out}: ${appraisal.optionTitle}.`);
    if (unprintable.length > 0)
      on.err(
        `No font here has these characters, the note shows a box for each and lists them: ${unprintable.join(' ')}`,
      );
    return exitOf(appraisal);
  },
};
