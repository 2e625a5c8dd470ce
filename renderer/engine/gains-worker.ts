import { createGainsService, type FromGains, type ToGains } from '../../core/engine/gains-service.ts';
import { behindMessages } from './behind-messages.ts';

// A second for each option: a thread of its own, so that neither edits nor the sheet of hydrodynamics wait for it.
const scope = self as unknown as {
  postMessage(message: FromGains): void;
  onmessage: ((event: MessageEvent<ToGains>) => void) | null;
};

const hear = createGainsService({ tell: (news) => scope.postMessage(news), later: behindMessages() });
scope.onmessage = ({ data }) => hear(data);
