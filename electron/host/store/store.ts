import type { HostEvent } from '../../../core/host/host-schema.ts';
import type { RefusalText } from '../../../core/refusal.ts';
import type { StoreCall, StoreGives, StoreTakes } from './store-calls.ts';

/** A store in a thread of its own. A call rejects with a `Refusal` for what cannot be done. */
export interface Store {
  readonly ask: <C extends StoreCall>(call: C, takes: StoreTakes<C>) => Promise<StoreGives<C>>;
  readonly listen: (hear: (event: HostEvent) => void) => () => void;
  readonly close: () => Promise<void>;
}

/** A store and what its opening had to say, or why there is none. */
export type OpenedStore =
  | { readonly store: Store; readonly notices: readonly string[]; readonly sqlite: string }
  | { readonly store: null; readonly fault: { readonly what: string; readonly mend: string } };

/** What the thread is started with. */
export interface StoreThreadData {
  readonly folder: string;
  /** ISO 8601, names what is set aside. */
  readonly now: string;
  /** Another build of SQLite's binding than the package's own: Electron needs one of its own. */
  readonly nativeBinding?: string;
  /** How often to look for what other processes wrote, ms. */
  readonly lookEvery: number;
}

export type ToStore =
  { readonly id: number; readonly call: StoreCall; readonly takes: unknown } | { readonly close: true };
export type FromStore =
  | { readonly opened: { readonly notices: readonly string[]; readonly sqlite: string } }
  | { readonly fault: { readonly what: string; readonly mend: string } }
  | { readonly event: HostEvent }
  | { readonly id: number; readonly gives: unknown }
  | { readonly id: number; readonly refusals: readonly RefusalText[] }
  | { readonly id: number; readonly broken: string };
