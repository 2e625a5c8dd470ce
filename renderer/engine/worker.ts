import type { FromEngine, ToEngine } from '../../core/engine/messages.ts';
import { serveEngine } from '../../core/engine/serve-engine.ts';

// The page's engine: core in a thread of its own, so that a long appraisal never holds the window.
/** The worker's own scope; its library of types cannot stand beside the page's. */
const scope = self as unknown as {
  postMessage(message: FromEngine, transfer: readonly ArrayBuffer[]): void;
  onmessage: ((event: MessageEvent<ToEngine>) => void) | null;
};

const channel = new MessageChannel();
let waiting: (() => void)[] = [];
channel.port1.onmessage = () => {
  const now = waiting;
  waiting = [];
  for (const goOn of now) goOn();
};

const hear = serveEngine({
  post: (message, transfer) => scope.postMessage(message, transfer),
  // A message to ourselves queues behind those that have come meanwhile; a timer would wait longer.
  later: (goOn) => {
    waiting.push(goOn);
    channel.port2.postMessage(null);
  },
});
scope.onmessage = ({ data }) => hear(data);
