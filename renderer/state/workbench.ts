import { create } from 'zustand';
import type { ComparisonView } from '../../core/engine/comparison-view.ts';
import type { Choices, DocumentView } from '../../core/engine/messages.ts';
import type { ResultView } from '../../core/engine/result-view.ts';
import type { DocumentLine, JournalEntry } from '../../core/host/host-schema.ts';
import type { RefusalText } from '../../core/refusal.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { Scene } from '../../core/scene/scene.ts';
import type { HandbookPlace } from './handbook-place.ts';
import type { SheetName } from './stages.ts';
import type { WaterGainsShown } from './use-water-gains.ts';

/** A check at a place that stands open. `situation` null: the gravest. */
export interface OpenCheck {
  readonly check: string;
  readonly place: string;
  readonly situation: string | null;
}

/** Whether every edit so far is on the disk. */
export type Keeping =
  | { readonly state: 'kept' }
  | { readonly state: 'writing' }
  /** There is no store, or it refused: nothing is lost yet, but it lives in this window only. */
  | { readonly state: 'not kept'; readonly refusal: RefusalText };

/** What the window shows. Views come from the engine as they are; the rest is what the person is looking at. */
export interface Workbench {
  readonly page: 'start' | 'new' | 'work';
  readonly line: DocumentLine | null;
  readonly document: DocumentView | null;
  readonly result: ResultView | null;
  readonly scene: Scene | null;
  readonly readings: readonly Reading[];
  readonly comparison: ComparisonView | null;
  readonly waterGains: WaterGainsShown;
  readonly choices: Choices | null;
  readonly keeping: Keeping;
  /** Another window was first: its entries, until the person has chosen. */
  readonly conflict: { readonly head: number; readonly since: readonly JournalEntry[] } | null;
  /** The document's file was changed by another program: what it holds now, until the person has chosen. */
  readonly outside: { readonly file: string; readonly text: string } | null;
  readonly notices: readonly Notice[];
  readonly sheet: SheetName;
  /** Part of the plate that is selected: a bay, tube, panel, bolt, weld or attachment. */
  readonly selection: string | null;
  readonly hover: string | null;
  readonly openCheck: OpenCheck | null;
  /** The sheet takes the whole width; the picture of the plate is put aside. */
  readonly wide: boolean;
  readonly handbook: HandbookPlace;
  /** Bays chosen in the plan, for what is set next. */
  readonly bays: readonly string[];
  readonly dialog: 'finder' | 'shortcuts' | 'about' | 'problem' | 'history' | null;
}

/** Something said at the window's edge until it is put away. */
export interface Notice {
  readonly id: number;
  readonly tone: 'plain' | 'loud';
  readonly what: string;
  readonly mend: string;
}

export const emptyWorkbench: Workbench = {
  page: 'start',
  line: null,
  document: null,
  result: null,
  scene: null,
  readings: [],
  comparison: null,
  waterGains: new Map(),
  choices: null,
  keeping: { state: 'kept' },
  conflict: null,
  outside: null,
  notices: [],
  sheet: 'panels',
  selection: null,
  hover: null,
  openCheck: null,
  wide: false,
  handbook: { isOpen: false, chapter: 'hour', entry: null },
  bays: [],
  dialog: null,
};

export const useWorkbench = create<Workbench>(() => emptyWorkbench);

let lastNotice = 0;

/** Says something at the window's edge. */
export function notify(tone: Notice['tone'], { what, mend }: Pick<Notice, 'what' | 'mend'>): void {
  const id = ++lastNotice;
  useWorkbench.setState(({ notices }) => ({ notices: [...notices.slice(-4), { id, tone, what, mend }] }));
}

export const putAwayNotice = (id: number): void =>
  useWorkbench.setState(({ notices }) => ({ notices: notices.filter((notice) => notice.id !== id) }));
