import { refused, type Answer } from '../../core/host/answer.ts';
import type { HostEvent } from '../../core/host/host-schema.ts';
import { hostOver } from '../../core/host/host-over.ts';
import type { Host } from '../../core/host/host.ts';
import { fromWire, toWire, wireType } from '../../core/host/wire.ts';

/** The host over the local server that served this page. */
export function localHost(): Host {
  const hearers = new Set<(event: HostEvent) => void>();
  let events: EventSource | null = null;
  let isLeaving = false;
  addEventListener('pagehide', () => {
    isLeaving = true;
  });

  async function call(name: string, message: unknown): Promise<Answer<unknown>> {
    try {
      const wire = toWire(message) as Uint8Array<ArrayBuffer>;
      const response = await fetch(`/call/${name}`, {
        method: 'POST',
        headers: { 'Content-Type': wireType },
        // Megabytes as they are would hold the window until the browser has taken them over.
        body: wire.length > 65_536 ? new Blob([wire]) : wire,
        // What a page says as it goes outlives it (64 kB at most).
        keepalive: isLeaving,
      });
      // The server answers in words whatever happened; anything else is not the server.
      if (response.headers.get('Content-Type') !== wireType) return refused(gone(`it says ${response.status}`));
      return fromWire(new Uint8Array(await response.arrayBuffer())) as Answer<unknown>;
    } catch (error) {
      return refused(gone(error instanceof Error ? error.message : String(error)));
    }
  }

  return hostOver({
    call,
    listen: (hear) => {
      hearers.add(hear);
      // The browser connects anew by itself, and says which event it has heard last.
      events ??= new EventSource('/events');
      events.onmessage = ({ data }: MessageEvent<string>) => {
        const event = JSON.parse(data) as HostEvent;
        for (const each of hearers) each(event);
      };
      return () => void hearers.delete(hear);
    },
  });
}

const gone = (why: string) => ({
  what: `Stillplate does not answer on this address: ${why}`,
  mend: 'If it was ended, start it again and open the address that it prints; what was acknowledged is kept.',
});
