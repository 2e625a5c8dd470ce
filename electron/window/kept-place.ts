import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeFileWhole } from '../host/write-file.ts';
import { readPlace, type WindowPlace } from './window-place.ts';

const fileIn = (folder: string): string => join(folder, 'window.json');

/** Where the window stood last time; null where nothing is known or the file is no good. */
export function keptPlace(folder: string): WindowPlace | null {
  try {
    return readPlace(JSON.parse(readFileSync(fileIn(folder), 'utf8')));
  } catch {
    // The first start, or a file somebody changed: the window opens in the middle.
    return null;
  }
}

export const keepPlace = (folder: string, place: WindowPlace): Promise<void> =>
  writeFileWhole(fileIn(folder), JSON.stringify(place));
