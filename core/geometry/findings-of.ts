import type { Catalogue } from '../catalogue/catalogue.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import type { Geometry } from './geometry.ts';
import type { LengthText } from './length-text.ts';

/** What an engineer must see in the geometry. */
export function findingsOf(_document: PlateDocument, _geometry: Omit<Geometry, 'findings'>, _catalogue: Catalogue, _text: LengthText): Finding[] {
  return [];
}
