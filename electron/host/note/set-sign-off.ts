import type { Block } from '../../../core/note/note.ts';
import type { Desk } from './desk.ts';
import { house } from './house.ts';
import type { Piece } from './pages.ts';
import { baselineOf, setText } from './set-text.ts';

type SignOff = Extract<Block, { kind: 'signOff' }>;

const { cell, furniture } = house.type;
const between = 14;
const inset = 8;
/** Height to write one field by hand. */
const fieldHeight = 27;

/** Boxes to sign in, a frame for each role with a line to write on for each field. */
export function setSignOff(desk: Desk, { roles, fields, values = [] }: SignOff): Piece[] {
  const { ink, column } = desk;
  const across = roles.length === 3 || roles.length > 4 ? 3 : 2;
  const width = (column.width - between * (across - 1)) / across;
  const rows = Array.from({ length: Math.ceil(roles.length / across) }, (_, r) =>
    roles.slice(r * across, (r + 1) * across),
  );
  return rows.map((inRow, r) => {
    const heads = inRow.map((role) => setText(ink, role, 'semibold', cell.size, width - 2 * inset));
    const headHeight = Math.max(...heads.map((lines) => lines.length)) * cell.leading + 8;
    const height = headHeight + fields.length * fieldHeight + 9;
    return {
      height,
      before: r === 0 ? 13 : between,
      put(y: number) {
        inRow.forEach((_, i) => {
          const left = column.left + i * (width + between);
          ink.artifact('Layout', () => {
            ink.pdf.rect(left, y, width, height).lineWidth(house.rule.thin).stroke(house.ink);
            ink.line(left, y + headHeight, left + width, y + headHeight, house.rule.hair);
            fields.forEach((_, f) => {
              const line = y + headHeight + (f + 1) * fieldHeight;
              ink.line(left + inset, line, left + width - inset, line, house.rule.hair, house.hair);
            });
          });
          ink.colour(house.ink);
          const node = desk.under().branch('P');
          node.mark(() => {
            heads[i]!.forEach((line, n) =>
              ink.put(line.word, left + inset, baselineOf(y + 4 + n * cell.leading, cell), cell.size),
            );
            ink.colour(house.quiet);
            fields.forEach((field, f) => {
              const [line] = setText(ink, field, 'text', furniture.size, width - 2 * inset);
              ink.put(line!.word, left + inset, y + headHeight + f * fieldHeight + 10.5, furniture.size);
            });
            ink.colour(house.ink);
            fields.forEach((field, f) => {
              const value = values[r * across + i]?.[field];
              if (value === undefined) return;
              const [line] = setText(ink, value, 'text', cell.size, width - 2 * inset);
              ink.put(line!.word, left + inset, y + headHeight + (f + 1) * fieldHeight - 4, cell.size);
            });
          });
        });
      },
    };
  });
}
