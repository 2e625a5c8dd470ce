import { parentPort, workerData } from 'node:worker_threads';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { resultOf } from '../../core/result.ts';
import type { FromThread } from './in-thread.ts';
import { noted } from './note/noted.ts';
import { telling } from './note/telling.ts';
import type { OpenedDocument } from './open-document.ts';
import type { ToVerify } from './verify-work.ts';
import { verifyNote } from './verify/verify-note.ts';

// The thread that verifies one note: the whole plate is worked through anew, and the note set anew.
const post = (message: FromThread): void => parentPort!.postMessage(message);
/** Shares of the work, roughly as they take time: reading, working through, setting, comparing. */
const shares = { read: 0.1, worked: 0.4, set: 0.9 };
const tell = (done: number, doing: string): void => post({ done, of: 1, doing });

try {
  const { bytes, against } = workerData as ToVerify;
  tell(0, 'Reading the pages');
  const report = await verifyNote(
    bytes,
    async (opened, how) => {
      tell(shares.read, 'Working the plate through anew');
      const { pdf, appraisal } = await noted(
        opened,
        how,
        { err: (words) => tell(shares.read, words.trim()) },
        (note) => telling(note, (done, of, doing) => tell(shares.worked + (shares.set - shares.worked) * (done / of), doing)), // prettier-ignore
      );
      tell(shares.set, 'Comparing page by page');
      return { pdf, result: resultOf(appraisal, { every: true }) };
    },
    against === null ? undefined : opened(against),
  );
  post({ bytes: new TextEncoder().encode(JSON.stringify(report)) });
} catch (error) {
  post({ why: error instanceof Error ? error.message : String(error) });
}

function opened(text: string): OpenedDocument {
  const raw = readDocumentText(text);
  return { raw, document: readDocument(raw), bytes: new TextEncoder().encode(text) };
}
