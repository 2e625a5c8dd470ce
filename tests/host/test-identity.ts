import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A self-signed identity as PKCS#12, made by OpenSSL: not by the library that reads it. */
export function testIdentity({ kind = 'rsa', old = false, password = 'pw' } = {}): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'identity-'));
  const [key, certificate, p12] = ['key', 'certificate', 'p12'].map((name) => join(folder, name)) as [string, string, string]; // prettier-ignore
  const algorithm = kind === 'rsa' ? ['rsa:2048'] : ['ec', '-pkeyopt', 'ec_paramgen_curve:P-256'];
  const openssl = (...args: string[]) => execFileSync('openssl', args, { stdio: ['ignore', 'pipe', 'ignore'] });
  try {
    openssl('req', '-x509', '-newkey', ...algorithm, '-nodes', '-keyout', key, '-out', certificate, '-days', '3650', '-subj', `/CN=Test ${kind}`); // prettier-ignore
    openssl('pkcs12', '-export', ...(old ? ['-legacy'] : []), '-inkey', key, '-in', certificate, '-out', p12, '-passout', `pass:${password}`); // prettier-ignore
    return new Uint8Array(readFileSync(p12));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** An identity whose certificate an issuer signed, or one in the middle; the file holds the issuers in the wrong order. */
export function testChain({ issuerDays = 3650, middle = false } = {}): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'chain-'));
  const at = (name: string): string => join(folder, name);
  const openssl = (...args: string[]) => execFileSync('openssl', args, { stdio: ['ignore', 'pipe', 'ignore'] });
  const request = (name: string) => openssl('req', '-new', '-newkey', 'rsa:2048', '-nodes', '-keyout', at(`${name}.key`), '-out', at(`${name}.csr`), '-subj', `/CN=Test ${name}`); // prettier-ignore
  const issue = (name: string, by: string, days: number, ...more: string[]) => openssl('x509', '-req', '-in', at(`${name}.csr`), ...(name === by ? ['-signkey', at(`${by}.key`)] : ['-CA', at(`${by}.pem`), '-CAkey', at(`${by}.key`), '-CAcreateserial']), '-days', String(days), '-out', at(`${name}.pem`), ...more); // prettier-ignore
  try {
    writeFileSync(at('ca.ext'), 'basicConstraints=critical,CA:TRUE\nkeyUsage=critical,keyCertSign\n');
    const names = middle ? ['issuer', 'middle', 'signer'] : ['issuer', 'signer'];
    names.forEach((name, i) => {
      request(name);
      const more = name === 'signer' ? [] : ['-extfile', at('ca.ext')];
      issue(name, names[Math.max(0, i - 1)]!, name === 'issuer' ? issuerDays : 3650, ...more);
    });
    writeFileSync(at('issuers.pem'), Buffer.concat(names.slice(0, -1).map((name) => readFileSync(at(`${name}.pem`)))));
    openssl('pkcs12', '-export', '-inkey', at('signer.key'), '-in', at('signer.pem'), '-certfile', at('issuers.pem'), '-out', at('p12'), '-passout', 'pass:pw'); // prettier-ignore
    return new Uint8Array(readFileSync(at('p12')));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
