/** Bays of a typed list: single ids and rectangles, "A1, B2:C4". What names no bay is left out. */
export function baysInRange(typed: string, known: readonly string[]): readonly string[] {
  const has = new Map(known.map((id) => [id.toUpperCase(), id]));
  const found = typed
    .toUpperCase()
    .split(/[,;\s]+/)
    .flatMap((part) => {
      const [from, to] = part.split(':').map(parts);
      if (!from) return [];
      if (!to) return [has.get(part) ?? ''];
      const within = (value: number, a: number, b: number) => value >= Math.min(a, b) && value <= Math.max(a, b);
      return known.filter((id) => {
        const at = parts(id.toUpperCase());
        return at && within(at.letters, from.letters, to.letters) && within(at.number, from.number, to.number);
      });
    })
    .filter((id) => id !== '');
  return [...new Set(found)];
}

/** Letters as a number (A is 1, AA 27) and the number of a bay's id. */
function parts(id: string): { readonly letters: number; readonly number: number } | null {
  const match = /^([A-Z]+)(\d+)$/.exec(id.trim());
  if (!match) return null;
  return {
    letters: [...match[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0),
    number: Number(match[2]),
  };
}
