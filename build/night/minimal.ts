/**
 * The shortest text found that still fails, by taking ever smaller pieces out of one that does: no character of it can
 * go without the failure going too (delta debugging, Zeller and Hildebrandt 2002).
 */
export function minimal(text: string, fails: (text: string) => boolean): string {
  let least = text;
  for (let piece = Math.ceil(text.length / 2); piece >= 1;) {
    let isShorter = false;
    for (let at = 0; at < least.length;) {
      const without = least.slice(0, at) + least.slice(at + piece);
      if (fails(without)) {
        least = without;
        isShorter = true;
      } else at += piece;
    }
    if (!isShorter) piece = piece === 1 ? 0 : Math.floor(piece / 2);
  }
  return least;
}
