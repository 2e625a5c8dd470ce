import type { ToEngine } from '../../core/engine/messages.ts';
import { serveEngine } from '../../core/engine/serve-engine.ts';

// The page's engine: core in a thread of its own, so that a long appraisal never holds the window.
declare const self: DedicatedWorkerGlobalScope;

const channel = new MessageChannel();
let waiting: (() => void)[] = [];
channel.port1.onmessage = () => {
  const now = waiting;
  waiting = [];
  for (const goOn of now) goOn();
};

const hear = serveEngine({
  post: (message, transfer) => self.postMessage(message, [...transfer]),
  // A message to ourselves queues behind those that have come meanwhile; a timer would wait longer.
  later: (goOn) => {
    waiting.push(goOn);
    channel.port2.postMessage(null);
  },
});
self.onmessage = ({ data }: MessageEvent<ToEngine>) => hear(data);
