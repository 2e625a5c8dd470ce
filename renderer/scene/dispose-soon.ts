/** Until what takes their place is drawn for certain, ms. */
const wait = 500;

/**
 * Frees what three holds, after what took its place is drawn: a program that goes with its last material would be compiled
 * anew for the next, which holds the window for fifty milliseconds and more.
 */
export const disposeSoon = (...things: readonly { dispose(): void }[]): void =>
  void setTimeout(() => things.forEach((thing) => thing.dispose()), wait);
