import { createHash } from 'node:crypto';
import { refusal } from '../../../core/refusal.ts';
import type { Identity } from './open-identity.ts';
import { nameOf } from './name-of.ts';
import { pdfObjects } from './pdf-objects.ts';
import { readSignatures } from './read-signatures.ts';
import { sealImage, type SealImage } from './seal-image.ts';
import { signBox } from './sign-box.ts';
import { orderFaults } from './signature-order.ts';
import { signaturePicture } from './signature-picture.ts';
import { signedData } from './signed-data.ts';
import { timeStamp } from './time-stamp.ts';

export interface Signing {
  readonly identity: Identity;
  /** author, checker or licensed engineer: whose box is signed. */
  readonly role: string;
  /** Time that the signer claims. */
  readonly at: Date;
  readonly reason?: string;
  /** Address of a time-stamp authority of the user's own; nobody is asked without it. */
  readonly timeStampAt?: string;
  /** A PNG or JPEG that is drawn beside the words: a seal of the signer's own. */
  readonly seal?: Uint8Array;
}

/** Room for the signature and its certificates, in bytes; a time-stamp brings its authority's. */
const roomFor = (stamped: boolean): number => (stamped ? 32_768 : 16_384);

/**
 * The note with one signature more, as an incremental update: what was there stays byte for byte, so that earlier
 * signatures stand. Refuses a certificate that is not valid at `at` or whose issuer's is not, a file that is no note of
 * ours, a signature out of order, a time-stamp that does not fit and a seal that is no picture.
 */
export async function signNote(
  bytes: Uint8Array,
  { identity, role, at, reason, timeStampAt, seal }: Signing,
): Promise<Uint8Array> {
  const [own] = identity.certificates as [Identity['certificates'][number]];
  for (const { subject, validFrom, validTo } of identity.certificates)
    if (at < new Date(validFrom) || at > new Date(validTo))
      throw refusal({ what: `The certificate of ${subject === own.subject ? '' : 'the issuer '}${nameOf(subject)} is valid from ${validFrom} to ${validTo}, not on ${at.toISOString()}`, mend: 'Sign with a valid certificate of a valid issuer.' }); // prettier-ignore
  const image = seal === undefined ? null : await sealImage(seal);
  const pdf = pdfObjects(bytes);
  const { page, rectangle } = await signBox(bytes, role);
  const signed = (await readSignatures(bytes)).map(({ role: whose, time }) => ({ role: whose, time }));
  const [disorder] = orderFaults([...signed, { role, time: at }]);
  if (disorder !== undefined)
    throw refusal({ what: `The signature would stand out of order: ${disorder}`, where: { role }, mend: 'Take the note as it was before the signature in the way, or issue a new revision.' }); // prettier-ignore
  const pageNumber = pdf.pages[page]!;
  const root = pdf.dictionary(pdf.root);
  const formNumber = Number(/\/AcroForm (\d+) 0 R/.exec(root)?.[1] ?? pdf.size);
  const form = formNumber === pdf.size ? '<<\n/Fields []\n/SigFlags 3\n>>' : pdf.dictionary(formNumber);
  const taken = [...form.matchAll(/ 0 R/g)].length;
  const fresh = formNumber === pdf.size ? pdf.size + 1 : pdf.size;
  const [widget, value, picture, sealed] = [fresh, fresh + 1, fresh + 2, fresh + 3];
  const [x0, y0, x1, y1] = rectangle;
  const name = nameOf(own.subject);
  const issuer = own.checkIssued(own) ? 'self-signed' : `certificate by ${nameOf(own.issuer)}`;
  const drawing = signaturePicture([`${name}, ${at.toISOString().slice(0, 16).replace('T', ' ')} UTC`, `digitally signed, ${issuer}`], x1 - x0, y1 - y0, image); // prettier-ignore
  const room = roomFor(timeStampAt !== undefined);
  const objects: (readonly [number, string])[] = [
    [pageNumber, withAnnotation(pdf.dictionary(pageNumber), widget)],
    [formNumber, form.replace(/\/Fields \[/, `/Fields [${widget} 0 R `)],
    ...(formNumber === pdf.size ? [[pdf.root, root.replace(/>>$/, `/AcroForm ${formNumber} 0 R\n>>`)] as const] : []),
    [widget, `<<\n/Type /Annot\n/Subtype /Widget\n/FT /Sig\n/T (Signature ${taken + 1})\n/TU ${pdfText(`Signature of the ${role}${image ? '. Its seal image is not by itself a professional seal under local law.' : ''}`)}\n/F 132\n/Rect [${rectangle.map((c) => c.toFixed(2)).join(' ')}]\n/P ${pageNumber} 0 R\n/V ${value} 0 R\n/AP <<\n/N ${picture} 0 R\n>>\n>>`], // prettier-ignore
    [value, `<<\n/Type /Sig\n/Filter /Adobe.PPKLite\n/SubFilter /ETSI.CAdES.detached\n/Name ${pdfText(name)}\n/M (D:${at.toISOString().replace(/[-:T]|\..*/g, '')}Z)\n/Reason ${pdfText(reason ?? `Signed as ${role}`)}\n/ByteRange ${rangePlace}\n/Contents <${'0'.repeat(2 * room)}>\n>>`], // prettier-ignore
    [picture, `<<\n/Type /XObject\n/Subtype /Form\n/BBox [0 0 ${(x1 - x0).toFixed(2)} ${(y1 - y0).toFixed(2)}]\n/Resources <<\n${image ? `/XObject <<\n/Seal ${sealed} 0 R\n>>\n` : ''}>>\n/Length ${drawing.length}\n>>\nstream\n${drawing}\nendstream`], // prettier-ignore
    ...(image ? imageObjects(image, sealed) : []),
  ];
  const update = updateText(objects, bytes.length, pdf);
  const stamp = timeStampAt === undefined ? undefined : (signature: Uint8Array) => timeStamp(timeStampAt, signature);
  const finished = await filled(Buffer.concat([bytes, Buffer.from(update, 'latin1')]), bytes.length, room, (digest) => signedData(digest, identity, stamp)); // prettier-ignore
  const found = await readSignatures(finished);
  if (found.length !== signed.length + 1) throw refusal({ what: 'The image of the seal holds what reads as a signature', where: { field: 'seal' }, mend: 'Take another image; nothing was signed.' }); // prettier-ignore
  const { faults } = found.at(-1)!;
  if (faults.length > 0) throw refusal({ what: `The signature would not stand: ${faults.join('; ')}`, mend: 'Check the time that is claimed and the certificate; nothing was signed.' }); // prettier-ignore
  return finished;
}

/** Image and, under the number after it, its opacity. They stand last: places are looked for before what a file brought. */
function imageObjects({ width, height, entries, data, alpha }: SealImage, number: number): [number, string][] {
  const object = (more: string, bytes: Uint8Array): string =>
    `<<\n/Type /XObject\n/Subtype /Image\n/Width ${width}\n/Height ${height}\n${more}\n/Length ${bytes.length}\n>>\nstream\n${Buffer.from(bytes).toString('latin1')}\nendstream`;
  if (!alpha) return [[number, object(entries, data)]];
  return [
    [number, object(`${entries}\n/SMask ${number + 1} 0 R`, data)],
    [number + 1, object('/ColorSpace /DeviceGray\n/BitsPerComponent 8\n/Filter /FlateDecode', alpha)],
  ];
}

const rangePlace = `[0 ${'0'.repeat(10)} ${'0'.repeat(10)} ${'0'.repeat(10)}]`;

function withAnnotation(page: string, widget: number): string {
  if (page.includes('/Annots [')) return page.replace('/Annots [', `/Annots [${widget} 0 R `);
  return page.replace(/>>$/, `/Annots [${widget} 0 R]\n>>`);
}

/** Objects, their cross-reference table and the trailer, to stand behind `start` bytes. */
function updateText(
  objects: readonly (readonly [number, string])[],
  start: number,
  { size, root, kept, newestXref }: ReturnType<typeof pdfObjects>,
): string {
  let text = '\n';
  const table = objects.map(([number, body]) => {
    const at = start + text.length;
    text += `${number} 0 obj\n${body}\nendobj\n`;
    return `${number} 1\n${String(at).padStart(10, '0')} 00000 n \n`;
  });
  const newSize = Math.max(size, ...objects.map(([number]) => number + 1));
  const xref = start + text.length;
  return `${text}xref\n${table.join('')}trailer\n<<\n/Size ${newSize}\n/Root ${root} 0 R\n${kept}\n/Prev ${newestXref}\n>>\nstartxref\n${xref}\n%%EOF\n`;
}

/** Puts the byte range and then the signature over it in their places; both keep the length. */
async function filled(
  bytes: Buffer,
  from: number,
  room: number,
  sign: (digest: Uint8Array) => Promise<Uint8Array>,
): Promise<Uint8Array> {
  const open = bytes.indexOf(`<${'0'.repeat(2 * room)}>`, from, 'latin1');
  const close = open + 2 * room + 2;
  const padded = (n: number): string => String(n).padStart(10, ' ');
  const range = `[0 ${padded(open)} ${padded(close)} ${padded(bytes.length - close)}]`;
  bytes.write(range, bytes.indexOf(rangePlace, from, 'latin1'), 'latin1');
  const digest = createHash('sha256').update(bytes.subarray(0, open)).update(bytes.subarray(close)).digest();
  const signature = Buffer.from(await sign(digest)).toString('hex');
  if (signature.length > 2 * room)
    throw refusal({ what: `The certificates need ${signature.length / 2} bytes, there is room for ${room}`, mend: 'Export the identity with fewer certificates.' }); // prettier-ignore
  bytes.write(signature, open + 1, 'latin1');
  return new Uint8Array(bytes);
}

/** A text string of PDF as UTF-16 in hex digits: any name, nothing to escape. */
const pdfText = (text: string): string =>
  `<FEFF${[...Buffer.from(text, 'utf16le').swap16()].map((b) => b.toString(16).padStart(2, '0')).join('')}>`;
