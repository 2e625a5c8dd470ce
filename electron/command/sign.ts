import { resolve } from 'node:path';
import { roles } from '../../core/issue/register.ts';
import { refusal } from '../../core/refusal.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { openBytes } from './open-bytes.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage =
  'sign NOTE.pdf --certificate ID.p12 --password-stdin --role ROLE --out SIGNED.pdf [--at TIME] [--reason TEXT] [--timestamp URL] [--seal FILE]';
const text = { type: 'string' } as const;

export const signVerb: Verb = {
  usage,
  purpose: 'signs a note with a certificate of your own, in the box of your role',
  help: [
    '  --certificate ID.p12  key and certificate (PKCS#12); the key never leaves this machine, nothing is asked of a network without --timestamp',
    '  --password-stdin      its password comes on the standard input; it is neither kept nor printed',
    '  --role ROLE           author, checker or engineer: whose box; in this order, each once, a later one may come alone',
    '  --out SIGNED.pdf      the signed note; what was there before stays byte for byte, so that earlier signatures stand',
    '  --at TIME             2026-03-31T14:00:00Z; now by default',
    '  --reason TEXT         what is signed for',
    '  --timestamp URL       an authority of your own (RFC 3161) is asked to stamp the signature; only a digest is sent to it.',
    '                        Its token must be of this signature and of this question; without this option nobody is asked',
    '  --seal FILE           an image of your seal (PNG, with its alpha channel, or JPEG; at most 2 MB and 4 million pixels),',
    '                        drawn beside the words of the signature, 5 mm high: as high as its line',
    '',
    'The signature follows PAdES baseline B-B, with a time-stamp B-T. It is not by itself a professional seal under local law,',
    'nor is it with an image of one.',
    '',
    'Example: stillplate sign middle.pdf --certificate id.p12 --password-stdin --role engineer --out signed.pdf',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, { certificate: text, 'password-stdin': { type: 'boolean' }, role: text, out: text, at: text, reason: text, timestamp: text, seal: text }, usage, 1); // prettier-ignore
    const mend = `Usage: stillplate ${usage}`;
    const { certificate, out } = values;
    if (certificate === undefined || out === undefined || !values['password-stdin'])
      throw refusal({ what: 'Needed are --certificate, --password-stdin and --out', mend });
    const role = roles.find((name) => name === (values.role === 'engineer' ? 'licensed engineer' : values.role));
    if (!role) throw refusal({ what: `“${values.role ?? ''}” is no role`, where: { option: '--role' }, mend: 'Use author, checker or engineer.' }); // prettier-ignore
    const at = values.at === undefined ? new Date() : new Date(values.at);
    if (Number.isNaN(at.getTime()) || (values.at !== undefined && !/T.*Z$/.test(values.at)))
      throw refusal({ what: `“${values.at}” is no time`, where: { option: '--at' }, mend: 'Write it as 2026-03-31T14:00:00Z.' }); // prettier-ignore
    const note = await openBytes(resolve(on.folder, file));
    const seal = values.seal === undefined ? {} : { seal: await openBytes(resolve(on.folder, values.seal), 2_000_000) };
    const p12 = await openBytes(resolve(on.folder, certificate), 1_000_000);
    const [{ openIdentity }, { nameOf }, { signNote }] = await Promise.all([import('../host/sign/open-identity.ts'), import('../host/sign/name-of.ts'), import('../host/sign/sign-note.ts')]); // prettier-ignore
    const identity = openIdentity(p12, (await on.input()).replace(/\r?\n$/, ''));
    const signed = await signNote(note, { identity, role, at, ...(values.reason === undefined ? {} : { reason: values.reason }), ...(values.timestamp === undefined ? {} : { timeStampAt: values.timestamp }), ...seal }); // prettier-ignore
    await writeFileWhole(resolve(on.folder, out), signed);
    on.out(`Wrote ${out}: signed by ${nameOf(identity.certificates[0]!.subject)} as ${role}${values.timestamp === undefined ? '' : ', time-stamped'}. Verify it: stillplate verify ${out}`); // prettier-ignore
    if (values.seal !== undefined)
      on.out('The image of the seal is not by itself a professional seal under local law.');
    return exit.passes;
  },
};
