import type { Answer } from '../../core/host/answer.ts';
import type { HostEvent } from '../../core/host/host-schema.ts';
import { hostOver } from '../../core/host/host-over.ts';
import type { Host } from '../../core/host/host.ts';

/** What the preload script shows the page: nothing but messages. */
export interface PreloadBridge {
  readonly call: (name: string, message: unknown) => Promise<Answer<unknown>>;
  /** Gives the way to stop. */
  readonly listen: (hear: (event: HostEvent) => void) => () => void;
}

declare global {
  interface Window {
    readonly stillplateHost?: PreloadBridge;
  }
}

/** The host over Electron's messages. */
export const electronHost = (bridge: PreloadBridge): Host =>
  hostOver({
    call: (name, message) => bridge.call(name, message).catch(brokenOff),
    listen: (hear) => bridge.listen(hear),
  });

const brokenOff = (error: unknown): Answer<never> => ({
  ok: false,
  refusal: {
    what: `The desktop side does not answer: ${error instanceof Error ? error.message : String(error)}`,
    mend: 'Close this window and start Stillplate again; what was acknowledged is kept.',
  },
});
