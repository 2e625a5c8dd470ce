import type { Json } from '../../core/document/edit.ts';

/** How a file of a layout was read when its result was accepted, whatever document it was in. */
export interface KnownLayout {
  readonly of: 'tank' | 'sea';
  /** Names and units of its columns. */
  readonly layout: string;
  readonly reading: Json;
}

/** So many are kept, the last used first. */
const mostKept = 30;

/** The layouts with one more, in front; that of the same columns is replaced. */
export const withLayout = (
  layouts: readonly KnownLayout[],
  { of, layout, reading }: KnownLayout,
): readonly KnownLayout[] =>
  // prettier-ignore
  [{ of, layout, reading }, ...layouts.filter((one) => one.of !== of || one.layout !== layout)].slice(0, mostKept);

/** How a file of this layout was read before; undefined where none was. */
export const readingOf = (layouts: readonly KnownLayout[], of: KnownLayout['of'], layout: string): Json | undefined =>
  layouts.find((one) => one.of === of && one.layout === layout)?.reading;

/** Layouts of a kept text: what is not understood is left out. */
export function readLayouts(kept: unknown): readonly KnownLayout[] {
  if (!Array.isArray(kept)) return [];
  return kept
    .filter((one): one is KnownLayout => {
      if (typeof one !== 'object' || one === null) return false;
      const { of, layout, reading } = one as Partial<Record<keyof KnownLayout, unknown>>;
      return (of === 'tank' || of === 'sea') && typeof layout === 'string' && typeof reading === 'object' && reading !== null; // prettier-ignore
    })
    .slice(0, mostKept);
}
