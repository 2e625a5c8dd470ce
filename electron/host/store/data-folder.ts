import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

/** Where documents are kept: STILLPLATE_DATA, else the platform's folder for a program's own data of one user. */
export function dataFolder(env: NodeJS.ProcessEnv, platform: NodeJS.Platform, home = homedir()): string {
  const told = env['STILLPLATE_DATA'];
  if (told) return resolve(told);
  switch (platform) {
    case 'win32':
      // Not the roaming folder: that one may be a network drive.
      return join(env['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local'), 'Stillplate');
    case 'darwin':
      return join(home, 'Library', 'Application Support', 'Stillplate');
    default:
      // XDG Base Directory Specification: a path that is not absolute is to be passed over.
      return join(
        env['XDG_DATA_HOME']?.startsWith('/') ? env['XDG_DATA_HOME'] : join(home, '.local', 'share'),
        'stillplate',
      );
  }
}
