import { existsSync } from 'node:fs';
import { join } from 'node:path';

/**
 * SQLite's binding built for this Electron, or null. One build fits one kind of program: Node's stays in the package,
 * Electron's lies in build/native/electron-<ABI>-<platform>-<processor>/better_sqlite3.node. Null in plain Node, and
 * where no such file lies: then the package's own build is tried, and the store says what does not fit.
 */
export function sqliteBinding(here: string, versions: NodeJS.ProcessVersions = process.versions): string | null {
  if (versions['electron'] === undefined) return null;
  const name = `electron-${versions.modules}-${process.platform}-${process.arch}`;
  const file = join(here, '../../native', name, 'better_sqlite3.node');
  return existsSync(file) ? file : null;
}
