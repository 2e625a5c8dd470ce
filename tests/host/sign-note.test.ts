import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { X509Certificate } from 'node:crypto';
import type * as asn1js from 'asn1js';
import { ContentInfo, SignedData } from 'pkijs';
import { beforeAll, describe, expect, it } from 'vitest';
import { openIdentity } from '../../electron/host/sign/open-identity.ts';
import { readSignatures } from '../../electron/host/sign/read-signatures.ts';
import { orderFaults } from '../../electron/host/sign/signature-order.ts';
import { signNote } from '../../electron/host/sign/sign-note.ts';
import { writeNote } from '../../electron/host/note/write-note.ts';
import { inFolder } from '../command/in-folder.ts';
import { readPdf } from './read-pdf.ts';
import { shortNote } from './short-note.ts';
import { testChain, testIdentity } from './test-identity.ts';

const at = new Date(Date.now() + 60_000);
const rsa = testIdentity();
const ec = testIdentity({ kind: 'ec' });
let plain: Uint8Array;
let once: Uint8Array;
let twice: Uint8Array;
beforeAll(async () => {
  plain = await writeNote(shortNote);
  once = await signNote(plain, { identity: openIdentity(rsa, 'pw'), role: 'author', at });
  twice = await signNote(once, { identity: openIdentity(ec, 'pw'), role: 'licensed engineer', at });
});

const pdfsig = (bytes: Uint8Array): Promise<string> =>
  inFolder((folder) => {
    const file = join(folder, 'signed.pdf');
    writeFileSync(file, bytes);
    return Promise.resolve(execFileSync('pdfsig', ['-nocert', file], { encoding: 'utf8' }));
  });

describe('a signed note', () => {
  it('keeps what was there byte for byte, and qpdf finds no fault and no warning', () => {
    expect(twice.subarray(0, plain.length)).toEqual(plain);
    expect(twice.subarray(0, once.length)).toEqual(once);
    const { check, pages } = readPdf(twice);
    expect(check).toContain('No syntax or stream encoding errors found');
    expect(check).not.toMatch(/warning/i);
    expect(pages).toHaveLength(1);
  });
  it('is valid to an independent reader (poppler’s pdfsig), the earlier signature too', async () => {
    const said = await pdfsig(twice);
    expect(said.match(/Signature Type: ETSI\.CAdES\.detached/g)).toHaveLength(2);
    expect(said.match(/Signature Validation: Signature is Valid/g)).toHaveLength(2);
    expect(said).toMatch(
      /Signer Certificate Common Name: Test ec[^]*Total document signed[^]*Test rsa[^]*Not total document signed/,
    );
  });
  it('a change of one byte in the signed range is found by both readers', async () => {
    for (const place of [300, once.length - 40]) {
      const changed = once.slice();
      changed[place] = changed[place]! ^ 1;
      expect((await readSignatures(changed))[0]!.faults).toContain('what it signed was changed');
    }
    const changed = once.slice();
    changed[300] = changed[300]! ^ 1;
    expect(await pdfsig(changed)).toMatch(/Digest Mismatch/);
  });
  it('carries baseline B-B’s signed attributes, read from the bytes: content type, digest, certificate v2, no time', () => {
    const [, digits = ''] = /\/Contents <([0-9a-f]+)>/.exec(Buffer.from(once).toString('latin1'))!;
    const content = ContentInfo.fromBER(trimmed(Buffer.from(digits, 'hex')));
    const { signerInfos } = new SignedData({ schema: content.content });
    const attributes = signerInfos[0]!.signedAttrs!.attributes;
    expect(attributes.map(({ type }) => type).sort()).toEqual([
      '1.2.840.113549.1.9.16.2.47',
      '1.2.840.113549.1.9.3',
      '1.2.840.113549.1.9.4',
    ]);
    const named = attributes.find(({ type }) => type.endsWith('.2.47'))!.values[0] as asn1js.Sequence;
    expect(Buffer.from(named.toBER()).includes(Buffer.from(fingerprint(openIdentity(rsa, 'pw').certificates[0]!), 'hex'))).toBe(true); // prettier-ignore
  });
  it('what is added after the last signature is said', async () => {
    const longer = Buffer.concat([once, Buffer.from('\n% more\n')]);
    expect((await readSignatures(longer))[0]!.faults).toEqual(['8 bytes were added after the last signature']);
    expect((await readSignatures(twice)).map(({ signer, faults }) => [signer, faults])).toEqual([['Test rsa', []], ['Test ec', []]]); // prettier-ignore
  });
  it('refuses a certificate outside its time, and says it of a signature that claims such a time', async () => {
    const identity = openIdentity(rsa, 'pw');
    const late = new Date('2099-01-01T00:00:00Z');
    await expect(signNote(plain, { identity, role: 'author', at: late })).rejects.toThrow(/valid from .* not on 2099/);
    const claimed = Buffer.from(
      Buffer.from(once)
        .toString('latin1')
        .replace(/\/M \(D:\d{4}/, '/M (D:2099'),
      'latin1',
    );
    expect((await readSignatures(claimed))[0]!.faults.join()).toMatch(/changed.*not when it says/);
  });
  it('says whose box each is in, and refuses a signature out of order: a role again, an earlier one, an earlier time', async () => {
    expect((await readSignatures(twice)).map(({ role }) => role)).toEqual(['author', 'licensed engineer']);
    const identity = openIdentity(ec, 'pw');
    const before = new Date(at.getTime() - 30_000);
    await expect(signNote(once, { identity, role: 'author', at })).rejects.toThrow(/author had signed before/);
    await expect(signNote(twice, { identity, role: 'checker', at })).rejects.toThrow(
      /checker signed after the licensed/,
    );
    await expect(signNote(once, { identity, role: 'checker', at: before })).rejects.toThrow(
      /before the signature under/,
    );
  });
  it('a reader is told of disorder in a file that others signed, and of a certificate that ran out since', async () => {
    // The first signature's claimed year is moved on (by four: a leap day stays a day): the second now comes before it.
    const moved = String(at.getUTCFullYear() + 4);
    const year = Buffer.from(twice)
      .toString('latin1')
      .replace(/\/M \(D:\d{4}/, `/M (D:${moved}`);
    const [, second] = await readSignatures(Buffer.from(year, 'latin1'));
    expect(second!.faults.join()).toContain(`before the signature under it (${moved}`);
    expect(orderFaults([{ role: 'licensed engineer', time: at }, { role: 'author', time: at }])).toEqual([expect.stringMatching(/author signed after the licensed engineer/)]); // prettier-ignore
    expect(
      orderFaults([
        { role: null, time: null },
        { role: 'checker', time: at },
      ]),
    ).toEqual([]);
    const [later] = await readSignatures(once, new Date('2099-01-01T00:00:00Z'));
    expect(later!.faults).toEqual([]);
    expect(later!.remarks.join()).toMatch(/ran out on .* only a time-stamp/);
  });
  it('an issuer whose certificate ran out is refused, and said of a signature that claims such a time', async () => {
    const identity = openIdentity(testChain({ issuerDays: 1 }), 'pw');
    expect(identity.certificates.map(({ subject }) => subject)).toEqual(['CN=Test signer', 'CN=Test issuer']);
    const late = new Date(Date.now() + 3 * 86_400_000);
    await expect(signNote(plain, { identity, role: 'author', at: late })).rejects.toThrow(/certificate of the issuer Test issuer is valid from/); // prettier-ignore
    const signed = await signNote(plain, { identity, role: 'author', at });
    expect((await readSignatures(signed))[0]).toMatchObject({
      signer: 'Test signer',
      issuer: 'Test issuer',
      faults: [],
    });
    const claimed = Buffer.from(signed)
      .toString('latin1')
      .replace(/\/M \(D:\d{4}/, `/M (D:${at.getUTCFullYear() + 4}`);
    expect((await readSignatures(Buffer.from(claimed, 'latin1')))[0]!.faults.join()).toMatch(
      /the certificate of its issuer Test issuer is valid from .* not when it says/,
    );
  });
  it('certificates that do not stand each before its issuer are said; a file that holds them so is put in order', async () => {
    const { key, certificates } = openIdentity(testChain({ middle: true }), 'pw');
    expect(certificates.map(({ subject }) => subject)).toEqual(['CN=Test signer', 'CN=Test middle', 'CN=Test issuer']);
    const [own, middle, root] = certificates as [X509Certificate, X509Certificate, X509Certificate];
    const remarks = async (order: readonly X509Certificate[]) => {
      const [read] = await readSignatures(await signNote(plain, { identity: { key, certificates: order }, role: 'author', at })); // prettier-ignore
      expect(read!.faults).toEqual([]);
      return read!.remarks.join();
    };
    expect(await remarks([own, middle, root])).not.toContain('do not stand in order');
    expect(await remarks([own, root, middle])).toContain('do not stand in order');
    expect(await remarks([own, root])).toContain('do not stand in order');
  });
  it('refuses what is no note of ours, and a box that is not there', async () => {
    const identity = openIdentity(rsa, 'pw');
    await expect(signNote(new TextEncoder().encode('%PDF-1.7 nothing'), { identity, role: 'author', at })).rejects.toThrow(/cannot be signed here/); // prettier-ignore
    const without = await writeNote({ ...shortNote, sections: [{ title: 'x', blocks: [] }] });
    await expect(signNote(without, { identity, role: 'author', at })).rejects.toThrow(/no box in which the author/);
  });
});

describe('an identity', () => {
  it('opens AES with SHA-256 and old triple DES, RSA and elliptic curves; a wrong password is said', () => {
    for (const p12 of [rsa, ec, testIdentity({ old: true })])
      expect(openIdentity(p12, 'pw').certificates.map(({ subject }) => subject)).toEqual([expect.stringMatching(/^CN=Test/)]); // prettier-ignore
    expect(() => openIdentity(rsa, 'other')).toThrow(/password does not open/);
    expect(() => openIdentity(new Uint8Array([1, 2, 3]), 'pw')).toThrow(/cannot be read/);
  });
});

const fingerprint = ({ fingerprint256 }: X509Certificate): string => fingerprint256.replace(/:/g, '');
const trimmed = (bytes: Buffer): Buffer => bytes.subarray(0, 4 + bytes.readUInt16BE(2));
