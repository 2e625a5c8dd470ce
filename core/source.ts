/** How a design basis puts its safety: factors on load and resistance, or an allowable part of the strength. */
export type Safety = 'partial factors' | 'allowable stress';

/** Where a rule or number comes from. `memory` marks one that was not read in the document itself. */
export interface Source {
  readonly document: string;
  readonly edition?: string;
  readonly clause?: string;
  readonly memory?: boolean;
  /** Given when the source serves one kind of design basis only. */
  readonly safety?: Safety;
  /** Given when the source serves parts of one metal only. */
  readonly metal?: 'aluminium';
}
