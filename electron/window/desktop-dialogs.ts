import { dialog, shell, type BrowserWindow, type FileFilter } from 'electron';
import { extname, join } from 'node:path';
import type { Dialogs } from '../host/dialogs.ts';
import type { Printing } from './printing.ts';

const documentFilter = { name: 'Stillplate document', extensions: ['stillplate', 'json'] };
const filters: Readonly<Record<string, FileFilter>> = {
  'application/pdf': { name: 'PDF', extensions: ['pdf'] },
  'application/zip': { name: 'Backup', extensions: ['stillplate-backup'] },
  'application/json': documentFilter,
};

/** The system's dialogs, in front of a window. */
export function desktopDialogs(window: BrowserWindow, lastFolder: () => string, printed: Printing): Dialogs {
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
    print: printed.show,
  };
}
