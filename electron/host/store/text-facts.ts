/**
 * What the store keeps beside a document's text. Refuses a text that is no document, or of a newer schema.
 * Core's reading is loaded at the first use: a list of documents does not wait for it.
 */
export async function textFacts(text: string): Promise<{ readonly schema: string; readonly documentHash: string }> {
  const [{ readDocumentText }, { documentHash }] = await Promise.all([
    import('../../../core/document/read-document.ts'),
    import('../../../core/document/document-hash.ts'),
  ]);
  const raw = readDocumentText(text);
  return { schema: String(raw['schema']), documentHash: documentHash(raw) };
}
