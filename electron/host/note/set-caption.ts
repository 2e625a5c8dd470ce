import { lazily, type Desk } from './desk.ts';
import { house } from './house.ts';
import type { Piece } from './pages.ts';
import { baselineOf, setText } from './set-text.ts';
import type { Branch } from './tree.ts';

const type = house.type.caption;

/** “Table 3” or “Figure 3” and its words, which hang beside it; a piece a line. */
export function setCaption({ ink, column }: Desk, name: string, text: string, node: () => Branch): Piece[] {
  const hang = ink.width(name, 'semibold', type.size) + 0.9 * type.size;
  const lines = setText(ink, text, 'text', type.size, column.width - hang);
  const caption = lazily(() => node().branch('Caption'));
  return lines.map((line, i) => ({
    height: type.leading,
    put(y) {
      ink.colour(house.ink);
      caption().mark(() => {
        const baseline = baselineOf(y, type);
        if (i === 0) ink.text(name, 'semibold', type.size, column.left, baseline);
        ink.put(line.word, column.left + hang, baseline, type.size);
      });
    },
  }));
}
