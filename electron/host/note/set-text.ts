import type { Role } from './faces.ts';
import type { TypeSize } from './house.ts';
import type { Ink, SetWord } from './ink.ts';

/** A line of text that fits its column. `width` in points. */
export interface TextLine {
  readonly word: SetWord;
  readonly width: number;
}

/**
 * Breaks text into lines no wider than `width` points: at the text's own line ends, at spaces, after hyphens and
 * slashes, and where a single word is wider than the column, inside the word. At least one line comes back, and
 * every character of the text is on some line.
 */
export function setText(ink: Ink, text: string, role: Role, size: number, width: number): TextLine[] {
  const lines: TextLine[] = [];
  for (const paragraph of text.split(/\r\n?|\n/)) {
    const finish = (line: string): void => {
      const word = ink.word(visualOrder(line.trimEnd()), role);
      lines.push({ word, width: word.width * size });
    };
    let line = '';
    let filled = 0;
    for (const piece of whole(ink, pieces(paragraph), role, size, width)) {
      const wide = ink.width(piece.trimEnd(), role, size);
      if (filled + wide <= width) {
        line += piece;
        filled += ink.width(piece, role, size);
        continue;
      }
      if (line.trim() !== '') finish(line);
      const parts = wide <= width ? [piece] : cut(ink, piece, role, size, width);
      for (const part of parts.slice(0, -1)) finish(part);
      line = parts.at(-1)!;
      filled = ink.width(line, role, size);
    }
    finish(line);
  }
  return lines;
}

/**
 * The same on as many lines, but none of them a lone word at the end: the column narrows, down to `least` of its
 * width, until the last line holds a fair share. A heading may narrow further than running text.
 */
export function setBalanced(
  ink: Ink,
  text: string,
  role: Role,
  size: number,
  width: number,
  least: number,
): TextLine[] {
  const first = setText(ink, text, role, size, width);
  if (first.length < 2 || /[\r\n]/.test(text)) return first;
  const fair = least < 0.8 ? 0.6 : 0.16;
  for (let part = 1; part >= least; part -= 0.02) {
    const lines = setText(ink, text, role, size, width * part);
    if (lines.length > first.length) return first;
    if (lines.at(-1)!.width >= fair * width * part) return lines;
  }
  return first;
}

/** Baseline of a line whose leading begins at y. Capitals of Source Sans are 0.66 of the size. */
export const baselineOf = (y: number, type: TypeSize): number => y + type.leading / 2 + 0.33 * type.size;

/** Words with the space after them, and parts of long words after which a break is fair. No-break spaces stay inside. */
function pieces(paragraph: string): string[] {
  return paragraph.match(/[^ \t\u200b]*?\p{L}{3}[-–—/](?=\p{L}{3})|[^ \t\u200b]*[ \t\u200b]+|[^ \t\u200b]+/gu) ?? [];
}

/** A unit as the note prints it, with what closes the sentence or bracket after it. */
const unit = /^(?:[kMGmµ]?(?:m|N|Pa|g|t|s|Hz|rad|J|W)|cm|in|ft|deg|°C?|%)(?:[²³⁴]|[·/^].*)?[),.;:]*\s*$/u;

/** Joins what is not parted at the end of a line: a number and its unit, and the sides of a multiplication sign. */
function whole(ink: Ink, parts: readonly string[], role: Role, size: number, width: number): string[] {
  const joined: string[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    const belongs = last && ((/\d ?$/.test(last) && (unit.test(part) || part === '× ')) || last.endsWith('× '));
    if (belongs && ink.width((last + part).trimEnd(), role, size) <= width) joined[joined.length - 1] = last + part;
    else joined.push(part);
  }
  return joined;
}

/** Cuts a word wider than the column, after a mark that joins words where one is near the end, else anywhere. */
function cut(ink: Ink, word: string, role: Role, size: number, width: number): string[] {
  const parts: string[] = [];
  // Per character, not per prefix: kerning inside a word this long is less than the column's own slack.
  let part = '';
  let filled = 0;
  for (const cluster of word.match(/\P{M}\p{M}*|\p{M}+/gsu) ?? []) {
    const wide = ink.width(cluster, role, size);
    if (part !== '' && filled + wide > width && cluster.trim() !== '') {
      const fair = Math.max(...['_', '.', ',', ';', ':', '\\', '=', '-'].map((mark) => part.lastIndexOf(mark))) + 1;
      const keep = fair > part.length * 0.6 ? fair : part.length;
      parts.push(part.slice(0, keep));
      part = part.slice(keep);
      filled = part === '' ? 0 : ink.width(part, role, size);
    }
    part += cluster;
    filled += wide;
  }
  parts.push(part);
  return parts;
}

/** Words of a right-to-left script with spaces between; fontkit turns the letters, here the words are turned. */
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]+(?: +[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]+)+/gu;
const visualOrder = (line: string): string =>
  line.replace(rightToLeft, (words) => words.split(' ').reverse().join(' '));
