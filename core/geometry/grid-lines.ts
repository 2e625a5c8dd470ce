import type { Tube } from './geometry.ts';
import type { PlacedPanel } from './placed-panels.ts';

/** The tubes under a panel from its low side to its high side, the outer two and those between. */
export interface GridLines {
  readonly main: readonly GridLine[];
  readonly cross: readonly GridLine[];
}

export interface GridLine {
  readonly tube: Tube;
  /** Between the panel's bays, not along its edge. */
  readonly inner: boolean;
}

/** Tubes that a panel touches, sorted by position. */
export function gridLines({ bays, tubes: edge }: PlacedPanel, tubes: ReadonlyMap<string, Tube>): GridLines {
  const lines = (ids: Iterable<string>, low: string, high: string): GridLine[] =>
    [...new Set(ids)]
      .map((id) => ({ tube: tubes.get(id)!, inner: id !== low && id !== high }))
      .sort((a, b) => a.tube.at - b.tube.at);
  return {
    main: lines(
      bays.flatMap((b) => b.main),
      edge.mainLow,
      edge.mainHigh,
    ),
    cross: lines(
      bays.flatMap((b) => b.cross),
      edge.crossLow,
      edge.crossHigh,
    ),
  };
}
