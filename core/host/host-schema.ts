import * as z from 'zod';

// The page's content policy forbids code made from text; zod probes for it otherwise.
z.config({ jitless: true });

/**
 * What the window may ask of the desktop, and what it gets: the only place where the two meet. Arguments of each call
 * are checked where a message becomes a call. Values are JSON and Uint8Array; no path of the machine enters the page:
 * a file is a handle and a name.
 */

/** Longest text of a document or of one edit's record, in characters. */
const longestText = 20_000_000;
/** A register holds every revision whole. */
const longestRegister = 400_000_000;
const key = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/, 'an id of the store');
const shortText = z.string().max(400);
const count = z.number().int().min(0);
const bytes = z.custom<Uint8Array>((value) => value instanceof Uint8Array, 'bytes');

/** One entry of a document's journal: the edit as JSON text, or a step back or forth. */
const journalEntry = z.strictObject({
  kind: z.enum(['edit', 'undo', 'redo']),
  /** The edit of core/document/edit.ts as JSON; empty for a step. */
  edit: z.string().max(longestText),
});

/** A document in the store, as a list shows it. */
const documentLine = z.strictObject({
  id: key,
  name: shortText,
  /** Number of the newest journal entry. */
  head: count,
  /** When it was changed last, ISO 8601. */
  changed: z.string(),
  trashed: z.boolean(),
  /** Name of the file that each save also writes, if the user chose one. */
  file: shortText.nullable(),
  /** Why it cannot be opened. */
  fault: shortText.nullable(),
});

/** A document to be worked on: the text of its last revision or import, and every edit since. */
const openedDocument = z.strictObject({
  line: documentLine,
  text: z.string().max(longestText),
  journal: z.array(journalEntry),
});

/** A revision: append-only, each holds the hash of the one before. */
const revisionLine = z.strictObject({
  number: count,
  made: z.string(),
  remark: shortText,
  /** Hash of the document (RFC 8785). */
  documentHash: z.string(),
  /** Hash over this revision and the hash of the one before. */
  chainHash: z.string(),
});

const issuedNoteLine = z.strictObject({
  number: count,
  made: z.string(),
  name: shortText,
  documentHash: z.string(),
  bytes: count,
});

/** A file that the user chose: its content, and a handle to write to it later. */
const chosenFile = z.strictObject({ handle: key, name: shortText, text: z.string(), readOnly: z.boolean() });
const writtenFile = z.strictObject({ name: shortText, folder: shortText });

const menuCommand = z.enum([
  'new', 'open', 'import', 'save', 'save-as', 'close', 'undo', 'redo', 'find', 'print', 'note', 'revisions', 'handbook', 'shortcuts', 'about',
]); // prettier-ignore

const pageDifference = z.strictObject({ page: count, printed: z.string(), recomputed: z.string() });
/** What verifying a note found: it stands when neither list of differences has an entry. */
const verifyReport = z.strictObject({
  documentHash: z.string(),
  /** Versions of the program that wrote the note and that verified it. */
  madeBy: z.string(),
  verifiedBy: z.string(),
  sameBytes: z.boolean(),
  /** Relative difference that results may have: 0 by the same version on a machine of the same arithmetic. */
  tolerance: z.number(),
  pages: count,
  pageDifferences: z.array(pageDifference),
  /** Numbers that differ by one unit of their last printed digit, where the arithmetic may: told, and no fault. */
  roundedOtherwise: z.array(pageDifference),
  otherDifferences: z.array(z.string()),
  signatures: z.array(
    z.strictObject({
      signer: z.string(),
      issuer: z.string(),
      /** Whose box it stands in. */
      role: z.string().nullable(),
      /** The time that its signer claims, as the file writes it. */
      claimed: z.string(),
      /** Who stamped it and when; null where nobody did. */
      stamp: z.strictObject({ by: z.string(), issuer: z.string(), time: z.string() }).nullable(),
      faults: z.array(z.string()),
      remarks: z.array(z.string()),
    }),
  ),
});

/** What the host tells without being asked. */
const hostEvent = z.discriminatedUnion('kind', [
  /** Entries, name, file or trash of a document changed, by any window of any process; `writer` is who wrote last. */
  z.strictObject({ kind: z.literal('document-changed'), id: key, head: count, writer: key }),
  /** The journal up to entry `at` was put away with a revision: an undo beyond it is an edit of its own. */
  z.strictObject({ kind: z.literal('revision-saved'), id: key, number: count, at: count }),
  z.strictObject({ kind: z.literal('job-progress'), job: key, done: z.number(), of: z.number(), doing: shortText }),
  z.strictObject({ kind: z.literal('job-ended'), job: key, outcome: z.enum(['done', 'cancelled', 'failed']) }),
  z.strictObject({ kind: z.literal('menu'), command: menuCommand }),
  z.strictObject({ kind: z.literal('open-file'), file: chosenFile }),
  z.strictObject({ kind: z.literal('theme'), dark: z.boolean() }),
  /** Something that the desktop was asked to do could not be done. */
  z.strictObject({ kind: z.literal('refused'), what: z.string(), mend: z.string() }),
]);

/** Call by call: what it takes and what it gives. */
export const hostSchema = {
  /** Versions, the carrier, where data lives, what this host can do. */
  about: {
    takes: z.strictObject({}),
    gives: z.strictObject({
      carrier: z.enum(['electron', 'local', 'direct']),
      versions: z.record(z.string(), z.string()),
      /** Where documents are kept, for people to read: the one place where a path is shown. */
      dataFolder: z.string(),
      /** Set when there is no store: what is missing and how to mend it. */
      storeFault: z.strictObject({ what: z.string(), mend: z.string() }).nullable(),
      /** What integrity check or set-aside files had to say at start. */
      notices: z.array(z.string()),
      /** Native dialogs, so that a file can be chosen, written and shown in its folder. */
      hasDialogs: z.boolean(),
    }),
  },
  listDocuments: { takes: z.strictObject({}), gives: z.array(documentLine) },
  /** A new document from a text: refused when the text is no document. */
  createDocument: {
    takes: z.strictObject({ name: shortText, text: z.string().max(longestText), file: key.nullable() }),
    gives: documentLine,
  },
  openDocument: { takes: z.strictObject({ id: key }), gives: openedDocument },
  /**
   * Adds edits after the entry `after`. Acknowledged only when they are on the disk. When another window was first,
   * the answer holds its entries and nothing is written.
   */
  appendEdits: {
    takes: z.strictObject({
      id: key,
      writer: key,
      after: count,
      name: shortText,
      entries: z.array(journalEntry).min(1).max(1000),
    }),
    gives: z.discriminatedUnion('written', [
      z.strictObject({ written: z.literal(true), head: count }),
      z.strictObject({ written: z.literal(false), head: count, since: z.array(journalEntry) }),
    ]),
  },
  /** A revision: the document's text as of entry `at`; the journal up to there is put away with it. */
  saveRevision: {
    takes: z.strictObject({ id: key, at: count, text: z.string().max(longestText), remark: shortText }),
    gives: revisionLine,
  },
  listRevisions: { takes: z.strictObject({ id: key }), gives: z.array(revisionLine) },
  readRevision: { takes: z.strictObject({ id: key, number: count }), gives: z.strictObject({ text: z.string() }) },
  trashDocument: { takes: z.strictObject({ id: key }), gives: documentLine },
  restoreDocument: { takes: z.strictObject({ id: key }), gives: documentLine },
  /** Takes a trashed document away for good. */
  destroyDocument: { takes: z.strictObject({ id: key }), gives: z.null() },

  /** Lets the user choose a document's file; null when they turn back. Needs dialogs. */
  chooseFile: { takes: z.strictObject({}), gives: chosenFile.nullable() },
  /** Asks for a place and writes there, whole or not at all. Null when the user turns back. Needs dialogs. */
  saveFileAs: { takes: z.strictObject({ name: shortText, bytes, mime: shortText }), gives: writtenFile.nullable() },
  /** From now on each save of the document also writes this file; null stops that. Needs dialogs. */
  mirrorDocument: {
    takes: z.strictObject({ id: key, text: z.string().max(longestText), handle: key.nullable(), ask: z.boolean() }),
    gives: documentLine,
  },
  /**
   * Writes the document to its file. `changedOutside`: the file was changed since; nothing is written then unless
   * `force`.
   */
  saveMirror: {
    takes: z.strictObject({ id: key, text: z.string().max(longestText), force: z.boolean() }),
    gives: z.discriminatedUnion('written', [
      z.strictObject({ written: z.literal(true), file: writtenFile }),
      z.strictObject({ written: z.literal(false), changedOutside: z.literal(true), text: z.string() }),
    ]),
  },
  /** Shows a file written before in its folder. Needs dialogs. */
  showInFolder: { takes: z.strictObject({ name: shortText }), gives: z.null() },

  /**
   * Starts setting a note (a tree of core/note, as `toWire` writes it) as PDF; progress and end come as events. The page names the job, so that
   * it knows it even when it is loaded anew before the answer comes.
   */
  startNote: { takes: z.strictObject({ job: key, note: bytes }), gives: z.null() },
  /** Starts verifying a note; `against`: text of the document that it is said to be of. `verifyResult` gives the report. */
  startVerify: {
    takes: z.strictObject({ job: key, bytes, against: z.string().max(longestText).nullable() }),
    gives: z.null(),
  },
  verifyResult: { takes: z.strictObject({ job: key }), gives: verifyReport },
  cancelJob: { takes: z.strictObject({ job: key }), gives: z.null() },
  /** State of a job, so that a page that was loaded anew finds it again. */
  jobState: {
    takes: z.strictObject({ job: key }),
    gives: z.strictObject({
      state: z.enum(['running', 'done', 'cancelled', 'failed']),
      done: z.number(),
      of: z.number(),
      doing: shortText,
      why: z.string().nullable(),
    }),
  },
  listJobs: { takes: z.strictObject({}), gives: z.array(key) },
  /** The PDF of a job that is done. */
  jobResult: { takes: z.strictObject({ job: key }), gives: z.strictObject({ bytes }) },
  /** Keeps a note with the document that it is of. */
  keepNote: {
    takes: z.strictObject({ id: key, name: shortText, documentHash: z.string(), bytes }),
    gives: issuedNoteLine,
  },
  listNotes: { takes: z.strictObject({ id: key }), gives: z.array(issuedNoteLine) },
  readNote: { takes: z.strictObject({ id: key, number: count }), gives: z.strictObject({ name: z.string(), bytes }) },

  /** The register of a document's notes, as text; null before its first entry. */
  readRegister: { takes: z.strictObject({ id: key }), gives: z.strictObject({ text: z.string().nullable() }) },
  /** Keeps a register: refused unless it holds every entry of the one that is kept, in order. */
  keepRegister: { takes: z.strictObject({ id: key, text: z.string().max(longestRegister) }), gives: z.null() },
  /** Signs a note with an identity of the user's own (PKCS#12). The password is used once and kept nowhere. */
  signNote: {
    takes: z.strictObject({
      bytes,
      certificate: bytes,
      password: z.string().max(1000),
      /** As core/issue names them. */
      role: z.enum(['author', 'checker', 'licensed engineer']),
      /** ISO 8601, UTC. */
      at: z.iso.datetime(),
      reason: shortText.nullable(),
      /** A time-stamp authority of the user's own, asked once; null: nobody is asked. */
      timeStampAt: z.string().max(2000).nullable(),
      /** A PNG or JPEG that is drawn beside the words of the signature. */
      seal: bytes.nullable(),
    }),
    gives: z.strictObject({ bytes, signer: z.string() }),
  },

  /** Rows that the user keeps for all documents, as JSON text by name. */
  listCatalogueAdditions: {
    takes: z.strictObject({}),
    gives: z.array(z.strictObject({ name: shortText, text: z.string() })),
  },
  keepCatalogueAddition: {
    takes: z.strictObject({ name: shortText, text: z.string().max(1_000_000) }),
    gives: z.null(),
  },
  dropCatalogueAddition: { takes: z.strictObject({ name: shortText }), gives: z.null() },

  /** Content-addressed records (tank tests and the like come later): bytes in, hash out. */
  keepRecord: { takes: z.strictObject({ name: shortText, bytes }), gives: z.strictObject({ hash: z.string() }) },
  readRecord: { takes: z.strictObject({ hash: z.string() }), gives: z.strictObject({ name: z.string(), bytes }) },

  /** The whole store in one file, and back again. Restoring sets the present store aside first. */
  backUp: { takes: z.strictObject({}), gives: z.strictObject({ name: z.string(), bytes }) },
  restoreBackup: {
    takes: z.strictObject({ bytes }),
    gives: z.strictObject({ documents: count, setAside: z.string() }),
  },

  /** Settings of the window (text size, layout), as JSON text. */
  readSettings: { takes: z.strictObject({}), gives: z.strictObject({ text: z.string() }) },
  keepSettings: { takes: z.strictObject({ text: z.string().max(100_000) }), gives: z.null() },

  /** Tells the desktop what the window shows: its title and whether something is not in its file yet. */
  showState: {
    takes: z.strictObject({ title: shortText, file: shortText.nullable(), unsaved: z.boolean() }),
    gives: z.null(),
  },
  print: { takes: z.strictObject({ bytes }), gives: z.null() },
} as const;

export const hostEventSchema = hostEvent;

export type JournalEntry = z.infer<typeof journalEntry>;
export type DocumentLine = z.infer<typeof documentLine>;
export type OpenedDocument = z.infer<typeof openedDocument>;
export type RevisionLine = z.infer<typeof revisionLine>;
export type IssuedNoteLine = z.infer<typeof issuedNoteLine>;
export type ChosenFile = z.infer<typeof chosenFile>;
export type WrittenFile = z.infer<typeof writtenFile>;
export type VerifyReading = z.infer<typeof verifyReport>;
export type HostEvent = z.infer<typeof hostEvent>;
export type MenuCommand = z.infer<typeof menuCommand>;
