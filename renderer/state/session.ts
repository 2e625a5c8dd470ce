import { applyEdit, type Edit } from '../../core/document/edit.ts';
import { readDocumentText } from '../../core/document/read-document.ts';
import { edited, historyOf } from '../../core/engine/history.ts';
import type { EngineNews } from '../../core/engine/messages.ts';
import { heardComparison } from '../../core/engine/told-comparison.ts';
import { valueOf } from '../../core/host/answer.ts';
import type { JournalEntry } from '../../core/host/host-schema.ts';
import type { Host } from '../../core/host/host.ts';
import { refusal, Refusal } from '../../core/refusal.ts';
import type { EngineClient } from '../engine/engine-client.ts';
import { texts } from '../texts.ts';
import { said } from './said.ts';
import { emptyWorkbench, notify, useWorkbench } from './workbench.ts';

/**
 * The life of an open document: edits go to the engine, the journal's entries that come back go to the store in order,
 * and nothing counts as kept before the store has said so. What changes the document goes one thing after the other,
 * so that an edit can never fall between a text that was read and the engine that opens it.
 */
export interface Session {
  readonly host: Host;
  readonly engine: EngineClient;
  readonly openDocument: (id: string) => Promise<void>;
  /** A new document in the store from a text, opened. */
  readonly openText: (name: string, text: string, file: string | null) => Promise<void>;
  readonly edit: (edit: Edit) => Promise<void>;
  readonly undo: () => Promise<void>;
  readonly redo: () => Promise<void>;
  readonly show: (option: string | null) => Promise<void>;
  /** A revision of the document as it is now, and its file where it has one. False where that was refused, which is said. */
  readonly saveRevision: (remark: string) => Promise<boolean>;
  /** After a conflict: ours becomes a document of its own, or theirs is taken. */
  readonly settle: (choice: 'keep both' | 'take theirs') => Promise<void>;
  /** After the document's file was changed by another program: its text becomes a document of its own, or is written over. */
  readonly settleFile: (choice: 'keep both' | 'write over') => Promise<void>;
  /** Back to the start page. Edits that are on no disk keep the document open, once. */
  readonly close: () => Promise<void>;
  /** Waits until all entries so far are kept or refused. */
  readonly settled: () => Promise<void>;
}

/** How long after an edit the document's file is written too, and when keeping is tried again, in milliseconds. */
const mirrorAfter = 800;
const tryAgainAfter = 3000;
/** How often an engine that breaks on one document is started anew. */
const mostStarts = 3;

export function createSession(host: Host, engine: EngineClient): Session {
  const writer = crypto.randomUUID();
  /** Entries that the engine holds and the store does not. */
  let waiting: JournalEntry[] = [];
  let head = 0;
  /** Entry up to which the journal was put away with a revision. */
  let putAwayAt = 0;
  /** Text of a document that is in no store: `waiting` is then its whole journal. */
  let unkept: string | null = null;
  let writing: Promise<void> | null = null;
  let last: Promise<unknown> = Promise.resolve();
  let again: ReturnType<typeof setTimeout> | undefined;
  let mirroring: ReturnType<typeof setTimeout> | undefined;
  let starts = 0;
  let warned = -1;
  let isLeaving = false;

  // The page goes (loaded anew, closed): the field that is being typed into hands over what it holds.
  window.addEventListener('pagehide', () => {
    isLeaving = true;
    leaveField();
  });
  // A page that is taken out of the browser's memory holds a document that may have moved on.
  window.addEventListener('pageshow', ({ persisted }) => {
    if (persisted) window.location.reload();
  });
  engine.listen((news) => {
    const before = ownRowsText();
    hearEngine(news);
    // Rows of the document's own are proposed like those of the catalogue.
    if (ownRowsText() !== before) void proposeRows();
  });
  engine.onBroken((why) => void said(() => inTurn(() => startAgain(why))));
  host.listen((event) => {
    const { line } = useWorkbench.getState();
    if (!line) return;
    if (event.kind === 'document-changed' && event.id === line.id && event.writer !== writer)
      void said(() => inTurn(() => follow(line.id, event.head)));
    if (event.kind === 'revision-saved' && event.id === line.id)
      void said(() => inTurn(() => followRevision(line.id, event.at)));
  });

  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const mine = last.then(work);
    // Who asked hears what went wrong; the next in turn goes on.
    last = mine.then(nothing, nothing);
    return mine;
  }

  /** In turn, after the field that is being typed into has handed over what it holds. */
  function afterTyping<T>(work: () => Promise<T>): Promise<T> {
    leaveField();
    return inTurn(work);
  }

  /** Writes what waits, one message after the other, until nothing waits. */
  function write(): Promise<void> {
    clearTimeout(again);
    writing ??= (async () => {
      while (waiting.length > 0) {
        const { line, conflict, keeping } = useWorkbench.getState();
        if (!line || conflict) break;
        const entries = waiting.slice(0, 1000);
        if (keeping.state === 'kept') useWorkbench.setState({ keeping: { state: 'writing' } });
        const answer = await host.appendEdits({ id: line.id, writer, after: head, name: nameNow(), entries });
        if (!answer.ok) {
          useWorkbench.setState({ keeping: { state: 'not kept', refusal: answer.refusal } });
          again = setTimeout(() => void write(), tryAgainAfter);
          break;
        }
        if (!answer.value.written) {
          useWorkbench.setState({ conflict: { head: answer.value.head, since: answer.value.since } });
          break;
        }
        head = answer.value.head;
        waiting = waiting.slice(entries.length);
        if (waiting.length === 0) useWorkbench.setState({ keeping: { state: 'kept' } });
      }
    })().finally(() => {
      writing = null;
      if (waiting.length === 0) mirrorSoon();
    });
    return writing;
  }

  async function settled(): Promise<void> {
    while (writing) await writing;
  }

  function keep(entries: readonly JournalEntry[]): void {
    waiting.push(...entries);
    if (entries.length > 0) void write();
  }

  /** Hands an edit to the store past the engine, for a page that goes has no time to ask it. Nobody hears the answer. */
  function keepAtOnce(edit: Edit): void {
    const { line, document, conflict } = useWorkbench.getState();
    const made = document && edited(historyOf(document.raw), edit);
    if (!line || !made || conflict) return;
    const after = writing ? head + waiting.length : head;
    const entries = writing ? made.entries : [...waiting, ...made.entries];
    void host.appendEdits({ id: line.id, writer, after, name: nameNow(), entries: [...entries] });
  }

  /** Another window wrote: its edits are taken in, unless ours are not kept yet. */
  async function follow(id: string, theirs: number): Promise<void> {
    await settled();
    const { line, conflict } = useWorkbench.getState();
    if (line?.id === id && !conflict && waiting.length === 0 && theirs > head) await open(id, shown());
  }

  /** Another window put the journal away: steps back beyond are edits of their own from now on. */
  async function followRevision(id: string, at: number): Promise<void> {
    await settled();
    const { line, conflict } = useWorkbench.getState();
    if (line?.id !== id || at <= putAwayAt || conflict || waiting.length > 0) return;
    if (at === head) {
      putAwayAt = at;
      await engine.ask('putAway', null);
    } else await open(id, shown());
  }

  /** Opens what the store holds. `more`: our entries that it does not hold. */
  async function open(
    id: string,
    option: string | null | undefined,
    more: readonly JournalEntry[] = [],
  ): Promise<void> {
    clearTimeout(again);
    const opened = valueOf(await host.openDocument({ id }));
    waiting = [...more];
    unkept = null;
    head = opened.line.head;
    putAwayAt = head - opened.journal.length;
    useWorkbench.setState({
      page: 'work',
      line: opened.line,
      conflict: null,
      keeping: more.length > 0 ? { state: 'writing' } : { state: 'kept' },
    });
    await showText(opened.text, [...opened.journal, ...more], option);
    if (more.length > 0) void write();
    else mirrorSoon();
  }

  /** Opens a text that no store takes, so that it can be worked on and saved as a file. */
  async function openUnkept(text: string): Promise<void> {
    waiting = [];
    head = 0;
    putAwayAt = 0;
    unkept = text;
    await showText(text, waiting, undefined);
  }

  async function showText(
    text: string,
    journal: readonly JournalEntry[],
    option: string | null | undefined,
  ): Promise<void> {
    try {
      await engine.ask('open', { text, journal, ...(option === undefined ? {} : { option }) });
      await proposeRows();
    } catch (error) {
      if (error instanceof Refusal) await backToStart();
      throw error;
    }
  }

  async function proposeRows(): Promise<void> {
    useWorkbench.setState({ choices: await engine.ask('choices', null) });
  }

  /** Before another document comes: what is on no disk keeps this one open, until the person asks a second time. */
  async function leave(): Promise<void> {
    await write();
    await settled();
    const isLeft = waiting.length > 0 && warned !== waiting.length;
    if (!isLeft) return mirror();
    warned = waiting.length;
    throw refusal(texts.session.notLeft(waiting.length));
  }

  async function backToStart(): Promise<void> {
    clearTimeout(again);
    clearTimeout(mirroring);
    waiting = [];
    unkept = null;
    warned = -1;
    // News of the old document that is still on its way comes before the answer, and is put away with it.
    await engine.ask('close', null);
    const { notices, choices } = useWorkbench.getState();
    useWorkbench.setState({ ...emptyWorkbench, notices, choices });
  }

  /** The engine broke and a new one stands ready: it gets what the store holds, and our entries that it does not. */
  async function startAgain(why: string): Promise<void> {
    const { page, line } = useWorkbench.getState();
    const isTooOften = ++starts > mostStarts;
    notify('loud', texts.session.broken(why.split('\n')[0]!, isTooOften));
    if (page !== 'work') return;
    await settled();
    if (isTooOften) await backToStart();
    else if (unkept !== null) await showText(unkept, waiting, shown());
    else if (line) await open(line.id, shown(), waiting);
  }

  function mirrorSoon(): void {
    clearTimeout(mirroring);
    if (useWorkbench.getState().line?.file) mirroring = setTimeout(() => void said(() => inTurn(mirror)), mirrorAfter);
  }

  /** Writes the document's file too, if the person chose one; asks when another program has changed it. */
  async function mirror(force = false): Promise<void> {
    clearTimeout(mirroring);
    const { line, outside } = useWorkbench.getState();
    if (!line?.file || (outside && !force)) return;
    const { text } = await engine.ask('text', null);
    const written = valueOf(await host.saveMirror({ id: line.id, text, force }));
    useWorkbench.setState({ outside: written.written ? null : { file: line.file, text: written.text } });
  }

  const session: Session = {
    host,
    engine,
    openDocument: (id) =>
      afterTyping(async () => {
        await leave();
        await backToStart();
        starts = 0;
        await open(id, undefined);
      }),
    openText: (name, text, file) =>
      afterTyping(async () => {
        await leave();
        await backToStart();
        starts = 0;
        const made = await host.createDocument({ name, text, file });
        if (made.ok) return open(made.value.id, undefined);
        useWorkbench.setState({ page: 'work', keeping: { state: 'not kept', refusal: made.refusal } });
        await openUnkept(text);
      }),
    edit: async (edit) =>
      isLeaving ? keepAtOnce(edit) : said(() => inTurn(async () => keep(await engine.ask('edit', { edit })))),
    undo: () => said(() => inTurn(async () => keep(await engine.ask('undo', null)))),
    redo: () => said(() => inTurn(async () => keep(await engine.ask('redo', null)))),
    show: (option) =>
      said(() =>
        inTurn(async () => {
          await engine.ask('show', { option });
        }),
      ),
    saveRevision: async (remark) => {
      let isMade = false;
      await said(() =>
        inTurn(async () => {
          await settled();
          const { line, keeping, conflict } = useWorkbench.getState();
          if (!line || conflict || keeping.state !== 'kept') throw refusal(texts.session.noRevision);
          const { text } = await engine.ask('text', null);
          valueOf(await host.saveRevision({ id: line.id, at: head, text, remark }));
          putAwayAt = head;
          await engine.ask('putAway', null);
          await mirror();
          isMade = true;
        }),
      );
      return isMade;
    },
    settle: (choice) =>
      said(() =>
        inTurn(async () => {
          const { line, conflict } = useWorkbench.getState();
          if (!line || !conflict) return;
          if (choice === 'take theirs') return open(line.id, shown());
          const { text } = await engine.ask('text', null);
          const { name, text: mine } = renamed(text, texts.session.mine);
          const made = valueOf(await host.createDocument({ name, text: mine, file: null }));
          await open(made.id, shown());
        }),
      ),
    settleFile: (choice) =>
      said(() =>
        inTurn(async () => {
          const { outside } = useWorkbench.getState();
          if (!outside) return;
          if (choice === 'keep both') {
            const { name, text } = renamed(outside.text, texts.session.ofFile);
            valueOf(await host.createDocument({ name, text, file: null }));
          }
          await mirror(true);
        }),
      ),
    close: () =>
      said(() =>
        afterTyping(async () => {
          await leave();
          await backToStart();
        }),
      ),
    settled,
  };
  return session;
}

const nothing = (): undefined => undefined;

/** The field that is being typed into hands over what it holds. */
function leaveField(): void {
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
}

const ownRowsText = (): string => JSON.stringify(useWorkbench.getState().document?.raw['catalogue'] ?? null);

/** The option that is shown, to be shown again; undefined while there is none. */
const shown = (): string | null | undefined => useWorkbench.getState().document?.option;

function hearEngine(news: EngineNews): void {
  switch (news.kind) {
    case 'document':
      useWorkbench.setState({ document: news.view });
      break;
    case 'result':
      useWorkbench.setState({ result: news.view });
      break;
    case 'scene':
      useWorkbench.setState({ scene: news.scene });
      break;
    case 'readings':
      useWorkbench.setState({ readings: news.readings });
      break;
    case 'comparison':
      useWorkbench.setState(({ comparison }) => ({ comparison: heardComparison(news.view, comparison) }));
      break;
  }
}

/** The text with its project named apart, in the list of documents as on its notes. */
function renamed(text: string, words: (name: string) => string): { readonly name: string; readonly text: string } {
  const raw = readDocumentText(text);
  const name = words(nameOf(raw)).slice(0, 400);
  const apart = applyEdit(raw, { kind: 'setField', option: null, path: ['project', 'name'], value: name });
  return { name, text: `${JSON.stringify(apart, null, 2)}\n` };
}

const nameNow = (): string => nameOf(useWorkbench.getState().document?.raw);

function nameOf(raw: Readonly<Record<string, unknown>> | undefined): string {
  const project = raw?.['project'];
  const name =
    typeof project === 'object' && project !== null ? (project as Record<string, unknown>)['name'] : undefined;
  return typeof name === 'string' && name !== '' ? name.slice(0, 400) : texts.session.unnamed;
}
