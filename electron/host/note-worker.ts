import { parentPort, workerData } from 'node:worker_threads';
import { fromWire } from '../../core/host/wire.ts';
import type { Note } from '../../core/note/note.ts';
import { refusal } from '../../core/refusal.ts';
import type { FromThread } from './in-thread.ts';
import { telling } from './note/telling.ts';
import { writeNote } from './note/write-note.ts';

// The thread that sets one note: pages, fonts and compression hold no window.
const post = (message: FromThread): void => parentPort!.postMessage(message);

try {
  const note = fromWire(workerData as Uint8Array) as Note;
  if (!Array.isArray(note?.sections) || !Array.isArray(note.attachments))
    throw refusal({ what: 'What came is no note', mend: 'Load the window anew, then make the note again.' });
  post({ done: 0, of: 1, doing: 'Reading the fonts' });
  post({ bytes: await writeNote(telling(note, (done, of, doing) => post({ done, of, doing }))) });
} catch (error) {
  post({ why: error instanceof Error ? error.message : String(error) });
}
