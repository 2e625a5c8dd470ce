import type { Json } from '../../core/document/edit.ts';
import { readingOf, withLayout, type KnownLayout } from './known-layout.ts';
import { useSettings } from './settings.ts';

/** Keeps how a layout was read, for the next file like it; nothing where it was read by its names alone. */
export function rememberLayout(of: KnownLayout['of'], layout: string | undefined, reading: unknown): void {
  if (layout === undefined || typeof reading !== 'object' || reading === null) return;
  const { layouts } = useSettings.getState();
  useSettings.setState({ layouts: withLayout(layouts, { of, layout, reading: reading as Json }) });
}

/** How a file of this layout was read before; undefined where none was. */
export const knownReading = (of: KnownLayout['of'], layout: string): Json | undefined =>
  readingOf(useSettings.getState().layouts, of, layout);
