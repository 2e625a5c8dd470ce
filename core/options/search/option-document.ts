import type { PlateDocument } from '../../document/schema.ts';
import type { RawOption, Json } from '../../document/edit.ts';
import type { ZoneChoices } from './candidates.ts';

/** Candidates of all zones, one number a zone. */
export type Digits = readonly number[];

/** The name of a zone's design in a document that a search made. */
const designName = (at: number): string => `found-${at + 1}`;

/** The document that an option of the space is: the base with each zone's panels of its candidate. */
export function optionDocument(base: PlateDocument, zones: readonly ZoneChoices[], digits: Digits): PlateDocument {
  const designs: Record<string, PlateDocument['designs'][string]> = { ...base.designs };
  const panels: Record<string, string> = { ...base.panels };
  zones.forEach((zone, at) => {
    const design = zone.designOf(digits[at]!);
    const name = designName(at);
    if (design) designs[name] = design;
    for (const panel of zone.zone.panels) {
      if (design) panels[panel] = name;
      else delete panels[panel];
    }
  });
  return { ...base, designs, panels };
}

/** The same as an option that can be added to the document: what differs from where the search started. */
export function foundOption(zones: readonly ZoneChoices[], digits: Digits, from: string | null, id: string): RawOption {
  const designs: Record<string, Json> = {};
  const panels: Record<string, Json> = {};
  zones.forEach((zone, at) => {
    const raw = zone.rawOf(digits[at]!);
    const name = `${id}-${at + 1}`.slice(0, 40);
    if (raw) designs[name] = raw as Json;
    for (const panel of zone.zone.panels) panels[panel] = raw ? name : null;
  });
  return { id, title: titleOf(zones, digits), base: from, changes: { designs, panels } };
}

/** What the zones are, in few words. */
export const titleOf = (zones: readonly ZoneChoices[], digits: Digits): string =>
  zones.map((zone, at) => (zones.length > 1 ? `${zone.zone.name}: ` : '') + zone.wordsOf(digits[at]!)).join('; ');
