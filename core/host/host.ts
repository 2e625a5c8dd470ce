import type { z } from 'zod';
import type { Answer } from './answer.ts';
import type { HostEvent, hostSchema } from './host-schema.ts';

export type HostCall = keyof typeof hostSchema;
export type Takes<C extends HostCall> = z.infer<(typeof hostSchema)[C]['takes']>;
export type Gives<C extends HostCall> = z.infer<(typeof hostSchema)[C]['gives']>;

/** The desktop as the window sees it, whatever carries the messages. */
export type Host = {
  readonly [C in HostCall]: (message: Takes<C>) => Promise<Answer<Gives<C>>>;
} & {
  /** Listens to what the host tells; gives the way to stop. */
  readonly listen: (hear: (event: HostEvent) => void) => () => void;
};
