import { createHash, randomBytes } from 'node:crypto';
import * as asn1js from 'asn1js';
import { AlgorithmIdentifier, MessageImprint, TimeStampReq, TimeStampResp, TSTInfo } from 'pkijs';
import { refusal } from '../../../core/refusal.ts';
import { nameOf } from './name-of.ts';
import { outOfTime, readCms } from './read-cms.ts';
import { oid } from './signed-data.ts';

/** What a time-stamp token says of the signature that it is over. It stands when `faults` is empty. */
export interface TimeStampReading {
  readonly by: string;
  readonly issuer: string;
  readonly time: Date;
  /** Number by which the answer belongs to its question, in hex; null where it has none. */
  readonly nonce: string | null;
  readonly faults: readonly string[];
}

/** Longest answer that is read, and how long it is waited for. */
const most = 1_000_000;
const patience = 30_000;

/**
 * Asks the authority at `address` to stamp a signature (RFC 3161 by HTTP) and gives its token as DER. This is the only
 * use of a network in Stillplate, of this address alone: no redirection is followed. Refuses an address that is none, no
 * answer, a refusal of the authority, and a token that is not of this signature, of this question or of its own key.
 */
export async function timeStamp(address: string, signature: Uint8Array): Promise<Uint8Array> {
  const where = { address };
  const url = URL.canParse(address) ? new URL(address) : null;
  if (!url || !/^https?:$/.test(url.protocol) || url.username || url.password)
    throw refusal({ what: 'The address of the time-stamp authority is none that can be asked', where, mend: 'Write it as https://authority.example/tsa, without a password in it.' }); // prettier-ignore
  const nonce = randomBytes(16);
  nonce[0] = (nonce[0]! & 0x7f) | 0x40; // a positive whole number that fills its bytes
  const body = question(signature, nonce);
  const answer = await asked(url, body);
  const token = tokenIn(answer, where);
  const wrong = (why: string) => refusal({ what: `The time-stamp does not fit: ${why}`, where, mend: 'Ask another authority; nothing was signed.' }); // prettier-ignore
  let read: TimeStampReading;
  try {
    read = readTimeStamp(token, signature);
  } catch (error) {
    throw wrong(error instanceof Error ? error.message : String(error));
  }
  const faults = [...read.faults, ...(read.nonce === nonce.toString('hex') ? [] : ['it answers another question (its nonce is not ours)'])]; // prettier-ignore
  if (faults.length > 0) throw wrong(faults.join('; '));
  return token;
}

function question(signature: Uint8Array, nonce: Uint8Array): Uint8Array {
  const hashedMessage = new asn1js.OctetString({ valueHex: createHash('sha256').update(signature).digest() });
  const request = new TimeStampReq({
    version: 1,
    messageImprint: new MessageImprint({ hashAlgorithm: new AlgorithmIdentifier({ algorithmId: oid.sha256, algorithmParams: new asn1js.Null() }), hashedMessage }), // prettier-ignore
    nonce: new asn1js.Integer({ valueHex: nonce }),
    certReq: true,
  });
  return new Uint8Array(request.toSchema().toBER());
}

async function asked(url: URL, body: Uint8Array): Promise<Uint8Array> {
  const noAnswer = (why: string) =>
    refusal({ what: `The time-stamp authority gave no answer that can be used: ${why}`, where: { address: url.href }, mend: 'Check the address and the network, or sign without a time-stamp; nothing was signed.' }); // prettier-ignore
  let response: Response;
  try {
    response = await fetch(url, {
      method: 'POST',
      redirect: 'error',
      headers: { 'Content-Type': 'application/timestamp-query', Accept: 'application/timestamp-reply' },
      body: body as Uint8Array<ArrayBuffer>,
      signal: AbortSignal.timeout(patience),
    });
  } catch (error) {
    const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
    throw noAnswer(cause instanceof Error ? cause.message || cause.name : String(cause));
  }
  if (!response.ok) throw noAnswer(`HTTP status ${response.status}`);
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for await (const part of response.body as unknown as AsyncIterable<Uint8Array>) {
      length += part.length;
      if (length > most) throw noAnswer(`it is longer than ${most} bytes`);
      parts.push(part);
    }
  } catch (error) {
    throw error instanceof Error && 'mend' in error ? error : noAnswer('it broke off');
  }
  return new Uint8Array(Buffer.concat(parts));
}

/** The token of an answer as it stands in it, byte for byte. */
function tokenIn(answer: Uint8Array, where: Readonly<Record<string, string>>): Uint8Array {
  const refused = (what: string) => refusal({ what, where, mend: 'Ask another authority; nothing was signed.' });
  let read: TimeStampResp;
  try {
    read = TimeStampResp.fromBER(answer);
  } catch {
    throw refused('What the time-stamp authority answered is no time-stamp');
  }
  const status: number = read.status.status;
  const words = (read.status.statusStrings ?? []).map((text) => text.getValue()).join(' ');
  if (status > 1) throw refused(`The time-stamp authority refused (status ${status}${words ? `: ${words}` : ''})`);
  const [, token] = (asn1js.fromBER(answer).result as asn1js.Sequence).valueBlock.value;
  if (!token) throw refused('The time-stamp authority granted a time-stamp and sent none');
  return new Uint8Array(token.valueBeforeDecodeView);
}

/**
 * Reads a token (RFC 3161): its imprint against the signature, its own signature, its certificate's purpose and time.
 * Throws a plain error for what is no token.
 */
export function readTimeStamp(token: Uint8Array, signature: Uint8Array): TimeStampReading {
  const cms = readCms(token);
  const { own, held, content } = cms;
  if (cms.contentType !== oid.timeStampInfo || !content) throw new Error('it is no time-stamp token');
  const info = TSTInfo.fromBER(content);
  const { hashAlgorithm, hashedMessage } = info.messageImprint;
  const imprint = createHash('sha256').update(signature).digest();
  const isOfIt = hashAlgorithm.algorithmId === oid.sha256 && imprint.equals(Buffer.from(hashedMessage.valueBlock.valueHexView)); // prettier-ignore
  const time = info.genTime;
  const purposes = own.keyUsage as readonly string[] | undefined;
  return {
    by: nameOf(own.subject),
    issuer: nameOf(own.issuer),
    time,
    nonce: info.nonce ? Buffer.from(info.nonce.valueBlock.valueHexView).toString('hex') : null,
    faults: [
      ...(isOfIt ? [] : ['it is over something else than this signature']),
      ...cms.faultsFor((hash) => hash.update(content)),
      ...(purposes?.includes(oid.timeStamping) ? [] : ['its certificate is not one for time-stamping']),
      ...outOfTime(held, own, time, 'it stamped'),
    ],
  };
}
