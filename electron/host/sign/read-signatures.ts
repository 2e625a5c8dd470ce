import type { X509Certificate } from 'node:crypto';
import { nameOf } from './name-of.ts';
import { inOrder, outOfTime, readCms } from './read-cms.ts';
import { orderFaults, type Signed } from './signature-order.ts';
import { readTimeStamp, type TimeStampReading } from './time-stamp.ts';

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
  /** Who stamped it, and when in words; null where nobody did. Whether it stands is among the faults. */
  readonly stamp: { readonly by: string; readonly issuer: string; readonly time: string } | null;
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
      claimed: time ? inWords(time) : claimed,
      time,
      subFilter: /\/SubFilter\s*\/([\w.]+)/.exec(dictionary)?.[1] ?? 'none',
      covers: end,
    };
    const added = i === ordered.length - 1 && end < bytes.length ? [`${bytes.length - end} bytes were added after the last signature`] : []; // prettier-ignore
    try {
      const { faults, ...read } = readOne(bytes, range, claimed, now);
      return { ...common, ...read, faults: [...faults, ...disorder, ...added] };
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      return {
        ...common,
        signer: 'unknown',
        issuer: 'unknown',
        stamp: null,
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
  return /^Signature of the ([^.]+)/.exec(new TextDecoder('utf-16be').decode(name))?.[1] ?? null;
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
  const cms = readCms(content.subarray(0, derLength(content)));
  const { own, held } = cms;
  const time = pdfTime(claimed);
  const stamped = stampOf(cms, time);
  return {
    signer: nameOf(own.subject),
    issuer: nameOf(own.issuer),
    stamp: stamped.stamp && { by: stamped.stamp.by, issuer: stamped.stamp.issuer, time: inWords(stamped.stamp.time) },
    faults: [
      ...(cms.digestName === 'sha256' ? [] : ['its digest is not SHA-256']),
      ...cms.faultsFor((hash) => hash.update(bytes.subarray(0, b)).update(bytes.subarray(c, c + d))),
      ...(time ? outOfTime(held, own, time, 'it says that it was signed') : ['it does not say when it was signed']),
      ...stamped.faults,
    ],
    remarks: [
      ...(now > new Date(own.validTo) ? [ranOut(own, stamped)] : []),
      own.checkIssued(own) ? 'its certificate is self-signed: nobody else vouches for the name' : 'whether its issuer is trusted was not asked of anyone', // prettier-ignore
      ...(stamped.stamp ? ['whether the authority that stamped it is trusted was not asked of anyone'] : []),
      ...(inOrder(held, own) ? [] : ['its certificates do not stand in order, each before the one that issued it']),
    ],
  };
}

/** Clocks of signer and authority may differ by this much (common practice, no source). */
const clocksApart = 300_000;

interface Stamped {
  readonly stamp: TimeStampReading | null;
  readonly faults: readonly string[];
}

/** The time-stamp over a signature, with what is wrong with it and with what it says of the signature. */
function stampOf({ timeStampToken, signature, own }: ReturnType<typeof readCms>, claimed: Date | null): Stamped {
  if (!timeStampToken) return { stamp: null, faults: [] };
  try {
    const stamp = readTimeStamp(timeStampToken, signature);
    const { time } = stamp;
    const outside = time < new Date(own.validFrom) || time > new Date(own.validTo);
    return {
      stamp,
      faults: [
        ...stamp.faults.map((fault) => `its time-stamp: ${fault}`),
        ...(claimed && claimed.getTime() - time.getTime() > clocksApart ? [`it claims ${inWords(claimed)}, and was stamped before, at ${inWords(time)}`] : []), // prettier-ignore
        ...(outside ? [`its certificate was not valid when it was stamped, ${inWords(time)}`] : []),
      ],
    };
  } catch (error) {
    return { stamp: null, faults: [`its time-stamp cannot be read: ${error instanceof Error ? error.message : String(error)}`] }; // prettier-ignore
  }
}

const ranOut = ({ validTo }: X509Certificate, { stamp, faults }: Stamped): string =>
  stamp && faults.length === 0
    ? `its certificate ran out on ${validTo}; by its time-stamp it had signed before`
    : `its certificate ran out on ${validTo}: only a time-stamp could prove that it signed before`;

const inWords = (time: Date): string => `${time.toISOString().slice(0, 19).replace('T', ' ')} UTC`;

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
