import type { z } from 'zod';
import { refused, type Answer } from '../../core/host/answer.ts';
import { hostCalls } from '../../core/host/host-over.ts';
import { hostSchema } from '../../core/host/host-schema.ts';
import type { Host, HostCall } from '../../core/host/host.ts';
import type { RefusalText } from '../../core/refusal.ts';

/** Who sent a message, as its carrier knows it. */
export interface Sender {
  readonly isOurWindow: boolean;
  readonly url: string;
}

/** What a carrier does with the calls: hears messages of that name and sends the answer back. */
export type Receive = (name: HostCall, hear: (message: unknown, sender: Sender) => Promise<Answer<unknown>>) => void;

/** The one place where a message becomes a call: sender and message are checked, a refusal goes back as a value. */
export function serve(host: Host, receive: Receive): void {
  for (const name of hostCalls)
    receive(name, async (message, sender) => {
      if (!sender.isOurWindow)
        return refused({
          what: `${name} was refused`,
          where: { sender: sender.url.slice(0, 200) },
          mend: 'Only our window may call the host.',
        });
      const read = hostSchema[name].takes.safeParse(message);
      if (!read.success) return refused(inEngineersWords(name, read.error));
      const call = host[name] as (message: unknown) => Promise<Answer<unknown>>;
      return call(read.data);
    });
}

/** The first thing wrong with a message. */
function inEngineersWords(name: HostCall, error: z.ZodError): RefusalText {
  const [issue] = error.issues;
  const path = issue?.path.map(String).join('.') ?? '';
  return {
    what:
      issue?.code === 'too_big'
        ? `${path || 'The message'} is more than ${name} takes`
        : `The message to ${name} is not one that it takes${issue ? `: ${issue.message}` : ''}`,
    where: { call: name, ...(path ? { path } : {}) },
    mend:
      issue?.code === 'too_big'
        ? 'Divide it, or shorten it.'
        : 'Load the window anew: page and program may be of different versions.',
  };
}
