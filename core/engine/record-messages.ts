import type { Json } from '../document/edit.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { SeaDeployment } from '../document/sea-tests-field.ts';
import type { TankTest } from '../document/tests-field.ts';
import type { Section } from '../note/note.ts';
import type { UnitSystem } from '../quantity/format-quantity.ts';
import type { RefusalText } from '../refusal.ts';
import type { FoundDelay } from '../tank/delay-ways.ts';

/** What the window asks about records, call by call. A record is handed over once and then named by its hash. */
export interface RecordCalls {
  /** Takes a file apart. Gives its hash, and its columns in the file's order. */
  readonly open: { readonly takes: { readonly bytes: Uint8Array }; readonly gives: RecordHead };
  /** How the file reads under a test's settings, before anything is accepted. */
  readonly look: { readonly takes: OfTest; readonly gives: Section };
  /** The test reduced, and what the document keeps once it is accepted. */
  readonly reduce: {
    readonly takes: OfTest;
    readonly gives: { readonly section: Section; readonly accepted: { readonly [key: string]: Json } };
  };
  /** How late the force is read, in each way that the document gives records for; that of the run in air was handed over too. */
  readonly delay: {
    readonly takes: OfTest;
    readonly gives: { readonly section: Section; readonly ways: readonly FoundDelay[] };
  };
  /** Two tests against each other. Both records were handed over. */
  readonly compare: { readonly takes: OfTest & { readonly other: TankTest }; readonly gives: Section };
  /** What the plate of a document, under an option, should give by theory at the amplitudes of a test. Takes seconds. */
  readonly predict: {
    readonly takes: OfTest & { readonly raw: RawDocument; readonly option: string | null };
    readonly gives: Section;
  };
  /** The motion left over in the stated sea; float and power take-off are stated. Takes seconds. */
  readonly motion: {
    readonly takes: { readonly raw: RawDocument; readonly option: string | null; readonly units: UnitSystem };
    readonly gives: Section;
  };
  /** What the document keeps of a recorded motion of the plate. The record was handed over. */
  readonly recorded: {
    readonly takes: { readonly record: TankTest['record']; readonly source: string };
    readonly gives: { readonly [key: string]: Json };
  };
  /** How the files of a deployment in the sea read, before anything is accepted. */
  readonly lookSea: { readonly takes: OfDeployment; readonly gives: readonly Section[] };
  /** How still the plate was, and what the document keeps of it once it is accepted. */
  readonly reduceSea: {
    readonly takes: OfDeployment;
    readonly gives: { readonly section: Section; readonly accepted: { readonly [key: string]: Json } };
  };
  /** Two deployments at like seas. The records of both were handed over. */
  readonly compareSea: { readonly takes: OfDeployment & { readonly other: SeaDeployment }; readonly gives: Section };
}

export type RecordCall = keyof RecordCalls;

interface OfTest {
  readonly test: TankTest;
  readonly units: UnitSystem;
}

interface OfDeployment {
  readonly deployment: SeaDeployment;
  readonly units: UnitSystem;
}

export interface RecordHead {
  readonly hash: string;
  /** Empty names stand as “column 2”. */
  readonly columns: readonly { readonly name: string; readonly unit: string }[];
  readonly rows: number;
}

/** Messages between the page and the worker. */
export type ToRecords = { readonly id: number; readonly call: RecordCall; readonly takes: unknown };
export type FromRecords =
  | { readonly id: number; readonly gives: unknown }
  | { readonly id: number; readonly refusals: readonly RefusalText[] }
  | { readonly id: number; readonly broken: string };
