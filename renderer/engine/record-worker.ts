import type { FromRecords, ToRecords } from '../../core/engine/record-messages.ts';
import { serveRecords } from '../../core/engine/record-service.ts';

// Records are read and reduced in a thread of their own: a million rows hold neither the page nor the engine of the checks.
const scope = self as unknown as {
  postMessage(message: FromRecords): void;
  onmessage: ((event: MessageEvent<ToRecords>) => void) | null;
};

const hear = serveRecords((message) => scope.postMessage(message));
scope.onmessage = ({ data }) => hear(data);
