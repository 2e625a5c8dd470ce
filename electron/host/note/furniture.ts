import type { Note } from '../../../core/note/note.ts';
import { house } from './house.ts';
import type { Ink } from './ink.ts';
import type { Column } from './pages.ts';
import { programName } from './program-name.ts';
import { setText } from './set-text.ts';

const { size } = house.type.furniture;

/** Head and foot of every page, put when the number of pages is known. The first page has its own head. */
export function putFurniture(ink: Ink, note: Note, column: Column): void {
  const { start, count } = ink.pdf.bufferedPageRange();
  // The stamp has the first claim on the head's width, the title what it leaves.
  const stamp = shortened(ink, note.stamp.replace(/\s+/g, ' '), column.width * 0.55, 'bold');
  const titleRoom = column.width - ink.width(stamp, 'bold', size) - 18;
  const title = shortened(ink, note.title.replace(/\s+/g, ' '), titleRoom);
  const program = shortened(ink, programName(note), column.width * 0.4);
  for (let i = 0; i < count; i++) {
    ink.pdf.switchToPage(start + i);
    ink.forget();
    ink.artifact('Pagination', () => {
      if (i > 0) {
        const y = column.top - 34;
        ink.colour(house.quiet);
        ink.text(title, 'text', size, column.left, y);
        ink.colour(house.ink);
        ink.text(stamp, 'bold', size, column.right, y, 'end');
        ink.line(column.left, y + 6, column.right, y + 6, house.rule.hair);
      }
      const y = column.bottom + 32;
      ink.line(column.left, y - 11, column.right, y - 11, house.rule.hair);
      ink.colour(house.quiet);
      if (note.documentHash) ink.text(`Document ${note.documentHash.slice(0, 16)}`, 'text', size, column.left, y);
      ink.text(program, 'text', size, column.left + column.width / 2, y, 'middle');
      ink.colour(house.ink);
      ink.text(`page ${i + 1} of ${count}`, 'text', size, column.right, y, 'end');
    });
  }
}

/** As much of a line as fits, with an ellipsis for the rest. */
function shortened(ink: Ink, text: string, width: number, role: 'text' | 'bold' = 'text'): string {
  if (ink.width(text, role, size) <= width) return text;
  const [line] = setText(ink, text, role, size, width - ink.width('…', role, size));
  return `${line!.word.runs.map((run) => run.text).join('').trimEnd()}…`; // prettier-ignore
}
