import type { FromEngine, ToEngine } from '../../core/engine/messages.ts';
import { serveEngine } from '../../core/engine/serve-engine.ts';
import { behindMessages } from './behind-messages.ts';

// The page's engine: core in a thread of its own, so that a long appraisal never holds the window.
/** The worker's own scope; its library of types cannot stand beside the page's. */
const scope = self as unknown as {
  postMessage(message: FromEngine, transfer: readonly ArrayBuffer[]): void;
  onmessage: ((event: MessageEvent<ToEngine>) => void) | null;
};

const hear = serveEngine({
  post: (message, transfer) => scope.postMessage(message, transfer),
  later: behindMessages(),
});
scope.onmessage = ({ data }) => hear(data);
