import { house } from './house.ts';
import type { Faces, FaceName, Role } from './faces.ts';
import { printableRuns } from './printable-runs.ts';

type Pdf = PDFKit.PDFDocument;

/** A piece of text in one face, measured at size 1. */
export interface Glyphs {
  readonly face: FaceName;
  readonly text: string;
  readonly scale: number;
  readonly width: number;
}
/** Text that is set on one line: its runs, and its width at size 1. */
export interface SetWord {
  readonly runs: readonly Glyphs[];
  readonly width: number;
}

/** Measures text and puts it on the current page; remembers what it has measured and which colour is in the pen. */
export interface Ink {
  readonly pdf: Pdf;
  word(text: string, role: Role): SetWord;
  width(text: string, role: Role, size: number): number;
  /** How far the glyphs reach above and below the baseline, at size 1. */
  reach(word: SetWord): { readonly above: number; readonly below: number };
  colour(colour: string): void;
  put(word: SetWord, x: number, baseline: number, size: number): void;
  text(text: string, role: Role, size: number, x: number, baseline: number, anchor?: 'start' | 'middle' | 'end'): void;
  /** Text that is found and copied but not seen, behind a sign that is drawn as a path. */
  unseen(text: string, x: number, baseline: number, size: number): void;
  line(x1: number, y1: number, x2: number, y2: number, width: number, colour?: string): void;
  /** Rules, bars and repeated matter: no part of what a reader is told. */
  artifact(kind: 'Layout' | 'Pagination', draw: () => void): void;
  /** After a save and restore of the page's state the colour in the pen is unknown. */
  forget(): void;
}

export function openInk(pdf: Pdf, faces: Faces): Ink {
  const words = new Map<string, SetWord>();
  const reaches = new Map<SetWord, { above: number; below: number }>();
  const registered = new Set<FaceName>();
  let pen = '';
  pdf.on('pageAdded', () => (pen = ''));

  const use = (face: FaceName): void => {
    if (!registered.has(face)) {
      pdf.registerFont(face, faces.font(face) as unknown as string);
      registered.add(face);
    }
    pdf.font(face);
  };
  const ink: Ink = {
    pdf,
    word(text, role) {
      const key = `${role} ${text}`;
      let found = words.get(key);
      if (!found) {
        const runs = printableRuns(text, role, faces).map((run) => {
          const scale = faces.scale(run.face);
          use(run.face);
          return {
            face: run.face,
            text: run.text,
            scale,
            width: (pdf.fontSize(1000).widthOfString(run.text) / 1000) * scale,
          };
        });
        words.set(key, (found = { runs, width: runs.reduce((sum, run) => sum + run.width, 0) }));
      }
      return found;
    },
    width: (text, role, size) => ink.word(text, role).width * size,
    reach(word) {
      let found = reaches.get(word);
      if (!found) {
        found = { above: 0, below: 0 };
        for (const run of word.runs) {
          const font = faces.font(run.face);
          for (const { bbox } of font.layout(run.text).glyphs) {
            if (!Number.isFinite(bbox.maxY)) continue; // a space has no outline
            found.above = Math.max(found.above, (bbox.maxY / font.unitsPerEm) * run.scale);
            found.below = Math.max(found.below, (-bbox.minY / font.unitsPerEm) * run.scale);
          }
        }
        reaches.set(word, found);
      }
      return found;
    },
    colour(colour) {
      if (colour === pen) return;
      pdf.fillColor(colour);
      pen = colour;
    },
    put(word, x, baseline, size) {
      for (const run of word.runs) {
        use(run.face);
        pdf.fontSize(size * run.scale).text(run.text, x, baseline, { lineBreak: false, baseline: 'alphabetic' });
        x += run.width * size;
      }
    },
    text(text, role, size, x, baseline, anchor = 'start') {
      const word = ink.word(text, role);
      const shift = anchor === 'start' ? 0 : anchor === 'middle' ? 0.5 : 1;
      ink.put(word, x - shift * word.width * size, baseline, size);
    },
    unseen(text, x, baseline, size) {
      pdf.addContent('3 Tr');
      ink.text(text, 'upright', size, x, baseline);
      pdf.addContent('0 Tr');
    },
    line(x1, y1, x2, y2, width, colour = house.ink) {
      pdf.moveTo(x1, y1).lineTo(x2, y2).lineWidth(width).stroke(colour);
    },
    artifact(kind, draw) {
      pdf.markContent('Artifact', { type: kind });
      draw();
      pdf.endMarkedContent();
    },
    forget: () => void (pen = ''),
  };
  return ink;
}
