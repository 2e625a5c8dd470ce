import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import type { Model } from '../../core/model.ts';

/** The models of a document's text: as it stands and under each option. */
export function modelsOfText(text: string): Model[] {
  const raw = readDocumentText(text);
  const document = readDocument(raw);
  return [null, ...document.options.map(({ id }) => id)].map((id) => appraise(raw, document, id).model);
}
