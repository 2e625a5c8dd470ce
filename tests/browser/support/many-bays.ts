import type { Json } from '../../document/middle.ts';

/** The middle sample grown to 6 by 10 bays, each with a bolted panel; over 2,000 bolts, no options. */
export function manyBays(middle: Json): Json {
  const raw = structuredClone(middle);
  raw['grid'].mainTubes = { ...raw['grid'].mainTubes, count: 7, spacing: '1 m' };
  raw['grid'].crossTubes = { ...raw['grid'].crossTubes, count: 11 };
  raw['designs']['underside'].fixing.pitch = '110 mm';
  const bays = ['A', 'B', 'C', 'D', 'E', 'F'].flatMap((row) => Array.from({ length: 10 }, (_, i) => `${row}${i + 1}`));
  return { ...raw, panels: Object.fromEntries(bays.map((bay) => [bay, 'underside'])), options: [], chosen: null };
}
