import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** What a word is for; each role has a chain of faces, the first one that has the glyph sets it. */
export type Role = 'text' | 'italic' | 'semibold' | 'bold' | 'symbol' | 'upright';
export type FaceName = keyof typeof files;

/** The part of a fontkit font that the note needs. fontkit carries no types of its own. */
export interface FontkitFont {
  readonly unitsPerEm: number;
  hasGlyphForCodePoint(codePoint: number): boolean;
  layout(text: string): {
    readonly glyphs: readonly { readonly bbox: { readonly minY: number; readonly maxY: number } }[];
  };
}

const require = createRequire(import.meta.url);
const { create } = require('fontkit') as { create: (bytes: Uint8Array) => FontkitFont };

const source = '@expo-google-fonts/source-sans-3';
const dejavu = 'dejavu-fonts-ttf';
const files = {
  SourceSans: [source, '400Regular/SourceSans3_400Regular.ttf'],
  SourceSansItalic: [source, '400Regular_Italic/SourceSans3_400Regular_Italic.ttf'],
  SourceSansSemiBold: [source, '600SemiBold/SourceSans3_600SemiBold.ttf'],
  SourceSansBold: [source, '700Bold/SourceSans3_700Bold.ttf'],
  SerifItalic: [dejavu, 'ttf/DejaVuSerifCondensed-Italic.ttf'],
  Serif: [dejavu, 'ttf/DejaVuSerifCondensed.ttf'],
  Sans: [dejavu, 'ttf/DejaVuSans.ttf'],
  SansBold: [dejavu, 'ttf/DejaVuSans-Bold.ttf'],
  Math: [dejavu, 'ttf/DejaVuMathTeXGyre.ttf'],
} as const;

const chains: Readonly<Record<Role, readonly FaceName[]>> = {
  text: ['SourceSans', 'Sans', 'Math'],
  italic: ['SourceSansItalic', 'Sans', 'Math'],
  semibold: ['SourceSansSemiBold', 'SansBold', 'Sans', 'Math'],
  bold: ['SourceSansBold', 'SansBold', 'Sans', 'Math'],
  symbol: ['SerifItalic', 'Serif', 'Math', 'Sans'],
  upright: ['Serif', 'Math', 'Sans'],
};

/** DejaVu is drawn larger on its em than Source Sans (x-height 0.55 against 0.49): these bring both to one x-height. */
const scales: Readonly<Record<FaceName, number>> = {
  SourceSans: 1, SourceSansItalic: 1, SourceSansSemiBold: 1, SourceSansBold: 1,
  SerifItalic: 0.92, Serif: 0.92, Sans: 0.9, SansBold: 0.9, Math: 0.92,
}; // prettier-ignore

/** What is printed for a character that no face has: a box that anyone sees is a box. */
export const placeholder = '□';

export interface Faces {
  font(face: FaceName): FontkitFont;
  /** The face that has all of these code points, or undefined. */
  faceFor(role: Role, cluster: string): FaceName | undefined;
  scale(face: FaceName): number;
}

/**
 * Opens the faces, each when first asked for. One set of faces serves one note and no more: fontkit remembers
 * for each glyph the character that it first stood for, so a shared set would let one note change another's bytes.
 */
export function openFaces(): Faces {
  const opened = new Map<FaceName, FontkitFont>();
  const font = (face: FaceName): FontkitFont => {
    let found = opened.get(face);
    if (!found) opened.set(face, (found = create(fileBytes(face))));
    return found;
  };
  const known = new Map<string, FaceName | undefined>();
  return {
    font,
    scale: (face) => scales[face],
    faceFor(role, cluster) {
      const key = `${role} ${cluster}`;
      if (!known.has(key))
        known.set(
          key,
          chains[role].find((face) => covers(font(face), cluster)),
        );
      return known.get(key);
    },
  };
}

function covers(font: FontkitFont, cluster: string): boolean {
  for (const character of cluster) if (!font.hasGlyphForCodePoint(character.codePointAt(0)!)) return false;
  return true;
}

const read = new Map<FaceName, Uint8Array>();
function fileBytes(face: FaceName): Uint8Array {
  let bytes = read.get(face);
  if (!bytes) {
    const [pack, path] = files[face];
    // The package, not the file beside us: it holds when this module is bundled into one file elsewhere.
    bytes = new Uint8Array(readFileSync(join(dirname(require.resolve(`${pack}/package.json`)), path)));
    read.set(face, bytes);
  }
  return bytes;
}
