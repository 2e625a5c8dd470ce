import { refusal } from '../refusal.ts';
import type { BoltedFixing } from './schema.ts';

/** How the bolts of a fixing stand: in lines, at a largest pitch and an edge distance; or on listed places. */
export type BoltPattern =
  | { readonly kind: 'lines'; readonly pitch: Length; readonly edgeDistance: Length }
  | { readonly kind: 'listed'; readonly places: NonNullable<BoltedFixing['places']> };

type Length = NonNullable<BoltedFixing['pitch']>;

/** The pattern of a fixing that was read: its rule has seen to it that it is one of the two. */
export function boltPattern({ pitch, edgeDistance, places }: BoltedFixing): BoltPattern {
  if (places) return { kind: 'listed', places };
  if (pitch && edgeDistance) return { kind: 'lines', pitch, edgeDistance };
  throw refusal({
    what: 'Bolts in lines need a pitch and an edge distance',
    where: { field: 'fixing' },
    mend: 'Give both, or list the bolts one by one in "places".',
  });
}

/** In few words: “up to 80 mm apart”, or “on 16 listed places”. */
export function patternWords(fixing: BoltedFixing): string {
  const pattern = boltPattern(fixing);
  return pattern.kind === 'lines' ? `up to ${pattern.pitch.typed} apart` : listWords(pattern.places);
}

/** “on 16 listed places”. */
export const listWords = ({ length: n }: readonly unknown[]): string =>
  n === 1 ? 'on one listed place' : `on ${n} listed places`;
