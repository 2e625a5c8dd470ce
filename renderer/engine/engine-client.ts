import type { EngineCall, EngineCalls, EngineNews, FromEngine, ToEngine } from '../../core/engine/messages.ts';
import { refusal, Refusal, type RefusalText } from '../../core/refusal.ts';

/** The engine as the page sees it. A call rejects with a `Refusal` for what cannot be done, with another error for a fault of ours. */
export interface EngineClient {
  readonly ask: <C extends EngineCall>(call: C, takes: EngineCalls[C]['takes']) => Promise<EngineCalls[C]['gives']>;
  readonly listen: (hear: (news: EngineNews) => void) => () => void;
  /** Hears that the engine broke. A new one, with no document open, has taken its place by then. */
  readonly onBroken: (hear: (why: string) => void) => void;
}

/** A client for an engine in a worker of this page. An engine that broke is ended, for nobody knows what it still holds. */
export function engineClient(start: () => Worker): EngineClient {
  const asked = new Map<number, { resolve: (value: never) => void; reject: (error: Error) => void }>();
  const hearers = new Set<(news: EngineNews) => void>();
  let hearBroken: (why: string) => void = () => undefined;
  let next = 1;
  let worker = started();

  function started(): Worker {
    const fresh = start();
    fresh.onmessage = ({ data }: MessageEvent<FromEngine>) => {
      if (fresh !== worker) return;
      if ('news' in data) {
        for (const hear of hearers) hear(data.news);
        return;
      }
      if ('broken' in data) return broke(data.broken);
      const call = asked.get(data.id);
      asked.delete(data.id);
      if ('gives' in data) call?.resolve(data.gives as never);
      else call?.reject(new Refusal(data.refusals as [RefusalText, ...RefusalText[]]));
    };
    fresh.onerror = (event) => {
      event.preventDefault();
      if (fresh === worker) broke(event.message);
    };
    return fresh;
  }

  function broke(why: string): void {
    console.error(why);
    worker.terminate();
    const left = [...asked.values()];
    asked.clear();
    worker = started();
    for (const { reject } of left)
      reject(
        refusal({ what: 'The engine stopped before it answered', mend: 'Do it again; report it if it stays so.' }),
      );
    hearBroken(why);
  }

  const send: EngineClient['ask'] = (call, takes) =>
    new Promise((resolve, reject) => {
      const id = next++;
      asked.set(id, { resolve, reject });
      worker.postMessage({ id, call, takes } satisfies ToEngine);
    });
  let preview: Promise<unknown> = Promise.resolve();

  return {
    ask: (call, takes) => {
      if (call !== 'preview') return send(call, takes);
      // One preview at a time: what a person does waits for one sample at most, not for all of them.
      const mine = preview.then(() => send(call, takes));
      preview = mine.then(nothing, nothing);
      return mine;
    },
    listen: (hear) => {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
    onBroken: (hear) => {
      hearBroken = hear;
    },
  };
}

const nothing = (): undefined => undefined;
