import type { IssueStep } from '../issue/issue-step.ts';
import type { IssueView } from '../note/issue-view.ts';
import type { Edit, Json } from '../document/edit.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { PlateDocument } from '../document/schema.ts';
import type { UserRowKind } from '../document/user-rows.ts';
import type { Figure, Section } from '../note/note.ts';
import type { NewPlate } from './new-plate.ts';
import type { SolvedForces } from '../loads/solved-forces.ts';
import type { Chapter } from '../handbook/handbook.ts';
import type { Kind } from '../quantity/kinds.ts';
import type { RefusalText } from '../refusal.ts';
import type { Reading } from '../scene/reading.ts';
import type { Scene } from '../scene/scene.ts';
import type { JournalEntry } from '../host/host-schema.ts';
import type { ComparisonView } from './comparison-view.ts';
import type { ResultView } from './result-view.ts';
import type { ToldComparison } from './told-comparison.ts';

/** What the window asks of the engine, call by call. Everything is structured-cloneable. */
export interface EngineCalls {
  /** A document's text and the journal since; shows `option` where the document has it, else its chosen one. */
  readonly open: {
    readonly takes: {
      readonly text: string;
      readonly journal: readonly JournalEntry[];
      readonly option?: string | null;
    };
    readonly gives: { readonly head: number };
  };
  /** Puts the document away: nothing more is told of it. */
  readonly close: { readonly takes: null; readonly gives: null };
  /** Applies an edit. Gives the journal's entries that say it. */
  readonly edit: { readonly takes: { readonly edit: Edit }; readonly gives: readonly JournalEntry[] };
  readonly undo: { readonly takes: null; readonly gives: readonly JournalEntry[] };
  readonly redo: { readonly takes: null; readonly gives: readonly JournalEntry[] };
  /** Which option the window is about; null is the document as it stands. */
  readonly show: { readonly takes: { readonly option: string | null }; readonly gives: null };
  /** Forces of the whole plate under an option, as the solver found them: what the document asks for is judged with them. */
  readonly solved: {
    readonly takes: { readonly option: string | null; readonly forces: SolvedForces };
    readonly gives: null;
  };
  /** The option that changes are counted from. */
  readonly countFrom: { readonly takes: { readonly option: string | null }; readonly gives: null };
  /** The document's text as it is now, with its hash. */
  readonly text: { readonly takes: null; readonly gives: { readonly text: string; readonly hash: string } };
  /** The journal up to now was put away with a revision: a step back beyond it is an edit of its own. */
  readonly putAway: { readonly takes: null; readonly gives: null };
  /** A check at a place, as the note prints it. `situation`: its id, null for the gravest. */
  readonly explain: {
    readonly takes: {
      readonly option: string | null;
      readonly check: string;
      readonly place: string;
      readonly situation: string | null;
    };
    readonly gives: Section;
  };
  /** Lives of all details of an option, as the note tells them. */
  readonly durability: { readonly takes: { readonly option: string | null }; readonly gives: Section };
  /** How the plate is put down and got back, as the note tells it. */
  readonly recovery: { readonly takes: { readonly option: string | null }; readonly gives: Section };
  readonly fatigue: { readonly takes: { readonly option: string | null }; readonly gives: Section };
  /** An option bolted and welded with all else equal, as the note tells it. */
  readonly against: { readonly takes: { readonly option: string | null }; readonly gives: Section };
  /** The plate of an option as a test's setup begins with it: typed quantities by name. */
  readonly testSetup: {
    readonly takes: { readonly option: string | null };
    readonly gives: { readonly [name: string]: string };
  };
  /** The check note of an option, as the host takes it: a tree of some megabytes, written as a message where it is made. */
  readonly note: {
    /** `register`: text of the register of its notes, null where there is none yet. */
    readonly takes: { readonly option: string | null; readonly register: string | null };
    readonly gives: { readonly wire: Uint8Array };
  };
  /** Where the note of an option stands. */
  readonly issue: {
    readonly takes: { readonly option: string | null; readonly register: string | null };
    readonly gives: IssueView;
  };
  /** The register with one step more, as text. Refuses a step that may not be taken now, saying what is missing. */
  readonly issueStep: {
    readonly takes: { readonly option: string | null; readonly register: string | null; readonly step: IssueStep };
    readonly gives: { readonly register: string };
  };
  /** What a typed text means, before it becomes an edit. */
  readonly readQuantity: {
    readonly takes: { readonly kind: Kind; readonly typed: string };
    readonly gives: { readonly si: number; readonly text: string };
  };
  /** Reads a text that is not open: what the start page and an import show of it. */
  readonly preview: { readonly takes: { readonly text: string }; readonly gives: PreviewView };
  readonly newPlate: {
    readonly takes: NewPlate;
    readonly gives: { readonly text: string; readonly preview: PreviewView };
  };
  /** Another document beside this one: what differs, and its numbers against ours. */
  readonly compareWith: { readonly takes: { readonly text: string }; readonly gives: ComparisonView };
  /** The handbook, of no document. */
  readonly handbook: { readonly takes: null; readonly gives: readonly Chapter[] };
  /** Built-in rows of a kind whose id or title has every word of a text. */
  readonly catalogueRows: {
    readonly takes: { readonly kind: UserRowKind; readonly find: string };
    readonly gives: { readonly rows: readonly RowView[]; readonly found: number };
  };
  /** A built-in row as the open document's own, under an id that is free in it, with no source yet. */
  readonly rowLike: {
    readonly takes: { readonly kind: UserRowKind; readonly id: string };
    readonly gives: { readonly row: { readonly [name: string]: Json } };
  };
  /** Rows of the catalogue for choices in fields. */
  readonly choices: { readonly takes: null; readonly gives: Choices };
}

export type EngineCall = keyof EngineCalls;

/** A row of the catalogue in words. */
export interface RowView {
  readonly id: string;
  readonly title: string;
  readonly values: string;
  readonly source: string;
}

export interface Choices {
  readonly sections: readonly { readonly id: string; readonly title: string }[];
  readonly materials: readonly { readonly id: string; readonly title: string; readonly family: string }[];
  readonly bolts: readonly string[];
  readonly classes: readonly string[];
  readonly weldMetals: readonly string[];
  readonly plates: { readonly metric: readonly string[]; readonly inch: readonly string[] };
  readonly bases: readonly {
    readonly id: string;
    readonly title: string;
    readonly factors: readonly { readonly name: string; readonly value: number; readonly meaning: string }[];
  }[];
}

/** What the engine tells without being asked, after each edit. */
export type EngineNews =
  | { readonly kind: 'document'; readonly view: DocumentView }
  | { readonly kind: 'result'; readonly view: ResultView }
  | { readonly kind: 'scene'; readonly option: string | null; readonly scene: Scene }
  /** What can be laid over the scene, whenever the result changes. */
  | { readonly kind: 'readings'; readonly readings: readonly Reading[] }
  | { readonly kind: 'comparison'; readonly view: ToldComparison };

export interface DocumentView {
  /** Number of journal entries so far. */
  readonly head: number;
  readonly raw: RawDocument;
  /** The option shown, and the document as it has it: as typed, and read. Null while something in it is wrong. */
  readonly option: string | null;
  readonly laid: RawDocument;
  readonly read: PlateDocument | null;
  /** What is wrong, each with the path of its field (in the shown option's document, or under `options.…`). */
  readonly faults: readonly RefusalText[];
  readonly hash: string;
  /** What a step back or forth would do, in words; null when there is none. */
  readonly undo: string | null;
  readonly redo: string | null;
}

/** A document at a glance. */
export interface PreviewView {
  readonly name: string;
  readonly subject: string;
  readonly plan: Figure | null;
  readonly facts: readonly (readonly [title: string, text: string])[];
  readonly faults: readonly RefusalText[];
}

/** Messages between the page and the worker. */
export type ToEngine = { readonly id: number; readonly call: EngineCall; readonly takes: unknown };
export type FromEngine =
  | { readonly id: number; readonly gives: unknown }
  | { readonly id: number; readonly refusals: readonly RefusalText[] }
  | { readonly news: EngineNews }
  | { readonly id: number; readonly broken: string };
