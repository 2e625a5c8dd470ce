import { resolve } from 'node:path';
import { resultOf } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { noted } from '../host/note/noted.ts';
import { openBytes } from './open-bytes.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'verify NOTE.pdf [--document FILE] [--json]';

export const verifyVerb: Verb = {
  usage,
  purpose: 'makes a note anew from the document inside it and names every printed number that does not come out again',
  help: [
    '  --document FILE  the document that the note is said to be of: the fields in which it differs from the one inside',
    '  --json           the whole report as one object (schema stillplate-verify/1)',
    '',
    'The same version of the program gives the same file byte for byte on a machine of the same arithmetic (a note made',
    'in the window comes from a browser, whose last bits may differ). Otherwise it is compared number by number: results',
    'within 1e-6, and a printed number that differs by one unit of its last digit is told, not counted.',
    'Signatures are read back: what each covers, its certificate, its time. Whom to trust is for you to decide.',
    'Exit code 0: all comes out again. 1: something differs, and each difference is named.',
    '',
    'Example: stillplate verify middle.pdf',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, { document: { type: 'string' }, json: { type: 'boolean' } }, usage, 1);
    const bytes = await openBytes(resolve(on.folder, file));
    const against = values.document === undefined ? undefined : await openDocument(resolve(on.folder, values.document));
    const { verifyNote } = await import('../host/verify/verify-note.ts');
    const report = await verifyNote(
      bytes,
      async (opened, how) => {
        const { pdf, appraisal } = await noted(opened, how, on);
        return { pdf, result: resultOf(appraisal, { every: true }) };
      },
      against,
    );
    const code = report.differs.length === 0 ? exit.passes : exit.failsOrUnjudged;
    if (values.json) {
      on.out(JSON.stringify(report, null, 2));
      return code;
    }
    const { documentHash, madeBy, verifiedBy, sameBytes, pages, signatures, tolerance, roundedOtherwise, differs } =
      report;
    on.out(`Document ${documentHash}, note of Stillplate ${madeBy}, made anew by ${verifiedBy}`);
    for (const { signer, role, issuer, claimed, stamp, subFilter, covers, faults, remarks } of signatures)
      on.out(`  Signature of ${signer}${role === null ? '' : ` as ${role}`} (certificate by ${issuer}), ${claimed}${stamp ? ` (stamped at ${stamp.time} by ${stamp.by}, certificate by ${stamp.issuer})` : ''}, ${subFilter}, covers ${covers} of ${bytes.length} bytes: ${faults.length === 0 ? 'stands' : 'DOES NOT STAND'}; ${remarks.join('; ')}`); // prettier-ignore
    if (differs.length === 0)
      on.out(sameBytes ? `Every number on ${pages} pages comes out again: the file is the same byte for byte.` : `Every number on ${pages} pages comes out again, results within ${tolerance}.`); // prettier-ignore
    for (const { page, printed, recomputed } of roundedOtherwise)
      on.out(`  Rounded otherwise on page ${page}: “${printed}”, here “${recomputed}”`);
    for (const text of differs) on.out(`  DIFFERS: ${text}`);
    return code;
  },
};
