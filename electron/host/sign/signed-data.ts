import { createHash, sign } from 'node:crypto';
import * as asn1js from 'asn1js';
import { AlgorithmIdentifier, Attribute, Certificate, ContentInfo, EncapsulatedContentInfo, IssuerAndSerialNumber, SignedAndUnsignedAttributes, SignedData, SignerInfo } from 'pkijs'; // prettier-ignore
import type { Identity } from './open-identity.ts';

/** Object identifiers of CMS (RFC 5652), ESS (RFC 5035), time-stamps (RFC 3161) and the algorithms (RFC 5754, RFC 5758). */
export const oid = {
  data: '1.2.840.113549.1.7.1',
  signedData: '1.2.840.113549.1.7.2',
  contentType: '1.2.840.113549.1.9.3',
  messageDigest: '1.2.840.113549.1.9.4',
  signingCertificate: '1.2.840.113549.1.9.16.2.12',
  signingCertificateV2: '1.2.840.113549.1.9.16.2.47',
  timeStampToken: '1.2.840.113549.1.9.16.2.14',
  timeStampInfo: '1.2.840.113549.1.9.16.1.4',
  timeStamping: '1.3.6.1.5.5.7.3.8',
  sha256: '2.16.840.1.101.3.4.2.1',
  sha384: '2.16.840.1.101.3.4.2.2',
  sha512: '2.16.840.1.101.3.4.2.3',
  sha256WithRsa: '1.2.840.113549.1.1.11',
  ecdsaWithSha256: '1.2.840.10045.4.3.2',
} as const;

/**
 * Detached CMS signature over the SHA-256 `digest` of bytes, as PAdES baseline B-B asks for it (EN 319 142-1, from
 * memory): signed content type, message digest and signing certificate (version 2), no signing time among them. `stamp`
 * gives a token over the signature, which then stands among what is not signed (baseline B-T).
 */
export async function signedData(
  digest: Uint8Array,
  { key, certificates }: Identity,
  stamp?: (signature: Uint8Array) => Promise<Uint8Array>,
): Promise<Uint8Array> {
  const parsed = certificates.map(({ raw }) => Certificate.fromBER(raw));
  const [own] = parsed as [Certificate];
  const attributes = [
    attribute(oid.contentType, new asn1js.ObjectIdentifier({ value: oid.data })),
    attribute(oid.messageDigest, new asn1js.OctetString({ valueHex: digest })),
    attribute(oid.signingCertificateV2, signingCertificate(certificates[0]!.raw)),
  ].sort(byEncoding); // a set in DER is in the order of its bytes
  const signedAttrs = new SignedAndUnsignedAttributes({ type: 0, attributes });
  // What is signed is the plain SET; inside the structure the same bytes carry another tag (RFC 5652, 5.4).
  const encoded = new Uint8Array(signedAttrs.toSchema().toBER());
  encoded[0] = 0x31;
  const rsa = key.asymmetricKeyType === 'rsa';
  const signature = sign('sha256', encoded, key);
  const token = await stamp?.(signature);
  const unsigned = token && [attribute(oid.timeStampToken, asn1js.fromBER(token).result)];
  const digestAlgorithm = () => new AlgorithmIdentifier({ algorithmId: oid.sha256 });
  const signer = new SignerInfo({
    version: 1,
    sid: new IssuerAndSerialNumber({ issuer: own.issuer, serialNumber: own.serialNumber }),
    digestAlgorithm: digestAlgorithm(),
    signedAttrs,
    signatureAlgorithm: rsa
      ? new AlgorithmIdentifier({ algorithmId: oid.sha256WithRsa, algorithmParams: new asn1js.Null() })
      : new AlgorithmIdentifier({ algorithmId: oid.ecdsaWithSha256 }),
    signature: new asn1js.OctetString({ valueHex: signature }),
    ...(unsigned && { unsignedAttrs: new SignedAndUnsignedAttributes({ type: 1, attributes: unsigned }) }),
  });
  const content = new SignedData({
    version: 1,
    digestAlgorithms: [digestAlgorithm()],
    encapContentInfo: new EncapsulatedContentInfo({ eContentType: oid.data }),
    certificates: parsed,
    signerInfos: [signer],
  });
  const info = new ContentInfo({ contentType: oid.signedData, content: content.toSchema(true) });
  return new Uint8Array(info.toSchema().toBER());
}

const attribute = (type: string, value: asn1js.AsnType): Attribute => new Attribute({ type, values: [value] });

const byEncoding = (a: Attribute, b: Attribute): number =>
  Buffer.compare(Buffer.from(a.toSchema().toBER()), Buffer.from(b.toSchema().toBER()));

/** SigningCertificateV2 with one ESSCertIDv2; SHA-256 is its default and is therefore not written. */
function signingCertificate(certificate: Uint8Array): asn1js.AsnType {
  const hash = new asn1js.OctetString({ valueHex: createHash('sha256').update(certificate).digest() });
  const one = new asn1js.Sequence({ value: [hash] });
  return new asn1js.Sequence({ value: [new asn1js.Sequence({ value: [one] })] });
}
