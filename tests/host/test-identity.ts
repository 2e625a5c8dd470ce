import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
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
