import type { MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from '../../core/host/host-schema.ts';

/** The menu bar: roles of the system where it has them, commands of the window for the rest. */
export function menuTemplate(isMac: boolean, send: (command: MenuCommand) => void): MenuItemConstructorOptions[] {
  const item = (label: string, command: MenuCommand, accelerator?: string): MenuItemConstructorOptions => ({
    label,
    ...(accelerator ? { accelerator } : {}),
    click: () => send(command),
  });
  const recent: MenuItemConstructorOptions = { role: 'recentDocuments', submenu: [{ role: 'clearRecentDocuments' }] };
  const line: MenuItemConstructorOptions = { type: 'separator' };
  return [
    ...(isMac ? [{ role: 'appMenu' } as const] : []),
    {
      label: '&File',
      submenu: [
        item('&New Plate', 'new', 'CmdOrCtrl+N'),
        item('&Open…', 'open', 'CmdOrCtrl+O'),
        item('&Import Options…', 'import'),
        // Elsewhere the system lists recent documents itself, on the program's icon.
        ...(isMac ? [recent] : []),
        line,
        item('&Save Revision', 'save'),
        item('&Revisions and Files…', 'revisions', 'CmdOrCtrl+S'),
        item('Save &As…', 'save-as', 'CmdOrCtrl+Shift+S'),
        line,
        item('Check &Note', 'note', 'CmdOrCtrl+Shift+N'),
        item('&Print Note…', 'print', 'CmdOrCtrl+P'),
        line,
        item('&Close Plate', 'close', 'CmdOrCtrl+W'),
        ...(isMac ? [] : [{ role: 'quit', label: '&Quit' } as const]),
      ],
    },
    {
      label: '&Edit',
      submenu: [
        item('&Undo', 'undo', 'CmdOrCtrl+Z'),
        item('&Redo', 'redo', isMac ? 'Cmd+Shift+Z' : 'Ctrl+Y'),
        line,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
        line,
        item('&Find…', 'find', 'CmdOrCtrl+K'),
      ],
    },
    {
      label: '&View',
      submenu: [{ role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }, line, { role: 'togglefullscreen' }],
    },
    // The system's own window menu closes the window with the keys of “Close Plate”.
    {
      label: '&Window',
      submenu: [{ role: 'minimize' }, ...(isMac ? [{ role: 'zoom' } as const, { role: 'front' } as const] : [])],
    },
    {
      role: 'help',
      submenu: [item('&Handbook', 'handbook', 'F1'), item('&Keys', 'shortcuts'), item('&About Stillplate', 'about')],
    },
  ];
}
