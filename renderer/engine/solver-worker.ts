import { createSolveService, type FromSolver, type ToSolver } from '../../core/engine/solve-service.ts';
import { behindMessages } from './behind-messages.ts';

// The whole plate is solved in a thread of its own: neither the page nor the engine of the checks ever waits for it.
const scope = self as unknown as {
  postMessage(message: FromSolver): void;
  onmessage: ((event: MessageEvent<ToSolver>) => void) | null;
};

const hear = createSolveService({ tell: (news) => scope.postMessage(news), later: behindMessages() });
scope.onmessage = ({ data }) => hear(data);
