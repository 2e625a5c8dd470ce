/** Forces at points as arrows: along the plate's height, their length by their size. SI. */
export interface Marks {
  readonly kind: MarkKind;
  /** What each stands at, “bolt A1-07”, “A1 on B”. */
  readonly titles: readonly string[];
  /** Three numbers each: place on the panel's outer face, m, and displacement there. */
  readonly places: Float32Array;
  readonly moves: Float32Array;
  /** Which way is off the tube: 1 up, −1 down. */
  readonly off: Int8Array;
  /** Positive: pulls the panel off, or presses it on, by the kind. N, Pa or N/m. */
  readonly values: Float32Array;
}

export const markKinds = ['bolt pull', 'contact pressure', 'weld force'] as const;
export type MarkKind = (typeof markKinds)[number];

/** Unit of print in the metric system, and whether the arrow points off the tube. */
export const markWords: Readonly<Record<MarkKind, { readonly unit: string; readonly isOff: boolean }>> = {
  'bolt pull': { unit: 'kN', isOff: true },
  'contact pressure': { unit: 'MPa', isOff: false },
  'weld force': { unit: 'kN/m', isOff: true },
};

/** The largest with its number; null where there is none. */
export function largestMark({ values }: Pick<Marks, 'values'>): { readonly value: number; readonly at: number } | null {
  let at = -1;
  values.forEach((value, i) => {
    if (at < 0 || value > values[at]!) at = i;
  });
  return at < 0 ? null : { value: values[at]!, at };
}
