import { readFileSync } from 'node:fs';
import { appraise, type Appraisal } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';

/** A sample under an option. */
export function appraisalOf(sample: string, option: string | null = null): Appraisal {
  const raw = readDocumentText(
    readFileSync(new URL(`../../samples/${sample}.stillplate.json`, import.meta.url), 'utf8'),
  );
  return appraise(raw, readDocument(raw), option);
}
