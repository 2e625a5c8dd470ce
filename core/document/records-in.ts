/** Names of the records that a document's tests are of, each once. text: a document's JSON. */
export function recordsIn(text: string): readonly string[] {
  const names = new Set<string>();
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    const { record } = value as { readonly record?: { readonly name?: unknown; readonly hash?: unknown } };
    if (typeof record?.name === 'string' && typeof record.hash === 'string') names.add(record.name);
    for (const own of Object.values(value)) visit(own);
  };
  visit((JSON.parse(text) as { readonly tests?: unknown }).tests);
  return [...names];
}
