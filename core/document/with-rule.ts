import type * as z from 'zod';

/** What a rule finds wrong: at which field under its group, in words, and how to mend it. */
export interface Fault {
  readonly path: readonly (string | number)[];
  readonly what: string;
  readonly mend: string;
}

/**
 * A group of fields with a rule on what they say about each other. The rule is asked wherever the fields that it reads
 * are sound, whatever else is wrong in the group or beside it, so that every fault is told at once.
 * `reads`: paths under the group, `*` for any name or place in a list.
 */
export function withRule<T extends z.ZodType>(
  group: T,
  reads: readonly string[],
  faults: (value: z.output<T>) => readonly Fault[],
): T {
  const paths = reads.map((read) => read.split('.'));
  return group.superRefine(
    (value, context) => {
      for (const { path, what, mend } of faults(value))
        context.addIssue({ code: 'custom', message: what, path: [...path], params: { mend, rule: true } });
    },
    { when: ({ issues }) => !issues.some((issue) => paths.some((path) => spoils(issue, path))) },
  );
}

/** True where an issue lies on the way to a field, at it or in it. A field too many beside it, or what another rule
 *  found, leaves the field readable. */
function spoils({ code, path = [], params }: z.core.$ZodRawIssue, read: readonly string[]): boolean {
  if (code === 'unrecognized_keys' || (params as { rule?: boolean } | undefined)?.rule) return false;
  return read.every((part, i) => i >= path.length || part === '*' || part === String(path[i]));
}
