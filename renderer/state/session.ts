import type { Edit } from '../../core/document/edit.ts';
import type { EngineNews } from '../../core/engine/messages.ts';
import { valueOf } from '../../core/host/answer.ts';
import type { JournalEntry } from '../../core/host/host-schema.ts';
import type { Host } from '../../core/host/host.ts';
import { Refusal } from '../../core/refusal.ts';
import type { EngineClient } from '../engine/engine-client.ts';
import { emptyWorkbench, notify, useWorkbench } from './workbench.ts';

/**
 * The life of an open document: edits go to the engine, the journal's entries that come back go to the store in order,
 * and nothing counts as kept before the store has said so.
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
  /** A revision of the document as it is now. */
  readonly saveRevision: (remark: string) => Promise<void>;
  /** After a conflict: ours becomes a document of its own, or theirs is taken. */
  readonly settle: (choice: 'keep both' | 'take theirs') => Promise<void>;
  readonly close: () => Promise<void>;
  /** Waits until all entries so far are kept or refused. */
  readonly settled: () => Promise<void>;
}

export function createSession(host: Host, engine: EngineClient): Session {
  const writer = crypto.randomUUID();
  let waiting: JournalEntry[] = [];
  let head = 0;
  let writing: Promise<void> | null = null;

  engine.listen(hearEngine);
  engine.onBroken((why) =>
    notify('loud', {
      what: `The engine stopped: ${why.split('\n')[0]}`,
      mend: 'Open the document again: every edit that was kept is in it.',
    }),
  );
  host.listen((event) => {
    const { line, conflict } = useWorkbench.getState();
    if (event.kind !== 'document-changed' || event.id !== line?.id || event.writer === writer || event.head <= head)
      return;
    // Nothing of ours is waiting: the other window's edits are simply taken in.
    if (waiting.length === 0 && !writing && !conflict) void reopen(line.id);
  });

  /** Writes what waits, one message after the other, until nothing waits. */
  function write(): Promise<void> {
    writing ??= (async () => {
      while (waiting.length > 0) {
        const { line } = useWorkbench.getState();
        const entries = waiting.slice(0, 1000);
        if (!line) break;
        useWorkbench.setState({ keeping: { state: 'writing' } });
        const answer = await host.appendEdits({ id: line.id, writer, after: head, name: nameNow(), entries });
        if (!answer.ok) {
          useWorkbench.setState({ keeping: { state: 'not kept', refusal: answer.refusal } });
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
    });
    return writing;
  }

  async function keep(entries: readonly JournalEntry[]): Promise<void> {
    waiting.push(...entries);
    if (!useWorkbench.getState().conflict) void write();
  }

  async function reopen(id: string): Promise<void> {
    const opened = valueOf(await host.openDocument({ id }));
    waiting = [];
    head = opened.line.head;
    useWorkbench.setState({ line: opened.line, conflict: null, keeping: { state: 'kept' } });
    await engine.ask('open', { text: opened.text, journal: opened.journal });
    useWorkbench.setState({ choices: await engine.ask('choices', null) });
  }

  /** Opens a document's text without a store, so that it can be worked on and saved as a file. */
  async function openUnkept(text: string): Promise<void> {
    waiting = [];
    head = 0;
    await engine.ask('open', { text, journal: [] });
    useWorkbench.setState({ choices: await engine.ask('choices', null) });
  }

  const session: Session = {
    host,
    engine,
    openDocument: async (id) => {
      await session.settled();
      useWorkbench.setState({ ...emptyWorkbench, notices: useWorkbench.getState().notices, page: 'work' });
      await reopen(id);
    },
    openText: async (name, text, file) => {
      await session.settled();
      useWorkbench.setState({ ...emptyWorkbench, notices: useWorkbench.getState().notices, page: 'work' });
      const made = await host.createDocument({ name, text, file });
      if (made.ok) return reopen(made.value.id);
      useWorkbench.setState({ keeping: { state: 'not kept', refusal: made.refusal } });
      await openUnkept(text);
    },
    edit: (edit) => said(async () => keep(await engine.ask('edit', { edit }))),
    undo: () => said(async () => keep(await engine.ask('undo', null))),
    redo: () => said(async () => keep(await engine.ask('redo', null))),
    show: (option) =>
      said(async () => {
        await engine.ask('show', { option });
      }),
    saveRevision: (remark) =>
      said(async () => {
        await session.settled();
        const { line, keeping } = useWorkbench.getState();
        if (!line || keeping.state !== 'kept') return;
        const { text } = await engine.ask('text', null);
        valueOf(await host.saveRevision({ id: line.id, at: head, text, remark }));
        await engine.ask('putAway', null);
      }),
    settle: async (choice) => {
      const { line } = useWorkbench.getState();
      if (!line) return;
      if (choice === 'take theirs') return reopen(line.id);
      const { text } = await engine.ask('text', null);
      const made = valueOf(await host.createDocument({ name: `${nameNow()} (mine)`, text, file: null }));
      await reopen(made.id);
    },
    close: async () => {
      await session.settled();
      useWorkbench.setState({ ...emptyWorkbench, notices: useWorkbench.getState().notices });
    },
    settled: async () => {
      while (writing) await writing;
    },
  };
  return session;
}

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
      useWorkbench.setState({ comparison: news.view });
      break;
  }
}

/** Says a refusal at the window's edge; anything else is a fault of ours and goes on up. */
async function said(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    notify('loud', error);
  }
}

function nameNow(): string {
  const { document } = useWorkbench.getState();
  const project = document?.raw['project'];
  const name =
    typeof project === 'object' && project !== null ? (project as Record<string, unknown>)['name'] : undefined;
  return typeof name === 'string' && name !== '' ? name.slice(0, 400) : 'Unnamed plate';
}
