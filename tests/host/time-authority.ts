import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What the authority does to a question before it answers, and to its answer before it is sent. */
export interface Mischief {
  readonly question?: (question: Buffer) => Buffer;
  readonly answer?: (answer: Buffer) => Buffer;
  readonly status?: number;
}

export interface TimeAuthority {
  readonly address: string;
  /** What came, newest last. */
  readonly asked: readonly { readonly type: string | undefined; readonly question: Buffer }[];
  readonly mischief: { now: Mischief };
  /** A token in an answer over content of any kind, signed by a certificate that is not for time-stamping. */
  readonly byAnother: (content: Buffer) => Buffer;
  /** What OpenSSL says of a token over these bytes. */
  readonly verified: (token: Uint8Array, over: Uint8Array) => string;
  readonly close: () => Promise<void>;
}

/** A time-stamp authority (RFC 3161) on this machine; OpenSSL makes what it answers, not the library that reads it. */
export async function timeAuthority(): Promise<TimeAuthority> {
  const folder = mkdtempSync(join(tmpdir(), 'time-authority-'));
  const at = (name: string): string => join(folder, name);
  const openssl = (...args: string[]): Buffer => execFileSync('openssl', args, { stdio: ['ignore', 'pipe', 'ignore'] });
  const identity = (name: string, subject: string, ...extension: string[]) =>
    openssl('req', '-x509', '-newkey', 'rsa:2048', '-nodes', '-keyout', at(`${name}.key`), '-out', at(`${name}.pem`), '-days', '3650', '-subj', `/CN=${subject}`, ...extension); // prettier-ignore
  identity('stamp', 'Test time', '-addext', 'extendedKeyUsage=critical,timeStamping', '-addext', 'keyUsage=critical,digitalSignature'); // prettier-ignore
  identity('other', 'Test other');
  writeFileSync(at('serial'), '01\n');
  const lines = { serial: at('serial'), crypto_device: 'builtin', signer_cert: at('stamp.pem'), signer_key: at('stamp.key'), signer_digest: 'sha384', default_policy: '1.2.3.4.1', digests: 'sha256', accuracy: 'secs:1', ess_cert_id_alg: 'sha256' }; // prettier-ignore
  writeFileSync(at('ts.cnf'), `[tsa]\ndefault_tsa = here\n[here]\n${Object.entries(lines).map(([key, value]) => `${key} = ${value}`).join('\n')}\n`); // prettier-ignore
  const asked: { type: string | undefined; question: Buffer }[] = [];
  const mischief: { now: Mischief } = { now: {} };
  const server = createServer((request, response) => {
    const parts: Buffer[] = [];
    request.on('data', (part: Buffer) => parts.push(part));
    request.on('end', () => {
      const question = Buffer.concat(parts);
      asked.push({ type: request.headers['content-type'], question });
      const { question: before, answer: after, status = 200 } = mischief.now;
      writeFileSync(at('question'), before?.(question) ?? question);
      openssl('ts', '-reply', '-config', at('ts.cnf'), '-queryfile', at('question'), '-out', at('answer'));
      const answer = readFileSync(at('answer'));
      response.writeHead(status, { 'Content-Type': 'application/timestamp-reply', ...(status === 302 && { Location: '/elsewhere' }) }); // prettier-ignore
      response.end(after?.(answer) ?? answer);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/tsa`,
    asked,
    mischief,
    byAnother: (content) => {
      writeFileSync(at('content'), content);
      openssl('cms', '-sign', '-binary', '-nodetach', '-cades', '-md', 'sha256', '-econtent_type', '1.2.840.113549.1.9.16.1.4', '-in', at('content'), '-signer', at('other.pem'), '-inkey', at('other.key'), '-outform', 'DER', '-out', at('token')); // prettier-ignore
      const token = readFileSync(at('token'));
      const body = Buffer.concat([Buffer.from('3003020100', 'hex'), token]);
      const length = Buffer.alloc(2);
      length.writeUInt16BE(body.length);
      return Buffer.concat([Buffer.from('3082', 'hex'), length, body]);
    },
    verified: (token, over) => {
      writeFileSync(at('token'), token);
      writeFileSync(at('over'), over);
      return openssl('ts', '-verify', '-in', at('token'), '-token_in', '-data', at('over'), '-CAfile', at('stamp.pem')).toString(); // prettier-ignore
    },
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(folder, { recursive: true });
    },
  };
}
