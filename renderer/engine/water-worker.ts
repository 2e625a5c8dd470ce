import { createWaterService, type FromWater, type ToWater } from '../../core/engine/water-service.ts';
import { behindMessages } from './behind-messages.ts';

// Added mass and drag have a thread of their own: they take seconds, and an edit must not wait for them.
const scope = self as unknown as {
  postMessage(message: FromWater): void;
  onmessage: ((event: MessageEvent<ToWater>) => void) | null;
};

const hear = createWaterService({ tell: (news) => scope.postMessage(news), later: behindMessages() });
scope.onmessage = ({ data }) => hear(data);
