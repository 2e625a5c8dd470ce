import { DataTexture, FloatType, NearestFilter, RGBAFormat } from 'three';
import { extremesOf } from '../../core/scene/extremes-of.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { Scene, ScenePart } from '../../core/scene/scene.ts';
import { colourAt, type Colour } from './colour-map.ts';
import type { Palette } from './palette.ts';

/** Texels in a row of the texture; two a part: colour and pattern, lift. */
export const texelsInRow = 512;
export const patterns = { plain: 0, fails: 1, unjudged: 2, sheet: 3 } as const;

/** An empty texture with room for the looks of every part; the shaders read it by the part's number. */
export function statesTexture({ parts }: Pick<Scene, 'parts'>): DataTexture {
  const rows = Math.max(1, Math.ceil((2 * parts.length) / texelsInRow));
  const texture = new DataTexture(new Float32Array(4 * texelsInRow * rows), texelsInRow, rows, RGBAFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  return texture;
}

/** Writes colour, pattern and lift of every part. */
export function writeStates(
  texture: DataTexture,
  parts: readonly ScenePart[],
  looks: (part: ScenePart) => Looks,
): void {
  const data = texture.image.data as Float32Array;
  parts.forEach((part, i) => {
    const { colour, pattern } = looks(part);
    data.set([...colour, patterns[pattern], part.lift, 0, 0, 0], 8 * i);
  });
  texture.needsUpdate = true;
}

export interface Looks {
  readonly colour: Colour;
  readonly pattern: keyof typeof patterns;
}

/** Looks of a part: its material, or its value on the map; what fails or cannot be judged gets a hatch. */
export function looksUnder(reading: Reading | null, palette: Palette): (part: ScenePart) => Looks {
  const range = reading && rangeOf(reading);
  return ({ id, kind }) => {
    const plain = kind === 'bay' ? 'sheet' : 'plain';
    if (!reading || kind === 'bay') return { colour: palette[kind], pattern: plain };
    const value = reading.values.get(id);
    const verdict = reading.verdicts.get(id);
    const pattern =
      verdict === 'fails' ? 'fails' : verdict === 'cannot be judged' || value === null ? 'unjudged' : plain;
    if (value === undefined || value === null || !range) return { colour: palette.unvalued, pattern };
    return { colour: colourAt((value - range.from) / (range.to - range.from), palette.isDark), pattern };
  };
}

/**
 * The range that the map spans: from zero (or the lowest value, if below) to the highest, the limit counted in where the
 * values come near it. Null where there is no value.
 */
export function rangeOf(reading: Reading): { readonly from: number; readonly to: number } | null {
  const extremes = extremesOf(reading);
  if (!extremes) return null;
  const from = Math.min(0, extremes.lowest.value);
  const top = Math.max(extremes.highest.value, reading.limit ?? -Infinity);
  return { from, to: top > from ? top : from + 1 };
}
