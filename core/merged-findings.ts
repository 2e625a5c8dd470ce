import type { Finding } from './finding.ts';

/** A finding with every place at which the same was found. */
export interface MergedFinding extends Omit<Finding, 'place'> {
  readonly places: readonly string[];
}

/**
 * Findings that say the same of several places, as one: same kind, same mend, and the same sentence but for the names
 * of bays, bolts and tubes in it. The first one's sentence stands for all. For reading; a result lists each by itself.
 */
export function mergedFindings(findings: readonly Finding[]): readonly MergedFinding[] {
  const groups = new Map<string, { first: Finding; places: Set<string> }>();
  for (const finding of findings) {
    const key = JSON.stringify([finding.id, finding.mend, unnamed(finding.text)]);
    const group = groups.get(key);
    if (group) group.places.add(finding.place);
    else groups.set(key, { first: finding, places: new Set([finding.place]) });
  }
  return [...groups.values()].map(({ first: { id, text, mend }, places }) => ({
    id,
    text: sentence(text),
    mend: sentence(mend),
    places: [...places],
  }));
}

/** The sentence with names such as A3, A3-07, C11, "tube 4" or "tube B" taken out. */
const unnamed = (text: string): string =>
  text.replace(/\b[A-Z]{1,2}\d+(:[A-Z]{1,2}\d+)?(-\d+)?\b/g, '#').replace(/\btube [A-Z\d]+\b/g, 'tube #');

/** Ends with one full stop. */
const sentence = (text: string): string => `${text.replace(/[.\s]+$/, '')}.`;
