/** Where a command writes; the tests give their own. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Folder that relative paths start from. */
  readonly folder: string;
  /** All that comes on the standard input, where a command asks for it. */
  readonly input: () => Promise<string>;
}

/** Exit codes: what a script may rely on. */
export const exit = { passes: 0, failsOrUnjudged: 1, badInput: 2, cannotWrite: 3 } as const;
