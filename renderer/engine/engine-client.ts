import type { EngineCall, EngineCalls, EngineNews, FromEngine, ToEngine } from '../../core/engine/messages.ts';
import { Refusal, type RefusalText } from '../../core/refusal.ts';

/** The engine as the page sees it. A call rejects with a `Refusal` for what cannot be done, with another error for a fault of ours. */
export interface EngineClient {
  readonly ask: <C extends EngineCall>(call: C, takes: EngineCalls[C]['takes']) => Promise<EngineCalls[C]['gives']>;
  readonly listen: (hear: (news: EngineNews) => void) => () => void;
  /** Hears that the engine itself broke; the page can start a new one from the store. */
  readonly onBroken: (hear: (why: string) => void) => void;
}

/** A client for an engine in a worker of this page. */
export function engineClient(worker: Worker): EngineClient {
  const asked = new Map<number, { resolve: (value: never) => void; reject: (error: Error) => void }>();
  const hearers = new Set<(news: EngineNews) => void>();
  let broken: (why: string) => void = () => undefined;
  let next = 1;
  worker.onmessage = ({ data }: MessageEvent<FromEngine>) => {
    if ('news' in data) {
      for (const hear of hearers) hear(data.news);
      return;
    }
    const call = asked.get(data.id);
    asked.delete(data.id);
    if ('gives' in data) call?.resolve(data.gives as never);
    else if ('refusals' in data) call?.reject(new Refusal(data.refusals as [RefusalText, ...RefusalText[]]));
    else {
      call?.reject(new Error(data.broken));
      broken(data.broken);
    }
  };
  worker.onerror = (event) => broken(event.message);
  return {
    ask: (call, takes) =>
      new Promise((resolve, reject) => {
        const id = next++;
        asked.set(id, { resolve, reject });
        worker.postMessage({ id, call, takes } satisfies ToEngine);
      }),
    listen: (hear) => {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
    onBroken: (hear) => {
      broken = hear;
    },
  };
}
