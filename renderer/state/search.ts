import { create } from 'zustand';
import type { FoundView, FromSearch, SearchProgress, ToSearch } from '../../core/engine/search-service.ts';
import type { SensitivityRecord } from '../../core/document/sensitivity-field.ts';
import type { RefusalText } from '../../core/refusal.ts';
import { notify, useWorkbench } from './workbench.ts';

export type Found = Extract<FromSearch, { readonly kind: 'found' }>;

/** What the window knows of the search: of which document and option, as they were, and how far it is. */
export interface SearchState {
  readonly edit: number;
  readonly of: { readonly raw: unknown; readonly option: string | null } | null;
  readonly state: 'idle' | 'running' | 'stopped';
  readonly progress: SearchProgress | null;
  readonly appraising: { readonly done: number; readonly of: number; readonly what: string } | null;
  readonly found: Found | null;
  readonly refusals: readonly RefusalText[];
  /** How far the sensitivity is, and the last that was found; it names what it is of. */
  readonly varying: { readonly done: number; readonly of: number } | null;
  readonly sensitive: SensitivityRecord | null;
  /** Place of the option looked at among those found. */
  readonly at: number;
}

const empty: SearchState = { edit: 0, of: null, state: 'idle', progress: null, appraising: null, found: null, refusals: [], varying: null, sensitive: null, at: 0 }; // prettier-ignore

export const useSearch = create<SearchState>(() => empty);

let worker: Worker | null = null;

function started(): Worker {
  const fresh = new Worker(new URL('search-worker.js', document.baseURI), { type: 'module' });
  fresh.onmessage = ({ data }: MessageEvent<FromSearch>) => hear(data);
  fresh.onerror = (event) => {
    event.preventDefault();
    hear({ kind: 'broken', why: event.message });
  };
  return fresh;
}

const send = (message: ToSearch): void => (worker ??= started()).postMessage(message);

/** Searches from the option shown, as the document stands. */
export function startSearch(): void {
  const { document: view } = useWorkbench.getState();
  if (!view) return;
  const edit = useSearch.getState().edit + 1;
  const { sensitive } = useSearch.getState();
  useSearch.setState({ ...empty, edit, sensitive, of: { raw: view.raw, option: view.option }, state: 'running' });
  send({ kind: 'search', edit, raw: view.raw, option: view.option });
}

/** What moves the governing check of the option shown most. */
export function startSensitivity(): void {
  const { document: view } = useWorkbench.getState();
  if (!view) return;
  const edit = useSearch.getState().edit + 1;
  useSearch.setState({ edit, varying: { done: 0, of: 1 }, refusals: [] });
  send({ kind: 'sensitivity', edit, raw: view.raw, option: view.option });
}

export const stopSearch = (): void => send({ kind: 'stop' });

export function goOnSearching(): void {
  useSearch.setState({ state: 'running' });
  send({ kind: 'go on' });
}

export const lookAt = (at: number): void => useSearch.setState({ at });

/** One option found, by its place. */
export const foundAt = ({ found, at }: SearchState): FoundView | null => found?.found[at] ?? null;

function hear(news: FromSearch): void {
  if (news.kind === 'broken') {
    console.error(news.why);
    worker?.terminate();
    worker = null;
    useSearch.setState(({ edit }) => ({ ...empty, edit }));
    notify('loud', { what: 'The search stopped before its end', mend: 'Search again; report it if it stays so.' });
    return;
  }
  if (news.edit !== useSearch.getState().edit) return;
  if (news.kind === 'progress') useSearch.setState({ progress: news.progress });
  else if (news.kind === 'appraising') useSearch.setState({ appraising: news });
  else if (news.kind === 'varying') useSearch.setState({ varying: news });
  else if (news.kind === 'sensitive') useSearch.setState({ varying: null, sensitive: news.found });
  else if (news.kind === 'stopped')
    useSearch.setState(({ varying }) => (varying ? { varying: null } : { state: 'stopped' }));
  else if (news.kind === 'refused') useSearch.setState({ state: 'idle', varying: null, refusals: news.refusals });
  else useSearch.setState({ state: 'idle', appraising: null, progress: news.progress, found: news });
}
