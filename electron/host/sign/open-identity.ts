import { createPrivateKey, X509Certificate, type KeyObject } from 'node:crypto';
import forge from 'node-forge';
import { refusal } from '../../../core/refusal.ts';

/** A key to sign with and its certificates, the signer's first, each followed by the one that issued it. */
export interface Identity {
  readonly key: KeyObject;
  readonly certificates: readonly X509Certificate[];
}

/**
 * Opens a PKCS#12 file (RFC 7292; AES with SHA-256 as well as old triple DES). The password is used and forgotten.
 * Refuses a wrong password, a file without key or without its certificate, and one with several keys.
 */
export function openIdentity(p12: Uint8Array, password: string): Identity {
  const read = contentOf(p12, password);
  const { pkcs8ShroudedKeyBag = '', keyBag = '', certBag = '' } = forge.pki.oids;
  const keyBags = [pkcs8ShroudedKeyBag, keyBag].flatMap((bagType) => read.getBags({ bagType })[bagType] ?? []);
  if (keyBags.length !== 1)
    throw refusal({ what: `The certificate file holds ${keyBags.length} keys`, mend: 'Export one identity, with its key, into a file of its own.' }); // prettier-ignore
  const key = createPrivateKey({ key: keyBytes(keyBags[0]!), format: 'der', type: 'pkcs8' });
  const held = (read.getBags({ bagType: certBag })[certBag] ?? []).map(
    ({ cert, asn1 }) => new X509Certificate(der(cert ? forge.pki.certificateToAsn1(cert) : asn1)),
  );
  const own = held.find((certificate) => certificate.checkPrivateKey(key));
  if (!own) throw refusal({ what: 'The certificate file holds no certificate of its key', mend: 'Export the identity again, certificate included.' }); // prettier-ignore
  if (!['rsa', 'ec'].includes(key.asymmetricKeyType ?? ''))
    throw refusal({ what: `A key of kind ${key.asymmetricKeyType} cannot sign here`, mend: 'Use an RSA or an elliptic-curve key.' }); // prettier-ignore
  return { key, certificates: chainOf(own, held) };
}

function contentOf(p12: Uint8Array, password: string): forge.pkcs12.Pkcs12Pfx {
  try {
    const bytes = forge.util.createBuffer(Buffer.from(p12).toString('binary'));
    return forge.pkcs12.pkcs12FromAsn1(forge.asn1.fromDer(bytes), false, password);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    if (/MAC could not be verified|Invalid password|decrypt/i.test(why))
      throw refusal({ what: 'The password does not open the certificate file', mend: 'Type it again; nothing was signed.' }); // prettier-ignore
    throw refusal({ what: `The certificate file cannot be read: ${why}`, mend: 'Name a PKCS#12 file (.p12 or .pfx).' });
  }
}

/** An RSA key comes read, any other one as it stood. */
function keyBytes({ key, asn1 }: forge.pkcs12.Bag): Buffer {
  return der(key ? forge.pki.wrapRsaPrivateKey(forge.pki.privateKeyToAsn1(key)) : asn1);
}

const der = (asn1: forge.asn1.Asn1): Buffer => Buffer.from(forge.asn1.toDer(asn1).getBytes(), 'binary');

/** The signer's certificate, then each issuer that the file holds, whatever order it holds them in. */
function chainOf(own: X509Certificate, held: readonly X509Certificate[]): X509Certificate[] {
  const chain = [own];
  for (let last = own; ;) {
    const next = held.find((other) => !chain.includes(other) && issuedBy(last, other));
    if (!next) return chain;
    chain.push((last = next));
  }
}

/** Whether a certificate names and was signed by another. */
export const issuedBy = (certificate: X509Certificate, issuer: X509Certificate): boolean =>
  certificate.checkIssued(issuer) && certificate.verify(issuer.publicKey);
