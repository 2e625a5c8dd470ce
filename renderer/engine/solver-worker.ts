import { createSolveService, type FromSolver, type ToSolver } from '../../core/engine/solve-service.ts';

// The whole plate is solved in a thread of its own: neither the page nor the engine of the checks ever waits for it.
const scope = self as unknown as {
  postMessage(message: FromSolver): void;
  onmessage: ((event: MessageEvent<ToSolver>) => void) | null;
};

const channel = new MessageChannel();
let waiting: (() => void)[] = [];
channel.port1.onmessage = () => {
  const now = waiting;
  waiting = [];
  for (const goOn of now) goOn();
};

const hear = createSolveService({
  tell: (news) => scope.postMessage(news),
  // Behind the messages that have come meanwhile, so that a newer edit or a cancel is heard first.
  later: (goOn) => {
    waiting.push(goOn);
    channel.port2.postMessage(null);
  },
});
scope.onmessage = ({ data }) => hear(data);
