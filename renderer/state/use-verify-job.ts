import { useEffect } from 'react';
import { create } from 'zustand';
import { valueOf } from '../../core/host/answer.ts';
import type { VerifyReading } from '../../core/host/host-schema.ts';
import type { Host } from '../../core/host/host.ts';
import { Refusal } from '../../core/refusal.ts';
import { useSession } from './session-context.ts';

interface VerifyJob {
  readonly job: string | null;
  /** Name of the file that is verified. */
  readonly name: string;
  readonly done: number;
  readonly doing: string;
  readonly report: VerifyReading | null;
  readonly why: string | null;
}

const none: VerifyJob = { job: null, name: '', done: 0, doing: '', report: null, why: null };
/** Outlives the sheet: a note goes on being verified while another sheet is looked at. */
const useJob = create<VerifyJob>(() => none);

/** Verifies a note that was chosen, with progress and cancel. One at a time. */
export function useVerifyJob(): VerifyJob & {
  readonly start: (file: { readonly name: string; readonly bytes: Uint8Array }, against: string | null) => void;
  readonly cancel: () => void;
} {
  const { host } = useSession();
  const made = useJob();
  useEffect(() => {
    const stop = host.listen((event) => {
      if (!('job' in event) || event.job !== useJob.getState().job) return;
      if (event.kind === 'job-progress') useJob.setState({ done: event.done / event.of, doing: event.doing });
      else void ended(host, event.job);
    });
    // It may have ended while nobody listened.
    const { job } = useJob.getState();
    if (job) void ended(host, job);
    return stop;
  }, [host]);
  return {
    ...made,
    start: ({ name, bytes }, against) => void start(host, name, bytes, against),
    cancel: () => void (made.job && host.cancelJob({ job: made.job })),
  };
}

async function start(host: Host, name: string, bytes: Uint8Array, against: string | null): Promise<void> {
  const job = crypto.randomUUID();
  useJob.setState({ ...none, job, name });
  const answer = await host.startVerify({ job, bytes, against });
  if (!answer.ok) return useJob.setState({ job: null, why: `${answer.refusal.what}. ${answer.refusal.mend}` });
  await ended(host, job);
}

/** Takes over how a job ended, if it did. */
async function ended(host: Host, job: string): Promise<void> {
  try {
    const { state, why, done, of, doing } = valueOf(await host.jobState({ job }));
    if (useJob.getState().job !== job) return;
    if (state === 'running') return useJob.setState({ done: done / of, doing });
    if (state !== 'done') return useJob.setState({ job: null, why });
    useJob.setState({ job: null, report: valueOf(await host.verifyResult({ job })) });
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    useJob.setState({ job: null, why: `${error.what}. ${error.mend}` });
  }
}
