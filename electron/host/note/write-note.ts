import type { Block, EquationBlock, Note, Section } from '../../../core/note/note.ts';
import { lazily, type Desk } from './desk.ts';
import { openFaces } from './faces.ts';
import { firstPage } from './first-page.ts';
import { putFurniture } from './furniture.ts';
import { house } from './house.ts';
import { openInk, type Ink } from './ink.ts';
import { openPdf } from './open-pdf.ts';
import { columnOf, fillPages, type Piece } from './pages.ts';
import { setEquations } from './set-equation.ts';
import { setFigure } from './set-figure.ts';
import { setList, setParagraph } from './set-paragraph.ts';
import { setSignOff } from './set-sign-off.ts';
import { setTable } from './set-table.ts';
import { baselineOf, setBalanced } from './set-text.ts';
import { openTree } from './tree.ts';
import { unprintable } from './unprintable.ts';

/**
 * Sets a note as a tagged PDF (1.7, asking for PDF/A-3a) with its attachments, and gives its bytes. The same note
 * gives the same bytes on any machine, under any language, time zone and folder. Characters that no embedded font
 * has are printed as a box and listed on the first page; `unprintable(note)` gives the same list.
 * Refuses a date that is none, a table row with more cells than columns, and a figure without extent.
 */
export async function writeNote(note: Note): Promise<Uint8Array> {
  const faces = openFaces();
  const lost = unprintable(note, faces);
  const { pdf, bytes } = openPdf(note);
  const ink = openInk(pdf, faces);
  const column = columnOf(note.paper);
  const root = openTree(pdf);
  const counts = { Table: 0, Figure: 0 };
  const desk: Desk = { ink, column, under: () => root, number: (kind) => ++counts[kind] };
  const pieces = [...firstPage(desk, note, lost), ...setSections(desk, note.sections, 2, '', outlineRoot(ink))];
  fillPages(ink, pieces, column);
  root.end();
  putFurniture(ink, note, column);
  pdf.end();
  return bytes;
}

/** A place in the bookmarks. */
type Bookmark = () => { addItem(title: string, options: object): ReturnType<Bookmark> };

const outlineRoot =
  (ink: Ink): Bookmark =>
  () =>
    ink.pdf.outline;

function setSections(
  desk: Desk,
  sections: readonly Section[],
  level: number,
  prefix: string,
  above: Bookmark,
): Piece[] {
  let count = 0;
  return sections.flatMap((section) => {
    const number = section.numbered === false ? '' : `${prefix}${++count}`;
    const node = lazily(() => desk.under().branch('Sect', { title: section.title }));
    const inside: Desk = { ...desk, under: node };
    const { pieces: heading, bookmark } = setHeading(inside, section, number, level, above);
    return [
      ...heading,
      ...setBlocks(inside, section.blocks),
      ...setSections(inside, section.sections ?? [], level + 1, number === '' ? '' : `${number}.`, bookmark),
    ];
  });
}

function setHeading(desk: Desk, section: Section, number: string, level: number, above: Bookmark) {
  const { ink, column } = desk;
  const type = level === 2 ? house.type.h2 : level === 3 ? house.type.h3 : house.type.h4;
  const role = level === 2 ? 'bold' : 'semibold';
  const hang = number === '' ? 0 : ink.width(number, role, type.size) + 0.8 * type.size;
  const lines = setBalanced(ink, section.title, role, type.size, column.width - hang, 0.6);
  const node = lazily(() => desk.under().branch(`H${Math.min(level, 6)}`));
  let item: ReturnType<Bookmark> | undefined;
  const pieces = lines.map((line, i): Piece => ({
    height: type.leading + (i === lines.length - 1 && level === 2 ? 2 : 0),
    before: i > 0 ? 0 : level === 2 ? 26 : 17,
    keep: true,
    ...(i === 0 && section.startsPage && { newPage: true }),
    put(y) {
      if (i === 0) {
        const title = number === '' ? section.title : `${number}  ${section.title}`;
        item = above().addItem(title, {
          fit: false,
          top: y - 6,
          left: ink.pdf.page.width,
          zoom: 0,
          expanded: level === 2,
        });
      }
      ink.colour(house.ink);
      node().mark(() => {
        if (i === 0 && number !== '') ink.text(number, role, type.size, column.left, baselineOf(y, type));
        ink.put(line.word, column.left + hang, baselineOf(y, type), type.size);
      });
    },
  }));
  return { pieces, bookmark: () => item! };
}

function setBlocks(desk: Desk, blocks: readonly Block[]): Piece[] {
  const pieces: Piece[] = [];
  let run: EquationBlock[] = [];
  const endRun = (): void => {
    pieces.push(...setEquations(desk, run));
    run = [];
  };
  for (const block of blocks) {
    if (block.kind === 'equation') {
      run.push(block);
      continue;
    }
    endRun();
    const set = setBlock(desk, block);
    // Boxes to sign in stay with the words above them: a signature under nothing signs anything.
    const last = pieces.at(-1);
    if (block.kind === 'signOff' && last) pieces[pieces.length - 1] = { ...last, keep: true };
    pieces.push(...set);
  }
  endRun();
  return pieces;
}

function setBlock(desk: Desk, block: Exclude<Block, EquationBlock>): Piece[] {
  switch (block.kind) {
    case 'paragraph':
      return setParagraph(desk, block);
    case 'list':
      return setList(desk, block);
    case 'table':
      return setTable(desk, block);
    case 'figure':
      return setFigure(desk, block);
    case 'signOff':
      return setSignOff(desk, block);
  }
}
