import type { HostEvent } from '../../core/host/host-schema.ts';
import { refusal } from '../../core/refusal.ts';

export interface JobState {
  readonly state: 'running' | 'done' | 'cancelled' | 'failed';
  readonly done: number;
  readonly of: number;
  readonly doing: string;
  readonly why: string | null;
}

/** Long work that can tell how far it is and be stopped. `stop` takes effect at once. */
export interface Work {
  readonly result: Promise<Uint8Array>;
  readonly stop: () => void;
}
export type StartWork = (tell: (done: number, of: number, doing: string) => void) => Work;

/** Long work by id. A job belongs to the host, not to a page: one that is loaded anew finds it again. */
export interface Jobs {
  /** Starts work under an id that the page chose; one that is known already is refused. */
  readonly start: (job: string, work: StartWork) => void;
  readonly cancel: (job: string) => void;
  readonly state: (job: string) => JobState;
  readonly list: () => string[];
  readonly result: (job: string) => Uint8Array;
  /** Stops what runs. */
  readonly close: () => void;
}

interface Job {
  state: JobState;
  bytes: Uint8Array | null;
  stop: () => void;
}

/** How many jobs that have ended are remembered, with their results. */
const remembered = 8;

export function jobs(tell: (event: HostEvent) => void): Jobs {
  const all = new Map<string, Job>();

  const find = (id: string): Job => {
    const job = all.get(id);
    if (job) return job;
    throw refusal({ what: 'This job is not known any more', where: { job: id }, mend: 'Start it again.' });
  };

  function end(id: string, job: Job, outcome: 'done' | 'cancelled' | 'failed', why: string | null): void {
    if (job.state.state !== 'running') return;
    job.state = { ...job.state, state: outcome, why };
    const ended = [...all].filter(([, { state }]) => state.state !== 'running');
    for (const [old] of ended.slice(0, -remembered)) all.delete(old);
    tell({ kind: 'job-ended', job: id, outcome });
  }

  return {
    start: (id, start) => {
      if (all.has(id)) throw refusal({ what: 'A job of this name was started before', where: { job: id }, mend: 'Give each job a name of its own.' }); // prettier-ignore
      const job: Job = {
        state: { state: 'running', done: 0, of: 1, doing: 'Starting', why: null },
        bytes: null,
        stop: () => undefined,
      };
      all.set(id, job);
      const work = start((done, of, doing) => {
        if (job.state.state !== 'running') return;
        job.state = { ...job.state, done, of, doing };
        tell({ kind: 'job-progress', job: id, done, of, doing });
      });
      job.stop = work.stop;
      work.result.then(
        (bytes) => {
          job.bytes = bytes;
          end(id, job, 'done', null);
        },
        (error: unknown) => end(id, job, 'failed', error instanceof Error ? error.message : String(error)),
      );
    },
    cancel: (id) => {
      const job = find(id);
      end(id, job, 'cancelled', null);
      job.stop();
    },
    state: (id) => find(id).state,
    list: () => [...all.keys()],
    result: (id) => {
      const { bytes, state } = find(id);
      if (state.state === 'done' && bytes) return bytes;
      throw refusal({
        what:
          state.state === 'running'
            ? 'This job still runs'
            : `This job gave nothing: ${state.why ?? 'it was cancelled'}`,
        where: { job: id },
        mend: state.state === 'running' ? 'Wait for its end.' : 'Start it again.',
      });
    },
    close: () => {
      for (const { stop } of all.values()) stop();
    },
  };
}
