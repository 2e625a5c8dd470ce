import { shell } from 'electron';
import { randomUUID } from 'node:crypto';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { refusal } from '../../core/refusal.ts';

/** Pages shown by the system's own reader of PDF, which has the dialog for printers. */
export interface Printing {
  /** Refuses where the system has no reader of PDF. */
  readonly show: (bytes: Uint8Array) => Promise<void>;
  /** Takes away what was shown, at the end and, after a crash, at the next start. */
  readonly clear: () => Promise<void>;
}

/** `folder`: a folder of its own, for this user only. */
export function printing(folder: string): Printing {
  return {
    show: async (bytes) => {
      await mkdir(folder, { recursive: true, mode: 0o700 });
      const file = join(folder, `note-${randomUUID()}.pdf`);
      await writeFile(file, bytes, { mode: 0o600 });
      const fault = await shell.openPath(file);
      if (!fault) return;
      await rm(file, { force: true });
      throw refusal({
        what: 'This machine has no program that shows a PDF',
        mend: 'Save the note as a file and print it elsewhere.',
      });
    },
    // A reader that still holds a file open keeps it, on Windows, until the next start.
    clear: () => rm(folder, { recursive: true, force: true }).catch(() => undefined),
  };
}
