import type { Note } from '../../../core/note/note.ts';
import { openFaces, type Faces, type Role } from './faces.ts';
import { printableRuns } from './printable-runs.ts';

/**
 * The characters of a note that no embedded font has, as U+ code points in order of their number. Each is printed
 * as a box where it stands; the note's first page lists them.
 */
export function unprintable(note: Note, faces: Faces = openFaces()): string[] {
  const lost = new Set<number>();
  visit(note, (text, role) => {
    for (const line of text.split(/\r\n?|\n/))
      for (const run of printableRuns(line, role, faces))
        for (const character of run.lost) lost.add(character.codePointAt(0)!);
  });
  return [...lost]
    .sort((a, b) => a - b)
    .map((codePoint) => `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`);
}

/** Every text of the tree, so that a kind of block added later cannot be forgotten here. */
function visit(value: unknown, see: (text: string, role: Role) => void): void {
  if (typeof value === 'string') see(value, 'text');
  else if (Array.isArray(value)) for (const item of value) visit(item, see);
  else if (value && typeof value === 'object' && !ArrayBuffer.isView(value))
    for (const item of Object.values(value)) visit(item, see);
}
