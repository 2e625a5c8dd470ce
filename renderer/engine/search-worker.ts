import { createSearchService, type FromSearch, type ToSearch } from '../../core/engine/search-service.ts';
import { behindMessages } from './behind-messages.ts';

// A search has a thread of its own: it may last for minutes, and nothing else waits for it.
const scope = self as unknown as {
  postMessage(message: FromSearch): void;
  onmessage: ((event: MessageEvent<ToSearch>) => void) | null;
};

/** How long a slice lasts, ms: a stop is heard and progress is told as often. */
const slice = 120;
let since = performance.now();
const isDue = (): boolean => {
  const now = performance.now();
  if (now - since < slice) return false;
  since = now;
  return true;
};

const hear = createSearchService({ tell: (news) => scope.postMessage(news), later: behindMessages(), isDue });
scope.onmessage = ({ data }) => hear(data);
