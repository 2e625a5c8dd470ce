import { arithmetic } from '../../../core/arithmetic.ts';
import { documentHash } from '../../../core/document/document-hash.ts';
import { readDocument, readDocumentText } from '../../../core/document/read-document.ts';
import { inputChanges, type Change } from '../../../core/issue/changes-between.ts';
import { emptyRegister, readRegister, type Register } from '../../../core/issue/register.ts';
import { refusal } from '../../../core/refusal.ts';
import { programVersion, type Result } from '../../../core/result.ts';
import type { OpenedDocument } from '../open-document.ts';
import { readSignatures, type SignatureReading } from '../sign/read-signatures.ts';
import { pageDifferences, type PageDifference } from './page-differences.ts';
import { readNote } from './read-note.ts';
import { resultDifferences, roundingTolerance, type ResultDifference } from './result-differences.ts';
import { isRounding } from './rounding.ts';

/** What verifying a note found. It stands when `differs` is empty: every printed number comes out again. */
export interface VerifyReport {
  readonly schema: 'stillplate-verify/1';
  readonly documentHash: string;
  readonly madeBy: string;
  readonly verifiedBy: string;
  /** The whole file up to its signatures comes out again byte for byte. */
  readonly sameBytes: boolean;
  /** Relative difference that results may have: 0 by the same version on a machine of the same arithmetic. */
  readonly tolerance: number;
  readonly sameArithmetic: boolean;
  readonly pages: number;
  readonly pageDifferences: readonly PageDifference[];
  /** Where the tolerance is not 0: numbers that differ by one unit of their last printed digit. Told, and no fault. */
  readonly roundedOtherwise: readonly PageDifference[];
  readonly resultDifferences: readonly ResultDifference[];
  /** Where a document was given: the fields in which it differs from the one inside the note. */
  readonly documentChanges: readonly Change[] | null;
  readonly signatures: readonly SignatureReading[];
  /** In words, each thing that does not stand and is no word of a page. */
  readonly otherDifferences: readonly string[];
  /** In words, each thing that does not stand. */
  readonly differs: readonly string[];
}

/** Makes the note anew from what it carries: its PDF and its results. */
export type MakeAnew = (
  opened: OpenedDocument,
  how: { readonly option: string | null; readonly solver: boolean; readonly register: Register },
) => Promise<{ readonly pdf: Uint8Array; readonly result: Result }>;

/**
 * Reads document, results and pages back out of a note, makes it anew, and names every difference.
 * `against`: the document that the note is said to be of. Refuses a PDF that carries no document.
 */
export async function verifyNote(bytes: Uint8Array, make: MakeAnew, against?: OpenedDocument): Promise<VerifyReport> {
  const { pages, attachments } = await readNote(bytes);
  const file = attachments.get('document.stillplate.json');
  const results = attachments.get('result.json');
  const made = attachments.get('note.json');
  if (!file || !results || !made)
    throw refusal({
      what: `The PDF carries no ${[!file && 'document', !results && 'results', !made && 'way it was made'].filter(Boolean).join(', no ')}`,
      mend: 'Name a note as Stillplate wrote it: printing or joining PDFs loses what it carries.',
    });
  const raw = readDocumentText(utf8(file));
  const opened: OpenedDocument = { raw, document: readDocument(raw), bytes: file };
  const how = howMade(utf8(made));
  const attached = resultIn(utf8(results));
  const { pdf, result } = await make(opened, how);
  const anew = await readNote(pdf);
  const sameVersion = how.programVersion === programVersion;
  const sameArithmetic = how.arithmetic === arithmetic();
  const tolerance = sameVersion && sameArithmetic ? 0 : roundingTolerance;
  const onPages = pageDifferences(pages, anew.pages);
  const rounded = tolerance === 0 ? [] : onPages.filter(isRounding);
  const report = {
    schema: 'stillplate-verify/1' as const,
    documentHash: documentHash(raw),
    madeBy: how.programVersion,
    verifiedBy: programVersion,
    sameBytes: Buffer.from(bytes.subarray(0, pdf.length)).equals(pdf),
    tolerance,
    sameArithmetic,
    pages: pages.length,
    pageDifferences: onPages.filter((difference) => !rounded.includes(difference)),
    roundedOtherwise: rounded,
    resultDifferences: resultDifferences(attached, result, tolerance),
    documentChanges: against ? inputChanges(raw, against.raw) : null,
    signatures: await readSignatures(bytes),
  };
  const inWords = report.pageDifferences.map(({ page, printed, recomputed }) => `Page ${page} prints “${printed}”, what comes out is “${recomputed}”`); // prettier-ignore
  const otherDifferences = otherThanWords(report, report.sameBytes && bytes.length > pdf.length, attached);
  return { ...report, otherDifferences, differs: [...inWords, ...otherDifferences] };
}

function otherThanWords(
  report: Omit<VerifyReport, 'differs' | 'otherDifferences'>,
  longer: boolean,
  attached: Result,
): string[] {
  const {
    pageDifferences: onPages,
    resultDifferences: inResults,
    documentChanges,
    signatures,
    sameBytes,
    tolerance,
  } = report;
  return [
    ...(attached.documentHash === report.documentHash ? [] : [`The results inside are of another document: ${attached.documentHash.slice(0, 16)}, the document inside is ${report.documentHash.slice(0, 16)}`]), // prettier-ignore
    ...inResults.map(({ what, attached: was, recomputed }) => `The results inside say ${was} for ${what}, what comes out is ${recomputed}`), // prettier-ignore
    ...(tolerance === 0 && !sameBytes && onPages.length === 0 ? ['The words of all pages come out again, but the file is not the one this version writes: something that is no text was changed (a line of a figure, a font, what is attached)'] : []), // prettier-ignore
    ...(longer && signatures.length === 0 ? ['Something was added to the file after it was written, and it is no signature'] : []), // prettier-ignore
    ...signatures.flatMap(({ signer, faults }) => faults.map((fault) => `Signature of ${signer}: ${fault}`)),
    ...(documentChanges ?? []).map(({ what, was, is }) => `The document given differs: ${what} is ${is}, in the note ${was}`), // prettier-ignore
  ];
}

interface How {
  readonly option: string | null;
  readonly solver: boolean;
  readonly register: Register;
  readonly programVersion: string;
  readonly arithmetic: string;
}

function howMade(text: string): How {
  const raw = jsonIn(text, 'note.json') as Record<string, unknown>;
  const { option, solver, register, programVersion: version, arithmetic: of } = raw;
  const sound =
    raw['schema'] === 'stillplate-note/1' &&
    (option === null || typeof option === 'string') &&
    typeof solver === 'boolean' &&
    typeof version === 'string' &&
    typeof of === 'string';
  if (!sound) throw refusal({ what: 'What the note says of how it was made is not whole', where: { attachment: 'note.json' }, mend: 'Take the note from where it was issued.' }); // prettier-ignore
  const read = register === undefined ? emptyRegister : readRegister(JSON.stringify(register));
  return { option, solver, register: read, programVersion: version, arithmetic: of };
}

function resultIn(text: string): Result {
  const raw = jsonIn(text, 'result.json') as Partial<Result> | null;
  if (raw?.schema === 'stillplate-result/1' && typeof raw.quantities === 'object' && Array.isArray(raw.checks))
    return raw as Result;
  throw refusal({ what: 'The results inside the note are not whole', where: { attachment: 'result.json' }, mend: 'Take the note from where it was issued.' }); // prettier-ignore
}

function jsonIn(text: string, attachment: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw refusal({ what: 'What is attached is no JSON', where: { attachment }, mend: 'Take the note from where it was issued.' }); // prettier-ignore
  }
}

function utf8(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refusal({ what: 'What is attached is not UTF-8 text', mend: 'Take the note from where it was issued.' });
  }
}
