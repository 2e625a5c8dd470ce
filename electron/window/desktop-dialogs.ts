import { dialog, shell, type BrowserWindow } from 'electron';
import { randomUUID } from 'node:crypto';
import { rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Dialogs } from '../host/dialogs.ts';

const documentFilter = { name: 'Stillplate document', extensions: ['stillplate', 'json'] };
const filters: Readonly<Record<string, Electron.FileFilter>> = {
  'application/pdf': { name: 'PDF', extensions: ['pdf'] },
  'application/zip': { name: 'Backup', extensions: ['zip'] },
  'application/json': documentFilter,
};

/** The system's dialogs, in front of a window. */
export function desktopDialogs(window: BrowserWindow, lastFolder: () => string): Dialogs {
  return {
    chooseFile: async () => {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, {
        defaultPath: lastFolder(),
        properties: ['openFile'],
        filters: [documentFilter],
      });
      return canceled ? null : (filePaths[0] ?? null);
    },
    choosePlace: async (name, mime) => {
      const filter = filters[mime];
      const { canceled, filePath } = await dialog.showSaveDialog(window, {
        defaultPath: join(lastFolder(), name),
        ...(filter ? { filters: [filter] } : {}),
      });
      if (canceled || !filePath) return null;
      return extname(filePath) ? filePath : `${filePath}${extname(name)}`;
    },
    showInFolder: async (path) => shell.showItemInFolder(path),
    print: async (bytes) => {
      // The pages are shown by the system's own reader of PDF, which has the dialog for printers.
      const file = join(tmpdir(), `stillplate-${randomUUID()}.pdf`);
      await writeFile(file, bytes, { mode: 0o600 });
      const fault = await shell.openPath(file);
      if (fault) {
        await rm(file, { force: true });
        throw new Error(fault);
      }
    },
  };
}
