import { parentPort, workerData } from 'node:worker_threads';
import { fromWire } from '../../core/host/wire.ts';
import type { Note, Section } from '../../core/note/note.ts';
import { refusal } from '../../core/refusal.ts';
import { writeNote } from './note/write-note.ts';

// The thread that sets one note: pages, fonts and compression hold no window, and stopping it is stopping the thread.
export type FromNoteWorker =
  | { readonly done: number; readonly of: number; readonly doing: string }
  | { readonly bytes: Uint8Array }
  | { readonly why: string };

const post = (message: FromNoteWorker): void => parentPort!.postMessage(message);

try {
  const note = fromWire(workerData as Uint8Array) as Note;
  if (!Array.isArray(note?.sections) || !Array.isArray(note.attachments))
    throw refusal({ what: 'What came is no note', mend: 'Load the window anew, then make the note again.' });
  post({ done: 0, of: 1, doing: 'Reading the fonts' });
  post({ bytes: await writeNote(telling(note)) });
} catch (error) {
  post({ why: error instanceof Error ? error.message : String(error) });
}

/**
 * The note, telling each time the writer takes the blocks of a section: once to look for characters that no font has,
 * once to set them. What is left then is filling the pages.
 */
function telling(note: Note): Note {
  const count = (sections: readonly Section[]): number =>
    sections.reduce((sum, section) => sum + 1 + count(section.sections ?? []), 0);
  const sections = count(note.sections);
  const of = 2 * sections + 1;
  let done = 0;
  const told = (section: Section): Section => {
    const inside = section.sections?.map(told);
    return {
      ...section,
      ...(inside && { sections: inside }),
      get blocks() {
        done = Math.min(done + 1, 2 * sections);
        post({
          done,
          of,
          doing: `${done > sections ? 'Setting' : 'Reading'} “${String(section.title).slice(0, 200)}”`,
        });
        return section.blocks;
      },
    };
  };
  return { ...note, sections: note.sections.map(told) };
}
