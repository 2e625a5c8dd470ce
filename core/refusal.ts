/** What a refusal says: what is wrong, where (a path and words that the window can light), and how to mend it. */
export interface RefusalText {
  readonly what: string;
  readonly where?: Readonly<Record<string, string | number>>;
  readonly mend: string;
}

/** Bad input, in the engineer's words and as fields. Thrown by core; a host hands it on as a value. */
export class Refusal extends Error implements RefusalText {
  override readonly name = 'Refusal';
  readonly what: string;
  readonly where: Readonly<Record<string, string | number>>;
  readonly mend: string;
  /** When several inputs are wrong at once: each of them; the refusal itself then repeats the first. */
  readonly all: readonly RefusalText[];

  constructor(texts: readonly [RefusalText, ...RefusalText[]]) {
    const [first] = texts;
    super(texts.map(refusalLine).join('\n'));
    this.what = first.what;
    this.where = first.where ?? {};
    this.mend = first.mend;
    this.all = texts;
  }
}

/** One wrong input. */
export const refusal = (text: RefusalText): Refusal => new Refusal([text]);

/** The refusal as one line of text. A path already says the field, so its words are left to the window. */
export function refusalLine({ what, where, mend }: RefusalText): string {
  const place = Object.entries(where ?? {})
    .filter(([key]) => !(key === 'field' && where?.['path'] !== undefined))
    .map(([key, value]) => (key === 'path' ? String(value) : `${key} ${value}`))
    .join(', ');
  return `${place ? `${place}: ` : ''}${what}. ${mend}`;
}

/** Refuses the first value that is not a positive finite number, by its name. */
export function requirePositive(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(value > 0 && Number.isFinite(value)))
      throw refusal({
        what: `${name} must be positive, it is ${value}`,
        where: { field: name },
        mend: `Give ${name} a value above zero`,
      });
  }
}
