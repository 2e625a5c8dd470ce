import { readFileSync } from 'node:fs';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import type { Model } from '../../core/model.ts';

let models: readonly Model[] | undefined;

/** The samples as they stand and in their first options, one bolted and one welded: derived once for all test files. */
export const sampleModels = (): readonly Model[] => (models ??= ['small', 'middle', 'inch'].flatMap(modelsOf));

function modelsOf(name: string): Model[] {
  const raw = readDocumentText(readFileSync(new URL(`../../samples/${name}.stillplate.json`, import.meta.url), 'utf8'));
  const document = readDocument(raw);
  return [null, document.options[0]!.id].map((id) => appraise(raw, document, id).model);
}
