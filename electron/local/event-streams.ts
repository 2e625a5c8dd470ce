import type { IncomingMessage, ServerResponse } from 'node:http';
import type { HostEvent } from '../../core/host/host-schema.ts';

/**
 * A browser opens six connections to one address, for all its tabs: streams beyond this many are ended at once after
 * what they missed, and the browser comes again in a second.
 */
const mostStreams = 3;
/** Events kept for a page that was away for a moment. */
const remembered = 2000;

export interface EventStreams {
  readonly tell: (event: HostEvent) => void;
  readonly serve: (request: IncomingMessage, response: ServerResponse) => void;
  readonly close: () => void;
}

/** Server-sent events (WHATWG HTML, section 9.2). `start`: sets this run's numbers apart from another's. */
export function eventStreams(start: string): EventStreams {
  const streams = new Set<ServerResponse>();
  let kept: { readonly number: number; readonly text: string }[] = [];
  let last = 0;
  const keepAlive = setInterval(() => {
    for (const stream of streams) stream.write(':\n\n');
  }, 20_000);
  keepAlive.unref();

  return {
    tell: (event) => {
      const text = `id: ${start}-${++last}\ndata: ${JSON.stringify(event)}\n\n`;
      kept = [...kept.slice(1 - remembered), { number: last, text }];
      for (const stream of streams) stream.write(text);
    },
    serve: (request, response) => {
      response.writeHead(200, { 'Content-Type': 'text/event-stream', 'Cache-Control': 'no-store' });
      const [run, number] = String(request.headers['last-event-id'] ?? '').split('-');
      const missed = run === start ? kept.filter((each) => each.number > Number(number)) : [];
      // A page that has heard nothing yet learns the number from which it can go on.
      response.write(`retry: 1000\nid: ${start}-${missed.at(-1)?.number ?? last}\n\n`);
      response.write(missed.map(({ text }) => text).join(''));
      if (streams.size >= mostStreams) return void response.end();
      streams.add(response);
      response.on('close', () => streams.delete(response));
    },
    close: () => {
      clearInterval(keepAlive);
      for (const stream of streams) stream.end();
    },
  };
}
