import { useEffect } from 'react';
import { create } from 'zustand';
import { valueOf } from '../../core/host/answer.ts';
import type { Host } from '../../core/host/host.ts';
import { Refusal } from '../../core/refusal.ts';
import type { Session } from './session.ts';
import { useSession } from './session-context.ts';
import { useWorkbench } from './workbench.ts';

interface NoteJob {
  readonly state: 'none' | 'running' | 'done';
  readonly job: string | null;
  /** Document in the store that the pages are of; null for one that is in no store. */
  readonly document: string | null;
  readonly done: number;
  readonly of: number;
  readonly doing: string;
  readonly bytes: Uint8Array | null;
  /** Hash of the document that the pages are of. */
  readonly hash: string;
  readonly why: string | null;
}

const none: NoteJob = { state: 'none', job: null, document: null, done: 0, of: 1, doing: '', bytes: null, hash: '', why: null }; // prettier-ignore
/** Outlives the sheet: a note goes on being set while another sheet is looked at. */
const useJob = create<NoteJob>(() => none);
/** The job that is handed over, kept by the browser for this tab: a page that is loaded anew finds it again. */
const handedOver = 'stillplate-note';
/** Number of the note that is wanted: a newer one, or a cancel, ends the one before it wherever it is. */
let wanted = 0;

/** Sets the note of the shown option, with progress and cancel. */
export function useNoteJob(): NoteJob & { readonly start: () => void; readonly cancel: () => void } {
  const session = useSession();
  const { host } = session;
  const id = useWorkbench(({ line }) => line?.id ?? null);
  const made = useJob();
  // The note of another document goes on being set, and is no note of this one.
  const job = made.document === id ? made : none;
  useEffect(() => listen(host), [host]);
  useEffect(() => {
    if (id && useJob.getState() === none) void findAgain(host, id);
  }, [host, id]);
  return {
    ...job,
    start: () => void start(session),
    cancel: () => {
      wanted++;
      const { job: running } = useJob.getState();
      if (running) void host.cancelJob({ job: running });
      // The note is not handed over yet: nothing needs to be stopped but the handing over.
      else useJob.setState({ state: 'none' });
    },
  };
}

/** Follows the job that is being set until it is told to stop. */
const listen = (host: Host): (() => void) =>
  host.listen((event) => {
    if (!('job' in event) || event.job !== useJob.getState().job) return;
    if (event.kind === 'job-progress') useJob.setState({ done: event.done, of: event.of, doing: event.doing });
    else if (event.kind === 'job-ended') void ended(host, event.job);
  });

/** Hands the note of the shown option over to be set; a note that is being set is called off. */
async function start({ host, engine }: Session): Promise<void> {
  const mine = ++wanted;
  const { document, line } = useWorkbench.getState();
  const made = useJob.getState();
  const of = line?.id ?? null;
  if (made.job) void host.cancelJob({ job: made.job });
  const bytes = made.document === of ? made.bytes : null;
  useJob.setState({ ...none, document: of, bytes, state: 'running', hash: document?.hash ?? '' });
  try {
    const register = of === null ? null : valueOf(await host.readRegister({ id: of })).text;
    const { wire: note } = await engine.ask('note', { option: document?.option ?? null, register });
    if (mine !== wanted) return;
    const job = crypto.randomUUID();
    const { hash } = useJob.getState();
    // Before the note is handed over: a page that is loaded anew before the answer comes finds its job all the same.
    sessionStorage.setItem(handedOver, JSON.stringify({ job, document: of, hash }));
    const answer = await host.startNote({ job, note });
    if (!answer.ok) throw new Refusal([answer.refusal]);
    if (mine !== wanted) return void (await host.cancelJob({ job }));
    useJob.setState({ job });
    // It may have ended before we listened for it.
    await ended(host, job);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    useJob.setState({ state: 'none', job: null, why: `${error.what}. ${error.mend}` });
  }
}

/** The note of the plate as it stands: the one that was made, or one made now. Null where that was called off or refused. */
export async function currentNote(session: Session): Promise<Uint8Array | null> {
  const { document, line } = useWorkbench.getState();
  const isCurrent = (job: NoteJob): boolean =>
    job.state === 'done' && job.document === (line?.id ?? null) && job.hash === document?.hash;
  if (isCurrent(useJob.getState())) return useJob.getState().bytes;
  // Whatever sheet is open: nobody else need listen.
  const deafen = listen(session.host);
  try {
    await start(session);
    while (useJob.getState().state === 'running')
      await new Promise<void>((resolve) => {
        const stop = useJob.subscribe(() => {
          stop();
          resolve();
        });
      });
  } finally {
    deafen();
  }
  return isCurrent(useJob.getState()) ? useJob.getState().bytes : null;
}

/** Takes over how a job ended, if it did. */
async function ended(host: Host, job: string): Promise<void> {
  const answer = await host.jobState({ job });
  if (!answer.ok) return useJob.setState({ state: 'none', job: null, why: answer.refusal.what });
  const { state, why, done, of, doing } = answer.value;
  if (state === 'running') return useJob.setState({ done, of, doing });
  if (state !== 'done') return useJob.setState({ state: 'none', job: null, why });
  const result = await host.jobResult({ job });
  if (result.ok) useJob.setState({ state: 'done', bytes: result.value.bytes, job: null });
  else useJob.setState({ state: 'none', job: null, why: result.refusal.what });
}

/** The note of this document that was handed over before the page was loaded anew, if the desktop still knows it. */
async function findAgain(host: Host, document: string): Promise<void> {
  const kept = JSON.parse(sessionStorage.getItem(handedOver) ?? 'null') as Pick<NoteJob, 'job' | 'document' | 'hash'> | null; // prettier-ignore
  if (!kept?.job || kept.document !== document) return;
  const known = await host.listJobs({});
  if (!known.ok || !known.value.includes(kept.job) || useJob.getState() !== none) return;
  useJob.setState({ ...none, ...kept, state: 'running' });
  await ended(host, kept.job);
}
