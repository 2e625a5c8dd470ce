import { placeholder, type FaceName, type Faces, type Role } from './faces.ts';

/** A stretch of text in one face. `lost` holds the characters that a placeholder stands for. */
export interface Run {
  readonly face: FaceName;
  readonly text: string;
  readonly lost: readonly string[];
}

const plainAscii = /^[\x20-\x7e]*$/;
/** A base with the marks, joiners and variation selectors that belong to it: they must stay in one face. */
const clusters = /\P{M}(?:\p{M}|\u200d\P{M})*|\p{M}+/gsu;
/** Characters with no ink that only steer the setting; where a face lacks them they are left out, nothing is lost. */
const inkless = /[\u00ad\u200b-\u200d\u2060\ufeff\ufe00-\ufe0f]/gu;
/** These can make a name read otherwise than it is stored, so they are shown. */
const misleading = /[\u202a-\u202e\u2066-\u2069\u200e\u200f]/u;

/**
 * Cuts one line of text into runs, each in the first face of the role's chain that has its glyphs. A character
 * that no face has becomes a visible box and is named in `lost`: nothing drops out of a name in silence.
 */
export function printableRuns(text: string, role: Role, faces: Faces): Run[] {
  const first = faces.faceFor(role, ' ')!;
  if (plainAscii.test(text)) return text === '' ? [] : [{ face: first, text, lost: [] }];
  const runs: { face: FaceName; text: string; lost: string[] }[] = [];
  const add = (face: FaceName, piece: string, lost?: string): void => {
    let last = runs.at(-1);
    if (last?.face !== face) runs.push((last = { face, text: '', lost: [] }));
    last.text += piece;
    if (lost !== undefined) last.lost.push(lost);
  };
  for (const cluster of text.normalize('NFC').replace(/\t/g, ' ').match(clusters) ?? []) {
    const whole = misleading.test(cluster) ? undefined : faces.faceFor(role, cluster);
    if (whole) {
      add(whole, cluster);
      continue;
    }
    for (const character of cluster.replace(inkless, '')) {
      const face = misleading.test(character) ? undefined : faces.faceFor(role, character);
      if (face) add(face, character);
      else add(faces.faceFor('text', placeholder)!, placeholder, character);
    }
  }
  return runs;
}
