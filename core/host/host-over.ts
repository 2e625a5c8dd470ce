import type { Answer } from './answer.ts';
import type { HostEvent } from './host-schema.ts';
import { hostSchema } from './host-schema.ts';
import type { Host, HostCall } from './host.ts';

/** What carries messages to a host and back: it never rejects. */
export interface Carrier {
  readonly call: (name: HostCall, message: unknown) => Promise<Answer<unknown>>;
  readonly listen: (hear: (event: HostEvent) => void) => () => void;
}

export const hostCalls = Object.keys(hostSchema) as readonly HostCall[];

/** The host at the other end of a carrier. */
export const hostOver = ({ call, listen }: Carrier): Host =>
  ({
    ...Object.fromEntries(hostCalls.map((name) => [name, (message: unknown) => call(name, message)])),
    listen,
  }) as unknown as Host;
