import { createHash, verify, X509Certificate, type Hash } from 'node:crypto';
import type * as asn1js from 'asn1js';
import { Certificate, ContentInfo, SignedData, type IssuerAndSerialNumber } from 'pkijs';
import { issuedBy } from './open-identity.ts';
import { nameOf } from './name-of.ts';
import { oid } from './signed-data.ts';

/** A CMS structure (RFC 5652) with one signer, taken apart. */
export interface Cms {
  readonly own: X509Certificate;
  /** Every certificate in it, as they stand. */
  readonly held: readonly X509Certificate[];
  /** Node's name of the digest; null where it is none that is used here. */
  readonly digestName: string | null;
  /** What was signed, where it stands inside. */
  readonly content: Uint8Array | null;
  readonly contentType: string;
  /** The signature's own bytes: what a time-stamp is over. */
  readonly signature: Buffer;
  /** Unsigned: a token over the signature (RFC 3161, appendix A), as DER. */
  readonly timeStampToken: Uint8Array | null;
  /** What does not fit of signature, digest and named certificate, for content of this digest. */
  readonly faultsFor: (feed: (hash: Hash) => Hash) => readonly string[];
}

const digestNames: Readonly<Record<string, string>> = { [oid.sha256]: 'sha256', [oid.sha384]: 'sha384', [oid.sha512]: 'sha512' }; // prettier-ignore

/** Reads it from DER. Throws a plain error for what is no CMS signature of one signer. */
export function readCms(der: Uint8Array): Cms {
  const data = new SignedData({ schema: ContentInfo.fromBER(der).content });
  const [info, ...more] = data.signerInfos;
  if (!info || more.length > 0) throw new Error(`it holds ${data.signerInfos.length} signers`);
  const held = (data.certificates ?? []).flatMap((one) => one instanceof Certificate ? [new X509Certificate(Buffer.from(one.toSchema().toBER()))] : []); // prettier-ignore
  const sid = info.sid as IssuerAndSerialNumber;
  const serial = Buffer.from(sid.serialNumber.valueBlock.valueHexView).toString('hex').toUpperCase().replace(/^0+/, '');
  const own = held.find(({ serialNumber }) => serialNumber.replace(/^0+/, '') === serial);
  if (!own) throw new Error('its signer’s certificate is not in it');
  const attributes = new Map((info.signedAttrs?.attributes ?? []).map(({ type, values }) => [type, values[0] as asn1js.AsnType])); // prettier-ignore
  const encoded = new Uint8Array(info.signedAttrs?.encodedValue ?? []);
  const signature = Buffer.from(info.signature.valueBlock.valueHexView);
  const digestName = digestNames[info.digestAlgorithm.algorithmId] ?? null;
  const token = (info.unsignedAttrs?.attributes ?? []).find(({ type }) => type === oid.timeStampToken)?.values[0] as asn1js.AsnType | undefined; // prettier-ignore
  const faultsFor = (feed: (hash: Hash) => Hash): string[] => {
    if (digestName === null) return ['its digest is none of SHA-256, SHA-384 and SHA-512'];
    const said = attributes.get(oid.messageDigest) as asn1js.OctetString | undefined;
    const digest = feed(createHash(digestName)).digest();
    const named = [oid.signingCertificateV2, oid.signingCertificate].map((type) => Buffer.from(attributes.get(type)?.toBER() ?? new ArrayBuffer(0))); // prettier-ignore
    const namesItsOwn = named.some((bytes, i) => bytes.includes(createHash(i === 0 ? 'sha256' : 'sha1').update(own.raw).digest())); // prettier-ignore
    return [
      ...(said && Buffer.from(said.valueBlock.valueHexView).equals(digest) ? [] : ['what it signed was changed']),
      ...(verify(digestName, encoded, own.publicKey, signature) ? [] : ['it was not made with the key of its certificate']), // prettier-ignore
      ...(namesItsOwn ? [] : ['it does not name its certificate among what is signed']),
    ];
  };
  return {
    ...{ own, held, digestName, signature, faultsFor },
    content: data.encapContentInfo.eContent ? new Uint8Array(data.encapContentInfo.eContent.getValue()) : null,
    contentType: data.encapContentInfo.eContentType,
    timeStampToken: token ? new Uint8Array(token.toBER()) : null,
  };
}

/** What is wrong at `time` with the certificates that come with a signature: its own or an issuer's is not valid then. */
export function outOfTime(held: readonly X509Certificate[], own: X509Certificate, time: Date, when: string): string[] {
  const invalid = held.find(({ validFrom, validTo }) => time < new Date(validFrom) || time > new Date(validTo));
  if (!invalid) return [];
  const whose = invalid === own ? 'its certificate' : `the certificate of its issuer ${nameOf(invalid.subject)}`;
  return [`${whose} is valid from ${invalid.validFrom} to ${invalid.validTo}, not when ${when}`];
}

/** Whether certificates stand each before the one that issued it, the signer's first. */
export const inOrder = (held: readonly X509Certificate[], own: X509Certificate): boolean =>
  held[0] === own && held.every((one, i) => i === 0 || issuedBy(held[i - 1]!, one));
