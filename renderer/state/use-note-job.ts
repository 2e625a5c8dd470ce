import { useEffect } from 'react';
import { create } from 'zustand';
import { Refusal } from '../../core/refusal.ts';
import { useSession } from './session-context.ts';
import { useWorkbench } from './workbench.ts';

interface NoteJob {
  readonly state: 'none' | 'running' | 'done';
  readonly job: string | null;
  readonly done: number;
  readonly of: number;
  readonly doing: string;
  readonly bytes: Uint8Array | null;
  /** Hash of the document that the pages are of. */
  readonly hash: string;
  readonly why: string | null;
}

const none: NoteJob = { state: 'none', job: null, done: 0, of: 1, doing: '', bytes: null, hash: '', why: null };
/** Outlives the sheet: a note goes on being set while another sheet is looked at. */
const useJob = create<NoteJob>(() => none);
/** Number of the note that is wanted: a newer one, or a cancel, ends the one before it wherever it is. */
let wanted = 0;

/** Sets the note of the shown option, with progress and cancel. */
export function useNoteJob(): NoteJob & { readonly start: () => void; readonly cancel: () => void } {
  const { host, engine } = useSession();
  const job = useJob();
  useEffect(
    () =>
      host.listen((event) => {
        if (!('job' in event) || event.job !== useJob.getState().job) return;
        if (event.kind === 'job-progress') useJob.setState({ done: event.done, of: event.of, doing: event.doing });
        else if (event.kind === 'job-ended') void ended(event.job);
      }),
    [host],
  );
  async function ended(id: string): Promise<void> {
    const state = await host.jobState({ job: id });
    if (!state.ok) return useJob.setState({ state: 'none', why: state.refusal.what });
    if (state.value.state === 'cancelled') return useJob.setState({ state: 'none', job: null });
    if (state.value.state === 'failed') return useJob.setState({ state: 'none', job: null, why: state.value.why });
    if (state.value.state !== 'done') return;
    const result = await host.jobResult({ job: id });
    if (result.ok) useJob.setState({ state: 'done', bytes: result.value.bytes, job: null });
    else useJob.setState({ state: 'none', job: null, why: result.refusal.what });
  }
  const start = async () => {
    const mine = ++wanted;
    const { document } = useWorkbench.getState();
    useJob.setState({ ...none, bytes: useJob.getState().bytes, state: 'running', hash: document?.hash ?? '' });
    try {
      const note = await engine.ask('note', { option: document?.option ?? null });
      if (mine !== wanted) return;
      const answer = await host.startNote({ note });
      if (!answer.ok) throw new Refusal([answer.refusal]);
      if (mine !== wanted) return void (await host.cancelJob({ job: answer.value.job }));
      useJob.setState({ job: answer.value.job });
      // It may have ended before we knew its id.
      await ended(answer.value.job);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      useJob.setState({ state: 'none', job: null, why: `${error.what}. ${error.mend}` });
    }
  };
  return {
    ...job,
    start: () => void start(),
    cancel: () => {
      wanted++;
      const { job: id } = useJob.getState();
      if (id) void host.cancelJob({ job: id });
      // The note is not handed over yet: nothing needs to be stopped but the handing over.
      else useJob.setState({ state: 'none' });
    },
  };
}
