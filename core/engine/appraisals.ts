import { appraise, asksSolver, type Appraisal } from '../appraise.ts';
import { laidRaw, optionLine } from '../document/edit.ts';
import { documentHash } from '../document/document-hash.ts';
import { besidePlate, plateAlone } from '../document/plate-alone.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { SolvedForces } from '../loads/solved-forces.ts';
import { readDocument } from '../document/read-document.ts';
import { Refusal, type RefusalText } from '../refusal.ts';

export type Attempt =
  | { readonly ok: true; readonly appraisal: Appraisal }
  | { readonly ok: false; readonly faults: readonly RefusalText[] };

/**
 * Appraisals of a document's options, kept while what they are made from stays the same: the document under the option,
 * the differences that made it, and nothing else. Bounded: one for each option.
 */
export class Appraisals {
  #kept = new Map<string | null, { readonly made: string; readonly attempt: Attempt }>();
  #solved = new Map<string | null, SolvedForces>();

  /** As a fresh `appraise` gives it, or every fault of the document as a value. */
  of(raw: RawDocument, option: string | null): Attempt {
    let made: string;
    let solved: SolvedForces | undefined;
    try {
      solved = asksSolver(laidRaw(raw, option)) ? this.#solved.get(option) : undefined;
      made = `${solved?.key ?? ''} ${madeFrom(raw, option)}`;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return { ok: false, faults: error.all };
    }
    const kept = this.#kept.get(option);
    if (kept?.made === made) return laidOn(kept.attempt, raw);
    const attempt = attempted(raw, option, solved);
    this.#kept.set(option, { made, attempt });
    return attempt;
  }

  /** Forces of the whole plate under an option. Those of an older state of it are told as such by `appraise`. */
  takeSolved(option: string | null, forces: SolvedForces): void {
    this.#solved.set(option, forces);
  }

  /** Forgets options that the document no longer has. */
  keepOnly(options: ReadonlySet<string | null>): void {
    for (const kept of [this.#kept, this.#solved])
      for (const option of kept.keys()) if (!options.has(option)) kept.delete(option);
  }
}

function attempted(raw: RawDocument, option: string | null, solved: SolvedForces | undefined): Attempt {
  try {
    return { ok: true, appraisal: appraise(raw, readDocument(raw), option, solved) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { ok: false, faults: error.all };
  }
}

/** Everything that an appraisal of an option depends on but the hash, as text. A fault anywhere in the document is one of all options. */
function madeFrom(raw: RawDocument, option: string | null): string {
  return JSON.stringify([plateAlone(laidRaw(raw, option)), optionLine(raw, option), readOnce(raw) ? '' : raw]);
}

/** The whole document read, or null when something in it is wrong. Only the newest is kept: the steps back hold every document
 *  of the session, and would hold what was read of each. */
let newest: { readonly raw: RawDocument; readonly read: PlateDocument | null } | null = null;

function readOnce(raw: RawDocument): PlateDocument | null {
  if (newest?.raw === raw) return newest.read;
  let read: PlateDocument | null = null;
  try {
    read = readDocument(raw);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
  }
  newest = { raw, read };
  return read;
}

/** A kept appraisal for a document that differs in its list of options or its choice only. */
function laidOn(attempt: Attempt, raw: RawDocument): Attempt {
  const read = readOnce(raw);
  if (!attempt.ok || !read) return attempt;
  const { appraisal } = attempt;
  const model = { ...appraisal.model, document: { ...appraisal.model.document, ...besidePlate(read) } };
  return { ok: true, appraisal: { ...appraisal, model, documentHash: documentHash(raw) } };
}
