import canonicalize from 'canonicalize';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import * as z from 'zod';
import { jsonFault } from '../document/json-fault.ts';
import { refusalTexts } from '../document/read-document.ts';
import { Refusal, refusal } from '../refusal.ts';

const short = z.string().trim().min(1).max(120);
const long = z.string().trim().min(1).max(4000);

export const roles = ['author', 'checker', 'licensed engineer'] as const;
const party = z.strictObject({ role: z.enum(roles), name: short });

/** What a result is compared by between revisions: quantities in SI, verdicts of the limit states, findings. */
const summary = z.strictObject({
  quantities: z.record(z.string(), z.strictObject({ title: z.string(), unit: z.string(), value: z.number() })),
  limitStates: z.array(
    z.strictObject({
      name: z.string(),
      verdict: z.enum(['passes', 'fails', 'not judged']),
      governing: z.string().nullable(),
      utilisation: z.number().nullable(),
    }),
  ),
  findings: z.array(z.string()),
});

const common = { date: z.iso.date(), by: party };
const eventSchema = z.discriminatedUnion('kind', [
  /** The author hands a revision over: what it holds is kept here whole. */
  z.strictObject({
    kind: z.literal('issued for check'),
    ...common,
    revision: short,
    option: z.string().nullable(),
    documentHash: z.string(),
    programVersion: z.string(),
    document: z.record(z.string(), z.unknown()),
    result: summary,
  }),
  z.strictObject({ kind: z.literal('comment'), ...common, text: long, required: z.boolean() }),
  /** `to`: number of the comment, from 1 through the whole register. */
  z.strictObject({ kind: z.literal('answer'), ...common, to: z.number().int().min(1), text: long }),
  z.strictObject({ kind: z.literal('checked'), ...common }),
  /** The licensed engineer takes over a limit state that was not judged, by its name and with a reason. */
  z.strictObject({ kind: z.literal('accepted'), ...common, limitState: short, reason: long }),
  z.strictObject({ kind: z.literal('issued'), ...common }),
  z.strictObject({ kind: z.literal('withdrawn'), ...common, reason: long }),
]);

const registerSchema = z.strictObject({
  schema: z.literal('stillplate-register/1'),
  /** Each with the hash over itself and the hash before it: only added to. */
  events: z.array(z.strictObject({ event: eventSchema, hash: z.string() })).max(10_000),
});

export type IssueEvent = z.infer<typeof eventSchema>;
export type ResultSummary = z.infer<typeof summary>;
export type Role = (typeof roles)[number];
/** Everything that happened to the notes of one document, in order. */
export type Register = z.infer<typeof registerSchema>;

export const emptyRegister: Register = { schema: 'stillplate-register/1', events: [] };

/** The register with one event more. Refuses words too long and the like; whether it may happen now is not asked here. */
export function withEvent(register: Register, event: IssueEvent): Register {
  const read = eventSchema.safeParse(event);
  if (!read.success) throw new Refusal(refusalTexts(read.error, event));
  const hash = chained(read.data, register.events.at(-1)?.hash ?? '');
  return { ...register, events: [...register.events, { event: read.data, hash }] };
}

/** Text of a register, read back. Refuses what is no register, and a chain that was changed, naming the first event. */
export function readRegister(text: string): Register {
  const fault = jsonFault(text, 60);
  if (fault) throw refusal(fault);
  const raw: unknown = JSON.parse(text);
  const read = registerSchema.safeParse(raw);
  if (!read.success) throw new Refusal(refusalTexts(read.error, raw));
  let before = '';
  read.data.events.forEach(({ event, hash }, n) => {
    if (hash !== chained(event, before))
      throw refusal({
        what: `Entry ${n + 1} of the register was changed, lost or put in: its hash does not fit`,
        where: { entry: n + 1 },
        mend: n === 0 ? 'Take the register from a backup.' : `Entries up to ${n} are whole. Take it from a backup.`,
      });
    before = hash;
  });
  return read.data;
}

/**
 * SHA-256 over the event's canonical JSON (RFC 8785) and the hash of the one before. Refuses half a character (a lone
 * surrogate) and a number too large to be one: neither has a canonical form.
 */
function chained(event: IssueEvent, before: string): string {
  let text: string;
  try {
    text = canonicalize([event, before]) as string;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw refusal({ what: `An entry of the register cannot be hashed: ${why}`, mend: 'Take the register from a backup, or write the text again.' }); // prettier-ignore
  }
  return bytesToHex(sha256(utf8ToBytes(text)));
}
