/** Parts of a document that are none of the plate: its options, the window's state, and what was asked about it and found. */
const beside = ['options', 'chosen', 'view', 'search', 'spreads', 'sensitivity'] as const;

type Beside = (typeof beside)[number];

/** A document, or its text as read, without what stands beside the plate. */
export function plateAlone<T extends object>(document: T): Omit<T, Beside> {
  return Object.fromEntries(
    Object.entries(document).filter(([key]) => !(beside as readonly string[]).includes(key)),
  ) as Omit<T, Beside>;
}

/** What stands beside the plate in a document. */
export function besidePlate<T extends { readonly [key in Beside]?: unknown }>(document: T): Pick<T, Beside> {
  return Object.fromEntries(beside.map((key) => [key, document[key]])) as Pick<T, Beside>;
}
