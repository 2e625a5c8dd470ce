import { recorded } from '../../core/issue/note-life.ts';
import { emptyRegister, readRegister, type IssueEvent } from '../../core/issue/register.ts';
import { Refusal } from '../../core/refusal.ts';
import { pdfObjects } from '../../electron/host/sign/pdf-objects.ts';
import { readSignatures } from '../../electron/host/sign/read-signatures.ts';
import { readRecording } from '../../core/record/read-recording.ts';
import { readTable } from '../../core/record/read-table.ts';
import { seeded } from '../../tests/geometry/seeded.ts';
import { minimal } from './minimal.ts';

/** A broken input that a reader did not take rightly, made as short as it still fails: kept, and tried again for ever. */
export interface KeptCase {
  readonly reader: ReaderName;
  /** Latin letters stand for the bytes of a PDF. */
  readonly text: string;
  /** What went wrong when it was found. */
  readonly found: string;
}

export interface ReaderReport {
  readonly cases: number;
  readonly refused: number;
  readonly unchanged: number;
  /** What went wrong, with the seed that brings it back. */
  readonly failures: readonly string[];
  /** The first failure of each reader. */
  readonly kept: readonly KeptCase[];
}

const event: IssueEvent = {
  kind: 'issued for check', date: '2026-03-14', by: { role: 'author', name: 'First' }, revision: 'A', option: null, documentHash: 'ab', programVersion: '0.1.0',
  document: { a: 1 }, result: { quantities: {}, limitStates: [], findings: [] },
}; // prettier-ignore
const register = JSON.stringify(recorded(emptyRegister, event));
const record = 't [s],F [kN],z [mm]\n0,1.5,3\n0.1,-2,4\n0.2,3e-1,5\n';
const channels = [
  { name: 'force', alsoCalled: ['F'], kind: 'force' },
  { name: 'travel', alsoCalled: ['z'], kind: 'length' },
] as const;
const pieces = ['%PDF-1.7\n', '1 0 obj\n<< /Type /Catalog /Pages 2 0 R >>\nendobj\n', 'xref\n0 1\n0000000000 65535 f \n1 1\n0000000009 00000 n \n', 'trailer\n<< /Size 2 /Root 1 0 R /Prev 60 >>\n', 'startxref\n60\n%%EOF\n', '/ByteRange [0 10 20 99999999]', '/ByteRange[0 9 9 9]', '/Contents <30820102>', '/Kids [1 0 R]', '\0\xff<<']; // prettier-ignore

/** What fingers, forgers and broken disks do to a text: a piece taken out, put in, doubled, or a character changed. */
function broken(text: string, random: () => number): string {
  const place = () => Math.floor(random() * (text.length + 1));
  const [a, b] = [place(), place()].sort((x, y) => x - y) as [number, number];
  switch (Math.floor(random() * 5)) {
    case 0:
      return text.slice(0, a) + text.slice(b);
    case 1:
      return text.slice(0, b) + text.slice(a);
    case 2:
      return text.slice(0, a) + String.fromCharCode(Math.floor(random() * 0x2ff)) + text.slice(a + 1);
    case 3:
      return text.slice(0, a) + ['{', '"__proto__":1,', '1e999', '[[[[', '=1+1', '"', '\ud800', ';'][Math.floor(random() * 8)] + text.slice(a); // prettier-ignore
    default:
      return text.slice(0, a);
  }
}

/** Reads a text as one reader does. Anything that is thrown and is no refusal is a fault of ours. */
const readers = {
  // Taking every event out leaves a register that is whole and empty.
  register: (text: string) => {
    const read = readRegister(text);
    if (read.events.length === 0) return;
    if (JSON.stringify(read) !== register) throw new Error('a changed register was read as whole');
    return 'unchanged';
  },
  record: (text: string) => void readRecording(readTable(text), channels),
  signatures: (text: string) => void readSignatures(Buffer.from(text, 'latin1')),
  objects: (text: string) => void pdfObjects(Buffer.from(text, 'latin1')).pages.length,
} as const;

export type ReaderName = keyof typeof readers;
type Outcome = 'read' | 'unchanged' | 'refused' | { readonly fault: string };

/** What a reader makes of a text. */
export function outcomeOf(reader: ReaderName, text: string): Outcome {
  try {
    return (readers[reader](text) as 'unchanged' | undefined) ?? 'read';
  } catch (error) {
    return error instanceof Refusal ? 'refused' : { fault: error instanceof Error ? error.message : String(error) };
  }
}

const isFault = (outcome: Outcome): outcome is { readonly fault: string } => typeof outcome === 'object';

/**
 * Hostile registers, records and PDFs: each reader refuses in words or reads; nothing else is thrown. A register that is
 * read says what it said before it was broken: its chain lets nothing else through.
 */
export function fuzzReaders(count: number, seed: number): ReaderReport {
  const failures: string[] = [];
  const kept: KeptCase[] = [];
  let [refused, unchanged] = [0, 0];
  for (let i = 0; i < count; i++) {
    const random = seeded(seed + i);
    const attempt = (reader: ReaderName, text: string): void => {
      const outcome = outcomeOf(reader, text);
      if (outcome === 'refused') refused += 1;
      if (outcome === 'unchanged') unchanged += 1;
      if (!isFault(outcome)) return;
      failures.push(`${reader}, seed ${seed + i}: ${outcome.fault}`);
      if (kept.some((one) => one.reader === reader)) return;
      const least = minimal(text, (shorter) => isFault(outcomeOf(reader, shorter)));
      kept.push({ reader, text: least, found: outcome.fault });
    };
    attempt('register', broken(register, random));
    attempt('record', broken(record, random));
    const pdf = Array.from({ length: 1 + Math.floor(random() * 8) }, () => broken(pieces[Math.floor(random() * pieces.length)]!, random)).join(''); // prettier-ignore
    attempt('signatures', pdf);
    attempt('objects', pdf);
  }
  return { cases: 4 * count, refused, unchanged, failures, kept };
}
