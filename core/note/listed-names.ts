/** "bay A1, bay A6, plate" → "bays A1, A6; plate": a first word that several share is said once. */
export function listedNames(names: readonly string[]): string {
  const groups = new Map<string, string[]>();
  for (const name of names) {
    const [, word = '', rest = name] = /^(.+) (\S+)$/.exec(name) ?? [];
    groups.set(word, [...(groups.get(word) ?? []), rest]);
  }
  return [...groups]
    .map(([word, of]) => (word === '' ? of.join(', ') : `${word}${of.length > 1 ? 's' : ''} ${of.join(', ')}`))
    .join(groups.size > 1 ? '; ' : ', ');
}
