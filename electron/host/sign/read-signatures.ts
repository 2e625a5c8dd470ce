import { createHash, verify, X509Certificate } from 'node:crypto';
import type * as asn1js from 'asn1js';
import { Certificate, ContentInfo, SignedData, type IssuerAndSerialNumber } from 'pkijs';
import { issuedBy } from './open-identity.ts';
import { nameOf } from './name-of.ts';
import { orderFaults, type Signed } from './signature-order.ts';
import { oid } from './signed-data.ts';

/** One signature of a PDF as it was found. It stands when `faults` is empty; whom to trust is left to the reader. */
export interface SignatureReading {
  readonly signer: string;
  readonly issuer: string;
  /** Whose box it stands in: author, checker or licensed engineer; null where the PDF does not say it. */
  readonly role: string | null;
  /** Time that the signer claims, for reading; as the PDF writes it where it is no time. */
  readonly claimed: string;
  /** The same as a time; null where it is none. */
  readonly time: Date | null;
  readonly subFilter: string;
  /** Bytes from the start that it covers, its own digits left out. */
  readonly covers: number;
  readonly faults: readonly string[];
  /** What a reader should know, and is no fault. */
  readonly remarks: readonly string[];
}

/**
 * Every signature of a PDF in the order of what they cover, which is the order in which they were added. Never throws:
 * what cannot be read is a fault. `now`: whether a certificate has run out since it signed.
 */
export async function readSignatures(bytes: Uint8Array, now = new Date()): Promise<readonly SignatureReading[]> {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1');
  const found = [...text.matchAll(/\/ByteRange\s*\[\s*(\d+)\s+(\d+)\s+(\d+)\s+(\d+)\s*\]/g)].map((match) => {
    const [a, b, c, d] = match.slice(1, 5).map(Number) as [number, number, number, number];
    return { range: [a, b, c, d] as const, end: c + d, near: text.slice(Math.max(0, match.index - 2000), match.index) };
  });
  const ordered = found.sort((one, other) => one.end - other.end);
  const signed: Signed[] = [];
  return ordered.map(({ range, end, near }, i) => {
    const dictionary = near.slice(near.lastIndexOf(' obj'));
    const role = roleOf(text.slice(0, end), /(\d+) 0$/.exec(near.slice(0, near.lastIndexOf(' obj')))?.[1]);
    const claimed = /\/M\s*\(([^)]*)\)/.exec(dictionary)?.[1] ?? 'no time';
    const time = pdfTime(claimed);
    signed.push({ role, time });
    const disorder = orderFaults(signed);
    const common = {
      role,
      claimed: time ? `${time.toISOString().slice(0, 19).replace('T', ' ')} UTC` : claimed,
      time,
      subFilter: /\/SubFilter\s*\/([\w.]+)/.exec(dictionary)?.[1] ?? 'none',
      covers: end,
    };
    const added = i === ordered.length - 1 && end < bytes.length ? [`${bytes.length - end} bytes were added after the last signature`] : []; // prettier-ignore
    try {
      const { signer, issuer, faults, remarks } = readOne(bytes, range, claimed, now);
      return { ...common, signer, issuer, remarks, faults: [...faults, ...disorder, ...added] };
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      return {
        ...common,
        signer: 'unknown',
        issuer: 'unknown',
        remarks: [],
        faults: [`it cannot be read: ${why}`, ...disorder, ...added],
      };
    }
  });
}

/** The box that holds the signature whose dictionary is object `value`: its field says whose it is. */
function roleOf(text: string, value: string | undefined): string | null {
  const at = value === undefined ? -1 : text.lastIndexOf(`/V ${value} 0 R`);
  if (at < 0) return null;
  const field = text.slice(text.lastIndexOf(' obj', at), text.indexOf('endobj', at));
  const name = Buffer.from(/\/TU\s*<FEFF([0-9A-F]*)>/i.exec(field)?.[1] ?? '', 'hex');
  return /^Signature of the (.+)$/.exec(new TextDecoder('utf-16be').decode(name))?.[1] ?? null;
}

function readOne(
  bytes: Uint8Array,
  [a, b, c, d]: readonly [number, number, number, number],
  claimed: string,
  now: Date,
) {
  const gap = Buffer.from(bytes.subarray(b, c)).toString('latin1');
  if (a !== 0 || b >= c || c + d > bytes.length || !/^<[0-9a-fA-F]*>$/.test(gap))
    throw new Error('its byte range does not leave out its own digits and nothing else');
  const content = Buffer.from(gap.slice(1, -1), 'hex');
  const data = new SignedData({ schema: ContentInfo.fromBER(content.subarray(0, derLength(content))).content });
  const [info, ...more] = data.signerInfos;
  if (!info || more.length > 0) throw new Error(`it holds ${data.signerInfos.length} signers`);
  const held = (data.certificates ?? []).flatMap((one) => one instanceof Certificate ? [new X509Certificate(Buffer.from(one.toSchema().toBER()))] : []); // prettier-ignore
  const sid = info.sid as IssuerAndSerialNumber;
  const serial = Buffer.from(sid.serialNumber.valueBlock.valueHexView).toString('hex').toUpperCase().replace(/^0+/, '');
  const own = held.find(({ serialNumber }) => serialNumber.replace(/^0+/, '') === serial);
  if (!own) throw new Error('its signer’s certificate is not in it');
  const digest = createHash('sha256')
    .update(bytes.subarray(0, b))
    .update(bytes.subarray(c, c + d))
    .digest();
  const attributes = new Map((info.signedAttrs?.attributes ?? []).map(({ type, values }) => [type, values[0] as asn1js.AsnType])); // prettier-ignore
  const said = attributes.get(oid.messageDigest) as asn1js.OctetString | undefined;
  const encoded = new Uint8Array(info.signedAttrs?.encodedValue ?? []);
  const certificateHash = createHash('sha256').update(own.raw).digest();
  const named = Buffer.from(attributes.get(oid.signingCertificateV2)?.toBER() ?? new ArrayBuffer(0));
  const time = pdfTime(claimed);
  const invalid = time && held.find(({ validFrom, validTo }) => time < new Date(validFrom) || time > new Date(validTo));
  const disorder = held.findIndex((one, i) => i > 0 && !issuedBy(held[i - 1]!, one));
  return {
    signer: nameOf(own.subject),
    issuer: nameOf(own.issuer),
    faults: [
      ...(info.digestAlgorithm.algorithmId === oid.sha256 ? [] : ['its digest is not SHA-256']),
      ...(said && Buffer.from(said.valueBlock.valueHexView).equals(digest) ? [] : ['what it signed was changed']),
      ...(verify('sha256', encoded, own.publicKey, Buffer.from(info.signature.valueBlock.valueHexView)) ? [] : ['it was not made with the key of its certificate']), // prettier-ignore
      ...(named.includes(certificateHash) ? [] : ['it does not name its certificate among what is signed (no baseline B-B)']), // prettier-ignore
      ...(invalid ? [`${invalid === own ? 'its certificate' : `the certificate of its issuer ${nameOf(invalid.subject)}`} is valid from ${invalid.validFrom} to ${invalid.validTo}, not when it says that it was signed`] : []), // prettier-ignore
      ...(time ? [] : ['it does not say when it was signed']),
    ],
    remarks: [
      ...(now > new Date(own.validTo) ? [`its certificate ran out on ${own.validTo}: only a time-stamp could prove that it signed before`] : []), // prettier-ignore
      own.checkIssued(own) ? 'its certificate is self-signed: nobody else vouches for the name' : 'whether its issuer is trusted was not asked of anyone', // prettier-ignore
      ...(held[0] !== own || disorder > 0 ? ['its certificates do not stand in order, each before the one that issued it'] : []), // prettier-ignore
    ],
  };
}

/** Length of the first DER value, so that the zeros behind it are left out. */
function derLength(bytes: Uint8Array): number {
  const first = bytes[1] ?? 0;
  if (first < 0x80) return 2 + first;
  return 2 + (first & 0x7f) + [...bytes.subarray(2, 2 + (first & 0x7f))].reduce((sum, byte) => 256 * sum + byte, 0);
}

function pdfTime(text: string): Date | null {
  const [, y, m, d, h, min, s] = /^D:(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)Z/.exec(text) ?? [];
  const time = new Date(`${y}-${m}-${d}T${h}:${min}:${s}Z`);
  return Number.isNaN(time.getTime()) ? null : time;
}
