import type { HostEvent } from '../../core/host/host-schema.ts';

/** What the host tells without being asked, to all who listen. */
export interface Events {
  readonly tell: (event: HostEvent) => void;
  readonly listen: (hear: (event: HostEvent) => void) => () => void;
}

export function events(): Events {
  const hearers = new Set<(event: HostEvent) => void>();
  return {
    tell: (event) => {
      for (const hear of hearers) hear(event);
    },
    listen: (hear) => {
      // A wrapper each: the same function may listen twice.
      const own = (event: HostEvent): void => hear(event);
      hearers.add(own);
      return () => void hearers.delete(own);
    },
  };
}
