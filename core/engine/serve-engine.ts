import { Refusal } from '../refusal.ts';
import { buffersOf } from '../scene/buffers-of.ts';
import { createEngine } from './engine.ts';
import type { EngineNews, FromEngine, ToEngine } from './messages.ts';

/** Where an engine is heard and spoken to: a worker of the page, or a thread of Node. */
export interface EnginePort {
  readonly post: (message: FromEngine, transfer: readonly ArrayBuffer[]) => void;
  readonly later: (goOn: () => void) => void;
}

/** An engine behind a port: gives what hears the page's messages. One entry serves a page and Node alike. */
export function serveEngine({ post, later }: EnginePort): (message: ToEngine) => void {
  const engine = createEngine({ tell: (news) => post({ news }, handedOver(news)), later });
  return ({ id, call, takes }) => {
    try {
      if (!Object.hasOwn(engine, call)) throw new Error(`The engine has no call “${String(call)}”`);
      const gives = (engine[call] as (takes: unknown) => unknown)(takes);
      post({ id, gives }, wireOf(gives));
    } catch (error) {
      if (error instanceof Refusal) post({ id, refusals: error.all }, []);
      else post({ id, broken: error instanceof Error ? (error.stack ?? error.message) : String(error) }, []);
    }
  };
}

/** The bytes of a message that was made to go on: they change hands. */
const wireOf = (gives: unknown): readonly ArrayBuffer[] =>
  gives instanceof Object && 'wire' in gives ? [(gives.wire as Uint8Array<ArrayBuffer>).buffer] : [];

/** Buffers that change hands: a scene is made anew for each telling. */
const handedOver = (news: EngineNews): readonly ArrayBuffer[] => (news.kind === 'scene' ? buffersOf(news.scene) : []);
