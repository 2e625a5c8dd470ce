/** Ids as a sentence names them: "A1-01, A1-02, A1-03 and 9 more". */
export const listed = (ids: readonly string[]): string =>
  ids.length <= 4 ? ids.join(', ') : `${ids.slice(0, 3).join(', ')} and ${ids.length - 3} more`;
