import type { Catalogue } from '../catalogue/catalogue.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { Finding } from '../finding.ts';
import { attachmentFindings } from './attachment-findings.ts';
import { bearingFindings } from './bearing-findings.ts';
import { boltFindings } from './bolt-findings.ts';
import { compartmentFindings } from './compartment-findings.ts';
import type { Geometry, Tube } from './geometry.ts';
import { holeFindings } from './hole-findings.ts';
import type { LengthText } from './length-text.ts';
import { plugFindings } from './plug-findings.ts';
import { tubeFindings } from './tube-findings.ts';

/** A plate before its findings, and what they are found and said with. */
export interface Inspected {
  readonly document: PlateDocument;
  readonly geometry: Omit<Geometry, 'findings'>;
  readonly tubes: ReadonlyMap<string, Tube>;
  readonly text: LengthText;
  readonly catalogue: Catalogue;
}

/** What an engineer must see in the geometry: bearing, bolts, holes, trapped water and air, tubes, attachments. */
export function findingsOf(
  document: PlateDocument,
  geometry: Omit<Geometry, 'findings'>,
  catalogue: Catalogue,
  text: LengthText,
): Finding[] {
  const tubes = new Map([...geometry.mainTubes, ...geometry.crossTubes].map((tube) => [tube.id, tube]));
  const inspected: Inspected = { document, geometry, tubes, catalogue, text };
  return [
    bearingFindings,
    boltFindings,
    holeFindings,
    plugFindings,
    compartmentFindings,
    tubeFindings,
    attachmentFindings,
  ].flatMap((find) => find(inspected));
}
